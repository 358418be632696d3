"""Hang the garment from suspenders."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.waist_hung import WAISTS, hang_from_shoulders


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    waist = next(view.one(role) for role in WAISTS if view.has(role))
    return work_of((hang_from_shoulders(view, lower, waist, total),))


fix = Fix(
    title="Hang it from suspenders",
    why="Six buttons inside the waistband carry suspenders: the garment hangs from the shoulders and the waist may "
    "stand off. Nothing is cut; on stage it often suits the part.",
    wrong_when="It is worn without anything over the shirt, or the seat is loose too: then it hangs like a sack.",
    source="EVERYBRACE",
    difficulty=2,
    durability=3,
    visibility=5,
    cautions=("Buttons are sewn on with doubled thread and a scrap of cloth behind, or they tear out.",),
    work=work,
)
