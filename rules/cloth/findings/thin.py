"""The cloth is thin near the seams."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Thin cloth",
    problem="thin",
    stage="open",
    why=(
        "A seam opened in tired cloth frays out, and a new one within 1 in of it tears: the cloth is strengthened "
        "first, with the stay's edge away from the crease that wears."
    ),
    source="MAKERP",
    when=(
        given(
            "the cloth is thin or tired near a seam",
            Trait(role="cloth", place=MATCH.place, slot="strength", word="thin"),
        ),
    ),
    says="The cloth is thin near a seam: it needs strengthening before that seam is opened or sewn.",
    fires=(fires("worn at the elbows", trait("cloth.strength", "cloth", "thin")),),
    near=(
        near("sound", word="sound"),
        near("strengthened", word="backed"),
        near("thin weight is not thin cloth", slot="weight"),
    ),
)
