"""The trial on a hidden seam failed."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="The trial on a hidden seam failed",
    fix=("stain.fixes.bleach", "stain.fixes.soak_cold", "stain.fixes.soap_grease"),
    why=(
        "What changes a hidden seam changes the front. Color on the white cloth means that it is not fast; a "
        "page that says the opposite is wrong."
    ),
    source="CF-UNI",
    when=(given("the trial failed", Trait(place=MATCH.place, role="stain", slot="trial", word="failed")),),
    says="The trial on a hidden seam brought color off or changed the cloth.",
    fires=(
        fires(
            "the trial on a hidden seam failed",
            offered("stained", "stain", "stain", "stain.fixes.bleach"),
            problem("stained", "stain", "stain", "open"),
            trait("stain.trial", "stain", "failed"),
        ),
        fires(
            "the trial on a hidden seam failed; the other way",
            offered("stained", "stain", "stain", "stain.fixes.soak_cold"),
            problem("stained", "stain", "stain", "open"),
            trait("stain.trial", "stain", "failed"),
        ),
        fires(
            "the trial on a hidden seam failed; the third way",
            offered("stained", "stain", "stain", "stain.fixes.soap_grease"),
            problem("stained", "stain", "stain", "open"),
            trait("stain.trial", "stain", "failed"),
        ),
    ),
    near=(
        near("another fix", fix="stain.fixes.cover"),
        near("the trial was passed", at=2, word="passed"),
    ),
)
