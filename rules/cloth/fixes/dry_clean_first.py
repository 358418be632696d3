"""Have it dry-cleaned before anything is measured."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import dry_clean, measure_again


def work(trouble: Trouble, view: View) -> Work:
    return work_of((dry_clean(view), measure_again(view)))


fix = Fix(
    title="Have it dry-cleaned first, and measure again",
    why=(
        "Dirt is out before steam and iron set it, and water never touches it. It is steamed at the cleaner's, so its "
        "measures may change all the same."
    ),
    wrong_when="It will be washed in water later: then it shrinks after the work.",
    source="MSIN",
    difficulty=1,
    durability=4,
    visibility=1,
    sews=False,
    work=work,
)
