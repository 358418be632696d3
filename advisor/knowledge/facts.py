"""What the engine sees: flat facts of words and exact millimeters, made from the garment by one adapter.

Rules speak of parts and roles, never of garment kinds. One word per thing:
`place` is where ("waist"), `role` what it does ("waist_seam"), `slot` what is known of it ("low_by"),
`key` place and slot together, `kind` of a join what it promises.
"""

from fractions import Fraction

from advisor.core.stages import STAGES
from advisor.engine import Slot, SlotFact

JOIN_KINDS = {
    "fit": "a measure of the garment and what the body wants of it",
    "seam": "two edges sewn to each other",
    "band": "a band and the edge it finishes",
    "closure": "a closure and the opening it closes",
    "hole": "a buttonhole and the button that passes it",
    "piece": "a piece cut for a place and the size the place needs",
    "reach": "a loop of the garment and the body it goes round",
}
RELATIONS = ("equal", "at_least")


class Measure(SlotFact):
    """A length of the garment or the body, mm."""

    key = Slot(str)
    place = Slot(str)
    role = Slot(str)
    slot = Slot(str)
    mm = Slot(Fraction)


class Trait(SlotFact):
    """A state or a quality, one word."""

    key = Slot(str)
    place = Slot(str)
    role = Slot(str)
    slot = Slot(str)
    word = Slot(str)


class Joined(SlotFact):
    """A join as it stands: `over_mm` is how far the one side is over the other, `slack_mm` what is forgiven."""

    id = Slot(str)
    kind = Slot(str, words=tuple(JOIN_KINDS))
    relation = Slot(str, words=RELATIONS)
    place = Slot(str)
    role = Slot(str)
    slot = Slot(str)
    other = Slot(str)
    other_role = Slot(str)
    over_mm = Slot(Fraction)
    slack_mm = Slot(Fraction)


class Problem(SlotFact):
    """A finding: `name` at `place`, `mm` its amount (0 where it has none)."""

    id = Slot(str)
    name = Slot(str)
    place = Slot(str)
    role = Slot(str)
    stage = Slot(str, words=STAGES)
    mm = Slot(Fraction)


class Offer(SlotFact):
    """A fix offered for a problem."""

    problem = Slot(str)
    name = Slot(str)
    fix = Slot(str)
    place = Slot(str)
    role = Slot(str)


class Veto(SlotFact):
    """A fix ruled out for a problem by a rule."""

    problem = Slot(str)
    fix = Slot(str)
    rule = Slot(str)


FACTS = (Measure, Trait, Joined, Problem, Offer, Veto)
