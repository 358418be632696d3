"""Our own colors: a dark, a light and a high-contrast theme, and one that leaves all colors to the terminal.

Meaning is never told by color alone; a test holds every pair of text and ground at 4.5 to 1.
"""

import os

from textual.theme import Theme

EVENING = Theme(
    name="evening",
    dark=True,
    primary="#9ecbff",
    secondary="#c8b6ff",
    accent="#ffd58a",
    foreground="#eceff4",
    background="#14181f",
    surface="#1b212b",
    panel="#262e3b",
    success="#a6e3a1",
    warning="#ffd58a",
    error="#ff9b9b",
)
MUSLIN = Theme(
    name="muslin",
    dark=False,
    primary="#1c4f8a",
    secondary="#5a3b8c",
    accent="#7a4a00",
    foreground="#1a1d21",
    background="#fbfaf6",
    surface="#f2efe6",
    panel="#e4dfd0",
    success="#1d5e2a",
    warning="#7a4a00",
    error="#9c1c1c",
)
CHALK = Theme(
    name="chalk",
    dark=True,
    primary="#ffffff",
    secondary="#ffffff",
    accent="#ffff00",
    foreground="#ffffff",
    background="#000000",
    surface="#000000",
    panel="#000000",
    success="#ffffff",
    warning="#ffff00",
    error="#ffffff",
)
THEMES = (EVENING, MUSLIN, CHALK)


def first_theme(last: str) -> str:
    """The theme to start with: the `last` one chosen; with NO_COLOR set, the one that leaves colors to the terminal."""
    if os.environ.get("NO_COLOR"):
        return "ansi-dark"
    return last if last in {theme.name for theme in THEMES} else EVENING.name
