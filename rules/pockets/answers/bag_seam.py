"""Close a holed bag above the hole."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Close a holed bag above the hole",
    problem="pocket_holed",
    fix="pockets.fixes.seam_above",
    why="The hole sits low, and a seam above it costs a little depth and no cloth. One alteration tutor calls it "
    "a good short-term fix.",
    source="LTA-POCKET",
    when=(given("it is so", Trait(place=MATCH.place, slot="bag", word="holed")),),
    fires=(
        fires(
            "as found",
            problem("pocket_holed", "pocket_bag", "pocket_bags", "mend"),
            trait("pocket_bag.bag", "pocket_bags", "holed"),
        ),
    ),
    near=(
        near("another problem", name="press_due"),
        near("it is otherwise", at=1, word="worn"),
        near_without("its state is not known", at=1),
    ),
)
