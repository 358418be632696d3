"""Playing the screens in tests: an app at a size, what it shows as lines of text, waiting until it is at rest."""

import html
import re
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

from textual.pilot import Pilot
from textual.widgets import Input

from advisor.tui.app import AdvisorApp
from advisor.tui.look import Stage

EXAMPLE = Path(__file__).parent / "wardrobe" / "lighthouse_keeper.toml"
SIZES = ((80, 24), (120, 40), (40, 15))
WAIT = 20.0

_PLACE = r'x="([\d.]+)" y="[\d.]+" textLength="[\d.]+" clip-path="url\(#[^)]*-line-(\d+)\)"'
_TEXT = re.compile(rf'<text class="[^"]*" {_PLACE}>([^<]*)</text>')


class Play:
    """An app with a pilot."""

    def __init__(self, app: AdvisorApp, pilot: Pilot[Any]) -> None:
        self.app, self.pilot = app, pilot

    async def rest(self) -> None:
        """Wait until the rules are read and nothing is worked out any more."""
        waited = 0.0
        while waited < WAIT:
            await self.pilot.pause()
            busy = [worker for worker in self.app.workers if not worker.is_finished]
            if self.app.base is not None and not busy:
                # Once for what was said last to be laid out, once for the room it takes.
                await self.pilot.pause()
                await self.pilot.pause()
                return
            await self.pilot.pause(0.02)
            waited += 0.02
        raise AssertionError(f"still at work after {WAIT} s: {busy}")

    async def press(self, *keys: str) -> None:
        """Press keys one after the other, resting after each as a person would."""
        for key in keys:
            await self.pilot.press(key)
            await self.rest()

    async def resize(self, size: tuple[int, int]) -> None:
        """Give the window another size."""
        await self.pilot.resize_terminal(*size)
        await self.rest()

    async def type(self, text: str) -> None:
        """Type a text and press Enter. All but the last letter are put in at once, which is faster."""
        field = self.app.focused
        assert isinstance(field, Input)
        field.insert_text_at_cursor(text[:-1])
        await self.pilot.press(NAMES.get(text[-1], text[-1]))
        await self.press("enter")

    def lines(self) -> list[str]:
        """What the screen shows, line by line."""
        return shown(self.app)

    def text(self) -> str:
        """What the screen shows, as one text with single blanks."""
        return " ".join(" ".join(self.lines()).split())

    @property
    def stage(self) -> Stage:
        """The stage that shows, under any window."""
        return next(screen for screen in reversed(self.app.screen_stack) if isinstance(screen, Stage))

    @property
    def name(self) -> str:
        """What kind of screen is on top."""
        return type(self.app.screen).__name__


NAMES = {" ": "space", ".": "full_stop", "?": "question_mark", "]": "right_square_bracket"}


@asynccontextmanager
async def playing(path: Path | None = None, size: tuple[int, int] = (80, 24), **more: Any) -> AsyncIterator[Play]:
    """The app at this size, with the case in `path` if one is given, at rest."""
    app = AdvisorApp(path, **more)
    async with app.run_test(size=size) as pilot:
        play = Play(app, pilot)
        await play.rest()
        yield play


def shown(app: AdvisorApp) -> list[str]:
    """The text of the screen, read off the picture Textual makes of it (the one public way to it)."""
    picture = app.export_screenshot()
    rows: dict[int, list[tuple[float, str]]] = {}
    width = 12.2
    for x, row, text in _TEXT.findall(picture):
        rows.setdefault(int(row), []).append((float(x), html.unescape(text).replace("\xa0", " ")))
    lines = []
    for number in range(app.size.height):
        line = ""
        for x, text in sorted(rows.get(number, [])):
            line = line.ljust(round(x / width)) + text
        lines.append(line.rstrip())
    return lines
