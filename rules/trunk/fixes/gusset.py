"""A diamond gusset through the crotch, let into the inseams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.trunk import cut_gusset, open_inseams, press_gusset, set_gusset


def work(trouble: Trouble, view: View) -> Work:
    width = amount(trouble, "width")
    return work_of(
        (
            open_inseams(view, trouble.place),
            cut_gusset(view, trouble.place, width),
            set_gusset(view, trouble.place, width),
            press_gusset(view, trouble.place),
        )
    )


fix = Fix(
    title="Let a gusset into the crotch",
    why="A long diamond goes in between front and back, from one inseam through the crotch to the other. The loop "
    "runs across its middle and gains exactly its width; both thighs gain at the top as well.",
    wrong_when="The loop lacks more than about 3 in: so wide a gusset hangs between the legs, and a band below the "
    "waist serves better. One trade page calls the rise of jeans practically unalterable: it speaks of moving seams, "
    "not of cloth let in.",
    source="SEWEDGE",
    difficulty=5,
    durability=4,
    visibility=3,
    cautions=("Try it in an old cloth first, seated: a crotch cannot be put back once it is cut.",),
    work=work,
)
