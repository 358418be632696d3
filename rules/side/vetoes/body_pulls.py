"""The body pulls it open: a closing is no cure."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

CLOSINGS = (
    "side.fixes.sew_shut",
    "side.fixes.shorten",
    "side.fixes.hook_and_bar",
    "side.fixes.snap",
    "side.fixes.button_and_loop",
    "side.fixes.stay_tape",
)


rule = Veto(
    title="The body pulls it open",
    why=(
        "Where an opening shuts by itself when it is empty, it is the garment that is too small. A closing only "
        "moves the pull to the next seam, or tears out: first give it room."
    ),
    source="common-practice",
    when=(
        given("it lies shut when it is empty", Trait(place=MATCH.place, role="side_opening", slot="flat", word="shut")),
        such_that("the fix closes it", lambda fix: fix in CLOSINGS),
    ),
    says=(
        "Lying flat, {place} shut by themselves: the body pulls them {amount} open. A closing would tear; let "
        "out or widen beside them first."
    ),
    fires=(
        fires(
            "tight over the hips",
            offered("gapes", "side_opening", "side_opening", "side.fixes.hook_and_bar"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            trait("side_opening.flat", "side_opening", "shut"),
        ),
    ),
    near=(
        near("room is given", at=0, fix="side.fixes.let_out"),
        near("it stands open when it is empty", at=2, word="open"),
    ),
)
