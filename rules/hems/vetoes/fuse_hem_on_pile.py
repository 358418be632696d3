"""No web in pile."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, trait

rule = Veto(
    title="No web in pile",
    fix="hems.fixes.fuse_again",
    why="The heat that melts web flattens pile, and the mark of the iron stays.",
    source="common-practice",
    when=(given("the cloth is so", Trait(role="cloth", slot="surface", word="pile", place=MATCH.other)),),
    says="The cloth has a pile, which an iron hot enough for web flattens.",
    fires=(
        fires(
            "corduroy",
            offered("hem_down", "leg", "leg_end", "hems.fixes.fuse_again"),
            problem("hem_down", "leg", "leg_end", "finish"),
            trait("cloth.surface", "cloth", "pile"),
        ),
    ),
    near=(
        near("by hand", fix="hems.fixes.sew_again_by_hand"),
        near("another cloth", at=2, word="plain"),
        near_without("it is not known", at=2),
    ),
)
