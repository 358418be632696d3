"""What was answered: every answer on a line, to be answered again or taken out. All others stay as they are."""

from collections.abc import Iterator
from typing import ClassVar

from textual import on
from textual.app import ComposeResult
from textual.binding import BindingType
from textual.widgets import OptionList

from advisor.advise.world import meant
from advisor.core.case import Case, Known
from advisor.core.model import Key
from advisor.errors import AdvisorError
from advisor.interview.session import Session
from advisor.report.answers import told_answer
from advisor.report.lines import para
from advisor.tui.choices import Choices, Row
from advisor.tui.host import host, session_of, undo_key
from advisor.tui.keys import screen_bindings
from advisor.tui.look import Flow, Page, Stage, Text, Where
from advisor.tui.windows import Sure
from advisor.words import capital


class AnswersScreen(Stage):
    """The answers in the order one meets them with the garment in hand."""

    KEYS = "answers"
    STAGE = 2
    BINDINGS: ClassVar[list[BindingType]] = screen_bindings("answers")
    DEFAULT_CSS = """
    AnswersScreen #head { padding: 0 1; margin-top: 1; text-style: bold; height: auto; }
    AnswersScreen.-short #head { margin-top: 0; }
    AnswersScreen Page { height: auto; max-height: 30%; padding: 0 1; }
    AnswersScreen.-short Page { display: none; }
    AnswersScreen Choices { height: 1fr; min-height: 4; margin-top: 1; }
    """

    def __init__(self) -> None:
        super().__init__()
        self.all = False

    def compose(self) -> ComposeResult:
        yield Where(2, session_of(self).case.title)
        yield Text("", id="head")
        with Page(can_focus=False):
            yield Flow(id="story")
        yield Choices()
        yield from self.foot()

    def on_mount(self) -> None:
        self.say_held()
        story = session_of(self).case.story
        self.query_one("#story", Flow).flow(lambda: [row for part in story.splitlines() for row in para(part)])
        self.query_one(Page).set_class(not story, "empty")
        self.list_all(0)
        self.query_one(Choices).focus()

    def list_all(self, at: int) -> None:
        """List the answers."""
        session = session_of(self)
        rows = list(rows_of(session, self.all))
        head = "What was answered" if session.case.answers else "Nothing was answered yet"
        tail = " and what was not asked" if self.all else ""
        self.query_one("#head", Text).tell(f"{head}{tail}. Esc goes back to the questions.")
        self.query_one(Choices).show(rows, at)
        self.refresh_bindings()

    @on(OptionList.OptionSelected)
    def taken(self, event: OptionList.OptionSelected) -> None:
        """Answer the question on the line again."""
        from advisor.tui.screens.questions import QuestionsScreen

        row = self.query_one(Choices).row()
        if row is not None:
            self.app.switch_screen(QuestionsScreen(row.id))

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        if action in ("clear", "take"):
            row = self.query_one(Choices).row() if self.query(Choices) else None
            return row is not None and (action == "take" or row.id in session_of(self).case.answers)
        return True

    @on(OptionList.OptionHighlighted)
    def moved(self, event: OptionList.OptionHighlighted) -> None:
        """Other keys may work on another line."""
        self.refresh_bindings()

    def action_clear(self) -> None:
        """Take the answer on the line out, after asking."""
        row = self.query_one(Choices).row()
        if row is None:
            return
        key = row.id
        name = session_of(self).questions[key].name
        text = f"Take out the answer about {name}? The question is then open again. Undo brings it back."
        self.app.push_screen(Sure(lambda: para(text), "take it out", "keep it"), lambda yes: self._clear(key, yes))

    def _clear(self, key: Key, yes: bool | None) -> None:
        if not yes:
            return
        try:
            session_of(self).answer(key, None)
        except AdvisorError as fault:
            host(self).refused(fault, "")
            return
        self.say(f"Taken out: {session_of(self).questions[key].name}. {undo_key(self)} brings it back.")
        self.list_all(self.query_one(Choices).highlighted or 0)

    def action_more(self) -> None:
        """Show, or no longer show, the questions that were not asked."""
        self.all = not self.all
        self.list_all(0)

    async def action_back(self) -> None:
        """Back to the questions."""
        host(self).action_stage(2)

    def changed(self, before: Case) -> None:
        """Something was taken back."""
        self.list_all(self.query_one(Choices).highlighted or 0)


def rows_of(session: Session, all_of_them: bool) -> Iterator[Row]:
    """A line for each answer and each question put off; for every question if `all_of_them`."""
    case, garment = session.case, session.base.garment(session.case.garment)
    given = {key: answer.value for key, answer in case.answers.items() if isinstance(answer, Known)}
    for key, question in session.questions.items():
        answer, name = case.answers.get(key), capital(question.name)
        matters = meant(garment, key, given)
        if answer is not None:
            idle = "" if matters else " (no longer matters)"
            yield Row(key, f"{name}: {told_answer(question, session.teller, answer)}{idle}")
        elif key in session.put_off:
            yield Row(key, f"{name}: put off")
        elif all_of_them and matters:
            yield Row(key, f"{name}: not asked")
