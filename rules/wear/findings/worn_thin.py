"""Cloth worn thin."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, near_without, trait
from advisor.operations.worn import AT

rule = Find(
    title="Cloth worn thin",
    problem="worn_thin",
    stage="mend",
    why="Thin cloth goes through with the next wash or the next kneeling. Strengthened while it is whole it takes a "
    "quarter of the work, and hardly shows.",
    source="MAKERP",
    when=(
        given(
            "the cloth is thin, without a hole", Trait(role="worn_place", place=MATCH.place, slot="holes", word="thin")
        ),
        given("it is known where", Trait(role="worn_place", place=MATCH.place, slot="where", word=MATCH.where)),
    ),
    reckons={"at": lambda where: AT[where]},
    says="{at} the cloth is worn thin: threads show, and it will soon be a hole.",
    fires=(
        fires("as found: thin", trait("worn.holes", "worn_place", "thin"), trait("worn.where", "worn_place", "knee")),
    ),
    near=(
        near("no wear", word="none"),
        near("worn through", word="open"),
        near("it is said of where it is", slot="where"),
        near_without("nobody said where", at=1),
    ),
)
