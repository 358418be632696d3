"""Every word in a condition is a word of the vocabulary, and every name is bound.

Roles and slots are those of rules/roles, problems those of findings, fixes those of fixes/. Each problem is
answered, and each fix answers something.
"""

from collections.abc import Iterable, Mapping

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.shape import asked, bound, fields, patterns, texts_in, words_of
from advisor.engine import SlotFact
from advisor.errors import nearest
from advisor.knowledge.cards import Answer, Card, Condition, Find, Veto
from advisor.knowledge.facts import Joined, Measure, Problem, Trait
from advisor.words import names_in

ANSWER_FILE = "rules/<topic>/answers/<name>.py"
PLACED = {"place", "key", "other", "id"}


def check(material: Material, book: Book) -> None:
    """Words, names, and that problems and fixes reach each other. A rule with a fault here is not run after."""
    for id, card in sorted(material.rules.items()):
        before = len(book.faults)
        for condition in card.conditions():
            for pattern, _ in patterns(condition.element):
                _pattern(material, book, id, condition, pattern)
            _compared(material, book, id, card, condition)
        _names(material, book, id, card)
        _links(material, book, id, card)
        if len(book.faults) > before:
            material.sound.discard(id)
    _answered(material, book)


def slots_of(material: Material, role: str, kind: type[SlotFact]) -> dict[str, tuple[str, ...]]:
    """The slots of a role that such a fact may speak of, with the words a state may take."""
    shape = material.roles[role]
    if kind is Trait:
        found = {slot: (*entry.words, *entry.also) for slot, entry in shape.slots.items() if entry.kind == "word"}
        return found | {slot: tuple(state.words) for slot, state in shape.states.items()}
    lengths = [slot for slot, entry in shape.slots.items() if entry.kind != "word"]
    return dict.fromkeys((*lengths, *shape.measures), ())


def word_fault(material: Material, kind: type[SlotFact], role: str, slot: str, word: str) -> tuple[str, str] | None:
    """What is wrong with this role, slot and word together, and a hint; "" stands for any."""
    if role and role not in material.roles:
        return f"no role '{role}'", nearest(role, material.roles)
    roles = [role] if role else sorted(material.roles)
    known = {name: words for each in roles for name, words in slots_of(material, each, kind).items()}
    what = "state" if kind is Trait else "length"
    if slot and slot not in known:
        other = {name for each in roles for name in slots_of(material, each, Measure if kind is Trait else Trait)}
        if slot in other:
            return f"'{slot}' is no {what}", f"write {'Measure' if kind is Trait else 'Trait'}(...) for it"
        return f"the role '{role}' has no {what} '{slot}'" if role else f"no role has a {what} '{slot}'", nearest(
            slot, known
        )
    words = {
        w
        for each in roles
        for name, ws in slots_of(material, each, kind).items()
        if name == slot or not slot
        for w in ws
    }
    if word and word not in words:
        return f"'{slot}' never is '{word}'", nearest(word, words)
    return None


def _pattern(material: Material, book: Book, id: str, condition: Condition, pattern: SlotFact) -> None:
    def wrong(what: str, hint: str, text: str) -> None:
        book.error(material.where(id), f"condition '{condition.words}': {what}", hint, material.line(id, text))

    for each in fields(pattern):
        if each.slot in PLACED and each.words and each.slot in pattern:
            for text in sorted(each.words):
                wrong(
                    f"names {each.slot} '{text}'",
                    "a rule speaks of roles and slots; bind the place with MATCH.place",
                    text,
                )
    if isinstance(pattern, Measure | Trait):
        for role in sorted(words_of(pattern, "role") or {""}):
            for slot in sorted(words_of(pattern, "slot") or {""}):
                for word in sorted(words_of(pattern, "word") or {""}):
                    fault = word_fault(material, type(pattern), role, slot, word)
                    if fault:
                        wrong(
                            *fault, word if "never is" in fault[0] else slot if "'" + slot + "'" in fault[0] else role
                        )
    if isinstance(pattern, Joined):
        for side, slots in (("role", "slot"), ("other_role", "")):
            for role in sorted(words_of(pattern, side) or {""}):
                for slot in sorted(words_of(pattern, slots) or {""}) if slots else [""]:
                    fault = word_fault(material, Measure, role, slot, "")
                    if fault:
                        wrong(*fault, slot if slot and f"'{slot}'" in fault[0] else role)
    if isinstance(pattern, Problem):
        for name in sorted(words_of(pattern, "name") or ()):
            if (
                name not in material.problems
                and "findings" not in material.unread
                and not _implied(material.rules[id], condition)
            ):
                wrong(f"no finding finds '{name}'", nearest(name, material.problems), name)


def _implied(card: Card, condition: Condition) -> bool:
    return condition.words not in {own.words for own in card.when}


def _compared(material: Material, book: Book, id: str, card: Card, condition: Condition) -> None:
    """The words a test compares a bound word with must be words that can be bound there."""
    if condition.test is None or not texts_in(condition.test):
        return
    names = bound(tuple(each.element for each in card.conditions()))
    known: set[str] = set()
    for name in asked(condition.test):
        if name in names:
            possible = possible_words(material, *names[name])
            if possible is None:
                return
            known |= possible
    for text in sorted(texts_in(condition.test) - known):
        book.error(
            material.where(id),
            f"condition '{condition.words}': nothing it looks at is ever '{text}'",
            nearest(text, known),
            material.line(id, text),
        )


