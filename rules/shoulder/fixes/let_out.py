"""The armhole seam let out at the shoulder."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.shoulders import let_out_armhole, open_armhole, press_shoulders, set_sleeves


def work(trouble: Trouble, view: View) -> Work:
    place, by = trouble.place, amount(trouble, "by")
    return work_of(
        (
            open_armhole(view, place),
            let_out_armhole(view, place, by),
            set_sleeves(view, place, "let out"),
            press_shoulders(view, place),
        )
    )


fix = Fix(
    title="Let the armhole seam out at the shoulder",
    why=(
        "On the body side the seam is sewn nearer its raw edge over the top of the armhole: the shoulder "
        "gains what the allowance holds, keeping 1/4 in that is sewn twice."
    ),
    wrong_when=(
        "The old line shows, the cloth frays (a bulletin does this in firm cloth only), or more than "
        "1/4 in a side is wanting: the armhole and the back are then too narrow as well."
    ),
    source="WSU-EM2246",
    difficulty=4,
    durability=3,
    visibility=2,
    cautions=("Finish the edge before it is sewn: 1/4 in in an armhole frays away.",),
    work=work,
)
