"""The app: which case is in hand, which screen shows it, and the keys that work everywhere."""

import os
from collections.abc import Mapping
from functools import partial
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING, ClassVar, cast

from textual.app import App
from textual.binding import BindingType
from textual.command import CommandPalette
from textual.events import Resize
from textual.timer import Timer

from advisor.errors import AdvisorError
from advisor.ground import AlreadyThere, ChangedOnDisk, clean
from advisor.report.lines import para
from advisor.tui.keys import all_ids, app_bindings, keymap_of
from advisor.tui.look import STAGES, Stage
from advisor.tui.palette import Actions
from advisor.tui.screens.cases import CasesScreen
from advisor.tui.settings import Settings, keep_colors, last_colors, read_settings
from advisor.tui.themes import THEMES, first_theme
from advisor.tui.thinking import change_over_often
from advisor.tui.windows import Pick, Reading, Small, Sure, too_small

if TYPE_CHECKING:
    from advisor.interview.session import Session
    from advisor.rulebase.base import RuleBase
    from advisor.tui.unsaved import Unsaved

SETTLE_SECONDS = 0.4
"""How long after a change of size all is laid out once more."""
LATER = ("questions", "options", "plan", "answers", "help")
"""Screens whose modules need the engine; they are read with the rules, after the first screen is up."""


