"""Stage 1: open a case, begin one, or look at an example."""

import os
from pathlib import Path
from typing import ClassVar

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.screen import Screen
from textual.widgets import Footer, Input, OptionList
from textual.widgets.option_list import Option

from advisor.casefile import new_case
from advisor.errors import AdvisorError
from advisor.ground import clean, new_path
from advisor.interview.begin import TAPE_WORDS, cases_folder
from advisor.interview.session import Session
from advisor.tui.host import host
from advisor.tui.look import Text, Where

EXAMPLES = Path(__file__).resolve().parents[3] / "cases"
NEW = "new"
STEPS = ("title", "garment", "tape")


class CasesScreen(Screen[None]):
    """The list of cases, and the three short steps of beginning one."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("n", "begin", "New"),
        Binding("escape", "back", "Back", show=False),
    ]
    DEFAULT_CSS = """
    CasesScreen Text.ask { margin: 1 1 0 1; height: auto; }
    CasesScreen OptionList { height: 1fr; margin: 0 1; border: none; background: $background; }
    CasesScreen Input { margin: 0 1; display: none; border: tall $primary; }
    CasesScreen.asking Input { display: block; }
    CasesScreen.asking OptionList { display: none; }
    """

    def __init__(self) -> None:
        super().__init__()
        self.paths: list[Path] = []
        self.step = ""
        self.given: dict[str, str] = {}
        self.path: Path | None = None

    def compose(self) -> ComposeResult:
        yield Where(1)
        yield Text("Reading the rules...", classes="ask", id="ask")
        yield OptionList(id="list", markup=False)
        yield Input(placeholder="what it shall be called", id="title", max_length=120)
        yield Footer()

    def on_mount(self) -> None:
        self.query_one(OptionList).focus()
        if host(self).base is not None:
            self.ready()

    def ready(self) -> None:
        """The rules are read: show what there is."""
        self.remove_class("asking")
        self.step = ""
        self.paths = _in(Path.cwd()) + _in(cases_folder()) + _in(EXAMPLES)
        listing = self.query_one(OptionList)
        listing.clear_options()
        listing.add_option(Option("Begin a new case", id=NEW))
        listing.add_options([Option(_label(path), id=str(i)) for i, path in enumerate(self.paths)])
        listing.highlighted = 0
        listing.focus()
        self.query_one("#ask", Text).update("Which case? Enter opens; n begins a new one.")

    @on(OptionList.OptionSelected)
    def picked(self, event: OptionList.OptionSelected) -> None:
        """A line of the list was taken."""
        if self.step:
            self._given(str(event.option.id))
        elif event.option.id == NEW:
            self.action_begin()
        elif event.option.id is not None:
            host(self).open_case(self.paths[int(event.option.id)])

    def begin(self, path: Path) -> None:
        """Begin a case that is to be kept in `path`."""
        self.path = path
        self.action_begin()

    def action_begin(self) -> None:
        """Ask for the title first."""
        if host(self).base is None:
            return
        self.step, self.given = "title", {}
        self.add_class("asking")
        self.query_one("#ask", Text).update("What shall the case be called? Enter goes on, Esc goes back.")
        self.query_one(Input).focus()

    def action_back(self) -> None:
        """Out of beginning a case."""
        if self.step:
            self.query_one(Input).value = ""
            self.ready()

    @on(Input.Submitted)
    def titled(self, event: Input.Submitted) -> None:
        """The title was given."""
        if event.value.strip():
            self._given(event.value.strip())

    def _given(self, value: str) -> None:
        self.given[self.step] = value
        base = host(self).base
        assert base is not None
        if self.step == "title":
            choices = {id: garment.title for id, garment in sorted(base.garments.items())}
            self._choose("garment", "Which garment is it?", choices)
        elif self.step == "garment":
            self._choose("tape", "Which tape do you use?", TAPE_WORDS)
        else:
            self._made()

    def _choose(self, step: str, ask: str, choices: dict[str, str]) -> None:
        self.step = step
        if len(choices) == 1:
            self._given(next(iter(choices)))
            return
        self.remove_class("asking")
        self.query_one("#ask", Text).update(ask)
        listing = self.query_one(OptionList)
        listing.clear_options()
        listing.add_options([Option(words, id=name) for name, words in choices.items()])
        listing.highlighted = 0
        listing.focus()

    def _made(self) -> None:
        base = host(self).base
        assert base is not None
        try:
            case = new_case(self.given["title"], self.given["garment"], self.given["tape"])
            path = self.path or new_path(cases_folder(), case.title, ".toml")
            session = Session(base, path, case)
            session.save()
        except AdvisorError as fault:
            host(self).tell(fault)
            self.ready()
            return
        host(self).session = session
        self.notify(f"Kept in {clean(os.fspath(path))}", markup=False)
        host(self).action_stage(2)


def _in(folder: Path) -> list[Path]:
    """The case files of a folder; none if it cannot be read."""
    try:
        found = sorted(folder.glob("*.toml"))
    except OSError:
        return []
    return [path for path in found if path.name != "pyproject.toml"]


def _label(path: Path) -> str:
    kind = "example: " if path.parent == EXAMPLES else ""
    return clean(f"{kind}{path.stem.replace('_', ' ').replace('-', ' ')}  ({path.parent})")
