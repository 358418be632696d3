"""What is written is read back as the same case. Oracles: the standard TOML reader, tomlkit."""

import tomllib
from fractions import Fraction

import tomlkit
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from wardrobe import GARMENTS, LETTERS, STEPS, cases

from advisor.casefile import case_text, parse_case
from advisor.casefile.lines import statements
from advisor.casefile.notation import length_row, lines, quoted
from advisor.casefile.writing import edited
from advisor.core.case import Case
from advisor.lengths import read_length

_slow = settings(deadline=None, derandomize=True, suppress_health_check=[HealthCheck.too_slow])


@settings(_slow, max_examples=1000)
@given(cases)
def test_a_saved_case_reads_back_equal(case: Case) -> None:
    assert parse_case(case_text(case, GARMENTS), GARMENTS) == case


@settings(_slow, max_examples=100)
@given(cases, cases)
def test_a_file_edited_into_another_case_reads_back_as_that(old: Case, new: Case) -> None:
    text = case_text(old, GARMENTS).replace("[limits]", "# hers\n[limits]")
    after = edited(text, new, GARMENTS)
    assert parse_case(after, GARMENTS) == new
    assert "# hers\n[limits]" in after
    assert tomlkit.parse(after).unwrap() == tomllib.loads(after)


@settings(_slow, max_examples=100)
@given(cases)
def test_an_edit_that_changes_nothing_changes_no_byte(case: Case) -> None:
    text = case_text(case, GARMENTS)
    assert edited(text, case, GARMENTS) == text
    assert edited(text.replace("\n", "\r\n"), case, GARMENTS) == text.replace("\n", "\r\n")


@settings(_slow, max_examples=300)
@given(st.integers(0, 100_000), st.sampled_from(STEPS), st.sampled_from(("in", "cm")))
def test_every_length_survives_exactly(count: int, step: Fraction, tape: str) -> None:
    mm = count * step
    row = tomllib.loads("\n".join(f"{name} = {text}" for name, text in length_row(mm, tape).items()))
    if "mm" in row:
        assert Fraction(row["mm"]) == mm
    else:
        assert read_length(row["value"], unit=tape, most=mm) == mm


def test_lengths_are_written_in_the_plainest_form() -> None:
    written = [
        (Fraction("698.5"), "in", {"value": '"27 1/2 in"'}),
        (Fraction("698.5"), "cm", {"value": '"698.5 mm"'}),
        (Fraction(705), "cm", {"value": '"70.5 cm"'}),
        (Fraction(705), "in", {"value": '"705 mm"'}),
        (Fraction(254, 30), "in", {"value": '"1/3 in"'}),
        (Fraction(254, 30) * 4, "cm", {"value": '"1 1/3 in"'}),
        (Fraction("25.4") / 64, "in", {"value": '"1/64 in"'}),
        (Fraction(0), "in", {"value": '"0 in"'}),
        (Fraction(2095, 7), "in", {"mm": '"2095/7"'}),
    ]
    for mm, tape, row in written:
        assert length_row(mm, tape) == row


@settings(_slow, max_examples=250)
@given(st.text(max_size=40), st.text(LETTERS + "\n\t", max_size=40))
def test_strings_mean_to_the_standard_reader_what_was_written(word: str, story: str) -> None:
    if word.isprintable():
        assert tomllib.loads(f"v = {quoted(word)}")["v"] == word
    assert tomllib.loads(f"v = {lines(story)}")["v"] == story


def test_inch_marks_are_not_drowned_in_backslashes() -> None:
    assert quoted('27 1/2"') == "'27 1/2\"'"
    assert quoted("the keeper's") == '"the keeper\'s"'
    assert lines('"Fog!"\nshe said') == '"""\n"Fog!"\nshe said"""'


@settings(_slow, max_examples=100)
@given(cases)
def test_statements_are_where_the_standard_reader_finds_their_values(case: Case) -> None:
    text = case_text(case, GARMENTS)
    raw = tomllib.loads(text)
    for statement in statements(text):
        found = raw
        for name in statement.path:
            found = found[name]
        line = text.split("\n")[statement.row - 1]
        if statement.value:
            start, end = statement.value
            assert tomllib.loads(f"v = {text[start:end]}")["v"] == found
            assert text[statement.start :].startswith(line)
        else:
            assert line.startswith("[") and isinstance(found, dict)
