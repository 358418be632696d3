"""No lemon juice on metal thread."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No lemon juice on metal thread",
    fix="mending.fixes.rust_lemon",
    why="Acid blackens metal thread and brings rust or green out of it.",
    source="common-practice",
    when=(given("there is metal thread in the cloth", Trait(role="cloth", slot="surface", word="metallic")),),
    says="Lemon juice is not for cloth with metal thread.",
    fires=(
        fires(
            "no lemon juice on metal thread",
            offered("rust_marks", "snaps", "hardware", "mending.fixes.rust_lemon"),
            problem("rust_marks", "snaps", "hardware", "mend"),
            trait("cloth.surface", "cloth", "metallic"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="mending.fixes.cover_marks"),
        near("a plain surface", at=2, word="plain"),
    ),
)
