"""Stains: soaked out, washed out, bleached, covered. No iron and no dryer touches them before they are gone."""

from dataclasses import replace

from advisor.core.model import Put
from advisor.core.work import Need, Op, Setup, Spread
from advisor.knowledge.view import View
from advisor.operations.cloth import untouched


def soak(view: View, place: str, kind: str) -> Op:
    """What the stain is of, loosened: cold water for what a body makes, soap for grease, bleach for a white whole."""
    says, needs, minutes = {
        "body": (
            "Scrape off what is dry. Soak it in cold water with a little washing liquid for half an hour, working the "
            "spot from the wrong side. Never hot: heat cooks it into the cloth.",
            (Need("mild washing liquid"),),
            Spread(30, 40, 120),
        ),
        "grease": (
            "Lay the spot face down on clean white cloth, rub dish soap into it from the wrong side, leave it 15 "
            "minutes, move it to a dry part of the cloth and do it again. Work from the rim to the middle.",
            (Need("plain dish soap"), Need("clean white cloth")),
            Spread(20, 30, 60),
        ),
        "old": (
            "Open a window and wear gloves. Put the whole garment, not the spot alone, into the bleach its label "
            "allows, as thin as the bottle says. What is not gone in 15 minutes will not go: take it out then.",
            (Need("bleach the care label allows"), Need("gloves")),
            Spread(20, 30, 45),
        ),
    }[kind]  # fmt: skip
    return _whole(
        view, _op(f"soak {place}.kind", "soak", place, "table", minutes, says, kind, "soaked", needs)
    )


def wash_out(view: View, place: str, once: bool = False) -> Op:
    """What was loosened, rinsed and washed out; `once`: it may not be soaked again."""
    again = "what still shows will stay, or is covered" if once else "if it shows, soak it once more"
    out = _op(
        f"wash out {place}.kind", "wash", place, "table", Spread(20, 40, 90),
        "Rinse until the water is clear and wash it as its label says. Look at the spot in daylight, still wet: "
        f"{again}. Let it dry in the air; no iron, no dryer until it is gone.",
        "soaked", "washed out", (),
    )  # fmt: skip
    return _whole(view, out)


def _whole(view: View, op: Op) -> Op:
    """`op` done while the garment is whole: opened edges would fray in the wash."""
    return replace(op, expects=(*op.expects, *untouched(view)))


def cover(place: str, kind: str) -> Op:
    """Something sewn over it."""
    return _op(
        f"cover {place}.kind", "cover", place, "hand", Spread(20, 35, 60),
        "Choose something that could be meant: a pocket, a badge, braid, a patch with a mate on the other side. Let it "
        "reach 1/2 in past the spot, turn its edges under and sew it on; wash both first.",
        kind, "covered", (Need("pocket, badge, braid or cloth to cover it"), Need("thread to match")),
    )  # fmt: skip


def _op(
    id: str, verb: str, place: str, setup: Setup, minutes: Spread, says: str, before: str, after: str,
    needs: tuple[Need, ...],
) -> Op:  # fmt: skip
    return Op(
        id=id,
        stage="open",
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.kind", before),),
        effects=(Put(f"{place}.kind", after),),
        materials=needs,
    )
