"""The fastening of a waistband set over, so that the band laps further and the waist under it comes in.

The law: a band that laps further draws in the edge sewn to it, and itself, by as much as it laps.
"""

from advisor.core.figure import Figure
from advisor.core.work import Need, Op, Spread
from advisor.knowledge.view import View
from advisor.operations.waist_drawn import drawn_in


def move_closing(view: View, lower: str, total: Figure) -> Op:
    """Bar or button of the band set over by `total`."""
    band = view.one("waistband")
    return Op(
        id=f"move {band}.closing",
        stage="girth",
        verb="move",
        places=(band,),
        setup="hand",
        minutes=Spread(10, 15, 25),
        says=(
            f"Close {view.words(band)} on the body, lap it {{total}} further and pin it level; sit down and bend. Mark "
            "the under end, {total} from the old place and further from the end. Unpick the bar, or the buttons, and "
            "sew them on again at the mark with a scrap of firm cloth behind. A hook or a buttonhole at the upper end "
            "stays where it is; an inner button moves by the same {total}."
        ),
        effects=drawn_in(view, lower, total, "lapped over"),
        try_on=True,
        figures={"total": total},
        materials=(Need("strong thread"), Need("a scrap of firm cloth")),
    )
