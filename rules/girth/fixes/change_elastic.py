"""Put other elastic into the casing."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.waist_hung import WAISTS, change_elastic, open_casing


def work(trouble: Trouble, view: View) -> Work:
    lower, by = trouble.place, amount(trouble, "by")
    waist = next(view.one(role) for role in WAISTS if view.has(role))
    sign = -1 if trouble.problem == "too_wide" else 1
    return work_of((open_casing(view, lower), change_elastic(view, lower, waist, by, sign)))


fix = Fix(
    title="Put new elastic into the casing",
    why="The old elastic comes out and one of the wanted length goes in. Stretched, the waist must still pass the "
    "hip with 1 in to spare.",
    wrong_when="The elastic is woven or sewn into the edge itself: then a casing has to be made first.",
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=2,
    cautions=("Elastic tires in the wash before the cloth does: leave a gap in the casing that is easily opened.",),
    work=work,
)
