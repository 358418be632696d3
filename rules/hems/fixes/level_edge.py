"""The hem opened, marked from the floor and turned up level."""

from advisor.core.figure import Figure, mm_of
from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.hem_plans import under_of
from advisor.operations.hems import mark_level, open_hem, sew_hem, turn_up


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    held = view.measure(f"{place}.turn_up")
    under = Figure("under", under_of(mm_of(held)), "1/2 in, or half of a narrow hem", (held.id,), "common-practice")
    depth = Figure(
        "depth", mm_of(held) - mm_of(under), "what is left of the hem", (held.id, "under"), "common-practice"
    )
    if not mm_of(held):
        return Work({"turn_up": held}, ())
    how = "Turn the raw edge under {under}, then up {depth} at the shortest place, more where it hung lower."
    sewing = ("Sew it by hand with small slack stitches about 1/2 in apart.", "hand", Spread(30, 45, 75))
    return work_of(
        (
            open_hem(view, place),
            mark_level(view, place),
            turn_up(view, place, held, depth, how, {"under": under, "depth": depth}, cut=False),
            sew_hem(view, place, *sewing),
        )
    )


fix = Fix(
    title="Mark it from the floor and hem it level",
    why="The hem is let down, the skirt hangs, and the edge is marked at one height from the floor all round, in the "
    "shoes worn with it; what hung lower goes into the hem. Two sources let it hang 24 hours, a third 48.",
    wrong_when="One side seam is stretched or one hip higher: then the waist is lifted there first, and the edge "
    "comes level by itself.",
    source="NMSU-C314",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Trim nothing: what was level on the body may drop again.",),
    work=work,
)
