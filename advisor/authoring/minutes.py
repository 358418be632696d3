"""How long each fix takes: its work as it comes out on the example of the first card that offers it."""

from collections.abc import Iterator, Mapping

from advisor.advise.world import World, world_of
from advisor.check.probes import answers_in, gated
from advisor.core.case import Case
from advisor.core.work import Spread
from advisor.knowledge.cards import Answer
from advisor.knowledge.facts import Problem
from advisor.knowledge.fix import Fix
from advisor.knowledge.view import Trouble, View
from advisor.rulebase.base import RuleBase
from advisor.rulebase.garment import Garment


def minutes_of(base: RuleBase) -> Mapping[str, Spread]:
    """Minutes by fix, over all its operations. A fix without work, or whose work needs more than examples say, is
    left out."""
    found: dict[str, Spread] = {}
    for id, fix in sorted(base.fixes.items()):
        for trouble, world in _troubles(base, id):
            spread = _sized(fix, trouble, world)
            if spread is not None:
                found[id] = spread
                break
    return found


def _sized(fix: Fix, trouble: Trouble, world: World) -> Spread | None:
    try:
        work = fix.work(trouble, View(world.model, world.tape))
    except Exception:  # an example need not say all that a fix reads; the check of the rules tells of real faults
        return None
    total = Spread(0, 0, 0)
    for op in work.ops:
        total = total + op.minutes
    return total if work.ops else None


def _troubles(base: RuleBase, fix: str) -> Iterator[tuple[Trouble, World]]:
    """The examples of the cards that offer a fix, each on every garment that has the role."""
    for _, card in sorted(base.rules.items()):
        if not isinstance(card, Answer) or card.fix != fix:
            continue
        for example in card.fires:
            problem = next((fact for fact in example.facts if isinstance(fact, Problem)), None)
            if problem is None:
                continue
            for _, garment in sorted(base.garments.items()):
                for place in _places(garment, problem):
                    answers = gated(garment, answers_in(garment, example.facts))
                    world = world_of(Case(garment.id, "an example"), garment, answers)
                    yield Trouble(f"{card.problem}@{place}", card.problem, place, problem.role, problem.mm), world


def _places(garment: Garment, problem: Problem) -> list[str]:
    """Where on this garment the example may be: the place it names, else the first of its role."""
    places = sorted(place.name for place in garment.places.values() if place.role == problem.role)
    return [problem.place] if problem.place in places else places[:1]
