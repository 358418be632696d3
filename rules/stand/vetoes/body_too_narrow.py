"""No fastening cures a front that gapes because the body is too narrow."""

from advisor.knowledge import MATCH, Joined, Veto, fires, given, joined, length, near, offered, problem, such_that

HOLDS = ("stand.fixes.hidden_snap", "stand.fixes.hidden_button", "stand.fixes.respace")


rule = Veto(
    title="The body is too narrow",
    why=(
        "A front that strains opens wherever it can: a snap springs, a loop tears, and the next gap opens beside it. "
        "First the body gets its width, then what still gapes is closed."
    ),
    source="common-practice",
    when=(
        such_that("the fix only holds the front together", lambda fix: fix in HOLDS),
        given(
            "the body is measured against what it wants",
            Joined(kind="fit", role="body_width", place=MATCH.body, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("it is too narrow", lambda over, slack: over < -slack),
    ),
    says=(
        "{body} is {over} too narrow as the plan leaves it: no closing cures that. Let it out first, or wear it open."
    ),
    fires=(
        fires(
            "1 in too narrow",
            offered("front_gapes", "stand", "button_stand", "stand.fixes.hidden_snap"),
            problem("front_gapes", "stand", "button_stand", "closure", "1/2 in"),
            joined("fit", ("body.round", "body_width"), ("body.wanted", "body_width"), "1 in", under=True),
        ),
    ),
    near=(
        near("it is left", fix="general.fixes.leave"),
        near("wide enough", at=2, over_mm=length("0 in")),
        near("it is the collar that is too tight", at=2, role="collar"),
        near("another kind of join", at=2, kind="seam"),
    ),
)
