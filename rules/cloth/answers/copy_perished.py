"""Copy what is perished."""

from advisor.knowledge import Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Copy what is perished",
    problem="perished",
    fix="cloth.fixes.copy_new",
    why="The cloth is gone but the cut is not: the pattern comes off it, and the hours go into cloth that lasts.",
    source="common-practice",
    when=(given("there is cloth to make a new one of", Trait(role="cloth", slot="spare", word="yes")),),
    fires=(
        fires(
            "copy what is perished", problem("perished", "cloth", "cloth", "open"), trait("cloth.spare", "cloth", "yes")
        ),
    ),
    near=(
        near("another problem", name="thin"),
        near("there is none", at=1, word="no"),
    ),
)
