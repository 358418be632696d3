"""No web on leather or coated cloth."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, trait

rule = Veto(
    title="No web on leather or coated cloth",
    fix="hems.fixes.fuse_again",
    why="Web does not take on leather or a coating, and the heat wrinkles it.",
    source="common-practice",
    when=(given("the cloth is so", Trait(role="cloth", slot="kind", word="coated", place=MATCH.other)),),
    says="Leather and coated cloth take no web; the heat wrinkles them.",
    fires=(
        fires(
            "leather",
            offered("hem_down", "leg", "leg_end", "hems.fixes.fuse_again"),
            problem("hem_down", "leg", "leg_end", "finish"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("by hand", fix="hems.fixes.sew_again_by_hand"),
        near("another cloth", at=2, word="cotton"),
        near_without("it is not known", at=2),
    ),
)
