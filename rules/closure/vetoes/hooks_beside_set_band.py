"""The zipper has to come out of a seam that was moved, hooks or no hooks."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, one_of, problem, such_that, trait

rule = Veto(
    title="Zipper held by a seam that was moved",
    why="A zipper is sewn down across the seam where cloth was let in: it holds the old length together and has to be "
    "unpicked before the seam can give. Once it is out, moving it up is as little work as hooks.",
    source="common-practice",
    when=(
        such_that("the fix sews hooks", lambda fix: fix == "closure.fixes.hooks_at_top"),
        given(
            "cloth was let in across the opening",
            Trait(slot=one_of("inset", "band"), word="set", place=MATCH.other),
        ),
    ),
    says="At {other} cloth was let in across the opening, and the zipper is sewn down there: it comes out in any case.",
    fires=(
        fires(
            "a band below the waist seam",
            offered("closure_short", "front", "front_opening", "closure.fixes.hooks_at_top"),
            problem("closure_short", "front", "front_opening", "closure", "1 in"),
            trait("trunk.band", "trunk", "set"),
        ),
    ),
    near=(
        near("the zipper is moved up", fix="closure.fixes.sew_end_shut"),
        near("no band was set in", at=2, word="none"),
        near("a gusset was set between the legs", at=2, slot="gusset"),
    ),
)
