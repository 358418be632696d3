"""Too much pull for a darn."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Too much pull for a darn",
    fix="wear.fixes.darn",
    why="A darn carries itself and little more; at inner thighs and seat it tears out round its edge.",
    source="common-practice",
    when=(
        given(
            "it is at the inner thighs or the seat",
            Trait(role="worn_place", slot="where", word="thigh", place=MATCH.place),
        ),
    ),
    says="{place} is strained with every step: a darn would tear out round its edge, and a patch reaches sound cloth.",
    fires=(
        fires(
            "too much pull for a darn",
            offered("worn_through", "worn", "worn_place", "wear.fixes.darn"),
            problem("worn_through", "worn", "worn_place", "mend"),
            trait("worn.where", "worn_place", "thigh"),
        ),
    ),
    near=(
        near("a patch", fix="wear.fixes.patch_under"),
        near("where nothing pulls", at=2, word="elsewhere"),
    ),
)
