"""Stage 1: open a case, begin one, or look at an example."""

import os
from pathlib import Path
from typing import TYPE_CHECKING, ClassVar

from textual import on, work
from textual.app import ComposeResult
from textual.binding import BindingType
from textual.containers import Horizontal
from textual.widgets import Input, OptionList

from advisor.errors import AdvisorError
from advisor.ground import clean
from advisor.report.lines import para
from advisor.tui.choices import Choices, Row
from advisor.tui.host import host
from advisor.tui.keys import DIGITS, screen_bindings
from advisor.tui.look import Flow, Page, Stage, Text, Where
from advisor.tui.shelf import Found, own_folder, shelf, where_kept

if TYPE_CHECKING:
    from advisor.rulebase.base import RuleBase

NEW = "new"
ASK_TITLE = "What shall the case be called?"
ASK_FILE = "Which file? Its name, with the folder if it is not in this one."
WELCOME = "Which case? Begin one, go on with one, or look at an example."


class CasesScreen(Stage):
    """The list of cases, and the three short steps of beginning one."""

    KEYS = "cases"
    STAGE = 1
    BINDINGS: ClassVar[list[BindingType]] = [*screen_bindings("cases"), *DIGITS]
    DEFAULT_CSS = """
    CasesScreen #ask { margin: 1 1 0 1; height: auto; text-style: bold; }
    CasesScreen.-short #ask { margin: 0 1; }
    CasesScreen Choices { height: 1fr; min-height: 4; margin-top: 1; }
    CasesScreen.-short Choices { margin-top: 0; }
    CasesScreen #field { height: 1; margin: 1 1; display: none; }
    CasesScreen #field Text { width: 2; }
    CasesScreen #field Input { width: 1fr; background: $panel; }
    CasesScreen.asking #field { display: block; }
    CasesScreen.asking Choices { display: none; }
    CasesScreen Page { height: auto; max-height: 35%; padding: 0 1; border-top: solid $primary; }
    CasesScreen.asking Page, CasesScreen.-short Page { display: none; }
    """

    def __init__(self) -> None:
        super().__init__()
        self.found: tuple[Found, ...] = ()
        self.step = ""
        self.given: dict[str, str] = {}
        self.path: Path | None = None

    def compose(self) -> ComposeResult:
        yield Where(1)
        yield Text(WELCOME, id="ask")
        yield Choices(numbered=True)
        with Horizontal(id="field"):
            yield Text("> ")
            yield Input(id="typed", max_length=200, compact=True)
        with Page(can_focus=False):
            yield Flow(id="story")
        yield from self.foot()

    def on_mount(self) -> None:
        self.say_held()
        self.list_all(())
        if host(self).base is None:
            self.say("Reading the rules...")
        self.look()

    @work(thread=True)
    def look(self) -> None:
        """Look which cases there are."""
        found = shelf()
        self.app.call_from_thread(self.list_all, found)

    def ready(self, base: "RuleBase") -> None:
        """The rules are read."""
        self.say(f"{len(base.rules)} rules and {len(base.fixes)} fixes are read.")

    def list_all(self, found: tuple[Found, ...]) -> None:
        """Show what there is."""
        self.found = found
        if self.step or not self.query(Choices):
            return
        rows = [Row(NEW, "Begin a new case")]
        for number, case in enumerate(found):
            rows.append(Row(str(number), ("Example: " if case.example else "") + case.title, below=where_kept(case)))
        choices = self.query_one(Choices)
        choices.show(rows, choices.highlighted or 0)
        self.show_list(WELCOME)

    def show_list(self, ask: str) -> None:
        """The list in place of the field, under this question."""
        self.remove_class("asking")
        self.query_one("#ask", Text).tell(ask)
        self.query_one(Choices).focus()

    @on(OptionList.OptionHighlighted)
    def story(self, event: OptionList.OptionHighlighted) -> None:
        """Tell what the case on the line is about."""
        row, story = self.query_one(Choices).row(), ""
        if row and not self.step and row.id.isdecimal():
            story = self.found[int(row.id)].story
        self.query_one(Page).set_class(not story, "empty")
        self.query_one("#story", Flow).flow(lambda: [r for part in story.splitlines() for r in para(part) or [""]])

    @on(OptionList.OptionSelected)
    def picked(self, event: OptionList.OptionSelected) -> None:
        """A line of the list was taken."""
        row = self.query_one(Choices).row()
        if row is None:
            return
        if self.step:
            self._given(row.id)
        elif row.id == NEW:
            self.action_begin()
        else:
            case = self.found[int(row.id)]
            host(self).open_case(case.path, example=case.example)

    def begin(self, path: Path) -> None:
        """Begin a case that is to be kept in `path`."""
        self.path = path
        self.action_begin()

    def action_begin(self) -> None:
        """Ask for the title first."""
        if host(self).base is None:
            self.say("Still reading the rules; a moment.")
            return
        self.given = {}
        self._field("title", ASK_TITLE, "")

    def action_file(self) -> None:
        """Ask for the name of a file."""
        self._field("file", ASK_FILE, "")

    def _field(self, step: str, ask: str, text: str) -> None:
        self.step = step
        self.add_class("asking")
        self.query_one("#ask", Text).tell(ask)
        field = self.query_one(Input)
        field.value = text
        field.focus()

    def action_number(self, number: int) -> None:
        """Take the line with this number."""
        if not self.has_class("asking"):
            self.query_one(Choices).action_number(number)

    async def action_back(self) -> None:
        """Out of beginning a case, one step at a time."""
        if self.step in ("garment", "tape"):
            self._field("title", ASK_TITLE, self.given["title"])
        elif self.step:
            self.step, self.path = "", None
            self.list_all(self.found)
        else:
            self.say("This is where it begins. q quits.")

    @on(Input.Submitted)
    def typed(self, event: Input.Submitted) -> None:
        """A title or a file name was given."""
        text = event.value.strip()
        if not text:
            self.say("Type something, or press Esc to go back.")
        elif self.step == "file":
            self.step = ""
            self.list_all(self.found)
            host(self).open_case(Path(os.path.expanduser(text)))
        else:
            self._given(text)

    def _given(self, value: str) -> None:
        from advisor.interview.begin import TAPE_WORDS

        base = host(self).base
        assert base is not None
        self.given[self.step] = value
        if self.step == "title":
            self._choose("garment", "Which garment is it?", {id: g.title for id, g in sorted(base.garments.items())})
        elif self.step == "garment":
            self._choose("tape", "Which tape do you use?", TAPE_WORDS)
        else:
            self._made()

    def _choose(self, step: str, ask: str, choices: dict[str, str]) -> None:
        self.step = step
        if len(choices) == 1:
            self._given(next(iter(choices)))
            return
        self.query_one(Choices).show(Row(name, words) for name, words in choices.items())
        self.show_list(ask)

    def _made(self) -> None:
        from advisor.casefile import new_case
        from advisor.ground import make_folder, new_path
        from advisor.interview.session import Session

        base = host(self).base
        assert base is not None
        try:
            case = new_case(self.given["title"], self.given["garment"], self.given["tape"])
            path = self.path or new_path(make_folder(own_folder()), case.title, ".toml")
            session = Session(base, path, case)
            session.save()
        except AdvisorError as fault:
            # What was typed stays in the field, to be mended or given again.
            self._field("title", ASK_TITLE, self.given["title"])
            host(self).tell(fault)
            return
        host(self).say(f"Kept in {clean(os.fspath(path))}")
        host(self).took(session)
