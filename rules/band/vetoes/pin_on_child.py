"""No safety pins on a child."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, trait

rule = Veto(
    title="No pin on a child",
    fix="band.fixes.pin_it",
    why="A pin at the waist opens when a child bends or falls on it, and lies against the belly.",
    source="common-practice",
    when=(given("a child wears it", Trait(role="wearer", slot="age", word="child", place=MATCH.other)),),
    says="A child wears it: no pin at the waist.",
    fires=(
        fires(
            "a child's trousers",
            offered("band_unfastened", "band", "waistband", "band.fixes.pin_it"),
            problem("band_unfastened", "band", "waistband", "closure"),
            trait("wearer.age", "wearer", "child"),
        ),
    ),
    near=(
        near("a button", fix="band.fixes.sew_button"),
        near("an adult", at=2, word="adult"),
        near_without("nobody said who wears it", at=2),
    ),
)
