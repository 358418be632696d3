"""Each side measured and marked for itself."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.hems import measure_apart


def work(trouble: Trouble, view: View) -> Work:
    return work_of((measure_apart(view, trouble.place),))


fix = Fix(
    title="Measure left and right apart",
    why=(
        "Each side is measured on the body and labeled, and gets its own amount. The body wins over the tape: what "
        "hangs level looks even."
    ),
    wrong_when=(
        "One hip stands higher: a handbook then corrects the legs at the waist and not at the hem, so that the "
        "crease hangs straight."
    ),
    source="TM227-34",
    difficulty=1,
    durability=5,
    visibility=1,
    work=work,
)
