"""A figure and the formula it came from: no number leaves this package without both.

`@formula` turns a pure function into a `Formula`. It is still called like the function; it also
tells its formula in words, its source and the unit it gives. `figure` calls one and keeps the
record that a trace, a footnote or a reckoning prints.

Units are carried by the annotations: `Mm`, `Ratio`, `Minutes` and the rest are plain `Fraction`
to a type checker and name their unit at run time.
"""

import inspect
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import update_wrapper
from string import Formatter
from typing import Annotated, Any, Generic, Literal, ParamSpec, TypeVar, get_args, get_origin, get_type_hints

from advisor.errors import AdvisorError, KnowledgeError, nearest

Unit = Literal[
    "mm", "mm2", "count", "ratio", "minutes", "degrees", "per_inch", "number", "lb", "lb_per_inch", "word"
]

Mm = Annotated[Fraction, "mm"]
Mm2 = Annotated[Fraction, "mm2"]
Ratio = Annotated[Fraction, "ratio"]
Minutes = Annotated[Fraction, "minutes"]
Degrees = Annotated[Fraction, "degrees"]
PerInch = Annotated[Fraction, "per_inch"]
Number = Annotated[Fraction, "number"]
Lb = Annotated[Fraction, "lb"]
LbPerInch = Annotated[Fraction, "lb_per_inch"]
Count = Annotated[int, "count"]
Word = Annotated[str, "word"]

Value = Fraction | int | str
Show = Callable[[Value, Unit], str]

P = ParamSpec("P")
R_co = TypeVar("R_co", covariant=True)


class FigureError(AdvisorError, ValueError):
    """A formula asked outside the values it holds for. It names the input, never its size."""


@dataclass(frozen=True)
class Figure:
    """One number with its descent.

    `value` is in `unit`; `formula` is a key of `FORMULAS` or `table <name>`; `inputs` holds, in the
    formula's order, the id of each figure it was made from or the bare name of a plain input;
    `given` the same inputs by name and value; `source` a key of the source file or an agreed mark.
    """

    id: str
    value: Value
    formula: str
    inputs: tuple[str, ...]
    source: str
    unit: Unit = "mm"
    given: tuple[tuple[str, "Value | tuple[Value, ...]"], ...] = ()


Plain = Value | tuple[Value, ...]
Given = Value | Figure | tuple[Value, ...] | tuple[Figure, ...]


@dataclass(frozen=True)
class Record:
    """What one call of a formula was: inputs, answer, words, source. Values as in `Formula.units`."""

    formula: str
    inputs: Mapping[str, Plain]
    units: Mapping[str, Unit]
    value: Plain
    gives: Unit
    words: str
    source: str

    def told(self, show: Show | None = None) -> str:
        """The words with every input filled in by `show` (value, unit), exact values by default."""
        tell = show or _exact
        shown = {name: _join(given, self.units[name], tell) for name, given in self.inputs.items()}
        return f"{self.words.format(**shown)} = {_join(self.value, self.gives, tell)}"


class Formula(Generic[P, R_co]):
    """A pure function with its record; calling it calls the function.

    Whole numbers become `Fraction` where a measure is asked; a float is refused, because a length
    that went through a float no longer closes. Raises FigureError, `where` being the formula's id.
    """

    def __init__(self, fn: Callable[P, R_co], id: str, words: str, source: str, gives: Unit) -> None:
        update_wrapper(self, fn)
        self.fn = fn
        self.id = id
        self.words = words
        self.source = source
        self.gives = gives
        self.signature = inspect.signature(fn)
        hints = get_type_hints(fn, include_extras=True)
        self.units: dict[str, Unit] = {name: _unit_of(hints[name]) for name in self.signature.parameters}
        self._check(_unit_of(hints["return"]))

    def _check(self, returned: Unit) -> None:
        named = {field for _, field, _, _ in Formatter().parse(self.words) if field is not None}
        if named != set(self.units):
            odd = ", ".join(sorted(named ^ set(self.units)))
            raise KnowledgeError(
                f"words and inputs of the formula differ: {odd}",
                where=self.id,
                hint="name every input once or more in the words, in braces",
            )
        if returned != self.gives:
            raise KnowledgeError(f"says it gives {self.gives}, returns {returned}", where=self.id)

    def __call__(self, *args: P.args, **kwargs: P.kwargs) -> R_co:
        bound = self.signature.bind(*args, **kwargs)
        for name, given in bound.arguments.items():
            bound.arguments[name] = self._exact_input(name, given)
        try:
            return self.fn(*bound.args, **bound.kwargs)
        except FigureError as refused:
            refused.where = self.id
            raise

    def _exact_input(self, name: str, given: Any) -> Any:
        if isinstance(given, tuple | list):
            return tuple(self._exact_input(name, item) for item in given)
        unit = self.units[name]
        wanted: type = {"count": int, "word": str}.get(unit, Fraction)
        if wanted is Fraction and type(given) is int:
            return Fraction(given)
        if type(given) is not wanted:
            kind = {"count": "a whole number", "word": "a word"}.get(unit, "an exact fraction")
            raise FigureError(
                f"{_spaced(name)} is not {kind}",
                where=self.id,
                hint="lengths and shares come as fractions, never as decimals of the machine",
            )
        return given

    def record(self, **inputs: Given) -> Record:
        """Call by name and keep what was given; FigureError for a name missing or unknown."""
        self._check_names(inputs)
        given = {
            name: self._plain(name, inputs[name]) for name in self.signature.parameters if name in inputs
        }
        bound = self.signature.bind(**given)
        bound.apply_defaults()
        full = {name: self._exact_input(name, item) for name, item in bound.arguments.items()}
        value: Any = self(**full)  # type: ignore[call-arg]  # names were checked above
        return Record(self.id, full, self.units, value, self.gives, self.words, self.source)

    def _check_names(self, inputs: Mapping[str, Given]) -> None:
        for name in inputs:
            if name not in self.units:
                raise FigureError(f"no input called '{name}'", where=self.id, hint=nearest(name, self.units))
        for name, parameter in self.signature.parameters.items():
            if parameter.default is parameter.empty and name not in inputs:
                raise FigureError(f"{_spaced(name)} is missing", where=self.id, hint=f"give it as {name}=")

    def _plain(self, name: str, given: Given) -> Plain:
        if isinstance(given, tuple):
            return tuple(self._one(name, item) for item in given)
        return self._one(name, given)

    def _one(self, name: str, given: Value | Figure) -> Value:
        if not isinstance(given, Figure):
            return given
        if given.unit != self.units[name]:
            raise FigureError(
                f"{_spaced(name)} wants {self.units[name]}, the figure '{given.id}' is {given.unit}",
                where=self.id,
            )
        return given.value


