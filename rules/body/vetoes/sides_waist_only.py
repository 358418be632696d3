"""Too much at the waist alone for the side seams."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, length, near, offered, problem, such_that, trait

MOST = length("3 in")
AT_SIDES = ("body.fixes.take_in_sides", "body.fixes.take_in_sides_felled")

rule = Veto(
    title="Too much at the waist alone for the side seams",
    why=(
        "Where only the waist is loose the line runs in below the armhole and out again at the hip. Run in faster than "
        "1/2 in over 5 in it shows a dent, and from armhole to waist there are about 8 in."
    ),
    source="common-practice",
    when=(
        such_that("the fix is at the side seams", lambda fix: fix in AT_SIDES),
        given("only the waist is loose", Trait(role="body_width", slot="loose_at", place=MATCH.place, word="waist")),
        such_that("it is more than 3 in", lambda amount: amount > MOST),
    ),
    reckons={"each": lambda amount: amount / 4},
    says=(
        "Only the waist of {place} is loose: {amount} would bend the side seams in by {each} on each layer, "
        "and that dents."
    ),
    fires=(
        fires(
            "3 1/2 in at the waist only",
            offered("body_wide", "body", "body_width", "body.fixes.take_in_sides"),
            problem("body_wide", "body", "body_width", "girth", "3 1/2 in"),
            trait("body.loose_at", "body_width", "waist"),
        ),
    ),
    near=(
        near("darts at the back", fix="body.fixes.back_darts"),
        near("exactly 3 in", at=1, mm=MOST),
        near("loose all round", at=2, word="round"),
    ),
)
