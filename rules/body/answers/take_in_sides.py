"""Take a wide body in at plain side seams."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Take a wide body in at plain side seams",
    problem="body_wide",
    fix="body.fixes.take_in_sides",
    why=(
        "Where it is loose all round the side seams take it out in two halves, and nothing in front or at the "
        "back is moved."
    ),
    source="IKAT",
    when=(
        given(
            "the side seams are ordinary ones",
            Trait(place=MATCH.place, role="body_width", slot="side_seam", word="plain"),
        ),
    ),
    fires=(
        fires(
            "take a wide body in at plain side seams",
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.side_seam", "body_width", "plain"),
        ),
    ),
    near=(
        near("another problem", name="body_narrow"),
        near("they are felled", at=1, word="felled"),
    ),
)
