"""One sitting with one case: every answer and choice is saved at once, and can be taken back."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path

from advisor.advise.follow import Followed, follow
from advisor.advise.front.offers import Comparison, compare
from advisor.advise.plan import make_plan
from advisor.advise.record import record_of
from advisor.advise.world import World, world_of
from advisor.casefile import Opened, answered, chosen, chosen_all, read_case, recorded, write_case
from advisor.core.advice import Plan
from advisor.core.case import Answer, Case, Choice, FindingId, Known, Record
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.interview.agenda import Due, next_question, search
from advisor.interview.over import Over, Picks, looked_over
from advisor.lengths import TAPES
from advisor.rulebase.base import RuleBase
from advisor.words import Teller


def now() -> str:
    """Date and time, ISO, to the second."""
    return datetime.now().isoformat(timespec="seconds")


@dataclass
class Session:
    """A case in hand. `put_off`: questions left for later in this sitting.

    `past`: what was done and the state before it, for undoing; `undone`: what was taken back and the state with it.
    """

    base: RuleBase
    path: Path
    case: Case
    opened: Opened | None = None
    clock: Callable[[], str] = now
    put_off: set[Key] = field(default_factory=set)
    past: list[tuple[str, Case]] = field(default_factory=list)
    undone: list[tuple[str, Case]] = field(default_factory=list)

    @classmethod
    def open(cls, base: RuleBase, path: Path, clock: Callable[[], str] = now) -> "Session":
        """The case in `path`. CaseError or SaveError if it cannot be read."""
        opened = read_case(path, base.questions())
        return cls(base, path, opened.case, opened, clock)

    @property
    def teller(self) -> Teller:
        """How values are said for this case."""
        return Teller(TAPES[self.case.tape], self.base.garment(self.case.garment).places)

    @property
    def questions(self) -> dict[Key, Question]:
        """The garment's questions by key, in the order one meets them."""
        return dict(self.base.asked(self.case))

    @property
    def alone(self) -> bool:
        """Whether she has said that nobody helps her (any garment's question of that kind)."""
        said = (answer for key, answer in self.case.answers.items() if key.endswith(".help"))
        return any(isinstance(answer, Known) and answer.value == "no" for answer in said)

    def save(self) -> None:
        """Write the case. SaveError leaves the file, and the case in hand, as they were."""
        self.opened = write_case(self.opened, self.case, self.path, self.base.questions())

    def answer(self, key: Key, answer: Answer | None) -> None:
        """Take an answer (None takes one back) and save."""
        self._become(answered(self.case, key, answer, self.clock()), self.questions[key].name)
        self.put_off.discard(key)

    def look_over(self, over: Over, picks: Picks) -> None:
        """Take what was seen at a look, as one step, and save."""
        self._become(looked_over(self.case, over, picks, self.clock()), over.look.name)
        self.put_off.difference_update(over.keys)

    def choose(self, finding: FindingId, choice: Choice | None, what: str = "a choice") -> None:
        """Take a choice (None takes one back) and save. `what` is how undoing names it."""
        self._become(chosen(self.case, finding, choice, self.clock()), what)

    def take(self, choices: Mapping[FindingId, Choice], names: Iterable[str]) -> None:
        """Take all the choices of a plan at once and save; undoing takes all of them back."""
        told = ", ".join(names)
        self._become(chosen_all(self.case, choices, self.clock(), f"plan taken: {told}"), f"the plan taken ({told})")

    def _become(self, case: Case, what: str) -> None:
        before = self.case
        if case is before:
            return
        self._put(case)
        self.past.append((what, before))
        self.undone.clear()

    def _put(self, case: Case) -> None:
        """Save `case` and have it in hand; or, if it cannot be saved, neither."""
        before, self.case = self.case, case
        try:
            self.save()
        except Exception:
            self.case = before
            raise

    def undo(self) -> str:
        """Take the last answer or choice of this sitting back; what it was, or "" if there is none."""
        return self._step(self.past, self.undone)

    def redo(self) -> str:
        """Give again what was taken back last; what it was, or "" if there is nothing."""
        return self._step(self.undone, self.past)

    def _step(self, source: list[tuple[str, Case]], target: list[tuple[str, Case]]) -> str:
        if not source:
            return ""
        what, case = source[-1]
        here = self.case
        self._put(case)
        source.pop()
        target.append((what, here))
        return what

    def later(self, *keys: Key) -> None:
        """Leave questions for later in this sitting."""
        self.put_off.update(keys)

    def dues(self) -> tuple[Due, ...]:
        """All that is worth asking now, best first; see `search`."""
        return tuple(due for due in search(self.base, self.case, frozenset(self.put_off)) if due is not None)

    def keep(self, plan: Plan) -> None:
        """Put a plan that was made of the case as it stands on record in it, and save."""
        self.enter(record_of(self.base, self.case, plan, self.clock()))

    def enter(self, record: Record) -> None:
        """Have `record` in the case, and save; nothing is done if that plan is on record already."""
        case = recorded(self.case, record)
        if case is not self.case:
            self._put(case)

    def due(self) -> Due | None:
        """The next question worth asking."""
        return next_question(self.base, self.case, frozenset(self.put_off))

    @property
    def world(self) -> World:
        """The world of the case as it stands."""
        return world_of(self.case, self.base.garment(self.case.garment))

    def followed(self) -> Followed:
        """The advice, followed to its end."""
        return follow(self.base, self.world, self.case.choices, self.case.limits)

    def compared(self) -> Comparison:
        """The plans worth offering."""
        return compare(self.base, self.case)

    def plan(self) -> Plan:
        """The plan as it stands."""
        return make_plan(self.base, self.world, self.case.choices, self.case.limits)
