"""Makes the picture of the Options screen anew: .readme/screen.svg, 100 by 30, on the tests' own example.

    python -m tests.tui.picture

The picture names no address: the fonts it would load from elsewhere are taken out, and so is the maker's mark.
"""

import asyncio
import os
import re
import shutil
import tempfile
from pathlib import Path

from advisor.tui.app import AdvisorApp
from tests.tui.play import EXAMPLE, Play

PICTURE = Path(__file__).resolve().parents[2] / ".readme" / "screen.svg"
SIZE = (100, 30)


async def drawn(path: Path) -> str:
    """The picture of the options for the waist."""
    app = AdvisorApp(path)
    async with app.run_test(size=SIZE) as pilot:
        play = Play(app, pilot)
        while app.session is None:
            await pilot.pause(0.05)
        await pilot.press("f4")
        await play.rest()
        await play.press("down", "down", "enter")
        return app.export_screenshot(title="Alteration advisor")


def without_addresses(picture: str) -> str:
    """The picture without fonts from elsewhere, comments, and marks that change from one making to the next."""
    picture = re.sub(r"@font-face\s*\{.*?\}\s*", "", picture, flags=re.DOTALL)
    picture = re.sub(r"<!--.*?-->\s*", "", picture, flags=re.DOTALL)
    picture = re.sub(r"terminal-\d+", "terminal", picture)
    # Blanks at the start of a text are dropped by some viewers, and then all of it stands too far left.
    return "\n".join(line.rstrip() for line in re.sub(_INDENTED, _moved, picture).splitlines()) + "\n"


_INDENTED = re.compile(
    r'<text class="([^"]*)" x="([\d.]+)" (y="[\d.]+") textLength="([\d.]+)" ([^>]*)>((?:&#160;)+)([^<]*)<'
)


def _moved(match: re.Match[str]) -> str:
    style, x, y, length, clip, blanks, text = match.groups()
    if not text:
        return "<text><"
    count = blanks.count("&#160;")
    each = float(length) / (count + len(re.sub(r"&[^;]*;", "x", text)))
    moved, left = float(x) + count * each, float(length) - count * each
    return f'<text class="{style}" x="{moved:g}" {y} textLength="{left:g}" {clip}>{text}<'


def main() -> None:
    """Make it."""
    with tempfile.TemporaryDirectory() as folder:
        os.environ["ADVISOR_HOME"] = folder
        os.environ.pop("NO_COLOR", None)
        path = Path(folder) / EXAMPLE.name
        shutil.copy(EXAMPLE, path)
        picture = without_addresses(asyncio.run(drawn(path)))
    PICTURE.parent.mkdir(exist_ok=True)
    PICTURE.write_text(picture, encoding="utf-8")
    print(f"{PICTURE}: {len(picture)} bytes")


if __name__ == "__main__":
    main()
