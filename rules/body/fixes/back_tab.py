"""A buttoned tab across the back of the waist."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.backs import tab_back


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(tab_back(view, trouble.place, total), total=total)


fix = Fix(
    title="Button a tab across the back",
    why=(
        "A tab on each side, buttoned to each other, draws the back in at the waist in a minute and lets it "
        "out again: right for a costume that two people wear in turn."
    ),
    wrong_when=(
        "It is worn under a jacket, where the tab and the gathered cloth show, or more than 3 in would be bunched up."
    ),
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=4,
    work=work,
)
