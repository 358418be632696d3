"""What a formula says about itself is true: its words, its worked number, its source, its refusals."""

import re
import tomllib
from fractions import Fraction
from pathlib import Path
from typing import Any

import pytest
from worked_numbers import reckon, worked

from advisor.figures import FORMULAS, INCH, TABLES, FigureError, Formula

SOURCES = tomllib.loads((Path(__file__).parents[2] / "rules" / "sources.toml").read_text(encoding="utf-8"))
MARKS = {"common-practice", "from-memory"}
SEEN = {"whole", "page", "excerpt", "second-hand"}

ONLY_TOLD = {
    "buttons.ligne_nearest",
    "buttons.places",
    "buttons.tacks_between",
    "darts.closing_angle",
    "darts.from_center",
    "darts.length_needed",
    "darts.most_each",
    "darts.most_for_length",
    "darts.skirt_share",
    "ease.crotch_depth",
    "estimate.sum_expected",
    "estimate.sum_spread",
    "gathers.called",
    "gathers.ease_most",
    "gathers.ease_sure",
    "gathers.rows_at",
    "pleats.fold_lines",
    "seams.by_shares",
    "seams.evenly",
    "seams.in_order",
    "zippers.label_length",
    "zippers.stock_longer",
    "zippers.stock_shorter",
}
"""Formulas whose words tell a choice, a table or a row of answers, and cannot be reckoned as they stand."""

MAY_BE_NEGATIVE = {
    ("ease.evidence_apart", "measured"),
    ("ease.evidence_apart", "pinned"),
    ("ease.target", "wanted_ease"),
    ("ease.too_big", "wanted_ease"),
    ("trunk.sides_differ", "left"),
    ("trunk.sides_differ", "right"),
    ("waist.band_finished", "ease"),
    ("buttons.gap_even", "first"),
    ("buttons.places", "first"),
}
"""Amounts either way, ease of stretch cloth, places measured from a line below the first button."""

every_formula = pytest.mark.parametrize("formula", FORMULAS.values(), ids=lambda formula: formula.id)


@every_formula
def test_worked_number_is_right(formula: Formula[..., Any]) -> None:
    inputs, answer = worked(formula)
    assert formula(**inputs) == answer
    assert formula.record(**inputs).value == answer


@every_formula
def test_words_reckon_to_the_answer(formula: Formula[..., Any]) -> None:
    inputs, answer = worked(formula)
    if formula.id in ONLY_TOLD:
        with pytest.raises((SyntaxError, KeyError)):
            reckon(formula.words, inputs)
        return
    assert abs(reckon(formula.words, inputs) - answer) <= Fraction(1, 1000)


@every_formula
def test_docstring_and_source(formula: Formula[..., Any]) -> None:
    told = " ".join((formula.__doc__ or "").split())
    assert len(told) > 60
    if formula.source in SOURCES:
        assert re.search(rf"\bSources? .*\b{re.escape(formula.source)}\b", told), "the docstring names its source"
    else:
        assert formula.source in MARKS
        assert re.search("Common practice|From memory|[Gg]eometry|By definition", told)


@every_formula
def test_refusals(formula: Formula[..., Any]) -> None:
    """Less than nothing is refused by name, a float always, and no refusal repeats a measure."""
    inputs, _ = worked(formula)
    for name, given in inputs.items():
        if formula.units[name] == "word":
            with pytest.raises(FigureError, match=f"no .* called '{'velours'}'"):
                formula(**(inputs | {name: "velours"}))
            continue
        with pytest.raises(FigureError):
            formula(**(inputs | {name: 1.5}))
        wrong = (Fraction(-98765, 100),) * len(given) if isinstance(given, tuple) else Fraction(-98765, 100)
        if formula.units[name] == "count":
            wrong = -98765
        if (formula.id, name) in MAY_BE_NEGATIVE:
            formula(**(inputs | {name: -INCH / 8}))
            continue
        with pytest.raises(FigureError) as refused:
            formula(**(inputs | {name: wrong}))
        assert refused.value.where == formula.id
        assert "98765" not in str(refused.value) and "987.65" not in str(refused.value)


def test_tables_cite_known_sources_in_order() -> None:
    for table in TABLES.values():
        assert table.about
        for word, rows in table.rows.items():
            assert rows, word
            for row in rows:
                assert row.source in SOURCES or row.source in MARKS, f"{table.name} {word}"
                assert row.least is not None or row.most is not None
                assert row.least is None or row.most is None or 0 <= row.least <= row.most


def test_source_records_are_whole() -> None:
    for key, record in SOURCES.items():
        assert record["title"] and record["quality"], key
        assert record["seen"] in SEEN, key
        assert record["seen"] == "page" or "page" not in record, f"{key}: a page number only where it was seen"
