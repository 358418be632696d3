"""Buttons: how long a hole for which button, where it starts, the edge beyond it, how many where.

Five published lengths for a hole do not contradict each other: each is right for another button.
"""

import math
from fractions import Fraction
from itertools import pairwise

from advisor.figures.exact import PI, inches, need, positive, rounded
from advisor.figures.formula import Count, Mm, Number, formula

LIGNE = Fraction(127, 200)
"""Millimeters in a button ligne, 1/40 in. Source TEXCALC-BT; not the French ligne."""
EIGHTH = inches("1/8")
SWAP_WITHIN = inches("1/4")
"""A button this much larger or smaller leaves the edge as it is. Source FOLKWEAR."""
SHIRT_GAP = (inches("3"), inches("3 1/2"))
"""Distance of shirt buttons. Source IASRI-BTN."""


@formula("buttons.hole_flat_thin", words="{diameter} + 1/8 in", source="HB-BH", gives="mm")
def hole_flat_thin(diameter: Mm) -> Mm:
    """Hole for a flat, thin button.

    Millimeters. FigureError if the diameter is not more than 0. Diameter + 1/8 in.
    Worked: diameter=3/4 in -> 7/8 in. Source HB-BH, and TIE3-72.
    """
    positive(diameter=diameter)
    return diameter + EIGHTH


@formula("buttons.hole_flat_easy", words="{diameter} + 1/4 in", source="BTNQ", gives="mm")
def hole_flat_easy(diameter: Mm) -> Mm:
    """Longest hole for a flat button, for stiff fingers or a rough edge; looser and it slips open.

    Millimeters. FigureError if the diameter is not more than 0. Diameter + 1/4 in.
    Worked: diameter=3/4 in -> 1 in. Source BTNQ (1/8 to 1/4 in).
    """
    positive(diameter=diameter)
    return diameter + inches("1/4")


@formula("buttons.hole_thick", words="{diameter} + {thickness}", source="ABOUT", gives="mm")
def hole_thick(diameter: Mm, thickness: Mm) -> Mm:
    """Hole for a thick flat button; also a bound hole for it.

    Millimeters. Equals the rule for thin ones at a thickness of 1/8 in. FigureError if a size is not
    more than 0. Diameter + thickness. Worked: diameter=1 in, thickness=1/4 in -> 1 1/4 in. Source ABOUT.
    """
    positive(diameter=diameter, thickness=thickness)
    return diameter + thickness


@formula("buttons.hole_thick_worked", words="{diameter} + {thickness} + 1/8 in", source="FRK", gives="mm")
def hole_thick_worked(diameter: Mm, thickness: Mm) -> Mm:
    """Worked hole for a thick button in thick cloth, whose stitched lips fill part of it.

    Millimeters. FigureError if a size is not more than 0. Diameter + thickness + 1/8 in.
    Worked: diameter=3/4 in, thickness=1/8 in -> 1 in. Source FRK.
    """
    positive(diameter=diameter, thickness=thickness)
    return diameter + thickness + EIGHTH


@formula("buttons.hole_raised", words="{diameter} + {height}", source="LSN365", gives="mm")
def hole_raised(diameter: Mm, height: Mm) -> Mm:
    """Hole for a domed or covered button: its height, without the shank, instead of the 1/8 in.

    Millimeters. FigureError if a size is not more than 0. Diameter + height.
    Worked: diameter=3/4 in, height=1/4 in -> 1 in. Source LSN365.
    """
    positive(diameter=diameter, height=height)
    return diameter + height


@formula("buttons.hole_rounded", words="{diameter} x 5 / 4", source="WATSON07", gives="mm")
def hole_rounded(diameter: Mm) -> Mm:
    """Hole for a button rounded above and below, but no ball, in cloth that gives a little.

    Millimeters. FigureError if the diameter is not more than 0. A quarter more than the diameter.
    Worked: diameter=1/2 in -> 5/8 in. Source WATSON07.
    """
    positive(diameter=diameter)
    return diameter * 5 / 4


