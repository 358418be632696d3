"""Air it and brush it off outdoors."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import air


def work(trouble: Trouble, view: View) -> Work:
    return work_of((air(view),))


fix = Fix(
    title="Air it and brush it off outdoors",
    why="Mold is taken out of the house before it is stirred up, and dies when it dries.",
    wrong_when="It has gone through the cloth: what has turned to powder does not come back.",
    source="ILL-DAHL",
    difficulty=1,
    durability=3,
    visibility=2,
    cautions=(
        "Mold can make people ill: a mask and gloves, outdoors, and not at all for whoever reacts to it; where there "
        "is much of it, ask a professional.",
    ),
    sews=False,
    work=work,
)
