"""A look over the garment on the screen: lines are marked, unmarked, taken together, taken back; nothing by blank."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from advisor.casefile import still_to_tell
from advisor.core.case import Case, Unknown
from advisor.interview.agenda import Due
from advisor.interview.over import Over
from advisor.rulebase.base import RuleBase
from advisor.tui.screens import questions
from tests.tui.play import SIZES, Play, playing

KEYS = ("front.kind", "front.edge", "front.old_holes", "snaps.state")


@pytest.fixture(autouse=True)
def a_look(monkeypatch: pytest.MonkeyPatch) -> None:
    """A look at four things until they are dealt with, then a question by itself."""

    def search(base: RuleBase, case: Case, skip: frozenset[str]) -> Iterator[Due | None]:
        asked = base.asked(case)
        items = tuple(asked[key] for key in KEYS if key not in {*case.answers, *skip, *still_to_tell(case)})
        if len(items) > 1:
            yield Due(items[0], True, Over(base.looks["closing"], items))
        else:
            yield Due(asked["cloth.washed"], True)

    monkeypatch.setattr(questions, "search", search)


def said(play: Play) -> dict[str, object]:
    assert play.app.session is not None
    answers = play.app.session.case.answers
    return {key: "?" if isinstance(a, Unknown) else a.value for key, a in answers.items() if key in KEYS}


@pytest.fixture
def file(case_file: Callable[..., Path]) -> Path:
    """The example without what the look tells."""
    path = case_file()
    keep = [row for row in path.read_text().splitlines() if not row.startswith(("kind", "edge =", "state"))]
    path.write_text("\n".join(keep) + "\n")
    return path


@pytest.mark.parametrize("size", SIZES)
async def test_enter_on_the_first_line_takes_all_as_usual(file: Path, size: tuple[int, int]) -> None:
    async with playing(file, size=size) as play:
        assert "0 None of these" in play.text() and "1 [ ]" in play.text()
        await play.press("enter")
        assert said(play) == {
            "front.kind": "closed_end", "front.edge": "finished", "front.old_holes": "none", "snaps.state": "none",
        }  # fmt: skip
        await play.press("u")
        assert said(play) == {} and "None of these" in play.text()


async def test_marks_are_set_and_taken_off_and_taken_together(file: Path) -> None:
    async with playing(file) as play:
        await play.press("1", "3", "1", "4")
        assert "[x] Holes along" in play.text() and "What is marked (2), and nothing else" in play.text()
        await play.press("2", "2", "up")
        await play.press("0")
        assert said(play) == {"front.kind": "closed_end", "front.edge": "finished", "front.old_holes": "there"}
        session = play.app.session
        assert session is not None and still_to_tell(session.case) == ("snaps.state",)
        # Taken back, the list has its marks again: only one of them need be changed.
        await play.press("u")
        assert said(play) == {} and "[x] Holes along" in play.text()


async def test_cannot_say_of_a_line_and_of_all(file: Path) -> None:
    async with playing(file) as play:
        await play.press("down", "down", "x")
        assert "[?] Raw or frayed edges" in play.text()
        await play.press("0")
        assert said(play)["front.edge"] == "?" and said(play)["front.old_holes"] == "none"
        await play.press("u", "down", "down", "x", "0")
        await play.press("u", "less_than_sign", "x")
        assert set(said(play).values()) == {"?"} and len(said(play)) == 4


async def test_later_puts_the_whole_look_off_and_leaves_the_file_alone(file: Path) -> None:
    before = file.read_bytes()
    async with playing(file) as play:
        await play.press("2", "l")
        assert "Put off: a look at what closes it" in play.text()
        await play.press("f4", "f3")
        assert "Which of these" not in play.text()
    assert file.read_bytes() == before
