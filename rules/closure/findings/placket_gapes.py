"""A hidden placket without tacks between its holes."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, near_without, trait

rule = Find(
    title="Hidden placket stands away",
    problem="placket_gapes",
    stage="finish",
    why="The strip with the holes hangs from one seam only: between the buttons the front swings off it and they show.",
    source="common-practice",
    when=(
        given(
            "a hidden placket closes the opening",
            Trait(role="front_opening", place=MATCH.place, slot="kind", word="placket"),
        ),
        given("it has no tacks", Trait(place=MATCH.place, slot="tacks", word="none")),
    ),
    says="The hidden placket of {place} has no tacks between the holes: it stands away there.",
    fires=(
        fires(
            "left without tacks",
            trait("front.kind", "front_opening", "placket"),
            trait("front.tacks", "front_opening", "none"),
        ),
    ),
    near=(
        near("the buttons go through the front", word="buttons"),
        near("it has tacks", at=1, word="done"),
        near_without("there is no word of tacks", at=1),
    ),
)