@formula("buttons.hole_ball", words="pi x {diameter} / 2", source="common-practice", gives="mm")
def hole_ball(diameter: Mm) -> Mm:
    """Slit a ball passes with no give in the cloth: half its circumference, to 1/1000 mm.

    Millimeters. The whole circumference, as is sometimes printed, is twice too long. FigureError if the
    diameter is not more than 0. Worked: diameter=100 mm -> 157.08 mm. Geometry, no source.
    """
    positive(diameter=diameter)
    return rounded(PI * diameter / 2)


@formula("buttons.start_floor", words="{diameter} / 2", source="common-practice", gives="mm")
def start_floor(diameter: Mm) -> Mm:
    """Nearest to the edge that a hole running in from it may start: the button then sits flush, strained.

    Millimeters from the finished edge to the hole's end nearest it. Warn at this; offer more. FigureError
    if the diameter is not more than 0. Half the button. Worked: diameter=3/4 in -> 3/8 in.
    Common practice, no source.
    """
    positive(diameter=diameter)
    return diameter / 2


@formula("buttons.start_offered", words="{diameter} / 2 + 1/8 in", source="common-practice", gives="mm")
def start_offered(diameter: Mm) -> Mm:
    """Where to start a hole running in from the edge, so that button and bar clear the edge.

    Millimeters as for `start_floor`; up to 1/8 in more is usual. FigureError if the diameter is not more
    than 0. Half the button + 1/8 in. Worked: diameter=3/4 in -> 1/2 in. Common practice, no source.
    """
    positive(diameter=diameter)
    return diameter / 2 + EIGHTH


@formula("buttons.start_offered_most", words="{diameter} / 2 + 1/4 in", source="common-practice", gives="mm")
def start_offered_most(diameter: Mm) -> Mm:
    """The other end of what is usual for `start_offered`.

    Millimeters. FigureError if the diameter is not more than 0. Half the button + 1/4 in.
    Worked: diameter=3/4 in -> 5/8 in. Common practice, no source.
    """
    positive(diameter=diameter)
    return diameter / 2 + inches("1/4")


@formula("buttons.start_past_center", words="{center_to_edge} - 1/8 in", source="HB-BH", gives="mm")
def start_past_center(center_to_edge: Mm) -> Mm:
    """From the edge to the start of a crosswise hole, when the center line is given.

    Millimeters: the hole starts 1/8 in past the line, toward the edge. FigureError if no room is left.
    Distance less 1/8 in. Worked: center_to_edge=3/4 in -> 5/8 in. Source HB-BH.
    """
    need(center_to_edge > EIGHTH, "the center line lies too near the edge for a crosswise hole")
    return center_to_edge - EIGHTH


@formula("buttons.inside_center", words="{hole} - 1/8 in", source="ABOUT", gives="mm")
def inside_center(hole: Mm) -> Mm:
    """How far a crosswise hole runs past the center line into the garment.

    Millimeters. FigureError if the hole is not over 1/8 in. Hole less the 1/8 in past the line.
    Worked: hole=1 1/4 in -> 9/8 in. Source ABOUT.
    """
    need(hole > EIGHTH, "the hole is no longer than the 1/8 in past the center line")
    return hole - EIGHTH


@formula("buttons.upright_top", words="{button} - 1/8 in", source="HB-BH", gives="mm")
def upright_top(button: Mm) -> Mm:
    """Where an upright hole starts above its button, both on the center line.

    Millimeters down from the same place. FigureError if it would start above that place.
    Button less 1/8 in. Worked: button=3 in -> 23/8 in. Source HB-BH.
    """
    need(button >= EIGHTH, "the hole would start above the place measured from")
    return button - EIGHTH


