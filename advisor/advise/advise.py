"""`advise`: the only door to the engine. Pure; the same world, choices and limits give the same advice.

Stage by stage: the rules run on the garment, findings of the stage are read off, their options sized and
ranked, and the effects of the choices made put into the garment before the next stage is looked at.
"""

from collections.abc import Callable, Mapping

from advisor.advise.compared import Comparing
from advisor.advise.kept import Kept
from advisor.advise.order import hindered
from advisor.advise.stages import Pass
from advisor.advise.told import Telling
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, Limits
from advisor.rulebase.base import RuleBase

# Told advice comes with its trace and is asked for one at a time; sweeps hold hundreds of worlds against each other.
_told: Kept[Advice] = Kept(64)
_compared: Kept[Advice] = Kept(1024)


def advise(
    base: RuleBase,
    world: World,
    choices: Mapping[FindingId, Choice],
    limits: Limits = Limits(),
    *,
    fill: bool = False,
    told: bool = True,
) -> Advice:
    """Findings, ranked options and the garment after `choices`. KnowledgeError if rules contradict each other.

    fill: where nothing was chosen, the first option that stands is taken, so that every knock-on shows; a later one
    if the work of the first is in the way of work taken before, or the other way round.
    told: with words and trace; a sweep over hundreds of worlds needs neither.
    """
    kept, kind = (_told, Telling) if told else (_compared, Comparing)
    chosen = tuple(sorted((finding, choice.fix, choice.reason) for finding, choice in choices.items()))
    token = (base, world.token, limits, fill, chosen)
    return kept.get(token) or kept.put(token, _advised(lambda: kind(base, world, choices, limits, fill)))


def _advised(made: Callable[[], Pass]) -> Advice:
    """One pass; another if it filled in fixes that hinder each other, which then looks before it takes one."""
    here = made()
    advice = here.run()
    if not advice.suggested or not hindered(here.work, here.world.model.states):
        return advice
    here = made()
    here.careful = True
    return here.run()


def forget() -> None:
    """Work everything out anew from here on: for tests, and for measuring."""
    _told.clear()
    _compared.clear()