class AdvisorApp(App[None]):
    """The full-screen advisor. `path`: the case to open first, if any."""

    TITLE = "Alteration advisor"
    COMMANDS = {Actions}
    COMMAND_PALETTE_BINDING = "ctrl+p"
    BINDINGS: ClassVar[list[BindingType]] = app_bindings()
    CSS = """
    Screen { background: $background; color: $foreground; }
    ToastRack, SearchIcon { display: none; }
    Input > .input--placeholder { color: $secondary; }
    """

    def __init__(self, path: Path | None = None, settings: Settings | None = None) -> None:
        # Textual decides here, before there is a theme, whether NO_COLOR means greys or the terminal's own two colors.
        super().__init__(ansi_color=True if os.environ.get("NO_COLOR") else None)
        self.waiting = (path, False) if path is not None else None
        self.settings = settings or Settings()
        self.keys: Mapping[str, str] = self.settings.keys
        self.base: RuleBase | None = None
        self.session: Session | None = None
        self.unsaved: Unsaved | None = None
        self.drafts: dict[str, str] = {}
        self.said = ""
        self._settling: Timer | None = None

    def on_mount(self) -> None:
        change_over_often()
        for theme in THEMES:
            self.register_theme(theme)
        self.theme = first_theme(last_colors())
        self.set_keymap(keymap_of(self.keys))
        self.push_screen(CasesScreen())
        # The first screen is drawn before the rules are read: three hundred files take a moment.
        self.call_after_refresh(self.run_worker, self._load, thread=True, group="load")

    def on_resize(self, event: Resize) -> None:
        small = too_small(event.size.width, event.size.height)
        if small and not isinstance(self.screen, Small):
            self.push_screen(Small())
        elif not small and isinstance(self.screen, Small):
            self.pop_screen()
        if self._settling is not None:
            self._settling.stop()
        self._settling = self.set_timer(SETTLE_SECONDS, self._settle)

    def _settle(self) -> None:
        # A screen that comes up in the very moment of a resize can miss it, and would stay drawn for the old size.
        for screen in self.screen_stack:
            screen.post_message(Resize(self.size, self.size))
            screen.refresh(layout=True)

    def _load(self) -> None:
        try:
            from advisor.rulebase.base import the_base

            base = the_base()
            for name in LATER:
                import_module(f"advisor.tui.screens.{name}")
        except AdvisorError as fault:
            self.call_from_thread(self.tell, fault)
            return
        self.call_from_thread(self._loaded, base)

    def _loaded(self, base: "RuleBase") -> None:
        self.base = base
        for screen in self.screen_stack:
            if isinstance(screen, CasesScreen):
                screen.ready(base)
        if self.waiting is not None:
            path, example = self.waiting
            self.open_case(path, example=example)

    def open_case(self, path: Path, *, example: bool = False) -> None:
        """Open the case in `path` and show its questions; begin it if there is none. An example becomes a copy."""
        if self.base is None:
            self.waiting = (path, example)
            self.say("Still reading the rules; it opens in a moment.")
            return
        from advisor.ground import make_folder, new_path
        from advisor.interview.session import Session
        from advisor.tui.shelf import own_folder

        try:
            if not path.exists() and isinstance(self.screen, CasesScreen):
                self.screen.begin(path)
                return
            session = Session.open(self.base, path)
            if example:
                session.path = new_path(make_folder(own_folder()), session.case.title, ".toml")
                self.say("An example: your answers are kept in a copy of it.")
            self.took(session)
        except AdvisorError as fault:
            self.tell(fault)
        except (OSError, ValueError) as fault:
            self.tell(AdvisorError("that is not the name of a file", where=clean(str(path)), hint=clean(str(fault))))

    def took(self, session: "Session") -> None:
        """Have a case in hand, show its questions, and offer what an earlier sitting could not save."""
        from advisor.tui.unsaved import Unsaved

        if self.unsaved is not None:
            self.unsaved.close()
        self.session, self.unsaved = session, Unsaved(session.path)
        self.drafts.clear()
        self.action_stage(2)
        try:
            notes = self.unsaved.pending(session)
        except AdvisorError as fault:
            self.tell(fault)
            return
        if notes:
            from advisor.tui.choices import Row

            told = "\n".join(f"- {note.told(session)}" for note in notes)
            rows = [Row("give", "Put them into the case"), Row("", "Ask again the next time"), Row("drop", "Drop them")]
            self.push_screen(Pick(f"Given last time, but not saved then:\n{told}", rows), self._restore)

    def _restore(self, what: str | None) -> None:
        session, unsaved = self.session, self.unsaved
        if not what or session is None or unsaved is None:
            return
        if what == "drop":
            sure = Sure(lambda: para("They are gone for good then."), "drop them", "keep them for the next time")
            self.push_screen(sure, self._drop)
            return
        try:
            for note in unsaved.pending(session):
                note.give(session)
            unsaved.forget()
        except AdvisorError as fault:
            self.tell(fault)
            return
        self.say("They are in the case now.")
        self.action_stage(self.stage_now())

    def _drop(self, yes: bool | None) -> None:
        if yes and self.unsaved is not None:
            try:
                self.unsaved.forget()
            except AdvisorError as fault:
                self.tell(fault)

    def say(self, text: str) -> None:
        """Show a message above the keys, on this screen or on the one about to come."""
        self.said = text
        if isinstance(self.screen, Stage):
            self.screen.say(text)

    def tell(self, fault: AdvisorError) -> None:
        """Show a refusal until it is read."""
        self.push_screen(Reading(lambda: [row for part in str(fault).splitlines() for row in para(part)]))

    def refused(self, fault: AdvisorError, note: str) -> None:
        """Something could not be saved: keep a note of it, and offer what would help."""
        stays = "What you gave is not saved; it stays on the screen." if note else "Everything is as it was."
        if isinstance(fault, ChangedOnDisk | AlreadyThere):
            gone = isinstance(fault, ChangedOnDisk) and fault.change.found is None
            yes = "write the file again" if gone else "open the file as it is now; then answer again"
            lines = [fault.what, fault.where, stays, self._noted(note)]
            ask = Sure(lambda: [row for part in lines for row in para(part)], yes, "leave everything as it is")
            self.push_screen(ask, partial(self._reopen, gone))
            return
        lines = [fault.what, fault.where, fault.hint, stays, self._noted(note)]
        self.push_screen(Reading(lambda: [row for part in lines for row in para(part)]))

    def _noted(self, note: str) -> str:
        """Note down what could not be saved, and say so."""
        if not note or self.unsaved is None:
            return ""
        try:
            self.unsaved.note(note)
        except AdvisorError as worse:
            return f"It could not be noted for later either ({worse.what}): keep this window open."
        return "It is noted, and offered when the case is opened again."

    def _reopen(self, gone: bool, yes: bool | None) -> None:
        session = self.session
        if not yes or session is None:
            return
        from dataclasses import replace

        from advisor.interview.session import Session

        try:
            if gone and session.opened is not None:
                # As a copy of what was open, so that the comments in the file are kept too.
                session.opened = replace(session.opened, path=session.path.with_name(session.path.name + ".gone"))
                session.save()
                self.say("The file is there again. Give the last answer once more.")
            else:
                self.session = Session.open(session.base, session.path)
                self.say("This is the file as it is now. Give the last answer once more.")
        except AdvisorError as fault:
            self.tell(fault)
        self.action_stage(self.stage_now())

    def action_stage(self, stage: int) -> None:
        """Go to a stage of the flow."""
        if stage != 1 and self.session is None:
            self.say("Open a case first, or begin one.")
            return
        while len(self.screen_stack) > 1 and not isinstance(self.screen, Stage):
            self.pop_screen()
        self.switch_screen(_screen(stage))

    def action_go(self) -> None:
        """Pick a stage; the next one stands ready."""
        from advisor.tui.choices import Row

        if isinstance(self.screen, Stage):
            rows = [Row(str(number), name) for number, name in enumerate(STAGES, 1)]
            at = min(self.stage_now(), len(STAGES) - 1)
            self.push_screen(Pick("Go to which stage?", rows, at), self._gone)

    def _gone(self, stage: str | None) -> None:
        if stage is not None:
            self.action_stage(int(stage))

    def stage_now(self) -> int:
        """The stage of the screen that shows, or lies below a window."""
        for screen in reversed(self.screen_stack):
            if isinstance(screen, Stage):
                return screen.STAGE
        return 1

    def action_help(self) -> None:
        """Help for the screen that shows."""
        if isinstance(self.screen, Stage):
            from advisor.tui.screens.help import help_lines

            self.push_screen(Reading(partial(help_lines, self.screen.KEYS, self.keys)))

    def action_command_palette(self) -> None:
        """The list of all that can be done here."""
        if isinstance(self.screen, Stage):
            self.push_screen(CommandPalette(placeholder="What do you want to do?", id="--command-palette"))

    def action_undo(self) -> None:
        """Take the last answer or choice back."""
        self._step("undo", "Taken back", "There is nothing to take back.")

    def action_redo(self) -> None:
        """Give again what was taken back."""
        self._step("redo", "Given again", "There is nothing to give again.")

    def _step(self, name: str, done: str, nothing: str) -> None:
        if self.session is None or not isinstance(self.screen, Stage):
            return
        before = self.session.case
        try:
            what = self.session.undo() if name == "undo" else self.session.redo()
        except AdvisorError as fault:
            self.refused(fault, "")
            return
        self.say(f"{done}: {what}" if what else nothing)
        if what:
            self.screen.changed(before)

    def action_theme(self) -> None:
        """The next of our themes, kept for the next start."""
        names = [theme.name for theme in THEMES]
        here = names.index(self.theme) if self.theme in names else -1
        self.theme = names[(here + 1) % len(names)]
        keep_colors(self.theme)
        self.say(f"Colors: {self.theme}")

    def action_leave(self) -> None:
        """Quit. Every answer was saved as it was given."""
        if self.unsaved is not None:
            self.unsaved.close()
        self.exit()

    def action_quit_hint(self) -> None:
        """What Ctrl+C says if no text is marked."""
        self.say("Nothing is lost: all that was given is saved. q quits, or Ctrl+Q while typing.")

    action_help_quit = action_quit_hint


def _screen(stage: int) -> Stage:
    if stage == 1:
        return CasesScreen()
    name = STAGES[stage - 1]
    module = import_module(f"advisor.tui.screens.{name.casefold()}")
    return cast(Stage, getattr(module, f"{name}Screen")())


def run_screens(path: Path | None) -> None:
    """Open the full screen, with the case in `path` if one is given. UsageError for settings that are wrong."""
    settings = read_settings(all_ids())
    for name in ("COLUMNS", "LINES"):
        # Where a shell hands these on, they would be believed, and no change of size ever noticed.
        os.environ.pop(name, None)
    mouse = settings.mouse and os.environ.get("ADVISOR_MOUSE", "1") != "0"
    AdvisorApp(path, settings).run(mouse=mouse)
