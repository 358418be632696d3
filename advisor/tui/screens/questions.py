"""Stage 2: one question at a time, only those that can still change something; and the answers so far."""

from collections.abc import Callable
from typing import ClassVar

from textual import on, work
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import VerticalScroll
from textual.screen import Screen
from textual.widgets import Footer, Input, OptionList
from textual.widgets.option_list import Option

from advisor.core.case import Answer, Known, Unknown
from advisor.core.question import Question
from advisor.errors import AdvisorError
from advisor.ground import clean
from advisor.interview.agenda import Due, why_asked
from advisor.interview.typed import PINCHES, pinned, read_amount, read_answer
from advisor.report.answers import answer_lines
from advisor.report.lines import bullets
from advisor.tui.host import host, session_of
from advisor.tui.look import Reading, Text, Where

TYPED = "Type a length, or: ? cannot say, why, later, back. Esc frees the keys."


class QuestionsScreen(Screen[None]):
    """The question that is due. Words are a list, lengths are typed."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("x", "unknown", "Cannot say"),
        Binding("l", "later", "Later"),
        Binding("w", "why", "Why"),
        Binding("a", "answers", "Answers"),
        Binding("escape", "free", "Free the keys", show=False),
        Binding("i", "type", "Type", show=False),
    ]
    DEFAULT_CSS = """
    QuestionsScreen VerticalScroll { height: 1fr; padding: 0 1; }
    QuestionsScreen .ask { margin-top: 1; text-style: bold; }
    QuestionsScreen .note { color: $secondary; }
    QuestionsScreen .fault { color: $error; }
    QuestionsScreen OptionList { height: auto; border: none; background: $background; margin-top: 1; }
    QuestionsScreen Input { margin-top: 1; border: tall $primary; }
    """

    def __init__(self) -> None:
        super().__init__()
        self.due: Due | None = None
        self.depth_text = ""

    def compose(self) -> ComposeResult:
        yield Where(2, session_of(self).case.title)
        with VerticalScroll(can_focus=False):
            yield Text("Looking for the next question...", classes="ask", id="ask")
            yield Text("", classes="note", id="note")
            yield OptionList(id="words", markup=False)
            yield Input(id="length", max_length=60)
            yield Text("", classes="fault", id="fault")
        yield Footer()

    def on_mount(self) -> None:
        self._nothing()
        self.find_next()

    @work(thread=True, exclusive=True)
    def find_next(self) -> None:
        """Look for the next question away from the screen, which stays alive meanwhile."""
        due = session_of(self).due()
        self.app.call_from_thread(self.show_due, due)

    def _nothing(self) -> None:
        self.query_one(OptionList).display = False
        self.query_one(Input).display = False

    def show_due(self, due: Due | None) -> None:
        """Show the question that is due, or that there is none left."""
        if not self.is_attached:
            return
        self.due, self.depth_text = due, ""
        self._nothing()
        self.query_one("#fault", Text).update("")
        if due is None:
            self.query_one("#ask", Text).update("No question left can change the advice or its numbers.")
            self.query_one("#note", Text).update("3 shows the options, 4 the plan. a shows what was answered.")
            self.query_one(VerticalScroll).focus()
            return
        question = due.question
        self.query_one("#ask", Text).update(clean(question.ask))
        kind = "" if due.decides else "For the numbers of the plan. "
        self.query_one("#note", Text).update(kind + clean(question.help))
        if question.kind == "word":
            self._list([(word, meaning) for word, meaning in question.words.items()])
        else:
            self._typed()

    def _list(self, choices: list[tuple[str, str]]) -> None:
        listing = self.query_one(OptionList)
        listing.clear_options()
        listing.add_options([Option(clean(words), id=name) for name, words in choices])
        listing.highlighted = 0
        listing.display = True
        listing.focus()

    def _typed(self) -> None:
        field = self.query_one(Input)
        field.value = ""
        field.display = True
        field.placeholder = f"in {session_of(self).teller.tape.unit}"
        self.query_one("#fault", Text).update(TYPED)
        field.focus()

    @on(OptionList.OptionSelected)
    def listed(self, event: OptionList.OptionSelected) -> None:
        """A word, or a way of pinching, was taken."""
        if self.due is None or event.option.id is None:
            return
        if self.depth_text:
            self._take(lambda q: self._pinched(q, int(str(event.option.id))))
        else:
            word = str(event.option.id)
            self._take(lambda q: Known(word, q.how, session_of(self).clock()))

    @on(Input.Submitted)
    def entered(self, event: Input.Submitted) -> None:
        """A length or a command was typed."""
        text = event.value.strip()
        commands: dict[str, Callable[[], None]] = {
            "why": self.action_why,
            "later": self.action_later,
            "": self.action_later,
            "?": self.action_unknown,
            "back": host(self).action_undo,
        }
        if self.due is None:
            return
        if text.casefold() in commands:
            commands[text.casefold()]()
        elif self.due.question.kind == "pinch":
            self._depth(text)
        else:
            teller = session_of(self).teller
            self._take(lambda q: read_answer(q, text, teller, session_of(self).clock()))

    def _depth(self, text: str) -> None:
        assert self.due is not None
        try:
            read_amount(self.due.question, text, session_of(self).teller)
        except AdvisorError as fault:
            self._fault(fault)
            return
        self.depth_text = text
        self.query_one(Input).display = False
        self.query_one("#note", Text).update(f"What is {clean(text)}?")
        self._list([(str(i), pinch.words) for i, pinch in enumerate(PINCHES)])

    def _pinched(self, question: Question, way: int) -> Known:
        session = session_of(self)
        depth = read_amount(question, self.depth_text, session.teller)
        return pinned(question, depth, PINCHES[way], session.teller, session.clock())

    def _take(self, make: Callable[[Question], Answer]) -> None:
        """Save the answer `make` gives for the question that is due, and go on; or say what is wrong with it."""
        assert self.due is not None
        question = self.due.question
        try:
            session_of(self).answer(question.key, make(question))
        except AdvisorError as fault:
            self._fault(fault)
            return
        self.find_next()

    def _fault(self, fault: AdvisorError) -> None:
        self.query_one("#fault", Text).update(clean(f"{fault.what}\n{fault.hint}", newlines=True))

    def action_unknown(self) -> None:
        """She cannot say."""
        if self.due is not None:
            self._take(lambda q: Unknown(session_of(self).clock()))

    def action_later(self) -> None:
        """Leave the question for later in this sitting."""
        if self.due is not None:
            session_of(self).later(self.due.question.key)
            self.find_next()

    def action_why(self) -> None:
        """Why it is asked."""
        if self.due is not None:
            session = session_of(self)
            lines = why_asked(session.base, session.case, self.due.question) if self.due.decides else ()
            told = ["Its answer can change:", *bullets(lines)] if lines else ["Its answer sizes the plan."]
            self.app.push_screen(Reading(told))

    def action_answers(self) -> None:
        """What was answered so far."""
        session = session_of(self)
        self.app.push_screen(Reading(answer_lines(session.base, session.case)))

    def action_free(self) -> None:
        """Leave the field, so that single keys work."""
        self.query_one(VerticalScroll).can_focus = True
        self.query_one(VerticalScroll).focus()

    def action_type(self) -> None:
        """Back into the field."""
        if self.query_one(Input).display:
            self.query_one(Input).focus()
