"""Take the upper edge in with darts."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, dart_edge, press_upper


def work(trouble: Trouble, view: View) -> Work:
    excess = amount(trouble, "excess")
    return work_of(
        at_waist(view, trouble.place, dart_edge(view, trouble.place, excess), press_upper(view, trouble.place))
    )


fix = Fix(
    title="Sew darts into the upper part",
    why=(
        "Darts take the spare width out at the waist only and leave the chest as it is. Two small ones are better "
        "than one large one; intake is what the edge loses, and the stitching lies half of it from the fold."
    ),
    wrong_when=(
        "The part above is loose at the chest too: darts would leave a bag above a tight waist. Then take in its "
        "side seams."
    ),
    source="NIMI-200",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=(
        "End in front 1 in short of the bust; one source says 1/2 in, which is too near for most.",
        "Needle holes of a dart stay to be seen in leather, satin and close weaves.",
    ),
    work=work,
)
