"""Wear a tight collar open."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Wear a tight collar open",
    problem="collar_tight",
    fix="general.fixes.leave",
    why=(
        "Unbuttoned it presses nobody. Past 3/4 in the neck itself is cut too small, and a new collar would "
        "not make it larger: wear it open, or leave it on the rack."
    ),
    source="common-practice",
    when=(),
    fires=(fires("wear a tight collar open", problem("collar_tight", "collar", "collar", "closure", "3/8 in")),),
    near=(near("another problem", name="collar_loose"),),
)
