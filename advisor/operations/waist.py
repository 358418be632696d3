"""The waist seam: opened once, sewn once and pressed once, however many fixes need it open."""

from dataclasses import replace

from advisor.core.work import Op, Spread
from advisor.knowledge.view import View
from advisor.operations.seams import open_seam, press, sew_seam

SEAM = "waist_seam"


def open_waist(view: View) -> Op:
    """Unpick the waist seam all round, or up to a zipper that stays in."""
    seam = view.one(SEAM)
    op = open_seam(f"{seam}.seam", view.words(seam), Spread(15, 25, 40))
    if not view.has("front_opening"):
        return op
    return replace(op, says=f"{op.says} Where a zipper runs across it and stays in, stop 1 in short of it.")


def sew_waist(view: View) -> Op:
    """Sew the waist seam after everything that needs it open."""
    seam = view.one(SEAM)
    return sew_seam(f"{seam}.seam", view.words(seam), Spread(25, 40, 60), "join", f"{seam}.press")


def press_waist(view: View) -> Op:
    """Press the waist seam."""
    seam = view.one(SEAM)
    return press(f"{seam}.press", view.words(seam), Spread(5, 8, 12), "join")
