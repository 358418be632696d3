"""The shape of a case file: which names may stand where, and what kind of value each takes.

Strict and closed: text where text is due, whole numbers where those are due, and no name that means nothing.
Whether a name belongs to the garment is not looked at here.
"""

import re
from dataclasses import dataclass
from datetime import datetime
from fractions import Fraction
from typing import Annotated, Any, Literal, NoReturn, get_args

from pydantic import (
    AfterValidator,
    BaseModel,
    ConfigDict,
    Field,
    PlainValidator,
    ValidationError,
    model_validator,
)

from advisor.casefile.lines import Path
from advisor.core.case import How, TapeName
from advisor.errors import nearest
from advisor.ground import line

VERSION = 1
"""The format written here; a file of a higher one is refused, of a lower one brought up to it."""

TITLE_LIMIT = 200
"""Most characters in a title: it must fit a list and a file name."""

MOST_WEIGHT = 3
MOST_MINUTES = 100_000
MOST_MONEY = 1_000_000
_WEIGHT = re.compile(r"(\d{1,12})/(\d{1,12})", re.ASCII)


@dataclass
class Fault(Exception):
    """Something in the file is wrong: the path to it, what, what to do. Becomes a CaseError with a line."""

    path: Path
    what: str
    hint: str = ""


def _moment(text: str) -> str:
    try:
        if text:
            datetime.fromisoformat(text)
    except ValueError:
        raise ValueError('is no date and time|write it like "2026-11-25T09:30:00", or leave it out') from None
    return text


def _filled(text: str) -> str:
    if not text.strip():
        raise ValueError("is empty|write something between the quotes")
    return text


def _title(text: str) -> str:
    if len(text) > TITLE_LIMIT:
        raise ValueError(f"is longer than {TITLE_LIMIT} characters|shorten it; the story has room")
    return _filled(text)


def _marked(text: str) -> str:
    if not all(text.rpartition(" ")):
        raise ValueError("is not a step and its mark|")
    return text


def _weight(value: object) -> Fraction:
    number = value if isinstance(value, int | Fraction) and not isinstance(value, bool) else None
    if isinstance(value, str) and (part := _WEIGHT.fullmatch(value)) and int(part[2]):
        number = Fraction(int(part[1]), int(part[2]))
    if number is None or not 0 <= number <= MOST_WEIGHT:
        raise ValueError(f'must be a number from 0 to {MOST_WEIGHT}|write 1, 0.5 or, for thirds, "1/3"')
    return Fraction(number)


def _money(value: object) -> Fraction:
    number = value if isinstance(value, int | Fraction) and not isinstance(value, bool) else None
    if number is None or not 0 <= number <= MOST_MONEY or (Fraction(number) * 100).denominator != 1:
        raise ValueError("must be an amount of money|write it without quotes and without a sign, such as 12 or 4.50")
    return Fraction(number)


def _minutes(count: int) -> int:
    if not 1 <= count <= MOST_MINUTES:
        raise ValueError(f"must be from 1 to {MOST_MINUTES} minutes|leave it out if time does not matter")
    return count


Moment = Annotated[str, AfterValidator(_moment)]
Filled = Annotated[str, AfterValidator(_filled)]
Weight = Annotated[Fraction, PlainValidator(_weight)]
Grade = Annotated[int, Field(ge=1, le=5)]
Money = Annotated[Fraction, PlainValidator(_money)]
Minutes = Annotated[int, AfterValidator(_minutes)]
Count = Annotated[int, Field(ge=0)]
Marked = Annotated[str, AfterValidator(_marked)]


class _Row(BaseModel):
    model_config = ConfigDict(strict=True, extra="forbid", frozen=True, allow_inf_nan=False)


class AnswerRow(_Row):
    """One answer: a `value` as typed, or exact `mm`, or `unknown`; a bare text is its value, told."""

    value: Filled | None = None
    mm: Filled | None = None
    unknown: bool | None = None
    how: How | None = None
    at: Moment = ""
    told: str = ""

    @model_validator(mode="before")
    @classmethod
    def _short(cls, given: object) -> object:
        if isinstance(given, str):
            if not given.strip():
                raise ValueError(
                    "is blank, which neither answers nor erases|write the answer, { unknown = true } "
                    "if it was asked and you cannot say, or delete the line"
                )
            return {"value": given}
        if isinstance(given, int | float | Fraction):
            raise ValueError('must be text in quotes|write the number in quotes with its unit: "1 1/2 in"')
        return given

    @model_validator(mode="after")
    def _one_answer(self) -> "AnswerRow":
        given = [name for name in ("value", "mm", "unknown") if getattr(self, name) is not None]
        if len(given) != 1:
            raise ValueError("must hold either a value or unknown = true|give one of the two")
        if self.unknown is False:
            raise ValueError("says unknown = false, which tells nothing|give the value instead")
        if self.unknown and (self.how or self.told):
            raise ValueError("is unknown, so it was neither measured nor told|delete 'how' and 'told'")
        return self


class ChoiceRow(_Row):
    """The fix taken for a finding."""

    fix: Filled
    reason: str = ""
    at: Moment = ""


class WeighRow(_Row):
    """How much each axis counts, 0 to 3."""

    difficulty: Weight = Fraction(1)
    durability: Weight = Fraction(1)
    visibility: Weight = Fraction(1, 2)


