"""The plan: its parts, jumping about, saving it as text, sending it to the terminal."""

import re
from collections.abc import Callable
from pathlib import Path

from advisor.report.plan import plan_lines
from advisor.sheet.make import make_sheet
from advisor.tui.screens.plan import PlanScreen, parts_of
from tests.tui.play import Play, playing


def top(play: Play) -> str:
    """The first line of the page."""
    line = next(line for line in play.lines()[1:] if line.strip())
    return re.sub(r"[\u2580-\u259f]", "", line).strip()  # less the scroll bar


async def test_jumping_between_parts(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("f5")
        for size in ((80, 24), (40, 15)):
            await play.resize(size)
            await jump_about(play)


async def jump_about(play: Play) -> None:
    screen = play.stage
    assert isinstance(screen, PlanScreen)
    names = screen.names()
    assert "Have at hand" in names and len(names) >= 6
    assert names[0] == "The lighthouse keeper's overall, act one"
    await play.press("n", "n")
    assert top(play) == names[2]
    await play.press("p")
    assert top(play) == names[1]
    at = names.index("Have at hand")
    await play.press("j", str(at + 1))
    assert "Have at hand" in play.text()
    await play.press("greater_than_sign", "n")
    assert "last part" in play.text()
    await play.press("j", "escape", "less_than_sign")
    assert "The lighthouse keeper's overall" in "\n".join(play.lines()[1:3])


async def test_the_text_saved_is_the_plan_and_a_second_save_asks(case_file: Callable[..., Path]) -> None:
    path = case_file()
    async with playing(path) as play:
        await play.press("f5", "s")
        saved = path.with_suffix(".plan.txt")
        assert str(saved)[-20:] in play.text().replace(" ", "")
        session = play.app.session
        assert session is not None
        assert saved.read_text() == "\n".join(plan_lines(session.base, session.case, session.plan())) + "\n"
        saved.write_text("mine\n")
        await play.press("s", "s")
        assert saved.read_text() == "mine\n"
        await play.press("enter")
        assert saved.read_text() == "mine\n"
        await play.press("s", "y")
        assert saved.read_text() != "mine\n"


async def test_the_sheet_saved_is_the_commands_and_says_how_to_print_it(case_file: Callable[..., Path]) -> None:
    path = case_file()
    async with playing(path) as play:
        await play.press("f5", "f")
        session = play.app.session
        assert session is not None
        sheet = make_sheet(session.base, session.case, session.plan())
        assert path.with_suffix(".pdf").read_bytes() == sheet.data
        assert "actual size" in play.text() and sheet.templates > 0


async def test_copying_never_claims_more_than_it_knows(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("f5", "y")
        text = play.text()
        assert "sent to the terminal" in text and not re.search(r"\bcopied\b", text, re.IGNORECASE)
        assert "Raise the waist seam" in play.app.clipboard


async def test_a_folder_one_may_not_write_in_is_told(case_file: Callable[..., Path], tmp_path: Path) -> None:
    path = case_file()
    async with playing(path) as play:
        await play.press("f5")
        play.app.session.path = tmp_path / "gone" / "keeper.toml"  # type: ignore[union-attr]
        await play.press("s")
        assert play.name == "Reading" and "not saved" in play.text() and "folder" in play.text()


async def test_the_plan_follows_a_choice_and_its_undoing(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        await play.press("f4", "enter", "enter", "f5")
        before = play.text()
        await play.press("u")
        after = play.text()
        assert before.count("nothing was chosen") == after.count("nothing was chosen") - 1


def test_parts_are_cut_at_headings_and_nothing_is_lost() -> None:
    lines = ["Title", "kind", "", "One", "---", "- a", "-- not a heading", "", "Two that", "wraps", "-----", "b"]
    parts = parts_of(lines)
    assert [part[0] for part in parts] == ["Title", "One", "Two that"]
    assert [row for part in parts for row in part] == lines
    assert parts_of([]) == []
