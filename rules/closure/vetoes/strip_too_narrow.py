"""A hidden strip too narrow for upright buttonholes."""

from advisor.figures.rows import lap_upright
from advisor.knowledge import MATCH, Measure, Veto, fires, given, length, measure, near, offered, problem, such_that

HIDDEN = frozenset(("closure.fixes.hidden_placket", "closure.fixes.hidden_placket_by_hand"))

rule = Veto(
    title="Hidden strip too narrow for the buttons",
    why="A button on an upright hole swings to both sides of it; on a strip too narrow it hangs over the edge and "
    "shows.",
    source="HB-BH",
    when=(
        such_that("the fix works upright holes in a strip", lambda fix: fix in HIDDEN),
        given("the lap", Measure(place=MATCH.place, slot="overlap", mm=MATCH.lap)),
        given("the width of the buttons", Measure(place=MATCH.place, slot="button", mm=MATCH.button)),
        such_that(
            "the strip is under one and a half buttons wide",
            lambda lap, button: lap_upright(button) > lap,
        ),
    ),
    says="The strip would be {lap} wide. Buttons of {button} want three quarters of a button to each side: {least} "
    "at the least.",
    reckons={"least": lambda button: lap_upright(button)},
    fires=(
        fires(
            "1 in buttons on a strip of 1 1/4 in",
            offered("closure_long", "front", "front_opening", "closure.fixes.hidden_placket"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            measure("front.overlap", "front_opening", "1 1/4 in"),
            measure("front.button", "front_opening", "1 in"),
        ),
    ),
    near=(
        near("the holes lie crosswise, which is another rule", fix="closure.fixes.buttons"),
        near("just wide enough", at=2, mm=length("1 1/2 in")),
        near("smaller buttons", at=3, mm=length("3/4 in")),
    ),
)
