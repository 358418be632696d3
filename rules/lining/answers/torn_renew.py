"""Renew a torn lining."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Renew a torn lining",
    problem="lining_torn",
    fix="lining.fixes.renew_lining",
    why="The outer cloth is sound and worth it: linings wear out first.",
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
