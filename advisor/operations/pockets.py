"""Setting a pair of back pockets anew.

The law: moving both pockets out by half an amount each puts the whole of it between them.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.formula import figure
from advisor.figures.seams import each_side
from advisor.knowledge.view import View
from advisor.operations.marks import up_to_mark


def take_pockets_off(view: View, pockets: str) -> Op:
    """Unpick both pockets."""
    return Op(
        id=f"open {pockets}.seam",
        stage="join",
        verb="unpick",
        places=(pockets,),
        setup="unpick",
        minutes=Spread(15, 25, 40),
        says=(
            f"Unpick {view.words(pockets)}, bar tacks last, and keep their folds. Brush out the threads, steam "
            "the marks of the old stitching if the label allows it, and see how much of the outline stays."
        ),
        expects=(Put(f"{pockets}.seam", "sewn"),),
        effects=(Put(f"{pockets}.seam", "open"),),
        materials=(Need("seam ripper"),),
    )


def set_pockets_apart(view: View, pockets: str, apart: Figure) -> Op:
    """Sew both pockets further out, half of `apart` each."""
    half = up_to_mark(figure(each_side, "half", total=apart), view.tape, "each")
    apart = times(half, 2, "apart")
    gap = view.measure(f"{pockets}.gap")
    return Op(
        id=f"set {pockets}.seam",
        stage="join",
        verb="set",
        places=(pockets,),
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=(
            "Pin each pocket {each} further from the center back than it was, tops level, and look at it on the body: "
            "they then stand {apart} further apart than {gap}. Topstitch them in the old holes of the pocket, new bar "
            "tacks at the top."
        ),
        expects=(Put(f"{pockets}.seam", "open"),),
        effects=(
            Change(f"{pockets}.gap", apart),
            Change(f"{pockets}.to_seam", apart),
            Put(f"{pockets}.seam", "sewn"),
        ),
        try_on=True,
        figures={"apart": apart, "each": half, "gap": gap},
        materials=(Need("topstitching thread to match"),),
    )
