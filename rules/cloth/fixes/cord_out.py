"""Take the cord out and close the opening another way."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import cord_out


def work(trouble: Trouble, view: View) -> Work:
    return work_of((cord_out(view, view.word(f"{trouble.place}.cords")),))


fix = Fix(
    title="Take the cord out and close the opening another way",
    why="A cord catches in doors, slides and vehicles; what holds without an end that hangs free cannot.",
    wrong_when="It is worn by an adult and is wanted.",
    source="TUKES",
    difficulty=1,
    durability=4,
    visibility=2,
    work=work,
)
