"""Something sewn over the marks."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.rust import cover_marks


def work(trouble: Trouble, view: View) -> Work:
    return work_of((cover_marks(view, trouble.place),))


fix = Fix(
    title="Cover the marks with braid, a badge or a piece of cloth",
    why=(
        "Nothing is put on the cloth that could harm it; what is sewn over the marks hides them and can come off again."
    ),
    wrong_when="The marks sit where nothing could be meant to be sewn on.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    cautions=("Rust left under a cover can still spread when it gets wet.",),
    work=work,
)