@formula("buttons.edge_three_quarters", words="{diameter} x 3 / 4", source="HB-BH", gives="mm")
def edge_three_quarters(diameter: Mm) -> Mm:
    """Center line to finished edge, at least: garments cut new, any button.

    Millimeters. FigureError if the diameter is not more than 0. Three quarters of the button.
    Worked: diameter=1 in -> 3/4 in. Source HB-BH, and SINGER-BH.
    """
    positive(diameter=diameter)
    return diameter * 3 / 4


@formula("buttons.edge_half_and_quarter", words="{diameter} / 2 + 1/4 in", source="ASDP", gives="mm")
def edge_half_and_quarter(diameter: Mm) -> Mm:
    """Center line to finished edge, by a trade standard; the more generous one under 1 in of button.

    Millimeters. FigureError if the diameter is not more than 0. Half the button + 1/4 in.
    Worked: diameter=1 in -> 3/4 in. Source ASDP.
    """
    positive(diameter=diameter)
    return diameter / 2 + inches("1/4")


@formula("buttons.edge_least", words="{diameter} / 2", source="IASRI-BTN", gives="mm")
def edge_least(diameter: Mm) -> Mm:
    """Center line to finished edge where cloth is short: the button does not overhang.

    Millimeters. FigureError if the diameter is not more than 0. Half the button.
    Worked: diameter=1 in -> 1/2 in. Source IASRI-BTN.
    """
    positive(diameter=diameter)
    return diameter / 2


@formula("buttons.extension", words="{diameter}", source="DPM-BTN", gives="mm")
def extension(diameter: Mm) -> Mm:
    """Width of a button extension past the center line, at least.

    Millimeters. FigureError if the diameter is not more than 0. The button's diameter.
    Worked: diameter=1 in -> 1 in. Source DPM-BTN.
    """
    positive(diameter=diameter)
    return diameter


@formula("buttons.extension_tiny", words="{diameter} x 3 / 2", source="DPM-BTN", gives="mm")
def extension_tiny(diameter: Mm) -> Mm:
    """Width of a button extension for very small buttons, about 3/8 in.

    Millimeters. FigureError if the diameter is not more than 0. One and a half diameters.
    Worked: diameter=3/8 in -> 9/16 in. Source DPM-BTN.
    """
    positive(diameter=diameter)
    return diameter * 3 / 2


@formula("buttons.swap_change", words="{new} - {old}", source="common-practice", gives="mm")
def swap_change(old: Mm, new: Mm) -> Mm:
    """By how much an old hole is too short for a new button of the same build.

    Millimeters; below 0 the hole is too long and pops open. The edge may stay as it is within
    SWAP_WITHIN. FigureError if a diameter is not more than 0. New less old.
    Worked: old=1/2 in, new=3/4 in -> 1/4 in. Geometry, no source.
    """
    positive(old=old, new=new)
    return new - old


@formula("buttons.gap_even", words="({last} - {first}) / ({buttons} - 1)", source="IASRI-BTN", gives="mm")
def gap_even(first: Mm, last: Mm, buttons: Count) -> Mm:
    """Distance of evenly spaced buttons, the first and last being set.

    Millimeters. FigureError for fewer than 2 buttons, or a last one not below the first.
    Run over the gaps. Worked: first=0 in, last=21 in, buttons=7 -> 3 1/2 in. Source IASRI-BTN.
    """
    need(buttons >= 2, "even spacing needs two buttons at least")
    need(last > first, "the last button must lie below the first")
    return (last - first) / (buttons - 1)


@formula(
    "buttons.places",
    words="{first} to {last} through {stress}, each span parted so that no gap passes {most_gap}",
    source="HB-BH",
    gives="mm",
)
def places(first: Mm, last: Mm, stress: tuple[Mm, ...], most_gap: Mm) -> tuple[Mm, ...]:
    """Where buttons go: first, last and every stress point, then each span between them divided alike.

    Millimeters down from one place, in order. FigureError if a stress point lies outside first to last,
    or the greatest gap is not more than 0. Each span takes the fewest gaps that do not pass `most_gap`.
    Worked: first=0 in, last=12 in, stress=[5 in], most_gap=4 in -> [0 in; 5/2 in; 5 in; 17/2 in; 12 in].
    Source HB-BH (a button at the fullest bust and at the waist, then respace).
    """
    positive(most_gap=most_gap)
    need(last > first, "the last button must lie below the first")
    need(all(first <= point <= last for point in stress), "a stress point lies outside the row of buttons")
    fixed = sorted({first, last, *stress})
    found = [fixed[0]]
    for upper, lower in pairwise(fixed):
        gaps = math.ceil((lower - upper) / most_gap)
        found.extend(upper + (lower - upper) * step / gaps for step in range(1, gaps + 1))
    return tuple(found)


