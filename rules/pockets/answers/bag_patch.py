"""Patch a holed bag."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Patch a holed bag",
    problem="pocket_holed",
    fix="pockets.fixes.patch_bag",
    why="The cloth round a small hole still bears a patch.",
    source="common-practice",
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
