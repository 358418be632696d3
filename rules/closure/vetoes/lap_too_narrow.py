"""A lap too narrow for crosswise buttonholes that begin clear of the edge."""

from advisor.figures.buttons import hole_ball, hole_flat_thin, hole_thick, start_offered
from advisor.figures.rows import lap_crosswise
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import measure, offered, problem, trait

CROSSWISE = frozenset(
    f"closure.fixes.{name}" for name in ("buttons", "buttons_by_hand", "buttons_over_fly", "buttons_over_fly_by_hand")
)


def wanted(button: Mm, form: str, thickness: Mm) -> Mm:
    holes = {"flat": hole_flat_thin(button), "thick": hole_thick(button, thickness), "ball": hole_ball(button)}
    return lap_crosswise(start_offered(button), holes[form])


rule = Veto(
    title="Lap too narrow for the buttons",
    why="The lower front must lie behind the whole hole, or what is under it shows through and the button finds no "
    "hold.",
    source="common-practice",
    when=(
        such_that("the fix works crosswise holes", lambda fix: fix in CROSSWISE),
        given("the lap", Measure(place=MATCH.place, slot="overlap", mm=MATCH.lap)),
        given("the width of the buttons", Measure(place=MATCH.place, slot="button", mm=MATCH.button)),
        given("their form", Trait(place=MATCH.place, slot="button_form", word=MATCH.form)),
        given("their thickness", Measure(place=MATCH.place, slot="button_thickness", mm=MATCH.thickness)),
        such_that(
            "a hole that begins clear of the edge runs past the lap",
            lambda lap, button, form, thickness: wanted(button, form, thickness) > lap,
        ),
    ),
    says="The fronts would lap {lap}. A crosswise hole for a button of {button}, begun clear of the edge, ends "
    "{least} from "
    "it: that much lap is the least.",
    reckons={"least": wanted},
    fires=(
        fires(
            "1 in buttons on a lap of 1 1/2 in: the hole would end 1 3/4 in from the edge",
            offered("closure_long", "front", "front_opening", "closure.fixes.buttons"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            measure("front.overlap", "front_opening", "1 1/2 in"),
            measure("front.button", "front_opening", "1 in"),
            trait("front.button_form", "front_opening", "flat"),
            measure("front.button_thickness", "front_opening", "1/8 in"),
        ),
    ),
    near=(
        near("upright holes in a hidden strip", fix="closure.fixes.hidden_placket"),
        near("the lap is just wide enough", at=2, mm=wanted(Mm(127, 5), "flat", Mm(127, 40))),
        near("the buttons are smaller", at=3, mm=Mm(381, 20)),
        near_without("the form of the buttons is not known", at=4),
        near_without("their thickness is not known", at=5),
        near_without("nothing is known of the lap", at=2),
    ),
)