def possible_words(material: Material, pattern: SlotFact, slot: str) -> set[str] | None:
    """The words that a name bound in this slot may stand for; None if that is not known."""
    if slot in ("role", "other_role"):
        return set(material.roles)
    if slot == "word" and isinstance(pattern, Trait):
        roles = words_of(pattern, "role") or material.roles
        slots = words_of(pattern, "slot")
        states = [each for role in roles if role in material.roles for each in slots_of(material, role, Trait).items()]
        return {word for name, words in states if slots is None or name in slots for word in words}
    if slot == "slot" and isinstance(pattern, Measure | Trait):
        return {name for role in material.roles for name in slots_of(material, role, type(pattern))}
    if slot == "name" and isinstance(pattern, Problem):
        return set(material.problems)
    if slot == "fix":
        return set(material.fixes)
    words = pattern.__fields__[slot].words
    return set(words) if words is not None else None


def _names(material: Material, book: Book, id: str, card: Card) -> None:
    names = bound(tuple(condition.element for condition in card.conditions()))
    try:
        _asks(material, book, id, "says", names_in(card.says), {*names, *card.reckons})
    except ValueError:  # a brace that does not close, which the check of words tells of
        material.sound.discard(id)
    for name, reckon in card.reckons.items():
        _asks(material, book, id, f"reckons '{name}'", asked(reckon), names)
    if isinstance(card, Find):
        if card.amount:
            _asks(material, book, id, "amount", asked(card.amount), names)
        if "place" not in names:
            book.error(
                material.where(id),
                "binds no place",
                "write place=MATCH.place in its first pattern",
                material.line(id, keyword="when"),
            )
        if "role" not in names and not any(words_of(p, "role") for c in card.when for p, _ in patterns(c.element)):
            book.error(
                material.where(id),
                "says no role",
                "give a role in its first pattern, or bind one with MATCH.role",
                material.line(id, keyword="when"),
            )
    elif isinstance(card, Answer) and card.role and card.role not in material.roles:
        book.error(
            material.where(id),
            f"no role '{card.role}'",
            nearest(card.role, material.roles),
            material.line(id, card.role),
        )


def _asks(material: Material, book: Book, id: str, what: str, wanted: Iterable[str], names: Iterable[str]) -> None:
    for name in wanted:
        if name not in names:
            line = material.line(id, keyword=what.partition(" ")[0])
            book.error(material.where(id), f"{what} asks for '{name}', which nothing binds", nearest(name, names), line)


def _links(material: Material, book: Book, id: str, card: Card) -> None:
    """An answer or veto of a problem or fix that there is not is never run."""
    if isinstance(card, Answer) and card.problem not in material.problems:
        _missing(material, book, id, "findings", f"no finding finds '{card.problem}'", card.problem, material.problems)
    named = card.fixes if isinstance(card, Veto) else (card.fix,) if isinstance(card, Answer) else ()
    for fix in named:
        if fix not in material.fixes:
            _missing(material, book, id, "fixes", f"no fix '{fix}'", fix, material.fixes)


def _missing(material: Material, book: Book, id: str, kind: str, what: str, name: str, known: Iterable[str]) -> None:
    material.sound.discard(id)
    if kind not in material.unread:
        book.error(material.where(id), what, nearest(name, known), material.line(id, name))


def _answered(material: Material, book: Book) -> None:
    """Every problem has an answer where it is found, and every fix is offered."""
    answers: dict[str, list[Answer]] = {}
    for _, card in material.of(Answer):
        answers.setdefault(card.problem, []).append(card)
    for id, card in material.of(Find) if "answers" not in material.unread else ():
        roles = found_at(card)
        if not [a for a in answers.get(card.problem, []) if not a.role or roles is None or a.role in roles]:
            book.error(
                material.where(id),
                f"no answer card answers '{card.problem}'",
                f'write {ANSWER_FILE} with problem="{card.problem}", if only for general.fixes.leave',
                material.line(id, card.problem),
            )
    fixes = {card.fix for _, card in material.of(Answer)}
    for id in sorted(set(material.fixes) - fixes) if "answers" not in material.unread else ():
        book.error(material.where(id), "no answer card offers this fix", f'write {ANSWER_FILE} with fix="{id}"')
    _misplaced(material, book)


def _misplaced(material: Material, book: Book) -> None:
    found: Mapping[str, list[frozenset[str] | None]] = {
        problem: [found_at(material.rules[id]) for id in ids] for problem, ids in material.problems.items()
    }
    for id, card in material.of(Answer):
        roles = found.get(card.problem, [None])
        if card.role and not any(each is None or card.role in each for each in roles):
            known = sorted({role for each in roles if each for role in each})
            book.error(
                material.where(id), f"'{card.problem}' is never found at a '{card.role}'", nearest(card.role, known),
                material.line(id, card.role),
            )  # fmt: skip


def found_at(card: Card) -> frozenset[str] | None:
    """The roles a finding's place may have, as far as its pattern says; None if it leaves that open."""
    names = bound(tuple(condition.element for condition in card.conditions()))
    if "place" not in names:
        return None
    pattern, slot = names["place"]
    return words_of(pattern, "other_role" if slot == "other" else "role")
