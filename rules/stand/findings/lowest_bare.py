"""The lowest button was taken and not replaced."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="No button at the lowest place",
    problem="lowest_button_bare",
    stage="finish",
    why="The tail opens when it is pulled out of the belt, and the buttonhole there tells of it.",
    source="common-practice",
    when=(
        given("the lowest place is bare", Trait(place=MATCH.place, role="button_stand", slot="lowest", word="bare")),
    ),
    says="The lowest button of {place} was taken and nothing sits in its place.",
    fires=(fires("the lowest place is bare", trait("stand.lowest", "button_stand", "bare")),),
    near=(near("another button sits there", word="odd"),),
)
