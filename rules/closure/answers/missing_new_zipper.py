"""A zipper for an opening without one."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="A zipper for an opening without one",
    problem="closure_missing",
    fix="closure.fixes.new_zipper",
    role="front_opening",
    why="Edges that meet fit a zipper: its tape finishes them, and no cloth is wanted for a lap. Fronts that lapped "
    "have to be turned in by the lap first.",
    source="common-practice",
    when=(given("nothing closes it", Trait(place=MATCH.place, slot="kind", word="none")),),
    fires=(
        fires(
            "an opening that nothing closes",
            problem("closure_missing", "front", "front_opening", "closure"),
            trait("front.kind", "front_opening", "none"),
        ),
    ),
    near=(
        near("something closes it, and is too long", name="closure_long"),
        near("it had snaps, and laps", at=1, word="snaps"),
    ),
)
