"""What all screens share: plain text that flows with the width, the line that says where one is, the message line."""

from collections.abc import Callable, Iterable
from typing import TYPE_CHECKING, ClassVar

from textual import on
from textual.app import ComposeResult
from textual.containers import Horizontal, VerticalScroll
from textual.events import Click, Resize
from textual.message import Message
from textual.screen import Screen
from textual.timer import Timer
from textual.widgets import Static

from advisor.ground import clean, line
from advisor.report.lines import wrapped_at
from advisor.tui.host import host
from advisor.tui.keyline import KeyLine
from advisor.tui.keys import TEXTS

if TYPE_CHECKING:
    from advisor.core.case import Case

STAGES = ("Cases", "Questions", "Options", "Plan")
LEAST_WIDTH = 20
MOST_WIDTH = 90
SAID_SECONDS = 12.0
TALL = 20

Lines = Callable[[], Iterable[str]]


class Text(Static):
    """Plain text. Square brackets are square brackets, and everything goes through the gate."""

    DEFAULT_CSS = "Text.empty { display: none; }"

    def __init__(self, text: str = "", *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(clean(text, newlines=True), markup=False, id=id, classes=classes)

    def tell(self, text: str) -> None:
        """Show this text; an empty one takes no room."""
        self.set_class(not text, "empty")
        self.update(clean(text, newlines=True))


class Flow(Text):
    """Paragraphs wrapped anew whenever the width changes. They are made by `lines`, within the width there is."""

    def __init__(self, lines: Lines = list, *, id: str | None = None, classes: str | None = None) -> None:
        super().__init__(id=id, classes=classes)
        self.lines = lines

    def flow(self, lines: Lines) -> None:
        """Show these lines from now on."""
        self.lines = lines
        # Hidden it has no width; it gets one, and with it its lines, when there is room for it again.
        self.remove_class("empty")
        self._wrap()

    def on_resize(self, event: Resize) -> None:
        self._wrap()

    def _wrap(self) -> None:
        width = self.size.width
        if width:
            with wrapped_at(max(LEAST_WIDTH, min(width, MOST_WIDTH))):
                self.tell("\n".join(self.lines()).strip("\n"))


class Page(VerticalScroll):
    """Something to scroll, with the same keys as a list."""

    BINDINGS = list(TEXTS)
    DEFAULT_CSS = "Page.empty { display: none; }"


class StageName(Text):
    """The name of one stage; a click goes there."""

    def __init__(self, stage: int, here: bool) -> None:
        name = f"{stage} {STAGES[stage - 1]}"
        # Without a blank before the first and after the last, all of it fits in 40 columns.
        before, after = "" if stage == 1 else " ", "" if stage == len(STAGES) else " "
        super().__init__(
            f"[{name}]" if here else f"{before}{name}{after}", classes=f"s{stage}{' here' if here else ''}"
        )
        self.stage = stage

    def on_click(self, event: Click) -> None:
        event.stop()
        self.post_message(GoToStage(self.stage))


class GoToStage(Message):
    """A stage was clicked."""

    def __init__(self, stage: int) -> None:
        super().__init__()
        self.stage = stage


class Where(Horizontal):
    """The stages in one line, the present one in brackets, and the case as far as there is room."""

    DEFAULT_CSS = """
    Where { height: 1; background: $panel; color: $foreground; }
    Where StageName { width: auto; }
    Where StageName.here { text-style: bold; }
    Where #case { width: 1fr; text-align: right; padding: 0 1; }
    """

    def __init__(self, stage: int, title: str = "") -> None:
        super().__init__()
        self.stage, self.title_text = stage, title

    def compose(self) -> ComposeResult:
        for stage in range(1, len(STAGES) + 1):
            yield StageName(stage, stage == self.stage)
        yield Text("", id="case")

    def on_resize(self, event: Resize) -> None:
        room = event.size.width - sum(len(name) + 4 for name in STAGES) - 2
        self.query_one("#case", Text).tell(line(self.title_text, room) if room > 12 else "")


class Stage(Screen[None]):
    """A screen of the flow: where one is at the top, a message and the keys at the foot."""

    KEYS: ClassVar[str] = ""
    STAGE: ClassVar[int] = 1
    AUTO_FOCUS = ""
    HORIZONTAL_BREAKPOINTS = [(0, "-slim"), (60, "-narrow"), (90, "-wide")]
    VERTICAL_BREAKPOINTS = [(0, "-short"), (TALL, "-tall")]
    DEFAULT_CSS = """
    Stage #said { height: auto; max-height: 3; padding: 0 1; background: $panel; color: $accent; }
    Stage .label { color: $secondary; text-style: bold; height: 1; padding: 0 1; }
    Stage.-short .label { display: none; }
    """

    def __init__(self) -> None:
        super().__init__()
        self._hush: Timer | None = None

    def foot(self) -> ComposeResult:
        """The two lines at the foot of every stage."""
        yield Text("", id="said", classes="empty")
        yield KeyLine(self.KEYS)

    def say_held(self) -> None:
        """Show the message that was meant for the screen about to come: this one."""
        if held := host(self).said:
            self.say(held)

    def say(self, text: str) -> None:
        """Show a message above the keys for a while."""
        for said in self.query("#said").results(Text):
            said.tell(text)
        if self._hush is not None:
            self._hush.stop()
        self._hush = self.set_timer(SAID_SECONDS, self._quiet)

    def _quiet(self) -> None:
        host(self).said = ""
        for said in self.query("#said").results(Text):
            said.tell("")

    @property
    def low(self) -> bool:
        """Whether the window is too low for anything that can be left out."""
        return self.app.size.height < TALL

    def shows(self, case: "Case") -> bool:
        """Whether what was worked out for `case` can still be shown: the screen is up, and the case is still that."""
        session = host(self).session
        return (
            self in self.app.screen_stack and bool(self.query(KeyLine)) and session is not None and session.case is case
        )

    def changed(self, before: "Case") -> None:
        """The case is another one than `before`: something was taken back or given again."""

    async def action_back(self) -> None:
        """One step back: here, to the stage before."""
        if self.STAGE > 1:
            await self.app.run_action(f"stage({self.STAGE - 1})")

    @on(GoToStage)
    async def clicked(self, event: GoToStage) -> None:
        """A stage in the top line was clicked."""
        await self.app.run_action(f"stage({event.stage})")
