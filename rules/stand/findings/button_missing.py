"""A button is missing."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="A button is missing",
    problem="button_missing",
    stage="mend",
    why="The buttons above and below carry its pull as well as their own, and the front opens there.",
    source="common-practice",
    when=(
        given(
            "a button is missing",
            Trait(place=MATCH.place, role="button_stand", slot="missing", word=one_of("one", "torn")),
        ),
    ),
    says="A button is missing at {place}.",
    fires=(fires("a button is missing", trait("stand.missing", "button_stand", "one")),),
    near=(near("none is missing", word="none"),),
)
