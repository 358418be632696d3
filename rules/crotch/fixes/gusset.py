"""A diamond gusset through the crotch of trousers."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.crotch import cut_gusset, set_gusset
from advisor.operations.legs import open_leg_seams, sew_leg_seams


def work(trouble: Trouble, view: View) -> Work:
    crotch, legs, deeper = trouble.place, view.one("legs"), amount(trouble, "deeper")
    return work_of(
        (
            open_leg_seams(view, legs, "inseams"),
            cut_gusset(view, crotch, deeper),
            set_gusset(view, crotch, legs, deeper),
            sew_leg_seams(view, legs, "inseams"),
        )
    )


fix = Fix(
    title="Let a gusset into the crotch of the trousers",
    why="A long diamond goes in between the legs, from one inner seam to the other. The seam from front to back runs "
    "across its middle and gains its width, half of it counted down; dancers' and climbers' trousers have one.",
    wrong_when="One pattern maker says that a gusset gives room to move and cures no other misfit. It must "
    "not be seen when a foot is put on a stair, or the cloth is too thick for four seams meeting.",
    source="CINDYB",
    difficulty=5,
    durability=4,
    visibility=3,
    cautions=("Try it in an old cloth first, seated: a crotch cannot be put back once it is cut.",),
    work=work,
)
