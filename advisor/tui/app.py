"""The app: which case is in hand, which screen shows it, and the keys that work everywhere."""

import os
from pathlib import Path
from typing import ClassVar

from textual.app import App
from textual.binding import Binding, BindingType
from textual.screen import Screen

from advisor.errors import AdvisorError
from advisor.ground import clean
from advisor.interview.session import Session
from advisor.rulebase.base import RuleBase
from advisor.tui.look import Reading
from advisor.tui.screens.cases import CasesScreen
from advisor.tui.screens.help import help_lines
from advisor.tui.screens.options import OptionsScreen
from advisor.tui.screens.plan import PlanScreen
from advisor.tui.screens.questions import QuestionsScreen
from advisor.tui.themes import THEMES, first_theme

LEAST_SIZE = (40, 12)


class AdvisorApp(App[None]):
    """The full-screen advisor. `path`: the case to open first, if any."""

    TITLE = "Alteration advisor"
    ENABLE_COMMAND_PALETTE = True
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("1", "stage(1)", "Cases", show=False),
        Binding("2", "stage(2)", "Questions", show=False),
        Binding("3", "stage(3)", "Options", show=False),
        Binding("4", "stage(4)", "Plan", show=False),
        Binding("question_mark,f1,h", "help", "Help", key_display="?"),
        Binding("q", "leave", "Quit"),
        Binding("u", "undo", "Undo"),
        Binding("t", "theme", "Colors", show=False),
        Binding("ctrl+q", "leave", "Quit", show=False),
    ]
    HORIZONTAL_BREAKPOINTS = [(0, "-narrow"), (90, "-wide")]
    CSS = "Screen { background: $background; color: $foreground; }"

    def __init__(self, path: Path | None = None) -> None:
        super().__init__()
        self.first_path = path
        self.base: RuleBase | None = None
        self.session: Session | None = None

    def on_mount(self) -> None:
        for theme in THEMES:
            self.register_theme(theme)
        self.theme = first_theme()
        self.push_screen(CasesScreen())
        # The first screen is drawn before the rules are read: three hundred files take a moment.
        self.run_worker(self._load, thread=True, exclusive=True)

    def _load(self) -> None:
        from advisor.rulebase.base import the_base

        try:
            base = the_base()
        except AdvisorError as fault:
            self.call_from_thread(self.tell, fault)
            return
        self.call_from_thread(self._loaded, base)

    def _loaded(self, base: RuleBase) -> None:
        self.base = base
        if self.first_path is not None:
            self.open_case(self.first_path)
        elif isinstance(self.screen, CasesScreen):
            self.screen.ready()

    def open_case(self, path: Path) -> None:
        """Open the case in `path` and show its questions; begin it if there is none."""
        if self.base is None:
            self.notify("Still reading the rules; a moment.", markup=False)
            return
        try:
            if path.exists():
                self.session = Session.open(self.base, path)
                self.action_stage(2)
            elif isinstance(self.screen, CasesScreen):
                self.screen.begin(path)
        except AdvisorError as fault:
            self.tell(fault)

    def tell(self, fault: AdvisorError) -> None:
        """Show a refusal until it is read."""
        self.push_screen(Reading(clean(str(fault), newlines=True).splitlines()))

    def action_stage(self, stage: int) -> None:
        """Go to a stage of the flow."""
        if stage != 1 and self.session is None:
            self.notify("Open or begin a case first.", markup=False)
            return
        if isinstance(self.screen, Reading):
            self.pop_screen()
        screens: dict[int, type[Screen[None]]] = {
            1: CasesScreen, 2: QuestionsScreen, 3: OptionsScreen, 4: PlanScreen,
        }  # fmt: skip
        self.switch_screen(screens[stage]())

    def action_help(self) -> None:
        """Help for the screen that shows."""
        if not isinstance(self.screen, Reading):
            self.push_screen(Reading(help_lines(self, self.screen)))

    def action_undo(self) -> None:
        """Take the last answer or choice back."""
        if self.session is None:
            return
        try:
            what = self.session.undo()
        except AdvisorError as fault:
            self.tell(fault)
            return
        self.notify(f"Taken back: {clean(what)}" if what else "There is nothing to take back.", markup=False)
        if what and self.session is not None:
            self.action_stage(self.stage_now())

    def stage_now(self) -> int:
        """The stage of the screen that shows."""
        for stage, kind in ((2, QuestionsScreen), (3, OptionsScreen), (4, PlanScreen)):
            if isinstance(self.screen, kind):
                return stage
        return 1

    def action_theme(self) -> None:
        """The next of our themes."""
        names = [theme.name for theme in THEMES]
        here = names.index(self.theme) if self.theme in names else -1
        self.theme = names[(here + 1) % len(names)]
        self.notify(f"Colors: {self.theme}", markup=False)

    def action_leave(self) -> None:
        """Quit. Every answer was saved as it was given."""
        self.exit()

    def action_help_quit(self) -> None:
        """What Ctrl+C says: nothing is lost, and how to quit."""
        self.notify("Everything is saved. Press q (or Ctrl+Q while typing) to quit.", markup=False)


def run_screens(path: Path | None) -> None:
    """Open the full screen, with the case in `path` if one is given."""
    mouse = os.environ.get("ADVISOR_MOUSE", "1") != "0"
    AdvisorApp(path).run(mouse=mouse)
