"""The grades: what each step means, and what in cloth and workroom moves a fix up or down."""

from dataclasses import dataclass
from pathlib import Path

from advisor.core.model import Model
from advisor.core.work import Grades
from advisor.knowledge.fix import Fix
from advisor.rulebase.toml import Shape, read_shape

AXES = ("difficulty", "durability", "visibility")


class ShiftShape(Shape):
    """Adds to the difficulty where a place of `role` has one of `words` in `slot`."""

    role: str
    slot: str
    words: list[str]
    difficulty: int
    because: str


class CapShape(Shape):
    """Holds the durability down to a grade where a place of `role` has one of `words` in `slot`."""

    role: str
    slot: str
    words: list[str]
    durability: int
    because: str


class GradesShape(Shape):
    """rules/grades.toml."""

    difficulty: dict[str, str]
    durability: dict[str, str]
    visibility: dict[str, str]
    shift: list[ShiftShape] = []
    cap: list[CapShape] = []


@dataclass(frozen=True)
class GradeBook:
    """The meaning of the grades, and the grading of a fix on a garment."""

    shape: GradesShape

    def meaning(self, axis: str, grade: int) -> str:
        """What `grade` means on `axis` (one of AXES)."""
        words: str = getattr(self.shape, axis)[str(grade)]
        return words

    def grade(self, fix: Fix, model: Model) -> Grades:
        """The grades of `fix` on this garment, with what moved them."""
        difficulty, durability = fix.difficulty, fix.durability
        because: list[str] = []
        for shift in self.shape.shift:
            if fix.closes and fix.sews and _holds(shift, model) and difficulty < 5:
                difficulty = min(5, difficulty + shift.difficulty)
                because.append(f"harder: {shift.because}")
        for cap in self.shape.cap:
            if fix.closes and fix.sews and _holds(cap, model) and durability > cap.durability:
                durability = cap.durability
                because.append(f"wears out sooner: {cap.because}")
        return Grades(difficulty, durability, fix.visibility, tuple(because))


def read_grades(path: Path) -> GradeBook:
    """The grade book of a rule base."""
    return GradeBook(read_shape(path, GradesShape))


def _holds(entry: ShiftShape | CapShape, model: Model) -> bool:
    return any(
        model.states.get(f"{place.name}.{entry.slot}") in entry.words
        for place in model.places.values()
        if place.role == entry.role
    )
