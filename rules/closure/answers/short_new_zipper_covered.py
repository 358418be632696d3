"""Change a short covered zipper for a longer one."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Change a short covered zipper for a longer one",
    problem="closure_short",
    fix="closure.fixes.new_zipper_covered",
    role="front_opening",
    why="A zipper cannot be made longer: the next length up is bought, shortened to the opening, and set "
    "in behind its cover.",
    source="HB-ZIP",
    when=(
        given("a zipper closes it", Trait(place=MATCH.place, slot="kind", word=one_of("closed_end", "separating"))),
        given("the zipper lies behind a fly or a lining", Trait(place=MATCH.place, slot="setting", word="covered")),
    ),
    fires=(
        fires(
            "a closure 1 in too short",
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("front.kind", "front_opening", "closed_end"),
            trait("front.setting", "front_opening", "covered"),
        ),
    ),
    near=(
        near("it is too long", name="closure_long"),
        near("snaps close it", at=1, word="snaps"),
        near("it is set in plainly", at=2, word="plain"),
    ),
)
