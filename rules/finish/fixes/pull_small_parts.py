"""Pull at every small part."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.finish import pull_test


def work(trouble: Trouble, view: View) -> Work:
    return work_of((pull_test(view, trouble.place),))


fix = Fix(
    title="Pull at every small part",
    why="What will come off in a child's fingers comes off in yours first.",
    wrong_when="Nothing small is on it.",
    source="1501.4",
    difficulty=1,
    durability=4,
    visibility=1,
    sews=False,
    work=work,
)
