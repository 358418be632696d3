"""Wash it before anything is measured."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import measure_again, wash


def work(trouble: Trouble, view: View) -> Work:
    return work_of((wash(view), measure_again(view)))


fix = Fix(
    title="Wash it first, as it will be washed, and measure again",
    why=(
        "What shrinks does so before the work and not after it, and steam and iron set no dirt. The numbers of this "
        "plan may change with it: a length wanted after a wash is divided by what the wash leaves of it."
    ),
    wrong_when="It will never be washed, or the label forbids it: wool marked for dry cleaning is dry-cleaned.",
    source="SHR-KEM",
    difficulty=1,
    durability=5,
    visibility=1,
    cautions=("Rust and stains come out before hot water and before the dryer: heat sets them.",),
    sews=False,
    work=work,
)
