"""Put a new slider on the old zipper."""

from advisor.knowledge import Fix
from advisor.operations.closures import new_slider

fix = Fix(
    title="Put a new slider on",
    why="Worn sliders open wide and press the teeth together no longer. A new one of the same size "
    "does, and the zipper stays in the garment.",
    wrong_when="Teeth are missing or the coil is torn. A number on the slider is a size group, and two "
    "systems of numbers are about: the slider is tried on the teeth before it is bought.",
    source="ENGFIX",
    difficulty=2,
    durability=3,
    visibility=1,
    work=new_slider,
)
