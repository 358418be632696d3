"""More stands open than hooks hold."""

from advisor.knowledge import Mm, Veto, fires, length, near, offered, problem, such_that

MOST: Mm = length("2 in")

rule = Veto(
    title="Too much for hooks",
    why="Hooks hold a short closed edge. Over more than about 2 in the front gapes between them and they unhook when "
    "she moves.",
    source="common-practice",
    when=(
        such_that("the fix sews hooks", lambda fix: fix == "closure.fixes.hooks_at_top"),
        such_that("more than 2 in stand open", lambda amount: amount > MOST),
    ),
    says="{amount} of the opening would hang on hooks; 2 in is the most they hold shut.",
    fires=(
        fires(
            "3 in open",
            offered("closure_short", "front", "front_opening", "closure.fixes.hooks_at_top"),
            problem("closure_short", "front", "front_opening", "closure", "3 in"),
        ),
    ),
    near=(
        near("a longer zipper", fix="closure.fixes.new_zipper"),
        near("just 2 in", at=1, mm=MOST),
    ),
)
