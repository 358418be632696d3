"""Following the choices to their end: every finding nobody chose for takes its first option, knock-ons too."""

from collections.abc import Mapping
from dataclasses import dataclass

from advisor.advise.advise import advise
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, Limits
from advisor.rulebase.base import RuleBase


@dataclass(frozen=True)
class Followed:
    """The advice with a choice wherever one can be made, and the findings whose choice is only suggested."""

    advice: Advice
    suggested: tuple[FindingId, ...]


def follow(
    base: RuleBase,
    world: World,
    choices: Mapping[FindingId, Choice],
    limits: Limits = Limits(),
    *,
    told: bool = True,
) -> Followed:
    """`choices` filled up, stage by stage, with the first option that stands. `told` as in `advise`."""
    advice = advise(base, world, choices, limits, fill=True, told=told)
    return Followed(advice, advice.suggested)
