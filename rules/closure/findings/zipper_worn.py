"""The zipper sticks, opens behind the slider, or has lost teeth."""

from advisor.knowledge import MATCH, Find, Joined, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import joined, length, one_of, trait

IS = {"worn": "sticks, or opens again behind the slider", "broken": "has lost teeth, or its coil is torn"}

rule = Find(
    title="Worn zipper",
    problem="zipper_worn",
    stage="closure",
    why="A slider widens with wear until it no longer presses the teeth together; lost teeth and a torn coil are past "
    "help. One that does not fit its opening is dealt with there first.",
    source="ENGFIX",
    when=(
        given(
            "a zipper closes the opening",
            Trait(role="front_opening", place=MATCH.place, slot="kind", word=one_of("closed_end", "separating")),
        ),
        given("how it runs", Trait(place=MATCH.place, slot="worn", word=MATCH.runs)),
        such_that("it does not run well", lambda runs: runs in IS),
        given(
            "zipper and opening are measured",
            Joined(kind="closure", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("they are equally long", lambda over, slack: abs(over) <= slack),
    ),
    says="The zipper of {place} {fault}.",
    reckons={"fault": lambda runs: IS[runs]},
    fires=(
        fires(
            "it splits",
            trait("front.kind", "front_opening", "closed_end"),
            trait("front.worn", "front_opening", "worn"),
            joined("closure", ("front.closure", "front_opening"), ("front.opening", "front_opening"), "0 in"),
        ),
        fires(
            "teeth are gone",
            trait("front.kind", "front_opening", "separating"),
            trait("front.worn", "front_opening", "broken"),
            joined("closure", ("front.closure", "front_opening"), ("front.opening", "front_opening"), "0 in"),
        ),
    ),
    near=(
        near("buttons close it by now", word="buttons"),
        near("it runs well", at=1, word="sound"),
        near_without("nobody tried it", at=1),
        near("it is too long besides, and goes or stays with that", at=2, over_mm=length("1 in")),
        near("it is a band that was measured", at=2, kind="band"),
    ),
)
