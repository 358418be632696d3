"""Too much wear for glue."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, one_of, problem, such_that, trait

FIXES = (
    "wear.fixes.iron_on",
    "wear.fixes.fuse_stay",
)


rule = Veto(
    title="Too much wear for glue",
    why="Glue shears off where cloth bends and rubs a hundred times a day: knees, inner thighs, seat. An army repair "
    "manual keeps iron-on patches off crotch, pocket seams and the like.",
    source="TM201-289",
    when=(
        given(
            "it is at a knee, a thigh or the seat",
            Trait(role="worn_place", slot="where", word=one_of("knee", "thigh"), place=MATCH.place),
        ),
        such_that("the fix only glues", lambda fix: fix in FIXES),
    ),
    says="{place} is bent, rubbed or sat on: what is only fused comes loose at its edges within a few wears.",
    fires=(
        fires(
            "too much wear for glue",
            offered("worn_through", "worn", "worn_place", "wear.fixes.iron_on"),
            problem("worn_through", "worn", "worn_place", "mend"),
            trait("worn.where", "worn_place", "knee"),
        ),
    ),
    near=(
        near("a fix that is sewn", fix="wear.fixes.patch_under"),
        near("where nothing rubs", at=2, word="elsewhere"),
    ),
)
