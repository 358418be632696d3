"""Which templates a plan deserves: one for each shape, however many steps it serves."""

from collections.abc import Mapping

from advisor.core.advice import Plan
from advisor.core.template import Kind
from advisor.sheet.drawing import Drawing
from advisor.sheet.shapes import drawn
from advisor.words import Teller

NAMES: Mapping[Kind, str] = {
    "dart": "Dart",
    "patch": "Patch",
    "row": "Places of the row",
    "run_out": "New seam line",
    "hem_card": "Hem card",
}


def templates(plan: Plan, teller: Teller) -> list[Drawing]:
    """The drawings of a plan, in the order of its steps, each told for which steps it is."""
    found: dict[Drawing, list[int]] = {}
    for number, step in enumerate(plan.steps, 1):
        if step.op.template is not None:
            places = " and ".join(teller.places[place].words for place in step.op.places)
            name = f"{NAMES[step.op.template.kind]}, {places}"
            drawing = drawn(step.op, teller.tape, name)
            if drawing is not None:
                found.setdefault(drawing, []).append(number)
    return [_for_steps(drawing, numbers) for drawing, numbers in found.items()]


def _for_steps(drawing: Drawing, numbers: list[int]) -> Drawing:
    steps = f"step {numbers[0]}" if len(numbers) == 1 else f"steps {', '.join(map(str, numbers))}"
    return Drawing(
        f"{drawing.title} ({steps})", drawing.tells, drawing.width, drawing.height, drawing.lines, drawing.words
    )
