"""No web where no iron may go."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, trait

rule = Veto(
    title="No web where no iron may go",
    fix="hems.fixes.fuse_again",
    why="Web is melted by an iron, and the label forbids it.",
    source="GINETEX",
    when=(given("the cloth is so", Trait(role="cloth", slot="iron", word="no", place=MATCH.other)),),
    says="The label shows an iron crossed out: no web is fused.",
    fires=(
        fires(
            "an iron crossed out",
            offered("hem_down", "leg", "leg_end", "hems.fixes.fuse_again"),
            problem("hem_down", "leg", "leg_end", "finish"),
            trait("cloth.iron", "cloth", "no"),
        ),
    ),
    near=(
        near("by hand", fix="hems.fixes.sew_again_by_hand"),
        near("another cloth", at=2, word="two"),
        near_without("it is not known", at=2),
    ),
)
