"""Hostile texts on every screen: nothing a terminal would obey gets through, no markup is read, nothing crashes."""

import unicodedata
from collections.abc import Callable
from dataclasses import replace
from pathlib import Path
from random import Random

from textual.geometry import Region
from textual.widgets import Input

from advisor.core.case import Case, Choice, Known
from advisor.errors import UsageError
from advisor.ground import clean, is_clean
from advisor.tui.look import Flow
from advisor.tui.screens.answers import AnswersScreen
from advisor.tui.screens.cases import CasesScreen
from advisor.tui.screens.options import OptionsScreen
from advisor.tui.screens.questions import QuestionsScreen
from advisor.tui.shelf import Found, shelf
from tests.ground.hostile import file_names, markup_strings, sequences
from tests.tui.play import Play, playing

# Every third of them: the gate itself is tried with all; here it is asked whether every text goes through it.
HOSTILE = [*sequences()[::3], *markup_strings()]
BATCH = 240
TALL = (120, 250)


def test_there_is_enough_of_it_and_it_is_hostile() -> None:
    assert len(HOSTILE) - len(markup_strings()) >= 300 and len(markup_strings()) >= 50
    assert not any(is_clean(text) for text in sequences())


def batches(length: int, size: int) -> list[list[str]]:
    """The hostile texts, each cut at `length` (what is cut off is more of the same), a screen full at a time."""
    return [[text[:length] for text in HOSTILE[start : start + size]] for start in range(0, len(HOSTILE), size)]


def drawn(play: Play) -> str:
    """All that the widgets of the screen draw, before any picture is made of it."""
    parts = []
    for widget in play.app.screen.query("*"):
        if widget.display and widget.size and not widget.children:
            strips = widget.render_lines(Region(0, 0, *widget.size))
            parts += [strip.text for strip in strips]
    return "\n".join(parts)


def bad(text: str) -> set[str]:
    """The characters in it that may not be shown."""
    return {hex(ord(char)) for char in text if char != "\n" and unicodedata.category(char) in ("Cc", "Cf", "Cs")}


def assert_harmless(play: Play) -> str:
    text = drawn(play)
    assert not bad(text)
    assert not bad("".join(play.lines()))
    return text


def squeezed(text: str) -> str:
    return "".join(text.split()).replace("\u2026", "")


async def test_titles_and_stories_in_the_list_of_cases() -> None:
    async with playing(size=TALL) as play:
        screen = play.stage
        assert isinstance(screen, CasesScreen)
        for batch in batches(110, BATCH):
            found = [Found(Path(f"{n}.toml"), text, text, True) for n, text in enumerate(batch)]
            screen.list_all(tuple(found))
            await play.rest()
            text = assert_harmless(play)
            # Nothing was read as markup: what is shown is what the gate leaves of it, as far as there is room.
            for hostile in batch:
                if hostile in markup_strings() and len(hostile) < 100:
                    assert squeezed(clean(hostile)) in squeezed(text), hostile


async def test_stories_reasons_and_answers_of_a_case(case_file: Callable[..., Path]) -> None:
    path = case_file()
    async with playing(path, size=TALL) as play:
        session = play.app.session
        assert session is not None
        for batch in batches(40, 500):
            told = {"waist.low_by": replace(held(session.case), told=" ".join(batch))}
            session.case = replace(
                session.case, title=" ".join(batch), story="\n".join(batch), answers={**session.case.answers, **told}
            )
            for screen in (AnswersScreen(), QuestionsScreen("waist.low_by"), QuestionsScreen()):
                play.app.switch_screen(screen)
                await play.rest()
                assert_harmless(play)


def held(case: Case) -> Known:
    answer = case.answers["waist.low_by"]
    assert isinstance(answer, Known)
    return answer


async def test_reasons_and_the_title_at_the_options_and_in_the_plan(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=TALL) as play:
        session = play.app.session
        assert session is not None
        for batch in batches(40, 500):
            reason = " ".join(batch)
            choice = Choice("mending.fixes.take_metal_off", reason)
            session.case = replace(session.case, title=reason, choices={"metal_rusted@snaps": choice})
            for key in ("f4", "f5"):
                await play.press(key)
                assert_harmless(play)
            await play.press("y")
            assert not bad(play.app.clipboard) - {"0x9"}


async def test_refusals_and_messages() -> None:
    async with playing(size=TALL) as play:
        for batch in batches(40, 500):
            text = "\n".join(batch)
            play.app.tell(UsageError(text, where=text[:200], hint=text))
            await play.rest()
            assert_harmless(play)
            play.app.pop_screen()
            play.app.say(text)
            await play.rest()
            assert_harmless(play)


async def test_names_of_files_that_are_asked_for() -> None:
    async with playing(size=(120, 60)) as play:
        for name in file_names()[::3]:
            play.app.open_case(Path(name))
            await play.pilot.pause()
            if play.name == "Reading":
                assert not bad("".join(play.lines())), name
                play.app.pop_screen()
            assert isinstance(play.app.screen, CasesScreen)
            play.app.screen.step = ""


def test_files_named_in_odd_ways_are_listed_without_harm(home: Path) -> None:
    folder = home / "data" / "cases"
    folder.mkdir(parents=True)
    names = [
        name
        for name in file_names()
        if "/" not in name and "\0" not in name and 0 < len(name.encode(errors="ignore")) < 200
    ]
    made = 0
    for name in names:
        try:
            (folder / f"{name}.toml").write_text('garment = "one_piece"\ntitle = ""\n', encoding="utf-8")
            made += 1
        except (OSError, ValueError):
            continue
    assert made > 100
    assert sum(found.path.parent == folder for found in shelf()) > 100


async def test_typed_markup_is_text(case_file: Callable[..., Path]) -> None:
    async with playing(case_file(), size=(120, 40)) as play:
        screen = play.stage
        assert isinstance(screen, QuestionsScreen)
        screen.ask_about("waist.low_by")
        await play.rest()
        for text in ("hem [/2 in] down", "[@click=app.quit]x[/]", "[b]", "[", "\\[b]", "[/x]"):
            await play.type(text)
            assert str(screen.query_one("#fault", Flow).visual).strip()
            screen.query_one("#length", Input).value = ""
        await play.press("f2", "n")
        await play.type("hem [/2 in] [b]down")
        await play.press("1")  # the garment
        await play.press("1")  # the tape
        assert "hem [/2 in] [b]down" in play.text()


def odd_text(rng: Random) -> str:
    """Brackets, line ends, very long words, and letters from anywhere."""
    anywhere = "".join(chr(rng.choice((rng.randrange(0x250), rng.randrange(0x10FFFF)))) for _ in range(20))
    return "".join(rng.choice(("[", "]", "[/x]", "{0}", "\\", "\n", "w" * 10_000, anywhere, " ")) for _ in range(6))


async def test_any_text_in_any_field(case_file: Callable[..., Path]) -> None:
    rng = Random(20261125)
    async with playing(case_file(), size=(80, 24)) as play:
        session = play.app.session
        assert session is not None
        for _ in range(3):
            choice = Choice("mending.fixes.take_metal_off", odd_text(rng))
            session.case = replace(
                session.case, title=odd_text(rng), story=odd_text(rng), choices={"metal_rusted@snaps": choice}
            )
            for screen in (AnswersScreen(), OptionsScreen()):
                play.app.switch_screen(screen)
                await play.rest()
                assert play.app.screen is screen
                assert not bad("".join(play.lines()))
