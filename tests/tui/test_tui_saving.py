"""When saving fails: the answer stays, the message names file, cause and next step, and the next start offers it."""

import errno
import json
import os
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from textual.widgets import Input

from advisor.casefile import answered, read_case, write_case
from advisor.core.case import Choice, Known, Unknown
from advisor.ground import Journal
from advisor.interview.session import Session
from advisor.rulebase.base import RuleBase
from advisor.tui.choices import Choices
from advisor.tui.screens.questions import QuestionsScreen
from advisor.tui.unsaved import Note, Unsaved, _read, answer_note, choice_note
from tests.tui.play import Play, playing


@contextmanager
def full_disk(monkeypatch: pytest.MonkeyPatch, *, only: str = "") -> Iterator[None]:
    """No file whose path holds `only` can be put in its place: the disk is full."""
    real = os.replace

    def replace(source: str | Path, target: str | Path) -> None:
        if only in str(target):
            raise OSError(errno.ENOSPC, "No space left on device")
        real(source, target)

    with monkeypatch.context() as patch:
        patch.setattr(os, "replace", replace)
        yield


async def to_length(play: Play) -> None:
    screen = play.stage
    assert isinstance(screen, QuestionsScreen)
    screen.ask_about("waist.low_by")
    await play.rest()


async def test_a_length_that_could_not_be_saved_stays_and_is_offered_next_time(
    case_file: Callable[..., Path], monkeypatch: pytest.MonkeyPatch, base: RuleBase
) -> None:
    path = case_file()
    before = path.read_bytes()
    async with playing(path, size=(120, 40)) as play:
        await to_length(play)
        with full_disk(monkeypatch):
            await play.type("2 1/2")
        text = play.text()
        for words in ("keeper.toml", "the disk is full", "free some space", "stays on the screen", "offered"):
            assert words in text
        await play.press("escape")
        assert play.app.screen.query_one(Input).value == "2 1/2"
        assert path.read_bytes() == before
        await play.press("ctrl+q")
    async with playing(path, size=(120, 40)) as play:
        assert "not saved then" in play.text() and "2 1/2 in" in play.text()
        await play.press("1")
        assert read_case(path, base.questions()).case.answers["waist.low_by"] == Known(
            Fraction(127, 2), "measured", _at(path, base)
        )
    async with playing(path) as play:
        assert play.name == "QuestionsScreen"


def _at(path: Path, base: RuleBase) -> str:
    answer = read_case(path, base.questions()).case.answers["waist.low_by"]
    assert isinstance(answer, Known)
    return answer.at


async def test_a_word_stays_on_its_line_and_saving_again_works(
    case_file: Callable[..., Path], monkeypatch: pytest.MonkeyPatch, home: Path
) -> None:
    path = case_file()
    async with playing(path) as play:
        with full_disk(monkeypatch):
            await play.press("3")
        assert "the disk is full" in play.text()
        await play.press("escape")
        screen = play.stage
        assert isinstance(screen, QuestionsScreen) and screen.due is not None
        key, words = screen.due.question.key, list(screen.due.question.words)
        assert screen.query_one(Choices).highlighted == 2
        assert list(home.glob("state/journal/*.jsonl"))
        await play.press("enter")
        held = play.app.session.case.answers[key]  # type: ignore[union-attr]
        assert isinstance(held, Known) and held.value == words[2]
        # Saved, so nothing is left to offer.
        assert not list(home.glob("state/journal/*.jsonl"))


async def test_a_choice_that_could_not_be_saved_is_offered_too(
    case_file: Callable[..., Path], monkeypatch: pytest.MonkeyPatch, base: RuleBase
) -> None:
    path = case_file()
    async with playing(path) as play:
        await play.press("f4", "enter")
        with full_disk(monkeypatch):
            await play.press("enter")
        assert "not saved" in play.text()
        await play.press("escape", "ctrl+q")
    async with playing(path) as play:
        assert "the choice: Take the metal off" in play.text()
        await play.press("enter")
        assert len(read_case(path, base.questions()).case.choices) == 1


async def test_left_for_next_time_and_dropped_only_by_another_key(
    case_file: Callable[..., Path], base: RuleBase
) -> None:
    path = case_file()
    with Journal(path) as journal:
        journal.note(answer_note("snaps.state", Unknown()))
        journal.note(answer_note("no.such", Known("x")))
        journal.note("{not json")
        journal.note(json.dumps({"answer": "waist.low_by", "value": "1/0", "length": True}))
    for keys in (("2",), ("3", "3", "escape")):
        async with playing(path) as play:
            assert "cannot say" in play.text() and "no.such" not in play.text()
            await play.press(*keys)
    async with playing(path) as play:
        await play.press("3", "y")
    async with playing(path) as play:
        assert play.name == "QuestionsScreen"
        await play.press("1")
    assert "unknown" not in path.read_text()