@formula("buttons.gaps_in", words="round up ({span} / {most_gap})", source="common-practice", gives="count")
def gaps_in(span: Mm, most_gap: Mm) -> Count:
    """The fewest equal gaps that a span needs when none may pass `most_gap`.

    A count; buttons are one more. FigureError if either is not more than 0. Rounded up.
    Worked: span=21 in, most_gap=3 1/2 in -> 6. Common practice, no source.
    """
    positive(span=span, most_gap=most_gap)
    return math.ceil(span / most_gap)


@formula("buttons.last_above_hem", words="{length} - 4 in", source="ABOUT", gives="mm")
def last_above_hem(length: Mm) -> Mm:
    """Where the last button of a dress or skirt front goes, from the top of that length.

    Millimeters; about 4 in above the hem. FigureError if the length is not over 4 in.
    Length less 4 in. Worked: length=40 in -> 36 in. Source ABOUT.
    """
    need(length > inches("4"), "the front is too short for this rule")
    return length - inches("4")


@formula("buttons.ligne", words="{diameter} / 0.635 mm", source="TEXCALC-BT", gives="number")
def ligne(diameter: Mm) -> Number:
    """A button's size in ligne, not rounded; shops round to the nearest, some down.

    A number of lignes (1/40 in). FigureError if the diameter is not more than 0.
    Diameter over 0.635 mm. Worked: diameter=1 in -> 40. Source TEXCALC-BT.
    """
    positive(diameter=diameter)
    return diameter / LIGNE


@formula(
    "buttons.ligne_nearest",
    words="{diameter} / 0.635 mm, to the nearest whole",
    source="TEXCALC-BT",
    gives="count",
)
def ligne_nearest(diameter: Mm) -> Count:
    """The whole ligne size to ask for.

    A count of lignes; a half goes up. FigureError if the diameter is not more than 0.
    Worked: diameter=10 mm -> 16. Source TEXCALC-BT; another page rounds down.
    """
    return math.floor(ligne(diameter) + Fraction(1, 2))


@formula("buttons.diameter_of", words="{ligne} x 0.635 mm", source="TEXCALC-BT", gives="mm")
def diameter_of(ligne: Number) -> Mm:
    """Diameter of a button sold by ligne; printed tables round it by up to 0.6 mm.

    Millimeters. FigureError if the size is not more than 0. Size times 0.635 mm.
    Worked: ligne=40 -> 1 in. Source TEXCALC-BT.
    """
    positive(ligne=ligne)
    return ligne * LIGNE


@formula(
    "buttons.tacks_between",
    words="half way between neighbors of {holes}",
    source="common-practice",
    gives="mm",
)
def tacks_between(holes: tuple[Mm, ...]) -> tuple[Mm, ...]:
    """Where the small tacks go that keep a concealed placket from gaping: midway between holes.

    Millimeters from the holes' own origin, one fewer than the holes. FigureError for fewer than two
    holes, or holes out of order. Worked: holes=[1 in; 4 in; 8 in] -> [5/2 in; 6 in].
    Common practice, no source.
    """
    need(len(holes) >= 2, "tacks go between buttonholes, and there are not two")
    pairs = list(pairwise(holes))
    need(all(upper < lower for upper, lower in pairs), "the buttonholes are not in order down the front")
    return tuple((upper + lower) / 2 for upper, lower in pairs)
