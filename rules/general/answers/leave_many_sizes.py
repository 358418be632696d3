"""Go on although it is far too large."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Go on although it is far too large",
    problem="many_sizes",
    fix="general.fixes.leave",
    why=(
        "Taken in this far, pockets, crotch and armholes leave their places and no seam puts them back. Go on only for "
        "a part where that does not matter; for good cloth, take it apart and cut it again by a smaller pattern."
    ),
    source="NINEL",
    when=(),
    fires=(fires("go on although it is far too large", problem("many_sizes", "waist", "waist_seam", "open", "5 in")),),
    near=(near("another problem", name="waist_low"),),
)
