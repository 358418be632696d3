"""Stage 2: one question at a time, only those that can still change something; or one that is to be answered again."""

from collections.abc import Callable
from functools import partial
from typing import ClassVar

from textual import on, work
from textual.binding import BindingType
from textual.widgets import Input, OptionList

from advisor.core.case import Answer, Case, Known, Unknown
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.errors import AdvisorError, SaveError
from advisor.interview.agenda import Due, search
from advisor.interview.over import Picks
from advisor.interview.session import Session
from advisor.interview.typed import PINCHES, pinned, read_amount, read_answer
from advisor.interview.why import count_line, why_asked
from advisor.lengths import ReadingError
from advisor.report.answers import told_answer
from advisor.tui.choices import Choices, Row
from advisor.tui.host import host, session_of, undo_key
from advisor.tui.keys import DIGITS, screen_bindings
from advisor.tui.screens.asking import paragraphs, same
from advisor.tui.screens.question_page import QuestionPage
from advisor.tui.thinking import once, stepwise
from advisor.tui.unsaved import answer_note
from advisor.tui.windows import Reading

LOOKING = "Looking for the next question..."
DONE = "No question left can change the advice or its numbers."
DONE_BUT = "Nothing is left to ask but what was put off."


class QuestionsScreen(QuestionPage):
    """The question that is due. Words are a list, lengths are typed. `ask`: the key to ask about first."""

    KEYS = "questions"
    STAGE = 2
    BINDINGS: ClassVar[list[BindingType]] = [*screen_bindings("questions"), *DIGITS]

    def on_mount(self) -> None:
        self.say_held()
        if self.ask_first is not None:
            self.ask_about(self.ask_first)
        else:
            self.find_next()

    # Looking for what to ask

    def find_next(self) -> None:
        """Look for the next question away from the screen, which stays alive meanwhile."""
        self.bare()
        self.words("ask", LOOKING)
        self.query_one("#told").focus()
        self.refresh_bindings()
        session = session_of(self)
        self.look(session, session.case, frozenset(session.put_off))

    @work(thread=True, exclusive=True, group="look")
    def look(self, session: Session, case: Case, skip: frozenset[str]) -> None:
        """Find the next question, show it, and go on counting those that could change the advice."""
        shown, deciding = False, 0
        for looked, due in enumerate(stepwise(search(session.base, case, skip)), 1):
            if due is not None:
                deciding += due.decides
                if not shown:
                    shown = True
                    self.app.call_from_thread(self.show_due, due, case)
                if not due.decides:
                    break
            if looked % 10 == 0:
                self.app.call_from_thread(self.progress, case, f"Looked at {looked} questions so far.")
        else:
            if not shown:
                self.app.call_from_thread(self.show_due, None, case)
        self.app.call_from_thread(self.progress, case, count_line(deciding, len(skip)))

    def show_due(self, due: Due | None, case: Case) -> None:
        """Show the question that is due, or that there is none left."""
        if not self.shows(case) or self.again:
            return
        self.bare()
        if due is None:
            self.show_done()
            return
        self.due = due
        if due.over is not None:
            self.show_over(due.over)
        else:
            self.show_question(due.question, "" if due.decides else "This one is for the numbers of the plan.")

    def show_done(self) -> None:
        """What can be done now that nothing is left to ask."""
        put_off = len(session_of(self).put_off)
        self.words("ask", DONE_BUT if put_off else DONE)
        rows = [Row("options", "See what is wrong and what can be done"), Row("plan", "See the plan of the work")]
        if put_off:
            rows.insert(0, Row("put_off", f"Answer what was put off ({put_off})"))
        self.list([*rows, Row("answers", "Look at the answers, or change one")])

    # Asking

    def ask_about(self, key: Key) -> None:
        """Ask a question that was answered already, or was not due; what is not changed stays."""
        question, answer = session_of(self).questions[key], session_of(self).case.answers.get(key)
        self.workers.cancel_group(self, "look")
        self.bare()
        self.due, self.again = Due(question, True), True
        self.show_question(question, "")
        if answer is not None:
            now = told_answer(question, session_of(self).teller, answer)
            self.words("now", f"Your answer now: {now}. Esc leaves it so.")
        self.words("progress", "")

    # Answering

    @on(OptionList.OptionSelected)
    def listed(self, event: OptionList.OptionSelected) -> None:
        """A line was taken: a word, a way of pinching, or where to go on."""
        row = self.query_one(Choices).row()
        if row is None:
            return
        if self.due is None:
            self.go_on(row.id)
        elif self.marks is not None:
            self.mark(row.id, "seen") if row.id else self.take_over(self.marks.picks)
        elif self.depth:
            self.take(partial(self.pinch, int(row.id)))
        else:
            host(self).drafts[self.due.question.key] = row.id
            self.take(lambda question: Known(row.id, question.how, session_of(self).clock()))

    def mark(self, key: Key, mark: str) -> None:
        """Mark a line of a look, or take its mark off."""
        assert self.marks is not None
        self.marks.turn(key, mark)
        host(self).drafts[self.marks.over.look.id] = self.marks.draft
        self.list(list(self.marks.rows()), self.query_one(Choices).highlighted or 0, first=0)

    def take_over(self, picks: Picks) -> None:
        """Save what was seen at the look, and go on."""
        assert self.marks is not None
        try:
            session_of(self).look_over(self.marks.over, picks)
        except AdvisorError as fault:
            host(self).refused(fault, "")
            return
        self.say(f"Saved. {undo_key(self)} takes it back.")
        self.find_next()

    def go_on(self, where: str) -> None:
        """After the last question."""
        if where == "put_off":
            session_of(self).put_off.clear()
            self.find_next()
        elif where == "answers":
            self.action_answers()
        else:
            host(self).action_stage(3 if where == "options" else 4)

    @on(Input.Submitted)
    def entered(self, event: Input.Submitted) -> None:
        """A length or a command was typed. Nothing typed leaves things as they are."""
        text = event.value.strip()
        commands: dict[str, Callable[[], object]] = {
            "": self.pass_over, "?": self.action_unknown, "why": self.action_why, "later": self.action_later,
            "back": host(self).action_undo,
        }  # fmt: skip
        if self.due is None:
            return
        if text.casefold() in commands:
            event.input.value = ""
            commands[text.casefold()]()
            return
        host(self).drafts[self.due.question.key] = text
        if self.due.question.kind == "pinch":
            self.ask_pinch(text)
        else:
            teller, at = session_of(self).teller, session_of(self).clock()
            self.take(lambda question: read_answer(question, text, teller, at))

    def ask_pinch(self, text: str) -> None:
        """What a pinned depth is: at one place, at two, or all of the cloth."""
        assert self.due is not None
        try:
            depth = read_amount(self.due.question, text, session_of(self).teller)
        except AdvisorError as fault:
            self.fault(fault)
            return
        self.depth = text
        if depth == 0:
            self.take(partial(self.pinch, len(PINCHES) - 1))
            return
        self.query_one("#field").display = False
        self.words("hint", "Enter or its number takes a line. Esc goes back to the field.")
        self.words("fault")
        self.words("now", f"What is {text}?")
        self.list([Row(str(i), pinch.words) for i, pinch in enumerate(PINCHES)])

    def pinch(self, way: int, question: Question) -> Known:
        """The answer for the depth typed, given this way."""
        session = session_of(self)
        return pinned(
            question, read_amount(question, self.depth, session.teller), PINCHES[way], session.teller, session.clock()
        )

    def take(self, make: Callable[[Question], Answer]) -> None:
        """Save the answer `make` gives for the question that is asked, and go on; or say what is wrong with it."""
        assert self.due is not None
        session, key = session_of(self), self.due.question.key
        try:
            answer = make(self.due.question)
        except AdvisorError as fault:
            self.fault(fault)
            return
        try:
            if not same(session.case.answers.get(key), answer):
                session.answer(key, answer)
            if (unsaved := host(self).unsaved) is not None:
                unsaved.saved(key)
        except SaveError as fault:
            host(self).refused(fault, answer_note(key, answer))
            return
        except AdvisorError as fault:
            self.fault(fault)
            return
        host(self).drafts.pop(key, None)
        self.say(f"Saved. {undo_key(self)} takes it back.")
        self.find_next()

    def fault(self, fault: AdvisorError) -> None:
        """Say what is wrong with what was typed."""
        if self.depth:
            self.depth = ""
            self.query_one(Choices).display = False
            self.field(host(self).drafts.get(self.due.question.key, "") if self.due else "")
            self.words("now")
        typed = [f"'{fault.text}'"] if isinstance(fault, ReadingError) else []
        self.words("fault", *typed, fault.what, fault.hint)

    # Keys

    def action_number(self, number: int) -> None:
        """Take the line with this number, wherever on the screen one is."""
        choices = self.query_one(Choices)
        if choices.display:
            choices.action_number(number)

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        if action in ("unknown", "later", "why"):
            return self.due is not None
        if action == "type":
            return bool(self.query("#field")) and self.query_one("#field").display
        return True

    def action_unknown(self) -> None:
        """She cannot say: of the question, of the line of a look, or of all its lines."""
        if self.marks is not None:
            row = self.query_one(Choices).row()
            if row is not None and row.id:
                self.mark(row.id, "unsure")
            else:
                self.take_over(Picks(unsure=frozenset(self.marks.over.keys)))
            return
        at = session_of(self).clock()
        self.take(lambda question: Unknown(at))

    def pass_over(self) -> None:
        """Enter on nothing: an answer that is there stays; a question that is due is left for later."""
        if self.again:
            self.find_next()
        else:
            self.action_later()

    def action_later(self) -> None:
        """Leave the question for later in this sitting."""
        if self.due is None:
            return
        if not self.again:
            session_of(self).later(*self.due.keys)
            self.say(f"Put off: {self.due.name}")
        self.find_next()

    def action_why(self) -> None:
        """Why it is asked, worked out beside the screen."""
        if self.due is not None:
            reading = Reading(lambda: ["Working it out..."])
            self.app.push_screen(reading)
            session = session_of(self)
            self.tell_why(reading, session, session.case, self.due)

    @work(thread=True, exclusive=True, group="why")
    def tell_why(self, reading: Reading, session: Session, case: Case, due: Due) -> None:
        """Work out what hangs on the question, and show it."""
        for told in once(lambda: why_asked(session.base, case, due)):
            self.app.call_from_thread(reading.show, partial(paragraphs, told))

    def action_answers(self) -> None:
        """What was answered so far."""
        from advisor.tui.screens.answers import AnswersScreen

        self.app.switch_screen(AnswersScreen())

    def action_type(self) -> None:
        """Back into the field."""
        self.query_one(Input).focus()

    async def action_back(self) -> None:
        """One step back: from the ways of pinching, from the field, from asking again, to the cases."""
        typing = self.query_one(Input)
        if self.depth:
            self.depth = ""
            self.query_one(Choices).display = False
            self.words("now")
            self.field(typing.value)
        elif typing.has_focus and not self.again:
            if self.due is not None:
                host(self).drafts[self.due.question.key] = typing.value
            self.query_one("#told").focus()
        elif self.again:
            self.action_answers()
        else:
            await super().action_back()

    def changed(self, before: Case) -> None:
        """Something was taken back: ask about that."""
        after = session_of(self).case
        keys = [key for key in before.answers if before.answers[key] != after.answers.get(key)]
        if len(keys) == 1 and keys[0] not in after.answers:
            self.ask_about(keys[0])
            self.again = False
            return
        self.find_next()
