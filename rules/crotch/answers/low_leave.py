"""Leave a low crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a low crotch",
    problem="crotch_low",
    fix="general.fixes.leave",
    why="Worn higher, with a belt or suspenders, it may sit well enough; in full trousers it is a cut. One trade "
    "page calls the rise of jeans practically unalterable.",
    source="FITTED",
    when=(),
    fires=(
        fires(
            "1 in too low",
            problem("crotch_low", "crotch", "crotch", "level", "1 in"),
        ),
    ),
    near=(near("too high instead", name="crotch_high"),),
)
