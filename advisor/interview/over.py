"""Looking a garment over: several questions answered by one look, and what is seen picked out to be told after it."""

from collections.abc import Collection, Iterable
from dataclasses import dataclass

from advisor.advise.world import World
from advisor.casefile import answered, picked_out
from advisor.core.case import Answer, Case, Known, Unknown
from advisor.core.model import Key
from advisor.core.question import Look, Question
from advisor.errors import UsageError
from advisor.words import Teller, capital

SEEN = "looked over"
AS_OTHER = "as long as the other"


@dataclass(frozen=True)
class Over:
    """A look that is due, and the questions it may answer, in the order they are listed."""

    look: Look
    items: tuple[Question, ...]

    @property
    def keys(self) -> tuple[Key, ...]:
        """The keys of its questions."""
        return tuple(question.key for question in self.items)

    @property
    def seconds(self) -> int:
        """How long it takes."""
        return self.look.seconds + self.look.each * len(self.items)

    def signs(self, world: World, teller: Teller) -> tuple[str, ...]:
        """What may be seen, a line for each question."""
        return tuple(capital(question.sign.format(usual=_usual(question, world, teller))) for question in self.items)


def _usual(question: Question, world: World, teller: Teller) -> str:
    """The usual answer in words, as it is taken for granted now."""
    if question.kind == "word":
        return question.words[str(question.neutral)]
    return teller.value(world.model.measures[question.key])


@dataclass(frozen=True)
class Picks:
    """What was seen at a look: the keys picked out, and those she cannot say."""

    seen: frozenset[Key] = frozenset()
    unsure: frozenset[Key] = frozenset()


def read_picks(over: Over, typed: str) -> Picks:
    """The picks typed as numbers with blanks, `3?` for what she cannot say; "0" or "none" is nothing, "?" is all.

    UsageError says which of them is no number of the list.
    """
    text = typed.strip().casefold()
    if text in ("0", "none", "nothing"):
        return Picks()
    if text in ("?", "unknown", "cannot say", "don't know", "dont know"):
        return Picks(unsure=frozenset(over.keys))
    seen: set[Key] = set()
    unsure: set[Key] = set()
    for part in text.replace(",", " ").split():
        number = part.removesuffix("?")
        if not (number.isdecimal() and number.isascii() and 1 <= int(number) <= len(over.items)):
            raise UsageError(f"'{part}' is no number of the list", hint=HINT.format(most=len(over.items)))
        (unsure if part != number else seen).add(over.items[int(number) - 1].key)
    return Picks(frozenset(seen), frozenset(unsure - seen))


HINT = "give numbers from 1 to {most} with blanks between, 0 for none of them, or 3? if you cannot say of the third"


def looked_over(case: Case, over: Over, picks: Picks, at: str) -> Case:
    """`case` with what the look tells: the usual where nothing was seen, and what was seen marked as to be told.

    A sign that leaves only one other answer is that answer. What means something only after a thing that was
    picked out is left open.
    """
    told = picks.seen | picks.unsure
    for question in over.items:
        key = question.key
        if key not in told and any(gate in told for gate, _ in question.after):
            continue
        answer = _untold(over, question) if key not in told else _other(question) if key in picks.seen else Unknown()
        case = picked_out(case, key, at) if answer is None else answered(case, key, answer, at)
    return case


def _other(question: Question) -> Answer | None:
    """The answer that a sign stands for, where it can be but one."""
    others = [word for word in question.words if word != question.neutral]
    return Known(others[0], question.how) if len(others) == 1 else None


def _untold(over: Over, question: Question) -> Answer:
    """The answer where no sign is seen."""
    if over.look.untold == "unknown":
        return Unknown()
    told = "" if question.kind == "word" else AS_OTHER if isinstance(question.neutral, str) else SEEN
    return Known(question.neutral, "told", told=told)


def grouped(looks: Iterable[Look], questions: Collection[Question]) -> tuple[list[Over], list[Question]]:
    """The looks that answer two or more of `questions`, and the questions that are to be asked by themselves."""
    overs = [Over(look, tuple(q for q in questions if q.look == look.id)) for look in looks]
    overs = [over for over in overs if len(over.items) > 1]
    taken = {key for over in overs for key in over.keys}
    return overs, [question for question in questions if question.key not in taken]
