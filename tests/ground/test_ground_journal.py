"""The journal of unsaved answers: a sudden end costs none, and no other window's notes are touched."""

import json
import os
import random
import signal
import stat
from pathlib import Path

import pytest

from advisor.errors import SaveError
from advisor.ground import Journal, unsaved_cases

from .hostile import file_names, sequences
from .inject import KINDS, SPANS, failing, record, system, watched
from .processes import saver, says

NOTES = ("hem.depth = 40", "note = 'sleeve,\nleft'", "waist.round = 700")


@pytest.fixture
def case(quick_folder: Path) -> Path:
    return quick_folder / "cases" / "Wool coat.toml"


@pytest.fixture
def folder(quick_folder: Path) -> Path:
    return quick_folder / "state" / "journal"


def _only(folder: Path) -> Path:
    (path,) = folder.glob("*.jsonl")
    return path


def test_notes_are_kept_until_they_are_cleared(case: Path, folder: Path) -> None:
    with Journal(case, folder=folder) as journal:
        assert journal.pending() == ()
        for note in NOTES:
            journal.note(note)
        assert journal.pending() == NOTES
    with Journal(case, folder=folder) as journal:  # closed without a save
        assert journal.pending() == NOTES
        journal.note("hem.depth = 50")
        assert journal.pending() == (*NOTES, "hem.depth = 50")
        journal.clear()
        assert journal.pending() == ()
        journal.note("cuff.width = 90")
        assert journal.pending() == ("cuff.width = 90",)
        journal.clear()
    assert list(folder.iterdir()) == []


def test_notes_are_private_and_plain(case: Path, folder: Path) -> None:
    journal = Journal(case, folder=folder)
    hostile = [text for text in sequences() if len(text) < 1000]
    for note in hostile:
        journal.note(note)
    path = _only(folder)
    assert stat.S_IMODE(path.stat().st_mode) == 0o600 and stat.S_IMODE(folder.stat().st_mode) == 0o700
    data = path.read_bytes()
    assert all(byte == 10 or 32 <= byte < 127 for byte in data)
    assert [json.loads(row)["text"] for row in data.splitlines() if row] == hostile
    assert journal.pending() == tuple(hostile)


def test_kill_nine_costs_no_note(case: Path, folder: Path) -> None:
    with saver("note", case, folder) as process:
        assert says(process) == "noted"
        with Journal(case, folder=folder) as window:
            assert window.pending() == ()  # a living window's notes are its own
            window.note("cuff.width = 90")
            window.clear()
        assert unsaved_cases(folder) == ()
        process.send_signal(signal.SIGKILL)
        process.wait()
        assert unsaved_cases(folder) == (os.path.realpath(case),)
        with Journal(case, folder=folder) as window:
            assert window.pending() == ("hem.depth = 40", "waist.round = 700", "note = 'sleeve, left'")
            window.clear()
        assert unsaved_cases(folder) == () and list(folder.iterdir()) == []


def test_two_windows_keep_apart(case: Path, folder: Path) -> None:
    first, second = Journal(case, folder=folder), Journal(case, folder=folder)
    first.note("first")
    second.note("second")
    assert (first.pending(), second.pending()) == (("first",), ("second",))
    second.clear()
    assert (first.pending(), second.pending()) == (("first",), ())
    first.close()
    second.clear()  # has not shown these notes to anybody: they stay
    assert second.pending() == ("first",)
    second.clear()
    assert second.pending() == ()


def test_a_journal_that_has_changed_since_it_was_shown_is_not_dropped(case: Path, folder: Path) -> None:
    def leave(note: str) -> None:
        with Journal(case, folder=folder) as window:
            window.note(note)

    leave("old")
    slow = Journal(case, folder=folder)
    assert slow.pending() == ("old",)
    with Journal(case, folder=folder) as quick:
        quick.pending()
        quick.clear()
    leave("new")  # under the same name as the one shown
    slow.clear()
    assert slow.pending() == ("new",)


def test_each_case_has_one_journal_whatever_link_leads_to_it(case: Path, folder: Path) -> None:
    root = case.parent.parent
    case.parent.mkdir()
    case.write_text("")
    (root / "link.toml").symlink_to(case)
    for path, note in ((case, "one"), (root / "Wool coat.toml", "two"), (None, "three")):
        with Journal(path, folder=folder) as journal:
            journal.note(note)
    assert unsaved_cases(folder) == ("", str(root / "Wool coat.toml"), str(case))
    through_link = root / "link.toml"
    for path, note in ((through_link, "one"), (root / "Wool coat.toml", "two"), (None, "three")):
        with Journal(path, folder=folder) as journal:
            assert journal.pending() == (note,)


