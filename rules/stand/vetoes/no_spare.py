"""No button that matches."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No button that matches",
    fix="stand.fixes.sew_button",
    why="An odd button in the middle of a front is the first thing that is seen.",
    source="common-practice",
    when=(
        given(
            "there is no button that matches", Trait(place=MATCH.place, role="button_stand", slot="spare", word="no")
        ),
    ),
    says="There is no button that matches the others.",
    fires=(
        fires(
            "no button that matches",
            offered("button_missing", "stand", "button_stand", "stand.fixes.sew_button"),
            problem("button_missing", "stand", "button_stand", "mend"),
            trait("stand.spare", "button_stand", "no"),
        ),
    ),
    near=(
        near("another fix", fix="stand.fixes.new_set"),
        near("there is one", at=2, word="yes"),
    ),
)
