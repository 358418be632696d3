"""The worn edge shut into a binding."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cuffs import bind_cuffs


def work(trouble: Trouble, view: View) -> Work:
    return work_of(bind_cuffs(view, trouble.place))


fix = Fix(
    title="Bind the worn edge of the cuffs",
    why=(
        "A narrow bias binding shuts the frayed edge in, inside and out. Nothing is taken apart and no length is lost."
    ),
    wrong_when="It must look untouched: a binding is seen, even in the color of the shirt.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    work=work,
)
