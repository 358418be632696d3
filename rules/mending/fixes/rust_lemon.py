"""Lemon juice and salt on the marks, then rinsed."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.rust import rinse, soak, try_on_seam

SOAK = (
    "Wear gloves and open a window. Lay the place on white cloth, wet the marks with lemon juice and a little salt, "
    "and let it lie in the sun, wetting it again as it dries. No bleach anywhere near, and no iron."
)


def work(trouble: Trouble, view: View) -> Work:
    soaked = soak(view, trouble.place, "lemon", SOAK, (Need("lemon juice and salt"),))
    rinsed = rinse(
        view,
        trouble.place,
        "Rinse in plenty of cold water until nothing tastes sour or feels slippery, and dry in the air.",
    )
    return work_of((*try_on_seam(view, trouble.place), soaked, rinsed))


fix = Fix(
    title="Take the rust out with lemon juice",
    why=(
        "The mild acid of lemon dissolves rust and lets it be rinsed out. It is the gentlest thing that works, and may "
        "have to be done two or three times."
    ),
    wrong_when=(
        "The trial on a hidden seam changed color or cloth; metal is still near; an iron has been on the marks."
    ),
    source="RUST-HK",
    difficulty=1,
    durability=5,
    visibility=2,
    cautions=(
        "A rust remover never goes with bleach or after it: chlorine fixes rust, and with acid it gives off a "
        "poisonous gas.",
        "Never a rust remover with hydrofluoric acid at home: it burns deep and late.",
    ),
    work=work,
)
