"""A hidden placket needs cloth for its strips."""

from advisor.figures.plackets import strip_cut, strip_length
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

HIDDEN = frozenset(("closure.fixes.hidden_placket", "closure.fixes.hidden_placket_by_hand"))
FOOT = length("1 in")


def width(lap: Mm) -> Mm:
    return strip_cut(lap, DOMESTIC_ALLOWANCE)


def along(opening: Mm) -> Mm:
    return strip_length(opening, DOMESTIC_ALLOWANCE, FOOT)


rule = Veto(
    title="No cloth for a placket",
    why="The strips carry holes and buttons and must give and shrink as the front does: cloth of another kind pulls "
    "it askew.",
    source="common-practice",
    when=(
        such_that("the fix cuts strips from matching cloth", lambda fix: fix in HIDDEN),
        given("there is no such cloth", Trait(role="cloth", slot="spare", word="no")),
        given("the lap", Measure(place=MATCH.place, slot="overlap", mm=MATCH.lap)),
        given("the opening", Measure(place=MATCH.place, slot="opening", mm=MATCH.opening)),
        such_that("the opening has a length", lambda opening: opening > 0),
    ),
    says="There is no matching cloth to hand, and a hidden placket takes two strips of {width} by {along}.",
    reckons={"width": width, "along": along},
    fires=(
        fires(
            "nothing left over from the garment",
            offered("closure_long", "front", "front_opening", "closure.fixes.hidden_placket"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("cloth.spare", "cloth", "no"),
            measure("front.overlap", "front_opening", "1 1/2 in"),
            measure("front.opening", "front_opening", "20 1/2 in"),
        ),
    ),
    near=(
        near("strips that only lie under the front", fix="closure.fixes.buttons"),
        near("there is cloth", at=2, word="yes"),
        near_without("the lap is not known", at=3),
        near_without("the opening is not known", at=4),
        near("nothing is left of the opening", at=4, mm=Mm(0)),
    ),
)