def test_a_torn_tail_is_passed_over_at_every_length(case: Path, folder: Path) -> None:
    with Journal(case, folder=folder) as journal:
        for note in NOTES:
            journal.note(note)
    path = _only(folder)
    whole = path.read_bytes()
    ends = [at for at, byte in enumerate(whole) if byte == ord("}")]
    for length in range(len(whole) + 1):
        path.write_bytes(whole[:length])
        with Journal(case, folder=folder) as journal:
            assert journal.pending() == NOTES[: sum(end < length for end in ends)]
    assert len(whole) >= 200


def test_notes_after_a_torn_line_are_whole(case: Path, folder: Path) -> None:
    journal = Journal(case, folder=folder)
    journal.note("one")
    path = _only(folder)
    path.write_bytes(path.read_bytes() + b'{"case": "x", "te')
    journal.note("two")
    assert journal.pending() == ("one", "two")


def test_flipped_bytes_never_make_a_false_note(case: Path, folder: Path) -> None:
    with Journal(case, folder=folder) as journal:
        for note in NOTES:
            journal.note(note)
    path = _only(folder)
    whole = path.read_bytes()
    chance = random.Random(1)
    flips = 0
    for at in range(len(whole)):
        for mask in (1, 128, chance.randrange(1, 256)):
            path.write_bytes(whole[:at] + bytes([whole[at] ^ mask]) + whole[at + 1 :])
            with Journal(case, folder=folder) as journal:
                assert set(journal.pending()) <= set(NOTES)
            flips += 1
    assert flips >= 500


def test_rubbish_in_the_folder_does_no_harm(case: Path, folder: Path) -> None:
    journal = Journal(case, folder=folder)
    journal.note("one")
    deep = b"[" * 100_000
    rows = [deep, b'{"case": 1, "text": 2, "sum": 3}', b'{"case": "", "text": "x"}']
    odd = b"\n".join([*rows, b"null", b"[]", b"9" * 5000, b'"x"', b"\xff\xfe"])
    own = _only(folder)
    own.write_bytes(own.read_bytes() + odd)
    (folder / "other-1.jsonl").write_bytes(odd)
    assert journal.pending() == ("one",) and unsaved_cases(folder) == ()


def test_every_call_of_a_note_fails_in_every_way(case: Path, folder: Path) -> None:
    with Journal(case, folder=folder) as journal:
        journal.note("probe")
        calls = record(lambda: journal.note("probe"))
        journal.clear()
    faults = told = 0
    for at, call in enumerate(calls, 1):
        for code in KINDS:
            for span in SPANS:
                with Journal(case, folder=folder) as journal:
                    journal.note("before")
                    with watched(failing(at, call, system(code), span)):
                        try:
                            journal.note("faulty")
                        except SaveError as refusal:
                            told += 1
                            assert "earlier notes are untouched" in refusal.what and refusal.hint
                    journal.note("after")
                    assert journal.pending() in (("before", "after"), ("before", "faulty", "after"))
                    journal.clear()
                faults += 1
    assert faults == len(calls) * len(KINDS) * len(SPANS) >= 70 and told == faults


def test_a_note_written_in_part_is_told(case: Path, folder: Path) -> None:
    journal = Journal(case, folder=folder)
    journal.note("before")
    wrote = 0

    def full(real, args, kwargs):
        nonlocal wrote
        wrote += 1
        if wrote == 1:
            return real(args[0], bytes(args[1])[:9])
        raise system(KINDS[1])()

    with (
        watched(lambda number, name: full if name == "write" else None),
        pytest.raises(SaveError, match="the disk is full"),
    ):
        journal.note("torn")
    journal.note("after")
    assert journal.pending() == ("before", "after")


def test_hostile_case_names_stay_in_the_folder(quick_folder: Path) -> None:
    folder = quick_folder / "state" / "journal"
    for name in file_names():
        with Journal(quick_folder / "cases" / name, folder=folder) as journal:
            journal.note(name)
    found = [path for path in quick_folder.rglob("*") if path.is_file()]
    assert found and all(path.parent == folder for path in found)
    assert len(unsaved_cases(folder)) >= 200


def test_the_usual_place(case: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("ADVISOR_HOME", str(tmp_path / "home"))
    with Journal(case) as journal:
        assert journal.pending() == () and unsaved_cases() == ()
        assert not (tmp_path / "home").exists()  # looking makes nothing
        journal.note("one")
    assert _only(tmp_path / "home" / "state" / "journal").read_text().startswith('{"case": ')
    assert unsaved_cases() == (str(case),)


def test_what_cannot_be_noted_or_read_is_told(case: Path, folder: Path, quick_folder: Path) -> None:
    with pytest.raises(SaveError, match="too long"):
        Journal(case, folder=folder).note("x" * 100_001)
    (quick_folder / "file").write_text("")
    with pytest.raises(SaveError) as refusal:
        Journal(case, folder=quick_folder / "file" / "journal").note("one")
    assert refusal.value.hint
    journal = Journal(case, folder=folder)
    journal.note("one")
    _only(folder).unlink()
    with Journal(case, folder=folder) as window:
        assert window.pending() == () and journal.pending() == ()
