"""The zipper has to come out of a seam that was let down, hooks or no hooks."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

rule = Veto(
    title="Zipper held by a seam that was let down",
    why="A zipper is sewn down across the seam that was let down: it holds the old length together and has to be "
    "unpicked before the seam can give. Once it is out, moving it up is as little work as hooks.",
    source="common-practice",
    when=(
        such_that("the fix sews hooks", lambda fix: fix == "closure.fixes.hooks_at_top"),
        given(
            "the seam across the opening was let down",
            Trait(role="waist_seam", slot="line", word="let down", place=MATCH.other),
        ),
    ),
    says="{other} was let down, and the zipper is sewn down across it: it comes out in any case.",
    fires=(
        fires(
            "a waist seam let down",
            offered("closure_short", "front", "front_opening", "closure.fixes.hooks_at_top"),
            problem("closure_short", "front", "front_opening", "closure", "1/4 in"),
            trait("waist.line", "waist_seam", "let down"),
        ),
    ),
    near=(
        near("the zipper is moved up", fix="closure.fixes.sew_end_shut"),
        near("it was cut higher", at=2, word="cut"),
        near("another state of the seam", at=2, slot="inset"),
    ),
)
