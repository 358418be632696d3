"""Following the choices to their end: every finding nobody chose for takes its first option, knock-ons too."""

from collections.abc import Mapping
from dataclasses import dataclass

from advisor.advise.advise import advise
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, Limits
from advisor.errors import KnowledgeError
from advisor.rulebase.base import RuleBase

FUSE = 100


@dataclass(frozen=True)
class Followed:
    """The advice with a choice wherever one can be made, and the findings whose choice is only suggested."""

    advice: Advice
    suggested: tuple[FindingId, ...]


def follow(base: RuleBase, world: World, choices: Mapping[FindingId, Choice], limits: Limits = Limits()) -> Followed:
    """`choices` filled up with the first option that may be chosen, until no new finding appears."""
    filled = dict(choices)
    suggested: list[FindingId] = []
    for _ in range(FUSE):
        advice = advise(base, world, filled, limits)
        new = {}
        for finding in advice.findings:
            options = [option for option in advice.options_for(finding.id) if option.open]
            if finding.id not in filled and options:
                new[finding.id] = Choice(options[0].fix)
        if not new:
            return Followed(advice, tuple(suggested))
        # One stage at a time: a choice of an earlier stage may take away a finding of a later one.
        first = min(new, key=lambda id: [f.id for f in advice.findings].index(id))
        stage = next(f.stage for f in advice.findings if f.id == first)
        for finding in advice.findings:
            if finding.id in new and finding.stage == stage:
                filled[finding.id] = new[finding.id]
                suggested.append(finding.id)
    raise KnowledgeError("findings without end", where=world.garment.id, hint="two fixes call each other up")
