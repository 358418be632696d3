"""Sew an open lining seam."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Sew an open lining seam",
    problem="lining_torn",
    fix="lining.fixes.resew_lining",
    why="Only the stitching gave; the cloth is whole.",
    source="LININGSEAM",
    when=(given("it is so", Trait(place=MATCH.place, slot="state", word="seam")),),
    fires=(
        fires("as found", problem("lining_torn", "lining", "lining", "mend"), trait("lining.state", "lining", "seam")),
    ),
    near=(
        near("another problem", name="press_due"),
        near("it is otherwise", at=1, word="torn"),
        near_without("its state is not known", at=1),
    ),
)
