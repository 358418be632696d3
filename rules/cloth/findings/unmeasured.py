"""It was washed and not measured again."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Washed and not measured again",
    problem="unmeasured",
    stage="finish",
    why="Numbers taken before a wash are those of another garment.",
    source="IKAT",
    when=(
        given(
            "it is not ready to be measured and cut",
            Trait(role="cloth", place=MATCH.place, slot="ready", word="no"),
        ),
    ),
    says="It was washed after it was measured: the measures have to be taken again.",
    fires=(fires("washed since", trait("cloth.ready", "cloth", "no")),),
    near=(near("measured again", word="yes"), near("no spare cloth", slot="spare")),
)
