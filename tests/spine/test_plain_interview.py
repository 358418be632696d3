"""The line-by-line interview: what is asked when, and that everything can be taken back."""

from dataclasses import replace
from pathlib import Path

import pytest

from advisor.advise.record import record_of
from advisor.casefile import read_case
from advisor.core.case import Case, Choice, Known
from advisor.core.model import Key
from advisor.interview.plain import start
from advisor.interview.session import Session
from advisor.lengths import read_length
from tests.spine.worlds import BASE, case_of, choosing

LOW = case_of(waist__sits="low", waist__low_by="1 1/4 in")
LEAVE = "general.fixes.leave"


def sitting(case: Case, path: Path, *asked: Key) -> Session:
    """A session in which only the questions `asked` have not been put off."""
    session = Session(BASE, path / "case.toml", case, clock=lambda: "2026-11-25T09:30:00")
    session.put_off = set(BASE.garment(case.garment).questions) - set(asked)
    session.save()
    return session


def talk(session: Session, *typed: str) -> str:
    """Everything said while `typed` is given line by line."""
    said: list[str] = []
    start(session, typed, said.append)
    return "\n".join(said)


def chosen(session: Session) -> Choice:
    """The choice made, its time apart."""
    choice = session.case.choices["waist_low@bodice"]
    assert choice.at == session.clock()
    return replace(choice, at="")


def test_a_choice_taken_back_is_asked_for_again(tmp_path: Path) -> None:
    session = sitting(LOW, tmp_path)
    said = talk(session, "a", "back", "c", "it blouses nicely")
    assert "Taken back: a choice." in said
    assert said.count("1. Waist seam too low") == 2
    assert chosen(session) == Choice(LEAVE, "it blouses nicely")


def test_an_answer_taken_back_while_choosing_is_asked_for_again(tmp_path: Path) -> None:
    session = sitting(case_of(waist__sits="low"), tmp_path, "waist.low_by")
    talk(session, "1 in", "back", "2 in", "c", "it blouses", "quit")
    assert session.case.answers["waist.low_by"].value == read_length("2 in", unit="in")  # type: ignore[union-attr]
    assert chosen(session) == Choice(LEAVE, "it blouses")


def test_a_question_that_only_sizes_comes_after_the_choice(tmp_path: Path) -> None:
    key = "waist.allowance"
    session = sitting(LOW, tmp_path, key)
    due = session.due()
    assert due is not None and due.question.key == key and not due.decides
    said = " ".join(talk(session, "a", *[""] * 9).split())
    assert said.index("Which? A letter") < said.index("This is for the numbers of the plan.")


def test_a_choice_that_is_no_longer_on_offer_is_asked_for_again(tmp_path: Path) -> None:
    session = sitting(choosing(LOW, waist_low__bodice="girth.fixes.back_darts"), tmp_path)
    said = talk(session, "c", "it blouses", *[""] * 9)
    assert "Chosen was: Sew darts into the back" in " ".join(said.split())
    assert session.case.choices["waist_low@bodice"].fix == LEAVE


@pytest.mark.parametrize("reason", ["no \x1b[2J more", "a \u202e b"])
def test_a_reason_that_cannot_be_kept_is_refused_and_asked_for_again(tmp_path: Path, reason: str) -> None:
    session = sitting(LOW, tmp_path)
    said = talk(session, "c", reason, "c", "it is the fashion", "quit")
    assert "character" in said and "\x1b" not in said and "\u202e" not in said
    assert chosen(session) == Choice(LEAVE, "it is the fashion")


def test_a_pinch_can_be_given_anew_before_it_counts(tmp_path: Path) -> None:
    session = sitting(case_of(waist__sits="right", trousers__edge="34 in"), tmp_path, "waist.pinned")
    talk(session, "1 in", "back", "1/2 in", "2", "quit")
    known = session.case.answers["waist.pinned"]
    # A fold is double cloth: 1/2 in deep at two places takes 2 in. Everyday fact, common practice, no source.
    assert isinstance(known, Known) and known.value == read_length("2 in", unit="in")


def test_against_the_advice_a_reason_is_asked_for_until_there_is_one(tmp_path: Path) -> None:
    session = sitting(LOW, tmp_path)
    said = " ".join(talk(session, "c", "", "c", "it is the fashion", *[""] * 9).split())
    assert "It is not the first in rank; that is: raise the waist seam. To choose it all the same, say why." in said
    assert "Chosen against the suggestion: raise the waist seam. Your reason: it is the fashion" in said
    assert said.count("Which? A letter") == 1


def test_the_plan_printed_at_the_end_is_put_on_record(tmp_path: Path) -> None:
    session = sitting(LOW, tmp_path)
    talk(session, "a", *[""] * 30)
    kept = read_case(session.path, BASE.questions()).case
    assert kept.record is not None and kept.record == record_of(BASE, kept, session.plan(), session.clock())
    (tmp_path / "stopped").mkdir()
    stopped = sitting(LOW, tmp_path / "stopped")
    talk(stopped, "quit")
    assert stopped.case.record is None
