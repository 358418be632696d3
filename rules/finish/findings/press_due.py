"""A new seam has not been pressed."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Not pressed",
    problem="press_due",
    stage="finish",
    why="A seam that was not pressed before the next one crosses it never lies flat again.",
    source="USDA-FIT2",
    when=(given("pressing is due", Trait(slot="press", word="due", place=MATCH.place, role=MATCH.role)),),
    says="New stitching at {place} has not been pressed.",
    fires=(
        fires("the waist seam", trait("waist.press", "waist_seam", "due")),
        fires("seams of the lower part", trait("trousers.press", "lower_part", "due")),
    ),
    near=(near("pressed", word="done"), near("another state", slot="seam")),
)