async def test_not_even_a_note_says_to_keep_the_window_open(
    case_file: Callable[..., Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        monkeypatch.setattr("advisor.ground.journal._append", _refuse)
        with full_disk(monkeypatch):
            await play.press("1")
        assert "keep this window open" in play.text()


def _refuse(path: Path, row: bytes) -> None:
    raise OSError(errno.ENOSPC, "No space left on device")


@pytest.mark.parametrize("keys", [("y",), ("enter",)])
async def test_another_window_wrote_the_file_and_reading_it_again_is_offered(
    keys: tuple[str, ...], case_file: Callable[..., Path], base: RuleBase
) -> None:
    path = case_file()
    async with playing(path, size=(120, 40)) as play:
        opened = read_case(path, base.questions())
        other = answered(opened.case, "waist.low_by", Known(Fraction(508, 5), "measured"), "2026-11-26T10:00:00")
        write_case(opened, other, path, base.questions())
        theirs = path.read_bytes()
        await play.press("2")
        assert "another program wrote this file" in play.text() and "keeper.toml" in play.text()
        await play.press(*keys)
        assert path.read_bytes() == theirs
        session, screen = play.app.session, play.stage
        assert session is not None and isinstance(screen, QuestionsScreen)
        if keys == ("y",):
            assert session.case.answers == other.answers
            assert screen.query_one(Choices).highlighted == 1  # what was given is still on the line
            await play.press("enter")
            assert len(read_case(path, base.questions()).case.answers) == len(other.answers) + 1
        else:
            assert session.case == opened.case


async def test_a_file_that_is_gone_is_written_again_with_its_comments(case_file: Callable[..., Path]) -> None:
    path = case_file()
    path.write_text("# my own note\n" + path.read_text())
    async with playing(path, size=(120, 40)) as play:
        path.unlink()
        await play.press("2")
        assert "moved or deleted" in play.text()
        await play.press("y")
        assert path.read_text().startswith("# my own note")
        await play.press("enter")
    assert path.read_text().startswith("# my own note")


ANSWERS = st.one_of(
    st.builds(Unknown),
    st.builds(Known, st.sampled_from(["low", "right", "high"])),
)


@given(answer=ANSWERS, reason=st.text(max_size=40))
def test_notes_give_back_what_was_noted(answer: Known | Unknown, reason: str, base: RuleBase) -> None:
    from tests.spine.worlds import case_of

    session = Session(base, Path("x.toml"), case_of(waist__sits="low"))
    assert _read(answer_note("waist.sits", answer), session) == Note("waist.sits", answer)
    length = Known(Fraction(127, 7), "measured", "2026-11-25T09:30:00", "said")
    assert _read(answer_note("waist.low_by", length), session) == Note("waist.low_by", length)
    choice = Choice("waist.fixes.raise_seam", reason)
    assert _read(choice_note("waist_low@bodice", choice), session) == Note("waist_low@bodice", choice)


WORDS = st.sampled_from(["answer", "choice", "fix", "value", "length", "unknown", "waist.sits", "waist.low_by", "1/0"])
ROWS = st.dictionaries(WORDS, WORDS | st.none() | st.booleans() | st.integers() | st.lists(WORDS, max_size=2))


@given(text=st.text(max_size=60) | ROWS.map(json.dumps))
def test_a_journal_anybody_wrote_is_read_without_harm(text: str, base: RuleBase) -> None:
    from tests.spine.worlds import case_of

    note = _read(text, Session(base, Path("x.toml"), case_of(waist__sits="low")))
    assert note is None or isinstance(note, Note)


@given(data=st.data())
def test_undoing_all_is_the_start_and_redoing_all_the_end(data: st.DataObject, base: RuleBase) -> None:
    from tests.spine.worlds import case_of

    session = Session(base, Path("x.toml"), case_of(waist__sits="low"), clock=lambda: "2026-11-25T09:30:00")
    session.save = lambda: None  # type: ignore[method-assign]
    start, names = session.case, []
    for _ in range(data.draw(st.integers(0, 8))):
        before = session.case
        if data.draw(st.booleans()):
            key = data.draw(st.sampled_from(["waist.sits", "snaps.state", "front.kind"]))
            words = list(session.questions[key].words)
            session.answer(key, data.draw(st.sampled_from([None, Unknown(), *map(Known, words)])))
        else:
            session.choose("waist_low@bodice", data.draw(st.none() | st.builds(Choice, st.sampled_from("ab"))), "it")
        names += [session.past[-1][0]] if session.case is not before else []
    end = session.case
    assert [session.undo() for _ in names] == names[::-1]
    assert session.case == start and session.undo() == ""
    assert [session.redo() for _ in names] == names
    assert session.case == end and session.redo() == ""


def test_a_living_window_keeps_its_notes_to_itself(case_file: Callable[..., Path], base: RuleBase) -> None:
    path = case_file()
    session = Session.open(base, path)
    mine, other = Unsaved(path), Unsaved(path)
    mine.note(answer_note("waist.sits", Known("right")))
    assert other.pending(session) == ()
    mine.close()
    assert [note.key for note in other.pending(session)] == ["waist.sits"]
