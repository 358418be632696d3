"""Take a torn lining out."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Take a torn lining out",
    problem="lining_torn",
    fix="lining.fixes.take_lining_out",
    why="Lining that tears by itself will tear again beside every mend.",
    source="SEWAHOLIC",
    when=(given("it is so", Trait(place=MATCH.place, slot="state", word="torn")),),
    fires=(
        fires("as found", problem("lining_torn", "lining", "lining", "mend"), trait("lining.state", "lining", "torn")),
    ),
    near=(
        near("another problem", name="press_due"),
        near("it is otherwise", at=1, word="seam"),
        near_without("its state is not known", at=1),
    ),
)
