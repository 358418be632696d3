"""What a new card can take from the cards there are: where a problem is found, and what else there is beside it."""

from collections.abc import Iterable
from dataclasses import dataclass

from advisor.check.marks import FILL
from advisor.check.material import Material
from advisor.errors import UsageError, nearest
from advisor.knowledge.cards import Answer
from advisor.knowledge.facts import Problem
from advisor.lengths import INCH_TAPE, show


@dataclass(frozen=True)
class Seen:
    """A problem as the first example of its finding shows it: words for the facts of another example."""

    name: str
    place: str
    role: str
    stage: str
    amount: str

    def fact(self) -> str:
        """The fact as a card writes it."""
        amount = f', "{self.amount}"' if self.amount else ""
        return f'problem("{self.name}", "{self.place}", "{self.role}", "{self.stage}"{amount})'


UNKNOWN = Seen(f"{FILL}: a problem some finding finds", f"{FILL}: place", f"{FILL}: role", "hem", "1 in")


def seen(material: Material, problem: str) -> Seen:
    """How `problem` is found; "" for one not yet named. UsageError for one that no finding finds."""
    if not problem:
        return UNKNOWN
    if problem not in material.problems:
        hint = nearest(problem, material.problems)
        raise UsageError(f"no finding finds '{problem}'", hint=f"{hint}; or write the finding first")
    for id in material.problems[problem]:
        for fact in _found(material, id):
            return Seen(problem, fact.place, fact.role, fact.stage, show(fact.mm, INCH_TAPE) if fact.mm else "")
    return Seen(problem, UNKNOWN.place, UNKNOWN.role, UNKNOWN.stage, UNKNOWN.amount)


def _found(material: Material, id: str) -> Iterable[Problem]:
    card = material.rules[id]
    if id not in material.sound or not card.fires:
        return []
    try:
        run = material.alone(id).run(card.fires[0].facts)
    except Exception:  # an author's function may raise anything; the check of examples tells of it
        return []
    return [fact for firing in run.firings for fact in firing.conclusions if isinstance(fact, Problem)]


def fix_named(material: Material, fix: str) -> str:
    """The fix if there is one; "" for one not yet named. UsageError for one there is not."""
    if fix and fix not in material.fixes:
        raise UsageError(f"no fix '{fix}'", hint=f"{nearest(fix, material.fixes)}; `advisor rules list` shows all")
    return fix or f"{FILL}: a fix of rules/<topic>/fixes, with dots"


def other_problem(material: Material, problem: str) -> str:
    """Another problem, of the same topic if there is one: what an answer must stay silent on."""
    topics = {id.partition(".")[0] for id in material.problems.get(problem, [])}
    others = [name for name in sorted(material.problems) if name != problem]
    near = [name for name in others if any(id.partition(".")[0] in topics for id in material.problems[name])]
    return next(iter([*near, *others]), f"{FILL}: another problem")


def other_fix(material: Material, fix: str) -> str:
    """Another fix, of the same topic if there is one: what a veto must stay silent on."""
    others = [id for id in sorted(material.fixes) if id != fix]
    near = [id for id in others if id.partition(".")[0] == fix.partition(".")[0]]
    return next(iter([*near, *others]), f"{FILL}: another fix")


def answered_by(material: Material, fix: str) -> str:
    """The first problem this fix answers; "" if none does."""
    return next((card.problem for _, card in material.of(Answer) if card.fix == fix), "")
