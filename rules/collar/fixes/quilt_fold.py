"""The fold backed and stitched where it is."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.collars import back_fold, press_collar, stitch_fold


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((back_fold(view, place), stitch_fold(view, place), press_collar(view, place)))


fix = Fix(
    title="Back the fold and stitch over it",
    why=("A strip behind the worn fold and rows of stitching over it hold what is left. Nothing is taken apart."),
    wrong_when=(
        "The collar is worn open at the throat, where the stitching shows, or the cloth beside the fold is thin too."
    ),
    source="common-practice",
    difficulty=2,
    durability=2,
    visibility=3,
    work=work,
)
