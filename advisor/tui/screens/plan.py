"""Stage 4: the plan, to read and to save as text."""

from typing import ClassVar

from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import VerticalScroll
from textual.screen import Screen
from textual.widgets import Footer

from advisor.errors import AdvisorError
from advisor.ground import clean, export_text
from advisor.report.plan import plan_lines
from advisor.tui.host import host, session_of
from advisor.tui.look import Text, Where


class PlanScreen(Screen[None]):
    """The plan of work as it stands."""

    BINDINGS: ClassVar[list[BindingType]] = [Binding("s", "save", "Save text")]
    DEFAULT_CSS = "PlanScreen VerticalScroll { height: 1fr; padding: 0 1; } PlanScreen Text { width: 100%; }"

    def compose(self) -> ComposeResult:
        yield Where(4, session_of(self).case.title)
        with VerticalScroll():
            yield Text("", id="plan")
        yield Footer()

    def on_mount(self) -> None:
        try:
            self.query_one("#plan", Text).update("\n".join(self.lines()))
        except AdvisorError as fault:
            host(self).tell(fault)
        self.query_one(VerticalScroll).focus()

    def lines(self) -> list[str]:
        """The plan as lines."""
        session = session_of(self)
        return plan_lines(session.base, session.case, session.plan())

    def action_save(self) -> None:
        """Save the plan as text beside the case."""
        path = session_of(self).path.with_suffix(".plan.txt")
        try:
            export_text(path, "\n".join(self.lines()) + "\n")
        except AdvisorError as fault:
            host(self).tell(fault)
            return
        self.notify(f"Saved in {clean(str(path))}", markup=False)
