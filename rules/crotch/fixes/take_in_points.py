"""Take the inner seams in at the crotch."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.crotch import move_points
from advisor.operations.legs import open_leg_seams, sew_leg_seams


def work(trouble: Trouble, view: View) -> Work:
    legs, by = view.one("legs"), amount(trouble, "by")
    return work_of(
        (
            open_leg_seams(view, legs, "inseams"),
            move_points(view, trouble.place, legs, by, -1),
            sew_leg_seams(view, legs, "inseams"),
        )
    )


fix = Fix(
    title="Take the inner seams in at the crotch",
    why="Both inner seams are sewn further in where they meet, so that the crotch comes up, and run out down the "
    "leg. The waist stays closed.",
    wrong_when="The thighs have nothing to spare: they lose at the top what the seams take. Past about 3/4 in it is "
    "lifted at the waist.",
    source="TM227-34",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=("Trim nothing until it has been sat in: a crotch taken up too far cuts.",),
    work=work,
)
