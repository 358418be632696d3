"""Reading the worked number in a formula's docstring, and reckoning a formula's words."""

import ast
import math
import operator
import re
from collections.abc import Callable
from fractions import Fraction
from typing import Any

from advisor.figures import Formula, inches

MM = {"in": inches(1), "mm": Fraction(1), "mm2": Fraction(1), "degrees": Fraction(1)}


def worked(formula: Formula[..., Any]) -> tuple[dict[str, Any], Any]:
    """Inputs and answer of "Worked: a=1 in, b=[1 in; 2 in] -> 3 in." in the docstring."""
    found = re.search(r"Worked: (.+?) -> (.+?)\.(?: |$)", " ".join((formula.__doc__ or "").split()))
    assert found, f"{formula.id} has no worked number"
    inputs = {}
    for part in found[1].split(", "):
        name, _, text = part.partition("=")
        inputs[name] = value(text, formula.units[name])
    return inputs, value(found[2], formula.gives)


def value(text: str, unit: str) -> Any:
    if text.startswith("["):
        return tuple(value(item.strip(), unit) for item in text[1:-1].split(";"))
    if unit == "word":
        return text
    if unit == "count":
        return int(text)
    *numbers, last = text.split()
    if last not in MM:
        numbers, last = [*numbers, last], "mm"
    return sum(Fraction(number) for number in numbers) * MM[last]


SAID = {
    " x ": " * ",
    "square root of ": "root",
    "the smaller of ": "smaller",
    "the larger of ": "larger",
    "the size of ": "size",
    "round up ": "ceiling",
    " squared": " ** 2",
    "25.4 mm": "(127 / 5)",
    "0.635 mm": "(127 / 200)",
}
DOES: dict[type, Callable[[Any, Any], Any]] = {
    ast.Add: operator.add,
    ast.Sub: operator.sub,
    ast.Mult: operator.mul,
    ast.Div: operator.truediv,
    ast.Pow: operator.pow,
}
CALLS: dict[str, Callable[..., Any]] = {
    "root": lambda squared: Fraction(math.sqrt(squared)),
    "smaller": min,
    "larger": max,
    "size": abs,
    "ceiling": math.ceil,
}


def reckon(words: str, inputs: dict[str, Any]) -> Fraction:
    """The words of a formula, done as they are said. SyntaxError or KeyError if they only tell."""
    said = words.format(**{name: name for name in inputs})
    said = re.sub(r"(\d+ )?(\d+)(/\d+)? in\b", lambda hit: f"({inches(hit[0][:-3])})", said)
    for phrase, sign in SAID.items():
        said = said.replace(phrase, sign)
    names = {"pi": Fraction(math.pi)} | inputs
    return Fraction(_done(ast.parse(said, mode="eval").body, names))


def _done(node: ast.expr, names: dict[str, Any]) -> Any:
    match node:
        case ast.Constant(value=int(number)):
            return Fraction(number)
        case ast.Name(id=name):
            return names[name]
        case ast.BinOp(left=left, op=sign, right=right):
            return DOES[type(sign)](_done(left, names), _done(right, names))
        case ast.Call(func=ast.Name(id=name), args=parts):
            return CALLS[name](*[_done(part, names) for part in parts])
    raise KeyError(ast.dump(node))
