"""The plans worth offering for a case: graph, search, names, and every plan run and verified before it is shown."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from advisor.advise.follow import follow
from advisor.advise.front.explore import Explored, Grown
from advisor.advise.front.graph import Pick
from advisor.advise.front.hunt import cheapest
from advisor.advise.front.measure import NEVER, Bounds, Found, bounds_of, spent
from advisor.advise.front.naming import EASIEST, LASTING, UNDONE, UNSEEN, Named, Short, candidates, named, too_tight
from advisor.advise.front.verify import holds
from advisor.advise.plan import make_plan
from advisor.advise.world import World, world_of
from advisor.core.advice import Plan, Totals
from advisor.core.case import Case, Choice, FindingId, FixId
from advisor.core.stages import stage_index
from advisor.rulebase.base import RuleBase

ROUNDS = 400
"""Most searches for one case. Each but the last taught the graph something; past this the last one stands."""


@dataclass(frozen=True)
class Offer:
    """A plan worth offering: what it is for, all its choices, the plan itself, and what it costs.

    `money` is the sum of the prices there are; `unpriced`: what to have at hand that has none. `stands`: it is what
    the choices made so far, filled up by rank, come to.
    """

    names: tuple[str, ...]
    choices: Mapping[FindingId, Choice]
    plan: Plan
    money: Fraction
    unpriced: tuple[str, ...]
    stands: bool


@dataclass(frozen=True)
class Difference:
    """A finding that not all plans deal with in the same way: its title, and the fix of each plan ("" for none)."""

    finding: FindingId
    title: str
    fixes: tuple[str, ...]


@dataclass(frozen=True)
class Comparison:
    """At most four plans, the quickest first; or, if none keeps the limits, the sets of limits that would have to give.

    `held`: her own choices that all plans keep. `apart`: fixes that were found to hinder each other. `runs`: how often
    the advice was worked out; `rounds`: how many searches it took until nothing new was learned.
    """

    offers: tuple[Offer, ...]
    differences: tuple[Difference, ...]
    short: tuple[tuple[Short, ...], ...]
    held: tuple[FindingId, ...]
    apart: tuple[tuple[Pick, ...], ...]
    runs: int
    rounds: int


def compare(base: RuleBase, case: Case, *, keep: bool = False) -> Comparison:
    """The plans worth offering for `case` within its limits. KnowledgeError for a rule base that contradicts itself.

    A choice with a reason is her own and stays; `keep`: so do all others.
    """
    world = world_of(case, base.garment(case.garment))
    held = {finding: choice.fix for finding, choice in case.choices.items() if keep or choice.reason}
    graph = Explored(base, world, held, case.limits)
    found, short, rounds = _searched(graph, bounds_of(case.limits))
    if not found and not short:
        # What closes everything does not go together: then something may be left, as little as can be.
        graph = Explored(base, world, held, case.limits, every=True)
        found, short, rounds = _searched(graph, bounds_of(case.limits))
    standing = follow(base, world, case.choices, case.limits, told=False).advice
    now = {option.finding: option.fix for option in standing.chosen()}
    offers = tuple(_offer(base, world, case, each, now) for each in found)
    there = {finding for offer in offers for finding in offer.choices}
    return Comparison(
        offers,
        differences(offers),
        short,
        tuple(finding for finding in held if finding in there),
        tuple(sorted(tuple(sorted(each)) for each in graph.apart)),
        graph.runs,
        rounds,
    )


def _searched(graph: Explored, bounds: Bounds) -> tuple[tuple[Named, ...], tuple[tuple[Short, ...], ...], int]:
    """Search, verify all that was found, and search again until nothing new is learned."""
    checked: set[tuple[Pick, ...]] = set()
    for rounds in range(1, ROUNDS + 1):
        try:
            least = cheapest(graph, Bounds())
            within = replace(bounds, left=least.left if least else NEVER)
            found = candidates(graph, within)
            short = () if found else too_tight(graph, within)
            shown = [*found, *(each.found for some in short for each in some)]
            if all(_checked(graph, each, checked) for each in shown):
                return named(found), short, rounds
        except Grown:
            continue
    return named(each for each in found if each.picks in checked), (), ROUNDS


def _checked(graph: Explored, found: Found, checked: set[tuple[Pick, ...]]) -> bool:
    if found.picks in checked:
        return True
    if not holds(graph, found):
        return False
    checked.add(found.picks)
    return True


def _offer(base: RuleBase, world: World, case: Case, each: Named, now: Mapping[FindingId, FixId]) -> Offer:
    chosen = each.found.chosen
    choices = {finding: _choice(case, finding, fix) for finding, fix in chosen.items()}
    plan = make_plan(base, world, choices, case.limits)
    prices = bounds_of(case.limits).prices
    known = {what for what, _ in prices}
    unpriced = tuple(need.what for need in plan.materials if need.what.casefold() not in known)
    return Offer(each.names, choices, plan, spent(each.found, prices), unpriced, chosen == now)


def _choice(case: Case, finding: FindingId, fix: FixId) -> Choice:
    made = case.choices.get(finding)
    return made if made is not None and made.fix == fix else Choice(fix)


def differences(offers: Iterable[Offer]) -> tuple[Difference, ...]:
    """What changes between the plans: only the findings that they deal with differently."""
    offers = tuple(offers)
    titles = {finding.id: finding.title for offer in offers for finding in offer.plan.advice.findings}
    fixes = [{option.finding: option.title for option in offer.plan.advice.chosen()} for offer in offers]
    order = sorted(titles, key=lambda id: (_stage_of(offers, id), id))
    rows = [Difference(id, titles[id], tuple(each.get(id, "") for each in fixes)) for id in order]
    return tuple(row for row in rows if len(set(row.fixes)) > 1)


def _stage_of(offers: Iterable[Offer], id: FindingId) -> int:
    found = (offer.plan.advice.finding(id) for offer in offers)
    return next(stage_index(finding.stage) for finding in found if finding)


def value_for(name: str, totals: Totals) -> int:
    """What a plan is measured by for a name; less is better."""
    values = {
        EASIEST: totals.difficulty,
        LASTING: -totals.durability,
        UNDONE: totals.irreversible,
        UNSEEN: totals.visibility,
    }
    return values.get(name, totals.minutes.likely)
