"""How a case is written: strings, exact lengths and rows as TOML, in the form that is pleasant by hand."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import asdict
from fractions import Fraction

from advisor.core.case import Answer, Case, Choice, Entry, Limits, Record, Stood, TapeName, Unknown
from advisor.core.model import Key, place_of, slot_of
from advisor.lengths import TAPES, on_tape, show
from advisor.lengths.tape import MM_PER

Node = str | Mapping[str, "Node"]
"""A value as TOML text, or a table of such."""

_BARE_KEY = re.compile(r"[A-Za-z0-9_-]+", re.ASCII)
_ESCAPES = {"\\": "\\\\", '"': '\\"', "\n": "\\n", "\t": "\\t", "\r": "\\r"}
_MOST_PLACES = 12
_INCH_PARTS = frozenset({1, 2, 3, 4, 8, 16, 32, 64})


def quoted(text: str) -> str:
    """`text` as a TOML string on one line; in single quotes where they spare backslashes (inch marks)."""
    controls = any(ord(char) < 32 or ord(char) == 127 for char in text)
    if ('"' in text or "\\" in text) and "'" not in text and not controls:
        return f"'{text}'"
    return '"' + "".join(_escaped(char) for char in text) + '"'


def _escaped(char: str) -> str:
    code = ord(char)
    if char in _ESCAPES:
        return _ESCAPES[char]
    return f"\\u{code:04X}" if code < 32 or code == 127 or 0xD800 <= code <= 0xDFFF else char


def lines(text: str) -> str:
    """`text` as a TOML string that keeps its lines."""
    if "\n" not in text:
        return quoted(text)
    inner = "".join(char if char in '"\n\t' else _escaped(char) for char in text)
    # Three quotes in a row, or one before the closing ones, would end the text too early.
    inner = re.sub(r'"{3,}|"+\Z', lambda run: run[0].replace('"', '\\"'), inner)
    return f'"""\n{inner}"""'


def key(*names: str | int) -> str:
    """A (dotted) key; a name that is not bare is quoted."""
    return ".".join(str(name) if _BARE_KEY.fullmatch(str(name)) else quoted(str(name)) for name in names)


def inline(node: Node) -> str:
    """A value on one line: its text, or an inline table."""
    if isinstance(node, str):
        return node
    inside = ", ".join(f"{key(name)} = {inline(inner)}" for name, inner in node.items())
    return f"{{ {inside} }}" if inside else "{}"


def length_row(mm: Fraction, tape: TapeName) -> dict[str, Node]:
    """The member of an answer that gives back exactly `mm`, as the tape shows it if it is on the tape."""
    if on_tape(mm, TAPES[tape]) == mm:
        return {"value": quoted(show(mm, TAPES[tape]))}
    inches = mm / MM_PER["in"]
    ways = [_decimal_mm(mm), _inches(inches)]
    for text in reversed(ways) if tape == "in" else ways:
        if text:
            return {"value": quoted(text)}
    return {"mm": quoted(str(mm))}


def _decimal_mm(mm: Fraction) -> str:
    shifted = mm * 10**_MOST_PLACES
    return f"{_decimal(mm)} mm" if shifted.denominator == 1 else ""


def _inches(inches: Fraction) -> str:
    if inches.denominator not in _INCH_PARTS:
        return ""
    whole, part = divmod(inches, 1)
    return f"{whole or ''} {part or ''} in".strip().replace("  ", " ")


def _decimal(value: Fraction) -> str:
    """`value`, which needs at most 12 decimals, with the decimals it needs."""
    digits = str(int(value * 10**_MOST_PLACES)).rjust(_MOST_PLACES + 1, "0")
    return f"{digits[:-_MOST_PLACES]}.{digits[-_MOST_PLACES:]}".rstrip("0").rstrip(".")


def answer_node(answer: Answer, tape: TapeName) -> Node:
    """An answer: the bare text where nothing else is known about it, else an inline table.

    A word with a point in it is no word but the key of a length that this one was said to equal.
    """
    if isinstance(answer, Unknown):
        return {"unknown": "true", **_given(at=answer.at)}
    value = answer.value
    row = (
        length_row(value, tape)
        if isinstance(value, Fraction)
        else {"value": quoted(f"same as {value}" if "." in value else value)}
    )
    row |= _given(how="" if answer.how == "told" and not answer.at and not answer.told else answer.how)
    row |= _given(at=answer.at, told=answer.told)
    return row["value"] if list(row) == ["value"] else row


def _given(**members: str) -> dict[str, Node]:
    return {name: quoted(text) for name, text in members.items() if text}


def choice_node(choice: Choice) -> Node:
    """A choice and, where there are any, its reason and its time."""
    return {"fix": quoted(choice.fix), **_given(reason=choice.reason, at=choice.at)}


def record_node(record: Record) -> dict[str, Node]:
    """The plan on record: what it rested on, then a table each for what was found, the steps and the cards."""
    heads = ("at", "advisor", "rules", "others", "formulas", "operations", "answers", "advice")
    cards: dict[str, dict[str, Node]] = {}
    for id, mark in sorted(record.cards.items()):
        folder, _, name = id.rpartition(".")
        cards.setdefault(folder, {})[name] = quoted(mark)
    return {
        **_given(**{name: getattr(record, name) for name in heads}),
        "totals": {name: str(number) for name, number in asdict(record.totals).items()},
        "findings": {id: _stood_node(stood) for id, stood in record.findings.items()},
        "steps": {stage: _row(f"{id} {mark}" for id, mark in steps) for stage, steps in record.steps.items()},
        "cards": cards,
    }


def _stood_node(stood: Stood) -> Node:
    lists = {name: _row(fixes) for name, fixes in (("stood", stood.stood), ("out", stood.out)) if fixes}
    return {**_given(took=stood.took), **lists}


def _row(texts: Iterable[str]) -> str:
    return f"[{', '.join(map(quoted, texts))}]"


def entry_node(entry: Entry) -> dict[str, Node]:
    """One line of the log."""
    return {"at": quoted(entry.at), "what": quoted(entry.what)}


def limits_node(limits: Limits) -> dict[str, Node]:
    """The limits: grades and weights always, the others where they limit something."""
    axes = ("difficulty", "durability", "visibility")
    weigh: dict[str, Node] = {axis: _weight(getattr(limits, f"weigh_{axis}")) for axis in axes}
    rows: dict[str, Node] = {"hardest": str(limits.hardest), "weakest": str(limits.weakest), "weigh": weigh}
    if limits.visible != Limits.visible:
        rows["visible"] = str(limits.visible)
    rows.update((name, "false") for name in ("cutting", "buttonholes") if not getattr(limits, name))
    if limits.minutes is not None:
        rows["minutes"] = str(limits.minutes)
    if limits.money is not None:
        rows["money"] = _weight(limits.money)
    if limits.prices:
        rows["prices"] = {what: _weight(price) for what, price in limits.prices}
    return rows


def _weight(weight: Fraction) -> str:
    if weight.denominator == 1:
        return str(weight.numerator)
    exact = (weight * 10**_MOST_PLACES).denominator == 1
    return _decimal(weight) if exact else quoted(str(weight))


def head_nodes(case: Case) -> dict[str, Node]:
    """The lines above the first table."""
    return {
        "version": str(case.version),
        "title": quoted(case.title),
        "garment": quoted(case.garment),
        "tape": quoted(case.tape),
        "story": lines(case.story),
    }


def answers_node(case: Case, order: Mapping[Key, object]) -> dict[str, dict[str, Node]]:
    """The answers by place and slot, in the order of the keys of `order`, others after them."""
    rank = {name: number for number, name in enumerate(order)}
    tables: dict[str, dict[str, Node]] = {}
    for name in sorted(case.answers, key=lambda each: rank.get(each, len(rank))):
        tables.setdefault(place_of(name), {})[slot_of(name)] = answer_node(case.answers[name], case.tape)
    return tables


def case_node(case: Case, order: Mapping[Key, object]) -> dict[str, Node]:
    """The whole case but its log."""
    choices = {finding: choice_node(choice) for finding, choice in case.choices.items()}
    tables: dict[str, Node] = {"choices": choices, "limits": limits_node(case.limits)}
    if case.record is not None:
        tables["record"] = record_node(case.record)
    return {**head_nodes(case), "answers": answers_node(case, order), **tables}


def entry_text(entry: Entry) -> str:
    """One line of the log as the file has it: a header and two lines."""
    rows = "".join(f"{name} = {inline(node)}\n" for name, node in entry_node(entry).items())
    return f"[[log]]\n{rows}"
