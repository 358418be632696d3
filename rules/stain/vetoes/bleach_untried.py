"""Bleach has not been tried."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Bleach has not been tried",
    fix="stain.fixes.bleach",
    why="Bleach cannot be taken back: it is tried on the inside of a seam first.",
    source="CF-INFO",
    when=(given("it was not tried", Trait(place=MATCH.place, role="stain", slot="trial", word="untried")),),
    says="Bleach has not been tried on a hidden seam, and what it does cannot be taken back.",
    fires=(
        fires(
            "bleach has not been tried",
            offered("stained", "stain", "stain", "stain.fixes.bleach"),
            problem("stained", "stain", "stain", "open"),
            trait("stain.trial", "stain", "untried"),
        ),
    ),
    near=(
        near("another fix", fix="stain.fixes.cover"),
        near("tried and passed", at=2, word="passed"),
    ),
)
