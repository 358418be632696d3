"""Button too small for the hole."""

from advisor.knowledge import MATCH, Measure, Veto, fires, given, length, measure, near, offered, problem, such_that

rule = Veto(
    title="Button too small for the hole",
    fix="mending.fixes.button_over",
    why="A button must lie on sound cloth all round the hole it hides, 1/8 in on every side at the least.",
    source="common-practice",
    when=(
        given(("the hole was measured"), Measure(place=MATCH.place, role="hardware", slot="hole", mm=MATCH.hole)),
        given("the button too", Measure(place=MATCH.place, role="hardware", slot="button", mm=MATCH.button)),
        such_that(
            "the button does not cover the hole by 1/8 in all round",
            lambda hole, button: button < hole + length("1/4 in"),
        ),
    ),
    reckons={"least": lambda hole: hole + length("1/4 in")},
    says=(
        "The buttons are {button} wide and the holes {hole}: at least {least} is wanted, 1/8 in of sound cloth on "
        "every side."
    ),
    fires=(
        fires(
            "button too small for the hole",
            offered("holes_open", "snaps", "hardware", "mending.fixes.button_over"),
            problem("holes_open", "snaps", "hardware", "mend"),
            measure("snaps.hole", "hardware", "1/2 in"),
            measure("snaps.button", "hardware", "5/8 in"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("a button just large enough", at=3, mm=length("3/4 in")),
        near("a smaller hole", at=2, mm=length("3/8 in")),
        near("another width was measured", at=3, slot="weak"),
        near("the other width was measured", at=2, slot="weak"),
    ),
)
