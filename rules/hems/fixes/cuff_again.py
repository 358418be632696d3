"""The cuff taken off, the end shortened, the cuff set again."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.cuffs import with_slit
from advisor.operations.hem_bands import set_cuff, take_cuff_off
from advisor.operations.hems import cut_end, mark_line


def work(trouble: Trouble, view: View) -> Work:
    place, long = trouble.place, amount(trouble, "long")
    how = "the open end: the allowance for the cuff then runs below the new line as it did below the old."
    return work_of(
        (
            take_cuff_off(view, place),
            mark_line(view, place, long, "above"),
            with_slit(view, place, cut_end(view, place, long, how, {}), long),
            set_cuff(view, place),
        )
    )


fix = Fix(
    title="Take the cuff off and set it again higher",
    why=(
        "The end is cut shorter above the cuff, and the cuff is sewn on again as it was, so that it and its "
        "buttonhole stay."
    ),
    wrong_when=(
        "The slit above the cuff would become too short to get the hand through, or the sleeve is much wider higher up."
    ),
    source="common-practice",
    difficulty=3,
    durability=5,
    visibility=1,
    cautions=(
        "What is cut off cannot be let down again.",
        "Measure the slit: it loses as much as the sleeve.",
    ),
    work=work,
)
