"""Mold."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Mold",
    problem="moldy",
    stage="open",
    why="Mold eats into cloth until it rots and falls to pieces, says a bulletin. From memory: it spreads to whatever "
    "hangs beside it, and its dust can make people ill. It cannot stay.",
    source="MO-GH5928",
    when=(given("it was kept damp", Trait(role="cloth", place=MATCH.place, slot="store", word="damp")),),
    says="It smells musty or shows mold: it should not hang beside anything else, nor be shaken indoors.",
    fires=(fires("from a cellar", trait("cloth.store", "cloth", "damp")),),
    near=(near("clean and dry", word="clean"), near("another thing known of the cloth", slot="washed")),
)
