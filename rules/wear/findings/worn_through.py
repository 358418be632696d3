"""Cloth worn through."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, near_without, trait
from advisor.operations.worn import AT

rule = Find(
    title="Cloth worn through",
    problem="worn_through",
    stage="mend",
    why="A hole runs on from its edge, since the cloth round it is thin too. What covers it must reach sound cloth "
    "on every side.",
    source="SCHOOLSEW-P",
    when=(
        given(
            "the cloth is worn or torn through", Trait(role="worn_place", place=MATCH.place, slot="holes", word="open")
        ),
        given("it is known where", Trait(role="worn_place", place=MATCH.place, slot="where", word=MATCH.where)),
    ),
    reckons={"at": lambda where: AT[where]},
    says="{at} the cloth is worn through.",
    fires=(
        fires("as found: open", trait("worn.holes", "worn_place", "open"), trait("worn.where", "worn_place", "knee")),
    ),
    near=(
        near("only thin", word="thin"),
        near("patched by now", word="patched"),
        near("holes of a row of snaps", role="hardware"),
        near_without("nobody said where", at=1),
    ),
)
