"""The steps that change a case: each hands back another, blank erases nothing, and the log tells."""

from fractions import Fraction

import pytest

from advisor.casefile import answered, chosen, new_case
from advisor.core.case import Case, Choice, Entry, Known, Unknown
from advisor.errors import CaseError

NOW, LATER = "2026-11-25T09:30:00", "2026-11-25T10:00:00"


def test_a_new_case_has_nothing_answered() -> None:
    assert new_case("Apron", "apron", "cm") == Case(garment="apron", title="Apron", tape="cm")
    for title, tape, what in [
        (" ", "in", "needs a title"),
        ("a\x1bb", "in", "a control character"),
        ("x" * 201, "in", "at most 200"),
        ("x", "inch", "no such tape"),
    ]:
        with pytest.raises(CaseError, match=what):
            new_case(title, "apron", tape)


def test_an_answer_is_dated_and_logged_without_its_measure() -> None:
    old = new_case("Apron", "apron", "cm")
    new = answered(old, "bib.depth", Known(Fraction(300), "measured"), NOW)
    assert new.answers == {"bib.depth": Known(Fraction(300), "measured", NOW)}
    assert new.log == (Entry(NOW, "bib.depth: measured"),)
    assert old.answers == {} and old.log == ()


def test_an_answer_keeps_its_own_date() -> None:
    new = answered(new_case("Apron", "apron", "cm"), "bib.depth", Unknown(NOW), LATER)
    assert new.answers == {"bib.depth": Unknown(NOW)} and new.log == (Entry(LATER, "bib.depth: cannot say"),)


def test_none_takes_an_answer_back_and_a_blank_does_not() -> None:
    new = answered(new_case("Apron", "apron", "cm"), "ties.kind", Known("sewn"), NOW)
    for blank in ("", "  ", "\t"):
        assert answered(new, "ties.kind", Known(blank), LATER) is new
    back = answered(new, "ties.kind", None, LATER)
    assert back.answers == {} and back.log[-1] == Entry(LATER, "ties.kind: taken back")
    assert answered(back, "ties.kind", None, LATER) is back


def test_the_same_answer_again_is_no_change_and_a_later_one_is() -> None:
    new = answered(new_case("Apron", "apron", "cm"), "ties.kind", Known("sewn"), NOW)
    assert answered(new, "ties.kind", Known("sewn"), NOW) is new
    again = answered(new, "ties.kind", Known("sewn"), LATER)
    assert again.answers == {"ties.kind": Known("sewn", "told", LATER)}
    assert again.log[-1] == Entry(LATER, "ties.kind: told, again")


def test_a_choice_is_made_changed_and_withdrawn() -> None:
    case = new_case("Apron", "apron", "cm")
    first = chosen(case, "too_long@ties", Choice("ties.fixes.cut"), NOW)
    second = chosen(first, "too_long@ties", Choice("ties.fixes.knot", "no scissors"), LATER)
    none = chosen(second, "too_long@ties", None, LATER)
    assert (case.choices, first.choices) == ({}, {"too_long@ties": Choice("ties.fixes.cut", at=NOW)})
    assert second.choices == {"too_long@ties": Choice("ties.fixes.knot", "no scissors", LATER)}
    assert none.choices == {}
    assert [entry.what for entry in none.log] == [
        "too_long@ties: ties.fixes.cut chosen",
        "too_long@ties: ties.fixes.knot chosen",
        "too_long@ties: choice withdrawn",
    ]
    assert chosen(none, "too_long@ties", None, LATER) is none
    assert chosen(second, "too_long@ties", second.choices["too_long@ties"], LATER) is second
    assert chosen(second, "too_long@ties", Choice("ties.fixes.knot", "no scissors"), NOW) is second
