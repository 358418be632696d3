"""How it looks: contrast, marks beside colors, characters that take one cell, sizes down to too small."""

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from rich.cells import cell_len
from textual.color import Color
from textual.geometry import Region

from advisor.tui.choices import ELSEWHERE, HERE, HERE_IDLE, Choices, Row
from advisor.tui.look import Stage
from advisor.tui.screens.questions import QuestionsScreen
from advisor.tui.themes import CHALK, EVENING, MUSLIN, THEMES, first_theme
from advisor.tui.windows import Small
from tests.tui.picture import PICTURE
from tests.tui.play import Play, playing

# WCAG 2.1, success criterion 1.4.3, "Contrast (Minimum)": 4.5 to 1 for text; relative luminance as defined
# there under "relative luminance" and "contrast ratio" (all from memory).
LEAST = 4.5


def luminance(color: Color) -> float:
    def part(value: int) -> float:
        share = value / 255
        return share / 12.92 if share <= 0.03928 else ((share + 0.055) / 1.055) ** 2.4

    return 0.2126 * part(color.r) + 0.7152 * part(color.g) + 0.0722 * part(color.b)


def contrast(one: Color, other: Color) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_measure_itself() -> None:
    black, white, gray = Color.parse("#000000"), Color.parse("#ffffff"), Color.parse("#767676")
    assert contrast(black, white) == pytest.approx(21)
    # The well-known lightest gray that passes on white, 4.54 (from memory).
    assert contrast(gray, white) == pytest.approx(4.54, abs=0.005)


@pytest.mark.parametrize("theme", THEMES, ids=lambda theme: theme.name)
def test_every_text_role_on_every_ground(theme: object) -> None:
    for role in ("foreground", "primary", "secondary", "accent", "success", "warning", "error"):
        for ground in ("background", "surface", "panel"):
            text, under = Color.parse(getattr(theme, role)), Color.parse(getattr(theme, ground))
            assert contrast(text, under) >= LEAST, (role, ground)


def pairs(play: Play) -> dict[tuple[str, str], str]:
    """Every pair of text color and ground that the widgets on the screen draw, with a text drawn so."""
    found = {}
    for widget in play.app.screen.query("*"):
        if widget.display and widget.size and not widget.children:
            for strip in widget.render_lines(Region(0, 0, *widget.size)):
                for text, style, _ in strip:
                    if text.strip() and style and style.color and style.bgcolor:
                        fore, back = style.color.get_truecolor().hex, style.bgcolor.get_truecolor().hex
                        found[(back, fore) if style.reverse else (fore, back)] = text
    return found


@pytest.mark.parametrize("theme", [EVENING, MUSLIN, CHALK], ids=lambda theme: theme.name)
async def test_every_pair_that_is_drawn(theme: object, case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        play.app.theme = theme.name  # type: ignore[attr-defined]
        steps = (("a",), ("f3",), (), ("f4",), ("enter",), ("f5",), ("j",), ("escape", "question_mark"))
        for keys in steps:
            await play.press(*keys)
            if not keys:
                screen = play.stage
                assert isinstance(screen, QuestionsScreen)
                screen.ask_about("waist.low_by")  # the empty field with its example of what to type
                await play.rest()
            drawn = pairs(play)
            assert drawn
            for (fore, back), text in drawn.items():
                assert contrast(Color.parse(fore), Color.parse(back)) >= LEAST, (keys, text, fore, back)


def test_no_color_takes_the_theme_without_hues(monkeypatch: pytest.MonkeyPatch) -> None:
    assert first_theme("muslin") == "muslin" and first_theme("gone") == "evening"
    monkeypatch.setenv("NO_COLOR", "1")
    assert first_theme("muslin").startswith("ansi")


async def test_the_line_chosen_has_a_mark_and_the_list_with_the_keys_another(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        await play.press("f4")
        lines = "\n".join(play.lines())
        assert lines.count("> 1 ") == 1 and lines.count("- a ") == 1
        await play.press("tab")
        lines = "\n".join(play.lines())
        assert lines.count("- 1 ") == 1 and lines.count("> a ") == 1


async def test_only_plain_characters_and_boxes_are_drawn(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        for keys in (("f2",), ("f3",), ("a",), ("f4",), ("f5",), ("j",), ("escape", "question_mark")):
            await play.press(*keys)
            for char in set("".join(play.lines())):
                # ASCII, box drawing, the blocks of the scroll bar, and the one ellipsis of a title cut short.
                assert ord(char) < 0x7F or 0x2500 <= ord(char) <= 0x259F or char == "\u2026", hex(ord(char))
                assert cell_len(char) == 1
    assert (HERE + HERE_IDLE + ELSEWHERE).isascii()


async def test_too_small_says_so_and_quit_still_works(case_file: Callable[..., Path]) -> None:
    async with playing(case_file()) as play:
        await play.press("f4", "tab")
        for size in ((39, 24), (80, 11), (10, 3), (1, 1)):
            await play.resize(size)
            assert isinstance(play.app.screen, Small)
        await play.resize((39, 11))
        assert "make the window larger" in play.text() and "q quits" in play.text()
        await play.resize((80, 24))
        # Place and focus are as they were.
        assert play.stage.KEYS == "options" and play.app.screen.query_one("#options").has_focus
        await play.resize((30, 8))
        await play.pilot.press("q")
        await play.pilot.pause()
        assert not play.app.is_running


async def test_the_place_survives_every_size(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        await play.press("a", "down", "down")
        chosen = play.app.screen.query_one(Choices).highlighted
        for size in ((40, 15), (80, 24), (40, 12), (60, 20), (200, 50)):
            await play.resize(size)
            screen = play.stage
            assert screen.query_one(Choices).highlighted == chosen and screen.query_one(Choices).has_focus
            assert screen.has_class("-short") == (size[1] < 20) and screen.has_class("-slim") == (size[0] < 60)
            assert any(line.lstrip().startswith("> ") for line in play.lines()), size


async def test_long_lines_hang_under_their_own_text() -> None:
    async with playing(size=(40, 15)) as play:
        choices = play.app.screen.query_one(Choices)
        choices.show([Row("x", "one word after the other " * 4, "a ", "and a second line below it all")])
        await play.rest()
        rows = [line for line in play.lines() if "word" in line or "below" in line]
        assert len(rows) >= 4
        assert all(line.startswith(" " * 5) for line in rows[1:]) and rows[0].startswith(" > a one")


async def test_empty_panes_say_what_to_do() -> None:
    async with playing() as play:
        assert "Begin a new case" in play.text()
        assert isinstance(play.app.screen, Stage)


def test_the_picture_in_the_readme_names_no_address() -> None:
    picture = PICTURE.read_text(encoding="utf-8")
    assert re.findall(r"https?:[^\"')\s]*", picture) == ["http://www.w3.org/2000/svg"]  # the name of the format itself
    assert "url(" not in re.sub(r"url\(#[a-z0-9-]+\)", "", picture) and "font-face" not in picture
    assert "Raise&#160;the&#160;waist&#160;seam" in picture
