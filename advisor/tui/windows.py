"""Windows over a screen: something to read, something to be sure of, a list to pick from, and "too small"."""

from collections.abc import Iterable
from typing import ClassVar, Generic, TypeVar

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Vertical
from textual.screen import ModalScreen
from textual.widgets import OptionList

from advisor.tui.choices import Choices, Row
from advisor.tui.keyline import KeyLine
from advisor.tui.keys import DIGITS, screen_bindings
from advisor.tui.look import Flow, Lines, Page, Text

Answer = TypeVar("Answer")

FRAME = """
{name} {{ align: center middle; background: $background 60%; }}
{name}:ansi {{ background: ansi_default; }}
{name} > .frame {{
    width: 96%; max-width: 94; height: auto; max-height: 94%; background: $surface; color: $foreground;
    border: solid $primary; padding: 0 1;
}}
{name}.-short > .frame {{ width: 100%; max-height: 100%; border: none; }}
"""
SMALL_WIDTH, SMALL_HEIGHT = 40, 12


class Window(ModalScreen[Answer], Generic[Answer]):
    """What all windows share."""

    AUTO_FOCUS = ""

    VERTICAL_BREAKPOINTS = [(0, "-short"), (20, "-tall")]


class Reading(Window[None]):
    """Lines to read. `deep`: what M shows instead, if there is more."""

    BINDINGS: ClassVar[list[BindingType]] = screen_bindings("reading")
    DEFAULT_CSS = FRAME.format(name="Reading") + "Reading Page { height: auto; max-height: 100%; }"

    def __init__(self, lines: Lines, deep: Lines | None = None) -> None:
        super().__init__()
        self.lines, self.deep = lines, deep

    def compose(self) -> ComposeResult:
        with Page(classes="frame"):
            yield Flow(self.lines, id="reading")
        yield KeyLine("reading")

    def on_mount(self) -> None:
        self.query_one(Page).focus()

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        return self.deep is not None if action == "deeper" else True

    def action_deeper(self) -> None:
        """Show all of it."""
        if self.deep is not None:
            self.lines, self.deep = self.deep, None
            self.query_one("#reading", Flow).flow(self.lines)
            self.refresh_bindings()

    def show(self, lines: Lines, deep: Lines | None = None) -> None:
        """Show other lines: what was being worked out is there."""
        self.lines, self.deep = lines, deep
        if self.is_attached:
            self.query_one("#reading", Flow).flow(lines)
            self.refresh_bindings()

    def action_back(self) -> None:
        """Close the window."""
        self.dismiss(None)


class Sure(Window[bool]):
    """Something that takes another key than the one that asked for it; every key but that one leaves all as it is."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("y", "yes", "Yes", show=False),
        Binding("n,escape,enter,q,space", "no", "No", show=False),
    ]
    DEFAULT_CSS = (
        FRAME.format(name="Sure") + "Sure Text { height: auto; } Sure .keys { margin-top: 1; color: $accent; }"
    )

    def __init__(self, lines: Lines, yes: str, no: str) -> None:
        super().__init__()
        self.lines, self.yes, self.no = lines, yes, no

    def compose(self) -> ComposeResult:
        with Page(classes="frame"):
            yield Flow(self.lines)
            yield Text(f"y  {self.yes}\nEsc or Enter  {self.no}", classes="keys")

    def on_mount(self) -> None:
        self.query_one(Page).focus()

    def action_yes(self) -> None:
        """Do it."""
        self.dismiss(True)

    def action_no(self) -> None:
        """Leave it."""
        self.dismiss(False)


class Pick(Window[str | None]):
    """A numbered list: the name of the line taken, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("escape,q", "back", "Back", show=False),
        Binding("enter", "enter", "Take", show=False),
        *DIGITS,
    ]
    DEFAULT_CSS = FRAME.format(name="Pick") + "Pick > .frame { max-width: 60; } Pick Choices { height: auto; }"

    def __init__(self, ask: str, rows: Iterable[Row], at: int = 0) -> None:
        super().__init__()
        self.ask, self.rows, self.at = ask, tuple(rows), at

    def compose(self) -> ComposeResult:
        with Vertical(classes="frame"):
            yield Text(self.ask)
            yield Choices(numbered=True)
            yield Text("Enter or its number takes a line, Esc goes back.")

    def on_mount(self) -> None:
        choices = self.query_one(Choices)
        choices.show(self.rows, self.at)
        choices.focus()

    @on(OptionList.OptionSelected)
    def taken(self, event: OptionList.OptionSelected) -> None:
        """A line was taken."""
        event.stop()
        self.dismiss(event.option.id)

    def action_number(self, number: int) -> None:
        """The line with this number: here too, for who types on before the list is drawn."""
        if number <= len(self.rows):
            self.dismiss(self.rows[number - 1].id)

    def action_enter(self) -> None:
        """The line that stands ready."""
        self.dismiss(self.rows[self.at].id)

    def action_back(self) -> None:
        """Nothing of it."""
        self.dismiss(None)


class Small(ModalScreen[None]):
    """The window is too small for anything else; quitting still works, and what lies below is kept."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("q,ctrl+q", "app.leave", "Quit", show=False)]
    DEFAULT_CSS = "Small { background: $background; } Small Text { width: 100%; height: auto; }"

    def compose(self) -> ComposeResult:
        yield Text(
            f"Please make the window larger: at least {SMALL_WIDTH} by {SMALL_HEIGHT}. Nothing is lost. q quits."
        )


def too_small(width: int, height: int) -> bool:
    """Whether nothing sensible fits."""
    return width < SMALL_WIDTH or height < SMALL_HEIGHT
