"""What all screens share: the line that says where one is, and text that is never taken for markup."""

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.screen import ModalScreen
from textual.widgets import Static

from advisor.ground import clean

STAGES = ("Cases", "Questions", "Options", "Plan")


class Text(Static):
    """Plain text. Square brackets are square brackets."""

    def __init__(self, text: str = "", *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(text, markup=False, id=id, classes=classes)

    def lines(self, lines: list[str]) -> None:
        """Show these lines."""
        self.update("\n".join(lines))


class Where(Text):
    """The stages in one line, the present one in brackets, and the case."""

    DEFAULT_CSS = "Where { height: 1; background: $panel; color: $foreground; text-style: bold; }"

    def __init__(self, stage: int, title: str = "") -> None:
        names = [f"[{n} {name}]" if n == stage else f" {n} {name} " for n, name in enumerate(STAGES, 1)]
        super().__init__("".join(names) + (f"  {clean(title)}" if title else ""))


class Reading(ModalScreen[None]):
    """Lines to read, over the screen; any of the leaving keys goes back."""

    BINDINGS = [("escape,q,enter,w", "dismiss", "Back")]
    DEFAULT_CSS = """
    Reading { align: center middle; }
    Reading > VerticalScroll { width: 95%; max-width: 90; height: 90%; background: $surface; border: solid $primary; padding: 0 1; }
    Reading Text.foot { color: $accent; height: auto; }
    """

    def __init__(self, lines: list[str]) -> None:
        super().__init__()
        self.shown = lines

    def compose(self) -> ComposeResult:
        with VerticalScroll():
            yield Text("\n".join(self.shown).strip("\n"), id="reading")
            yield Text("\nEsc, q or Enter goes back. Arrows and Page keys scroll.", classes="foot")

    def on_mount(self) -> None:
        self.query_one(VerticalScroll).focus()
