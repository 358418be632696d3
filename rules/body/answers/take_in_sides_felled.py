"""Take a wide body in at felled side seams."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Take a wide body in at felled side seams",
    problem="body_wide",
    fix="body.fixes.take_in_sides_felled",
    why="The seams are felled, so the new ones are too: sewn inside the old, trimmed and folded flat again.",
    source="common-practice",
    when=(
        given(
            "the side seams are felled", Trait(place=MATCH.place, role="body_width", slot="side_seam", word="felled")
        ),
    ),
    fires=(
        fires(
            "take a wide body in at felled side seams",
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.side_seam", "body_width", "felled"),
        ),
    ),
    near=(
        near("another problem", name="body_narrow"),
        near("they are ordinary seams", at=1, word="plain"),
    ),
)
