"""A collar worn at its fold."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="Collar worn at the fold",
    problem="collar_worn",
    stage="mend",
    why=(
        "The fold rubs on the neck and on every hanger, and goes first: the rest of a shirt is good for years after it."
    ),
    source="MALECALL",
    when=(
        given(
            "the collar is worn at its fold",
            Trait(place=MATCH.place, role="collar", slot="worn", word=one_of("fold", "through")),
        ),
    ),
    says="{place} is worn through at its fold.",
    fires=(fires("the collar is worn at its fold", trait("collar.worn", "collar", "fold")),),
    near=(near("it is sound", word="sound"),),
)
