"""Going against the advice: what a choice goes against, and whether it takes a reason."""

from typing import Literal

from advisor.core.advice import Advice
from advisor.core.work import Option

Against = Literal["", "order", "ruling", "size"]


def against(advice: Advice, option: Option) -> Against:
    """What choosing `option` goes against.

    "ruling": it is ruled out. "order": another is the first in rank. "size": it cannot be worked out here, so that
    no reason could make a plan of it. "": nothing.
    """
    if any(not ruling.rule for ruling in option.rulings):
        return "size"
    if option.rulings:
        return "ruling"
    return "order" if option.id != advice.options_for(option.finding)[0].id else ""


def overruled(advice: Advice) -> tuple[Option, ...]:
    """The options chosen against a ruling, in order of work."""
    return tuple(option for option in advice.chosen() if option.rulings)
