"""Front and back that do not add up may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave front and back as they came out",
    problem="halves_differ",
    fix="general.fixes.leave",
    why="Try it sitting and bending: if nothing pulls and the waist looks level from the side, the body agrees with "
    "it.",
    source="common-practice",
    when=(),
    fires=(fires("1/4 in off", problem("halves_differ", "trunk", "trunk", "finish", "1/4 in")),),
    near=(near("another problem", name="trunk_short"),),
)
