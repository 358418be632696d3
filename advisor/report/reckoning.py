"""One calculation alone: reading its inputs as typed, and telling formula, answer and source."""

import re
from collections.abc import Mapping
from fractions import Fraction
from inspect import getdoc
from typing import Any

from advisor.errors import UsageError, nearest
from advisor.figures import FORMULAS, Formula, Record
from advisor.figures.formula import Plain, Unit, Value
from advisor.lengths import Tape, as_json, read_length
from advisor.report.lines import para
from advisor.rulebase.sources import Source, source_line
from advisor.words import Teller

UNIT_WORDS: dict[str, str] = {
    "mm": "a length",
    "mm2": "an area, mm2",
    "count": "a whole number",
    "ratio": "a number, as 3/2 or 1.5",
    "minutes": "minutes",
    "degrees": "degrees",
    "per_inch": "a number to the inch",
    "number": "a number",
    "lb": "pounds",
    "lb_per_inch": "pounds an inch",
    "word": "a word",
}
LONGEST = Fraction(20000)  # mm
MOST_COUNT = 1000
# Written out and short: 1e999999999 would fill the memory, and 1/0 is no number.
_NUMBER = re.compile(r"[+-]?(\d{1,6}(\.\d{1,6})?|\d{1,6}/0*[1-9]\d{0,5})", re.ASCII)


def formula_named(topic: str) -> Formula[..., Any]:
    """The formula `topic`, or the only one whose last part it is. UsageError names the nearest."""
    if topic in FORMULAS:
        return FORMULAS[topic]
    ends = [id for id in FORMULAS if id.partition(".")[2] == topic]
    if len(ends) == 1:
        return FORMULAS[ends[0]]
    known = ends or list(FORMULAS)
    raise UsageError(f"no calculation '{topic}'", hint=f"{nearest(topic, known)} (advisor reckon --list)")


def read_inputs(formula: Formula[..., Any], typed: tuple[str, ...], tape: Tape) -> dict[str, Plain]:
    """`name=value` words as inputs; several values of one name are separated by commas. UsageError, LengthError."""
    inputs: dict[str, Plain] = {}
    for word in typed:
        name, mark, text = word.partition("=")
        if not mark:
            raise UsageError(f"'{word}' gives no value", hint="write name=value, as depth=1/2in")
        if name not in formula.units:
            raise UsageError(f"no input '{name}' in {formula.id}", hint=nearest(name, formula.units))
        if name in inputs:
            raise UsageError(f"'{name}' is given twice", hint="give each input once")
        inputs[name] = _values(formula, name, text, tape)
    return inputs


def _values(formula: Formula[..., Any], name: str, text: str, tape: Tape) -> Plain:
    unit = formula.units[name]
    annotation = str(formula.signature.parameters[name].annotation)
    if "tuple" in annotation:
        return tuple(_value(unit, name, part, tape) for part in text.split(","))
    return _value(unit, name, text, tape)


def _value(unit: Unit, name: str, text: str, tape: Tape) -> Value:
    if unit == "word":
        return text.strip()
    if unit == "mm":
        return read_length(text, unit=tape.unit, least=Fraction(0), most=LONGEST, what=name.replace("_", " "))
    if not _NUMBER.fullmatch(text.strip()):
        raise UsageError(f"'{text}' is no number", where=name, hint=f"{UNIT_WORDS[unit]}, of at most 6 digits a side")
    number = Fraction(text.strip())
    if unit == "count":
        if number.denominator != 1:
            raise UsageError(f"'{text}' is no whole number", where=name, hint=UNIT_WORDS[unit])
        if number > MOST_COUNT:
            raise UsageError(f"'{text}' is more than any garment has", where=name, hint=f"at most {MOST_COUNT}")
        return int(number)
    return number


def reckoning_lines(record: Record, teller: Teller, sources: Mapping[str, Source]) -> list[str]:
    """The answer, the formula with its inputs filled in, what it means, and where it is from."""
    lines = [_told(record.value, record.gives, teller)]
    lines += para(record.told(teller.value), 2)
    for part in _about(FORMULAS[record.formula]).split("\n\n"):
        lines += para(" ".join(part.split()), 2)
    lines += para(f"Source: {source_line(record.source, sources)}.", 2)
    return lines


def _about(formula: Formula[..., Any]) -> str:
    """What the formula is for, in the words of its docstring, said to a person and not to a program."""
    return (getdoc(formula.fn) or "").replace("FigureError", "Refused").replace("`", "")


def _told(value: Plain, unit: Unit, teller: Teller) -> str:
    if isinstance(value, tuple):
        return ", ".join(teller.value(item, unit) for item in value)
    return teller.value(value, unit)


def reckoning_data(record: Record, teller: Teller) -> dict[str, Any]:
    """The same as data; lengths carry mm, unit and text."""
    return {
        "version": 1,
        "topic": record.formula,
        "inputs": {name: _data(value, record.units[name], teller) for name, value in sorted(record.inputs.items())},
        "gives": record.gives,
        "value": _data(record.value, record.gives, teller),
        "formula": record.told(teller.value),
        "source": record.source,
    }


def _data(value: Plain, unit: Unit, teller: Teller) -> Any:
    if isinstance(value, tuple):
        return [number_data(item, unit, teller.tape) for item in value]
    return number_data(value, unit, teller.tape)


def number_data(value: Value, unit: Unit, tape: Tape) -> Any:
    """A value of a figure: a length as mm, unit and text, a count or word as it is, other numbers as "3/2"."""
    if unit == "mm" and isinstance(value, Fraction):
        return as_json(value, tape)
    return str(value) if isinstance(value, Fraction) else value


def topic_data() -> list[dict[str, Any]]:
    """All calculations: inputs with units, what they give, the formula in words, the source."""
    return [
        {
            "topic": formula.id,
            "about": _about(formula).partition("\n")[0],
            "inputs": dict(formula.units),
            "gives": formula.gives,
            "words": formula.words,
            "source": formula.source,
        }
        for _, formula in sorted(FORMULAS.items())
    ]


def topic_lines() -> list[str]:
    """All calculations, two lines each."""
    lines: list[str] = []
    for topic in topic_data():
        inputs = " ".join(f"{name}=({UNIT_WORDS[unit]})" for name, unit in topic["inputs"].items())
        lines += [topic["topic"], *para(topic["about"], 4), *para(inputs, 4)]
    return lines
