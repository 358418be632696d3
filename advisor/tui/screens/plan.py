"""Stage 4: the plan in its parts, to read, to jump about in, to save as text or as a sheet, to send away."""

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import ClassVar

from textual import work
from textual.app import ComposeResult
from textual.binding import BindingType

from advisor.advise.record import record_of
from advisor.core.advice import Plan
from advisor.core.case import Case, Record
from advisor.errors import AdvisorError
from advisor.ground import AlreadyThere, Digest, clean, export_bytes, export_text
from advisor.interview.session import Session
from advisor.report.lines import para, width_now, wrapped_at
from advisor.report.plan import plan_lines
from advisor.tui.choices import Row
from advisor.tui.host import host, session_of
from advisor.tui.keys import screen_bindings
from advisor.tui.look import Flow, Page, Stage, Where
from advisor.tui.thinking import once
from advisor.tui.windows import Pick, Sure

TEXT_WIDTH = 78
Write = Callable[[Path, bool], Digest]
"""Writes a file; the flag says whether one that is there may be replaced."""

SENT = "The plan was sent to the terminal for its clipboard. Not every terminal takes it; s saves it as a file."


class PlanScreen(Stage):
    """The plan of work as it stands."""

    KEYS = "plan"
    STAGE = 4
    BINDINGS: ClassVar[list[BindingType]] = screen_bindings("plan")
    DEFAULT_CSS = """
    PlanScreen Page { height: 1fr; padding: 0 1; }
    PlanScreen Flow { margin-bottom: 1; }
    """

    def __init__(self) -> None:
        super().__init__()
        self.plan: Plan | None = None
        self.made: dict[int, list[list[str]]] = {}

    def compose(self) -> ComposeResult:
        yield Where(4, session_of(self).case.title)
        with Page(id="parts"):
            yield Flow(lambda: para("Working it out..."), classes="part")
        yield from self.foot()

    def on_mount(self) -> None:
        self.say_held()
        self.query_one(Page).focus()
        self.work_out()

    def work_out(self) -> None:
        """Work the plan out beside the screen, and show it."""
        session = session_of(self)
        self.make(session, session.case)

    @work(thread=True, exclusive=True, group="plan")
    def make(self, session: Session, case: Case) -> None:
        """The plan of this case."""
        try:
            for plan in once(session.plan):
                self.app.call_from_thread(self.show_plan, plan, case)
        except AdvisorError as fault:
            self.app.call_from_thread(host(self).tell, fault)

    def show_plan(self, plan: Plan, case: Case) -> None:
        """Show the plan, each part in a block of its own."""
        if not self.shows(case):
            return
        self.plan = plan
        self.made.clear()
        page = self.query_one(Page)
        page.remove_children()
        page.mount_all(Flow(partial(self.part_lines, number), classes="part") for number in range(len(self.parts())))
        page.scroll_home(animate=False)
        self.refresh_bindings()

    def lines(self) -> list[str]:
        """The plan as lines, as wide as the block or file they are for."""
        session = session_of(self)
        return plan_lines(session.base, session.case, self.plan) if self.plan else []

    def parts(self) -> list[list[str]]:
        """The lines part by part, made once for each width."""
        width = width_now()
        if width not in self.made:
            self.made[width] = parts_of(self.lines())
        return self.made[width]

    def part_lines(self, number: int) -> list[str]:
        """The lines of one part."""
        parts = self.parts()
        return parts[number] if number < len(parts) else []

    def names(self) -> list[str]:
        """What each part is called: its heading, or for the first the title."""
        with wrapped_at(TEXT_WIDTH):
            return [part[0] for part in self.parts()]

    # Moving

    def here(self) -> int:
        """The part at the top of the page."""
        top = self.query_one(Page).scroll_offset.y
        blocks = list(self.query(".part").results(Flow))
        above = [i for i, block in enumerate(blocks) if block.virtual_region.y <= top]
        return above[-1] if above else 0

    def to_part(self, number: int) -> None:
        """Bring a part to the top."""
        blocks = list(self.query(".part").results(Flow))
        if blocks:
            block = blocks[max(0, min(number, len(blocks) - 1))]
            self.query_one(Page).scroll_to(y=block.virtual_region.y, animate=False, immediate=True)

    def action_part(self, step: int) -> None:
        """To the next part, or the one before; near the end the page may not move, then it says so."""
        page = self.query_one(Page)
        before = page.scroll_offset.y
        self.to_part(self.here() + step)
        if page.scroll_offset.y == before and step > 0:
            self.say("This is the last part that can be brought to the top.")

    def action_jump(self) -> None:
        """Choose a part."""
        rows = [Row(str(number), name) for number, name in enumerate(self.names())]
        self.app.push_screen(Pick("Which part of the plan?", rows, self.here()), self.jumped)

    def jumped(self, number: str | None) -> None:
        """A part was chosen."""
        if number is not None:
            self.to_part(int(number))

    # Taking it along

    def text(self) -> str:
        """The plan as one text."""
        with wrapped_at(TEXT_WIDTH):
            return "\n".join(self.lines()) + "\n"

    def action_save(self) -> None:
        """Save the plan as text beside the case."""
        if self.plan is not None:
            text = self.text()
            self.keep(".plan.txt", lambda path, replace: export_text(path, text, replace=replace))

    def action_sheet(self) -> None:
        """Save the plan as a sheet to print, with its templates, beside the case."""
        if self.plan is not None:
            # Drawing takes a while to load, and most sittings end without it.
            from advisor.sheet.make import make_sheet

            session = session_of(self)
            sheet = make_sheet(session.base, session.case, self.plan)
            self.keep(".pdf", lambda path, replace: export_bytes(path, sheet.data, replace=replace), sheet.told)

    def keep(self, ending: str, write: Write, told: str = "", replace: bool = False) -> None:
        """Write a file beside the case; one that is there is replaced only after asking."""
        path = session_of(self).path.with_suffix(ending)
        try:
            write(path, replace)
        except AlreadyThere:
            text = f"There is a file {path} already."
            ask = Sure(lambda: para(text), "replace it by the plan as it is now", "leave it as it is")
            self.app.push_screen(ask, lambda yes: self.keep(ending, write, told, True) if yes else None)
        except AdvisorError as fault:
            host(self).tell(fault)
        else:
            self.saved(path, told)

    def saved(self, path: Path, told: str) -> None:
        """The plan stands in a file of its own now: say so, and put it on record in the case."""
        self.say(f"Saved in {clean(str(path))}" + (f": {told}" if told else ""))
        session = session_of(self)
        if self.plan is not None:
            self.record(session, session.case, self.plan)

    @work(thread=True, exclusive=True, group="record")
    def record(self, session: Session, case: Case, plan: Plan) -> None:
        """Reading all the rules for it takes a moment, so it is done beside the screen."""
        made = record_of(session.base, case, plan, session.clock())
        self.app.call_from_thread(self.enter, session, case, made)

    def enter(self, session: Session, case: Case, made: Record) -> None:
        """Keep the record, unless the case has become another one meanwhile."""
        if session.case is not case:
            return
        try:
            session.enter(made)
        except AdvisorError as fault:
            host(self).tell(fault)

    def action_send(self) -> None:
        """Send the plan to the terminal, which may or may not put it on the clipboard."""
        if self.plan is not None:
            self.app.copy_to_clipboard(clean(self.text(), newlines=True))
            self.say(SENT)

    def changed(self, before: Case) -> None:
        """Something was taken back."""
        self.work_out()


def parts_of(lines: list[str]) -> list[list[str]]:
    """Lines cut before each heading: a line of dashes under text that stands after a blank line."""
    cuts = [0]
    for at, row in enumerate(lines):
        if row and not row.strip("-"):
            start = at
            while start and lines[start - 1]:
                start -= 1
            cuts.append(start)
    return [lines[start:end] for start, end in zip(cuts, [*cuts[1:], len(lines)], strict=True) if lines[start:end]]
