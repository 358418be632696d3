"""The armholes cut in, the sleeves set again."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.shoulders import cut_armhole, mark_armhole, open_armhole, press_shoulders, set_sleeves


def work(trouble: Trouble, view: View) -> Work:
    place, by = trouble.place, amount(trouble, "by")
    return work_of(
        (
            open_armhole(view, place),
            mark_armhole(view, place, by),
            cut_armhole(view, place, by),
            set_sleeves(view, place, "cut"),
            press_shoulders(view, place),
        )
    )


fix = Fix(
    title="Cut the armholes in and set the sleeves again",
    why=(
        "The sleeves come out over the top, the armholes are cut to the edge of the bone and the sleeves go "
        "back in. The shoulders then sit as if they had been made so; the sleeves hang higher by the same "
        "amount."
    ),
    wrong_when=(
        "The sleeves are hardly long enough now, or it is lined, padded or checked: then it is work for a "
        "tailor, or not worth starting."
    ),
    source="BESPOKEMAN",
    difficulty=4,
    durability=5,
    visibility=1,
    cautions=(
        "What is cut off the armhole does not come back.",
        "The sleeve hangs higher afterward: measure it first.",
    ),
    work=work,
)
