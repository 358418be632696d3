"""Alone, a trunk loop is not read well enough for a raise that uses up its room."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="A raise to the limit rests on a loop read alone",
    fix="waist.fixes.raise_part",
    why="This raise stops where the room to move begins. Alone before a mirror a trunk loop is read no better than to "
    "1 in, so where that is nobody knows.",
    source="from-memory",
    when=(given("nobody helps to measure", Trait(role="bench", slot="help", word="no", place=MATCH.bench)),),
    says="This raise uses up all that the trunk has to spare, and alone the loop is read no better than to 1 in. Have "
    "somebody measure it, or choose what cuts nothing.",
    fires=(
        fires(
            "alone",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.raise_part"),
            problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in"),
            trait("bench.help", "bench", "no"),
        ),
    ),
    near=(near("another fix", fix="waist.fixes.casing"), near("there is help", at=2, word="yes")),
)
