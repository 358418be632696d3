"""The app as the screens may use it. A screen asks `host(self)`; it never imports the app's module."""

from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any, Protocol, cast

from textual.screen import Screen

from advisor.errors import AdvisorError

if TYPE_CHECKING:
    # The first screen is up before the engine and the rules are read; only the types are named here.
    from advisor.interview.session import Session
    from advisor.rulebase.base import RuleBase
    from advisor.tui.unsaved import Unsaved


class Host(Protocol):
    """What a screen needs of the app."""

    base: "RuleBase | None"
    session: "Session | None"
    unsaved: "Unsaved | None"
    drafts: dict[str, str]
    keys: Mapping[str, str]
    said: str

    def open_case(self, path: Path, *, example: bool = False) -> None:
        """Open a case and show its questions."""

    def took(self, session: "Session") -> None:
        """Have a case in hand, and show its questions."""

    def say(self, text: str) -> None:
        """Show a message above the keys."""

    def tell(self, fault: AdvisorError) -> None:
        """Show a refusal."""

    def refused(self, fault: AdvisorError, note: str) -> None:
        """Show that something could not be saved; `note` is what to keep for the next start."""

    def action_stage(self, stage: int) -> None:
        """Go to a stage."""

    def action_undo(self) -> None:
        """Take the last answer or choice back."""


def host(screen: Screen[Any]) -> Host:
    """The app a screen belongs to."""
    return cast(Host, screen.app)


def undo_key(screen: Screen[Any]) -> str:
    """The letter that takes things back: hers, if the settings give it one."""
    return host(screen).keys.get("undo", "u")


def session_of(screen: Screen[Any]) -> "Session":
    """The case in hand. Screens past the first are only shown with one."""
    session = host(screen).session
    assert session is not None
    return session
