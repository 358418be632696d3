"""Back the thin place and sew over it."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import close, cut_cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    says = (
        "Baste the piece behind the thin place. Sew it down in rows 1/4 in apart, back and forth along the strong "
        "threads, past the thin part on every side; then press. At inner thighs and seat do both sides alike."
    )
    ops = (
        cut_cover(view, place, "backed", "thin firm cloth of the same color, washed"),
        close(view, place, "backed", "back", says, "straight", Spread(15, 25, 40)),
    )
    return work_of(ops)


fix = Fix(
    title="Back the thin place and sew over it",
    why="A piece of thin firm cloth behind, reaching 3/4 in onto sound cloth and 1 in at knees and seats, is sewn "
    "down in many loose rows. The rows show a little, and the place outlasts what is round it.",
    wrong_when="It lies where the inside is seen, or the cloth is so fine that rows of stitches would cut it.",
    source="SCHOOLSEW-P",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Keep the edges of the backing off the crease that wears.",),
    work=work,
)
