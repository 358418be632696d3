"""The app as the screens may use it. A screen asks `host(self)`; it never imports the app's module."""

from pathlib import Path
from typing import Protocol, cast

from textual.screen import Screen

from advisor.errors import AdvisorError
from advisor.interview.session import Session
from advisor.rulebase.base import RuleBase


class Host(Protocol):
    """What a screen needs of the app."""

    base: RuleBase | None
    session: Session | None

    def open_case(self, path: Path) -> None:
        """Open a case and show its questions."""

    def tell(self, fault: AdvisorError) -> None:
        """Show a refusal."""

    def action_stage(self, stage: int) -> None:
        """Go to a stage."""

    def action_undo(self) -> None:
        """Take the last answer or choice back."""


def host(screen: Screen[None]) -> Host:
    """The app a screen belongs to."""
    return cast(Host, screen.app)


def session_of(screen: Screen[None]) -> Session:
    """The case in hand. Screens past the first are only shown with one."""
    session = host(screen).session
    assert session is not None
    return session