class LimitsRow(_Row):
    """What she will not go past."""

    hardest: Grade = 5
    weakest: Grade = 1
    weigh: WeighRow = WeighRow()
    visible: Grade = 5
    cutting: bool = True
    buttonholes: bool = True
    minutes: Minutes | None = None
    money: Money | None = None
    prices: dict[Filled, Money] = {}


class LogRow(_Row):
    """One line of the log."""

    at: Moment = ""
    what: Filled


class StoodRow(_Row):
    """How one finding stood in the plan on record."""

    took: str = ""
    stood: list[Filled] = []
    out: list[Filled] = []


class SumsRow(_Row):
    """The figures of the plan on record."""

    hardest: Grade
    weakest: Grade
    shows: Grade
    least: Count
    likely: Count
    most: Count
    final: Count


class RecordRow(_Row):
    """The plan as it was printed last, and what it rested on."""

    at: Moment = ""
    advisor: Filled
    rules: Filled
    others: Filled
    formulas: Filled
    operations: Filled
    answers: Filled
    advice: Filled
    totals: SumsRow
    findings: dict[Filled, StoodRow] = {}
    steps: dict[Filled, list[Marked]] = {}
    cards: dict[Filled, dict[Filled, Filled]] = {}


class CaseShape(_Row):
    """A whole case file."""

    version: Literal[1]
    title: Annotated[str, AfterValidator(_title)]
    garment: Filled
    tape: TapeName
    story: str = ""
    answers: dict[str, dict[str, AnswerRow]] = {}
    choices: dict[Filled, ChoiceRow] = {}
    limits: LimitsRow = LimitsRow()
    record: RecordRow | None = None
    log: list[LogRow] = []


def shaped(raw: dict[str, Any]) -> CaseShape:
    """`raw` in the shape of a case file of this version. Raises Fault for one thing that is not."""
    try:
        return CaseShape.model_validate(raw)
    except ValidationError as refusal:
        refused = refusal.errors(include_url=False)
    # A mistyped name is refused twice, as missing and as unknown; only the second tells what happened.
    first = next((each for each in refused if each["type"] == "extra_forbidden"), refused[0])
    _blame(first["type"], first["loc"], first["input"], first.get("ctx", {}))


RECORD_HINT = "delete all of [record]; it is written again with the next plan"

_KINDS = {
    "string_type": ("must be text in quotes", 'write it like this: name = "text"'),
    "int_type": ("must be a whole number", "write it without quotes and without a point"),
    "bool_type": ("must be true or false", "write it without quotes, in small letters"),
    "dict_type": ("must be a table", "write [name] on a line of its own, and name = value below it"),
    "model_type": ("must be a table", "write it like this: { name = value }"),
    "literal_error": ("must be text in quotes", 'write it like this: name = "text"'),
    "list_type": ("must be a list of entries", "begin each entry with [[log]] on a line of its own"),
}


def _blame(kind: str, path: Path, given: object, context: dict[str, Any]) -> NoReturn:
    """Raise the Fault for one refusal of the shape, in the words of the file."""
    path = tuple(part for part in path if part != "[key]")
    if path and path[0] == "record":
        at = ".".join(line(str(part), 60) for part in path)
        raise Fault(path, f"'{at}' is not as the advisor writes it", RECORD_HINT)
    name = f"'{line(str(path[-1]), 60)}'" if path else "the file"
    if path and isinstance(path[-1], int):
        name = f"entry {path[-1] + 1} of '{path[0]}'"
    if kind == "missing":
        raise Fault(path, f"{name} is missing", _example(str(path[-1])))
    if kind == "extra_forbidden":
        raise Fault(path, f"there is no {name} here", nearest(str(path[-1]), _fields(path[:-1])))
    if kind == "literal_error" and isinstance(given, str):
        raise Fault(path, f"{name} cannot be '{line(given, 60)}'", nearest(given, _WORDS[str(path[-1])]))
    if kind in ("greater_than_equal", "less_than_equal"):
        raise Fault(path, f"{name} must be from 1 to 5", "1 is the least, 5 the most")
    if kind == "value_error":
        what, _, hint = str(context["error"]).partition("|")
        raise Fault(path, f"{name} {what}", hint)
    what, hint = _KINDS.get(kind, ("is not what belongs here", "compare it with a new case"))
    raise Fault(path, f"{name} {what}", hint)


_WORDS: dict[str, tuple[str, ...]] = {"how": get_args(How), "tape": get_args(TapeName)}

_EXAMPLES = {
    "title": 'add a line title = "the dress, taken in" near the top',
    "garment": 'add a line garment = "..." with the name of the kind of garment near the top',
    "tape": 'add a line tape = "in" (or "cm") near the top',
    "fix": 'add fix = "..." to the choice, or delete the choice',
    "what": 'add what = "..." to the entry, or delete the entry',
}


def _example(name: str) -> str:
    return _EXAMPLES.get(name, "add it, or compare with a new case")


def _fields(path: Path) -> set[str]:
    """The names that may stand in the table at `path`."""
    rows: dict[str, type[BaseModel]] = {"answers": AnswerRow, "choices": ChoiceRow, "log": LogRow}
    rows |= {"limits": WeighRow if path[1:] == ("weigh",) else LimitsRow}
    return set(rows[str(path[0])].model_fields if path else CaseShape.model_fields)
