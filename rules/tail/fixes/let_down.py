"""The hem let down."""

from advisor.core.figure import mm_of
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.tails import NARROW, let_down


def work(trouble: Trouble, view: View) -> Work:
    place, short = trouble.place, amount(trouble, "short")
    if mm_of(short) + 2 * NARROW > view.mm(f"{place}.turn_up"):
        return Work({"short": short}, ())
    return work_of(let_down(view, place, short))


fix = Fix(
    title="Let the hem down",
    why="What is folded up comes down, but for 1/2 in that makes a narrow hem of twice 1/4 in.",
    wrong_when="The old edge is worn or faded, or the hem is as narrow as can be: shirts seldom hold anything.",
    source="NMSU-C314",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Look at the old crease in daylight before you unpick all of it.",),
    work=work,
)
