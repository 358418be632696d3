"""Take a worn leaf off."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Take a worn leaf off",
    problem="collar_worn",
    fix="collar.fixes.leave_off",
    why="What is worn is the leaf; the stand beneath it is whole.",
    source="common-practice",
    when=(given("the collar sits on a stand", Trait(place=MATCH.place, role="collar", slot="kind", word="stand")),),
    fires=(
        fires(
            "take a worn leaf off",
            problem("collar_worn", "collar", "collar", "mend"),
            trait("collar.kind", "collar", "stand"),
        ),
    ),
    near=(
        near("another problem", name="collar_tight"),
        near("it is sewn straight to the neck", at=1, word="one_piece"),
    ),
)