FORMULAS: dict[str, Formula[..., Any]] = {}


def formula(
    id: str, *, words: str, source: str, gives: Unit
) -> Callable[[Callable[P, R_co]], Formula[P, R_co]]:
    """Register a pure function as the formula `id`.

    `words` tells it, each input in braces; `source` is a source key or one of the agreed marks;
    `gives` the unit of the answer. Raises KnowledgeError for an id taken, or words that do not fit.
    """

    def wrap(fn: Callable[P, R_co]) -> Formula[P, R_co]:
        if id in FORMULAS:
            raise KnowledgeError("two formulas carry this id", where=id, hint="give one of them another id")
        made = Formula(fn, id, words, source, gives)
        FORMULAS[id] = made
        return made

    return wrap


def figure(fn: Formula[..., Value], id: str, /, **inputs: Given) -> Figure:
    """Call `fn` by name and keep value, formula, inputs and source under `id`.

    An input may itself be a Figure, and is then recorded by its id. FigureError if its unit does not
    fit, if a name is missing or unknown, or from the formula itself.
    """
    record = fn.record(**inputs)
    if isinstance(record.value, tuple):
        raise FigureError(
            "this formula gives several answers", where=fn.id, hint="call figures() instead of figure()"
        )
    return Figure(
        id, record.value, fn.id, _lineage(record, inputs), fn.source, fn.gives, tuple(record.inputs.items())
    )


def figures(fn: Formula[..., tuple[Value, ...]], id: str, /, **inputs: Given) -> tuple[Figure, ...]:
    """As `figure`, for a formula of several answers: ids are `<id>.1`, `<id>.2` and so on."""
    record = fn.record(**inputs)
    values = record.value if isinstance(record.value, tuple) else (record.value,)
    descent, given = _lineage(record, inputs), tuple(record.inputs.items())
    return tuple(
        Figure(f"{id}.{number}", value, fn.id, descent, fn.source, fn.gives, given)
        for number, value in enumerate(values, start=1)
    )


def _lineage(record: Record, inputs: Mapping[str, Given]) -> tuple[str, ...]:
    names: list[str] = []
    for name in record.inputs:
        given = inputs.get(name)
        parts = given if isinstance(given, tuple) else (given,)
        ids = [part.id for part in parts if isinstance(part, Figure)]
        names.extend(ids or [name])
    return tuple(names)


def _unit_of(hint: Any) -> Unit:
    if get_origin(hint) is Annotated:
        unit: Unit = get_args(hint)[1]
        return unit
    if get_origin(hint) is tuple:
        return _unit_of(get_args(hint)[0])
    raise KnowledgeError(f"no unit in the annotation {hint}", hint="annotate with Mm, Ratio, Count and so on")


def _spaced(name: str) -> str:
    return name.replace("_", " ")


_AFTER: dict[Unit, str] = {
    "mm": " mm",
    "mm2": " mm2",
    "minutes": " min",
    "degrees": " degrees",
    "per_inch": " per inch",
}


def _exact(value: Value, unit: Unit) -> str:
    return f"{value}{_AFTER.get(unit, '')}"


def _join(given: Plain, unit: Unit, show: Show) -> str:
    if isinstance(given, tuple):
        return "(" + ", ".join(show(item, unit) for item in given) + ")"
    return show(given, unit)
