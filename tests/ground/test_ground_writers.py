"""Two windows and a rude third program on one file: no acknowledged save is ever overwritten unseen.

The check needs nothing of the code under test: for each text it is noted which text it was made from, so
every acknowledged one must be an ancestor of what stands in the file at the end; one overwritten unseen is
not.
"""

import random
from pathlib import Path
from typing import Any

import pytest

from advisor.errors import SaveError
from advisor.ground import ChangedOnDisk, Digest, InUse, create_text, read_text, save_text, saving

from .inject import watched
from .processes import saver

INTERLEAVINGS = 1000
STEPS = 7


class Desk:
    """One file, its windows, and all that was ever acknowledged."""

    def __init__(self, path: Path, chance: random.Random) -> None:
        self.path, self.chance = path, chance
        self.parents: dict[str, str] = {}
        self.acknowledged: list[str] = []
        self.refused = self.saved = 0
        digest = create_text(path, "0")
        self.read: dict[str, tuple[str, Digest]] = {"first": ("0", digest), "second": ("0", digest)}

    def _made_from(self, parent: str) -> str:
        text = str(len(self.parents) + 1)
        self.parents[text] = parent
        return text

    def look(self, who: str) -> None:
        self.read[who] = read_text(self.path)

    def save(self, who: str) -> None:
        parent, digest = self.read[who]
        text = self._made_from(parent)
        try:
            self.read[who] = text, save_text(self.path, text, expect=digest)
        except (ChangedOnDisk, InUse):
            self.refused += 1
            return
        self.acknowledged.append(text)
        self.saved += 1

    def rude(self) -> None:
        """Another program, that takes no lock and truncates in place."""
        text = self._made_from(self.path.read_text())
        self.path.write_text(text)
        self.acknowledged.append(text)

    def interrupted_save(self, who: str, other: str) -> None:
        """A save by `who` with somebody else acting in the middle of it."""
        busy = False
        # Past the last check nobody can be held off who asks for no lock, so the rude one acts before it.
        is_rude = self.chance.random() < 0.4
        rude_moments = ["mkstemp", "write", "fsync"]
        moment: Any = self.chance.choice(rude_moments) if is_rude else self.chance.randint(1, 45)

        def plan(number: int, name: str) -> None:
            nonlocal busy
            if not busy and moment in (number, name):
                busy = True
                self.rude() if is_rude else self.save(other)

        with watched(plan):
            self.save(who)

    def lost(self) -> set[str]:
        """The acknowledged texts that what stands in the file was not made from."""
        line, text = set(), self.path.read_text()
        while text != "0":
            line.add(text)
            text = self.parents[text]
        return set(self.acknowledged) - line


def _play(desk: Desk) -> None:
    for _ in range(STEPS):
        who, other = desk.chance.sample(["first", "second"], 2)
        act = desk.chance.choice(["look", "save", "interrupted", "interrupted", "rude"])
        if act == "look":
            desk.look(who)
        elif act == "save":
            desk.save(who)
        elif act == "interrupted":
            desk.look(who)
            desk.interrupted_save(who, other)
        else:
            desk.rude()


def test_a_thousand_interleavings_lose_nothing(quick_folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(saving, "LOCK_SECONDS", 0)
    played = refused = saved = 0
    for seed in range(INTERLEAVINGS):
        path = quick_folder / "coat.toml"
        path.unlink(missing_ok=True)
        desk = Desk(path, random.Random(seed))
        _play(desk)
        assert desk.lost() == set(), f"overwritten unseen, seed {seed}"
        played, refused, saved = played + 1, refused + desk.refused, saved + desk.saved
    assert played == INTERLEAVINGS
    assert refused >= INTERLEAVINGS and saved >= INTERLEAVINGS  # both outcomes happened, often


def test_the_check_would_notice_a_lost_save(tmp_path: Path) -> None:
    desk = Desk(tmp_path / "coat.toml", random.Random(0))
    desk.save("first")
    desk.path.write_text(desk._made_from("0"))  # as if the second window had overwritten it unseen
    assert desk.lost() == {"1"}


def test_two_processes_count_together(tmp_path: Path) -> None:
    path = tmp_path / "count.toml"
    create_text(path, "0 at first\n")
    with saver("count", path, 60) as one, saver("count", path, 60) as two:
        assert (one.wait(20), two.wait(20)) == (0, 0)
    assert path.read_text().startswith("120 by ")


def test_what_was_found_is_told(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    digest = create_text(path, "mine")
    path.write_text("theirs")
    with pytest.raises(ChangedOnDisk, match="another program wrote this file") as refusal:
        save_text(path, "mine, changed", expect=digest)
    assert refusal.value.change == (digest, read_text(path)[1])
    assert "open the file again" in refusal.value.hint
    path.unlink()
    with pytest.raises(ChangedOnDisk, match="moved or deleted") as refusal:
        save_text(path, "mine, changed", expect=digest)
    assert refusal.value.change == (digest, None) and not path.exists()
    path.write_text("theirs")
    with pytest.raises(SaveError, match="where there was none"):
        save_text(path, "mine", expect=None)
    assert path.read_text() == "theirs"
