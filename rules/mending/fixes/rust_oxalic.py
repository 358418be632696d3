"""A weak solution of oxalic acid on the marks, then neutralized and rinsed."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.rust import rinse, soak, try_on_seam

SOAK = (
    "Wear rubber gloves and eye protection, open a window, and do as the label says. Dab a 5 in 100 solution of oxalic "
    "acid on the marks only, and give it 5 minutes or a little more. No bleach anywhere near, and no iron."
)
RINSE = (
    "Rinse at once in plenty of cold water, dab with a little baking soda in water, rinse again, and dry in the air. "
    "Keep the acid labeled and locked away from children."
)


def work(trouble: Trouble, view: View) -> Work:
    soaked = soak(view, trouble.place, ("oxalic acid"), SOAK, (Need("oxalic acid, 5 in 100"), Need("baking soda")))
    return work_of((*try_on_seam(view, trouble.place), soaked, rinse(view, trouble.place, RINSE)))


fix = Fix(
    title="Take the rust out with weak oxalic acid",
    why=("Oxalic acid dissolves rust that lemon leaves. It is a poison that burns eyes and skin, so it comes second."),
    wrong_when=("The trial on a hidden seam changed color or cloth; metal is still near; there is no room with air."),
    source="RUST-HK",
    difficulty=3,
    durability=5,
    visibility=1,
    cautions=(
        "Oxalic acid is poisonous and burns eyes and skin: gloves, eye protection, air, and as its label and safety "
        "sheet say.",
        "A rust remover never goes with bleach or after it: chlorine fixes rust, and with acid it gives off a "
        "poisonous gas.",
        "Never a rust remover with hydrofluoric acid at home: it burns deep and late.",
    ),
    work=work,
)
