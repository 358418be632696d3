"""The shapes of templates, each from the lengths of one operation."""

from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction

from advisor.core.figure import mm_of
from advisor.core.model import Mm
from advisor.core.template import Kind
from advisor.core.work import Op
from advisor.lengths import Tape, show
from advisor.sheet.drawing import Drawing, Line, Words, framed, line, ring

Shape = Callable[[str, Sequence[Mm], Tape], Drawing]

ZERO = Fraction(0)
ROUNDED = Fraction(10)
"""How much of each corner of a patch is cut off."""
CARD = Fraction(60)
"""Width of a hem card."""
STRIP = Fraction(20)
"""Width of the strip that carries the places of a row."""
TICK = Fraction(6)
BESIDE_STRIP = Fraction(28)
"""Room for the words beside it."""
BESIDE = Fraction(2)
"""From a mark to its words."""


def dart(what: str, lengths: Sequence[Mm], tape: Tape) -> Drawing:
    """The dart laid flat: fold in the middle, stitching on both sides."""
    half, long = lengths
    lines = [
        line("cut", (-half, ZERO), (half, ZERO)),
        line("stitch", (-half, ZERO), (ZERO, -long), (half, ZERO)),
        line("fold", (ZERO, ZERO), (ZERO, -long)),
    ]
    tells = (
        f"Upper line on the edge, middle line on the fold. From fold to stitching {show(half, tape)}, "
        f"{show(2 * half, tape)} in all; {show(long, tape)} long."
    )
    return framed(what, tells, lines)


def patch(what: str, lengths: Sequence[Mm], tape: Tape) -> Drawing:
    """A square with its corners off, and the grain."""
    (side,) = lengths
    corner = min(ROUNDED, side / 4)
    low, high = corner, side - corner
    outline = ring(
        "cut", (low, ZERO), (high, ZERO), (side, low), (side, high), (high, side), (low, side), (ZERO, high),
        (ZERO, low),
    )  # fmt: skip
    grain = line("guide", (side / 2, side / 4), (side / 2, 3 * side / 4))
    tells = f"{show(side, tape)} wide and high, corners rounded, the line in the middle on grain."
    return framed(what, tells, [outline, grain])


def row(what: str, lengths: Sequence[Mm], tape: Tape) -> Drawing:
    """A strip with a mark at each place, measured from its upper end."""
    foot = -(max(lengths) + TICK)
    lines = [ring("cut", (ZERO, ZERO), (STRIP, ZERO), (STRIP, foot), (ZERO, foot))]
    words = []
    for number, at in enumerate(lengths, 1):
        lines.append(line("stitch", (ZERO, -at), (STRIP, -at)))
        words.append(Words((STRIP + BESIDE, -at - 1), f"{number}: {show(at, tape)}"))
    tells = "Its upper end on the top edge; the marks are the middles."
    return framed(what, tells, lines, words, beside=BESIDE_STRIP)


def run_out(what: str, lengths: Sequence[Mm], tape: Tape) -> Drawing:
    """The old seam line, and the new one that begins inside it and runs into it."""
    deep, long = lengths
    lines = [
        line("cut", (-TICK, ZERO), (deep + TICK, ZERO)),
        line("guide", (ZERO, ZERO), (ZERO, -long - TICK)),
        line("stitch", (deep, ZERO), (ZERO, -long)),
    ]
    tells = (
        f"Thin line on the old seam, upper line on the edge; the dashed line is the new seam: {show(deep, tape)} away "
        f"at the edge, in the old seam {show(long, tape)} down."
    )
    return framed(what, tells, lines)


def hem_card(what: str, lengths: Sequence[Mm], tape: Tape) -> Drawing:
    """A card to press a hem over: its lower edge lies in the crease, its lines are where raw edges come to."""
    top = max(lengths) + TICK
    lines: list[Line] = [ring("cut", (ZERO, ZERO), (CARD, ZERO), (CARD, top), (ZERO, top))]
    words = []
    for depth in sorted(set(lengths)):
        lines.append(line("stitch", (ZERO, depth), (CARD, depth)))
        words.append(Words((BESIDE, depth + Fraction(1, 2)), show(depth, tape)))
    return framed(what, "Lay it on the cloth and press the cloth over it to the line.", lines, words)


SHAPES: Mapping[Kind, Shape] = {
    "dart": dart, "patch": patch, "row": row, "run_out": run_out, "hem_card": hem_card,
}  # fmt: skip


def drawn(op: Op, tape: Tape, what: str) -> Drawing | None:
    """The template of an operation, titled `what`; None if it has none, or one of no size."""
    if op.template is None:
        return None
    lengths = [mm_of(op.figures[name]) for name in op.template.figures]
    if min(lengths) <= 0 and op.template.kind != "row":
        return None
    return SHAPES[op.template.kind](what, lengths, tape)
