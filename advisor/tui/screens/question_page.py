"""What the Questions screen shows: a question with the list or the field for it, a look with its list to mark."""

from textual.app import ComposeResult
from textual.containers import Horizontal, Vertical
from textual.widgets import Input

from advisor.core.case import Case, Known, Unknown
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.interview.agenda import Due
from advisor.interview.over import Over
from advisor.report.lines import para
from advisor.tui.choices import Choices, Row
from advisor.tui.host import host, session_of
from advisor.tui.look import Flow, Page, Stage, Text, Where
from advisor.tui.screens.asking import MARKING, Marks, such_as

TYPED = "Enter takes it. Instead of a length: ? cannot say, why, later, back. Esc leaves the field."


class QuestionPage(Stage):
    """The blocks of the screen, and how they are filled. `ask`: the key to ask about first.

    `due` is what is asked, `again` whether it was answered already, `depth` a pinned depth that is still to be
    explained, `marks` what is marked at a look.
    """

    DEFAULT_CSS = """
    QuestionPage #told { height: auto; max-height: 60%; padding: 0 1; margin-top: 1; }
    QuestionPage.-short #told { margin-top: 0; }
    QuestionPage #ask { text-style: bold; }
    QuestionPage #now { color: $accent; }
    QuestionPage Choices { height: 1fr; min-height: 3; margin-top: 1; }
    QuestionPage.-short Choices { margin-top: 0; }
    QuestionPage #field { height: 1; margin: 1 1 0 1; }
    QuestionPage #field Text { width: 2; }
    QuestionPage #field Input { width: 1fr; max-width: 62; background: $panel; }
    QuestionPage #hint { padding: 0 1; color: $secondary; }
    QuestionPage #fault { padding: 0 1; color: $error; text-style: bold; }
    QuestionPage #body { height: 1fr; }
    QuestionPage #progress { padding: 0 1; color: $secondary; height: auto; }
    """

    def __init__(self, ask: Key | None = None) -> None:
        super().__init__()
        self.ask_first = ask
        self.due: Due | None = None
        self.again = False
        self.depth = ""
        self.marks: Marks | None = None

    def compose(self) -> ComposeResult:
        yield Where(2, session_of(self).case.title)
        with Vertical(id="body"):
            with Page(id="told", can_focus=True):
                yield Flow(id="ask")
                yield Flow(id="note")
                yield Flow(id="now")
            yield Choices(numbered=True)
            with Horizontal(id="field"):
                yield Text("> ")
                yield Input(id="length", max_length=60, compact=True)
            yield Flow(id="hint")
            yield Flow(id="fault")
        yield Flow(id="progress")
        yield from self.foot()

    def words(self, id: str, *texts: str) -> None:
        """Show these paragraphs in one of the blocks."""
        self.query_one(f"#{id}", Flow).flow(lambda: [row for text in texts for row in para(text)])

    def bare(self) -> None:
        """Nothing to answer for the moment."""
        self.due, self.again, self.depth, self.marks = None, False, "", None
        self.query_one(Choices).display = False
        self.query_one("#field").display = False
        for id in ("note", "now", "hint", "fault"):
            self.words(id)

    def progress(self, case: Case, text: str) -> None:
        """Show how far it is, if the case is still the one that was looked at."""
        if self.shows(case):
            unknown = sum(isinstance(answer, Unknown) for answer in case.answers.values())
            known = len(case.answers) - unknown
            counts = f"Answered: {known}." + (f" Cannot say: {unknown}." if unknown else "")
            self.words("progress", text, *([counts] if not self.low else []))

    def show_question(self, question: Question, kind: str) -> None:
        """The question in full, with the list or the field for it."""
        session = session_of(self)
        self.words("ask", question.ask)
        alone = f"Alone: {question.alone}" if question.alone and session.alone else ""
        self.words("note", *(text for text in (kind, question.help, alone) if text))
        held, draft = session.case.answers.get(question.key), host(self).drafts.get(question.key, "")
        if question.kind == "word":
            word = draft or (str(held.value) if isinstance(held, Known) else "")
            names = list(question.words)
            rows = [Row(name, meaning) for name, meaning in question.words.items()]
            self.list(rows, names.index(word) if word in names else 0)
        else:
            self.field(draft)
        self.query_one("#told", Page).scroll_home(animate=False)
        self.refresh_bindings()

    def show_over(self, over: Over) -> None:
        """A look over the garment: a list to mark, as it was left."""
        session = session_of(self)
        signs = over.signs(session.world, session.teller)
        self.marks = Marks.of(over, signs, host(self).drafts.get(over.look.id, ""))
        self.words("ask", over.look.ask)
        self.words("note", *filter(None, (over.look.help,)))
        self.words("hint", MARKING)
        self.list(list(self.marks.rows()), first=0)
        self.query_one("#told", Page).scroll_home(animate=False)
        self.refresh_bindings()

    def list(self, rows: list[Row], at: int = 0, first: int = 1) -> None:
        """A list to answer from."""
        choices = self.query_one(Choices)
        choices.display = True
        choices.show(rows, at, first)
        choices.focus()

    def field(self, text: str) -> None:
        """A field to type a length into."""
        field = self.query_one(Input)
        field.value = text
        field.placeholder = such_as(session_of(self).case.tape)
        self.query_one("#field").display = True
        self.words("hint", TYPED)
        field.focus()
