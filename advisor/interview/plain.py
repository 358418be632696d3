"""The interview line by line: ordinary lines, numbered answers, no borders, no redraw. For pipes and readers.

At every question: a number, a word or a length answers; `?` says she cannot tell; an empty line leaves it for
later; `why` tells why it is asked; `back` takes the last answer back; `quit` stops. All is saved as it is given.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, Known
from advisor.core.model import Mm
from advisor.core.question import Question
from advisor.core.work import Finding
from advisor.errors import AdvisorError, UsageError, nearest
from advisor.interview.agenda import why_asked
from advisor.interview.session import Session
from advisor.interview.typed import PINCHES, Pinch, pinned, read_amount, read_answer
from advisor.report.advice import finding_lines
from advisor.report.labels import letter
from advisor.report.lines import bullets, para
from advisor.report.plan import plan_lines

KEYS = "Answer; or ? cannot say, empty later, why, back, quit."


class Stop(Exception):
    """She wants to stop; all is saved."""


@dataclass
class Plain:
    """A plain interview over `read` (a line, or "" at the end of input raising EOFError) and `write`."""

    session: Session
    read: Callable[[], str]
    write: Callable[[str], None]

    def run(self) -> None:
        """Questions, choices, sizing questions, plan. Returns when done or stopped."""
        try:
            self._questions()
            self._choices()
            self._questions()
            self.say("", *plan_lines(self.session.base, self.session.case, self.session.plan()))
        except (Stop, EOFError):
            self.say("", "Stopped. Everything answered so far is saved; start again with the same case to go on.")

    def say(self, *lines: str) -> None:
        """Print lines."""
        for line in lines:
            self.write(line)

    def ask(self, prompt: str) -> str:
        """One line of input; Stop if she quits."""
        self.write(prompt)
        text = self.read().strip()
        if text.casefold() in ("quit", "q", "stop"):
            raise Stop
        return text

    def _questions(self) -> None:
        started = False
        while (due := self.session.due()) is not None:
            if not started:
                self.say("", KEYS)
                started = True
            self._question(due.question, due.decides)

    def _question(self, question: Question, decides: bool) -> None:
        kind = "" if decides else " (for the numbers of the plan)"
        self.say("", *para(question.ask + kind))
        if question.help:
            self.say(*para(question.help, 2))
        if question.alone and self.session.alone:
            self.say(*para(f"Alone: {question.alone}", 2))
        for number, meaning in enumerate(question.words.values(), 1):
            self.say(*para(meaning, 2, f"{number} "))
        while not self._taken(question):
            pass

    def _taken(self, question: Question) -> bool:
        """Read one line for `question`; whether it is dealt with."""
        text = self.ask(">")
        try:
            return self._dealt(question, text)
        except AdvisorError as fault:
            self.say(*para(str(fault.what)), *para(fault.hint, 2))
            return False

    def _dealt(self, question: Question, text: str) -> bool:
        command = text.casefold()
        if not text:
            self.session.later(question.key)
            return True
        if command == "back":
            what = self.session.undo()
            self.say(f"Taken back: {what}." if what else "There is nothing to take back.")
            return bool(what)
        if command == "why":
            lines = why_asked(self.session.base, self.session.case, question)
            self.say("Its answer can change:", *bullets(lines)) if lines else self.say("It sizes the plan.")
            return False
        if question.kind == "pinch" and command not in ("?", "unknown"):
            depth = read_amount(question, text, self.session.teller)
            self.session.answer(question.key, self._pinch(question, depth))
            return True
        self.session.answer(question.key, read_answer(question, text, self.session.teller, self.session.clock()))
        return True

    def _pinch(self, question: Question, depth: Mm) -> Known:
        if depth == 0:
            return pinned(question, depth, PINCHES[-1], self.session.teller, self.session.clock())
        self.say(f"What is {self.session.teller.value(depth)}?")
        for number, pinch in enumerate(PINCHES, 1):
            self.say(*para(pinch.words, 2, f"{number} "))
        while True:
            given = self._numbered(self.ask(">"))
            if given is not None:
                return pinned(question, depth, given, self.session.teller, self.session.clock())

    def _numbered(self, text: str) -> Pinch | None:
        if text in ("1", "2", "3"):
            return PINCHES[int(text) - 1]
        self.say("Give 1, 2 or 3.")
        return None

    def _choices(self) -> None:
        """For every finding, knock-ons as they appear: show the options, take a choice."""
        settled: set[FindingId] = set()
        while (finding := self._unsettled(settled)) is not None:
            settled.add(finding.id)
            self._choice(finding)

    def _unsettled(self, settled: set[FindingId]) -> Finding | None:
        followed = self.session.followed()
        for finding in followed.advice.findings:
            fresh = finding.id not in settled and finding.id not in self.session.case.choices
            if fresh and followed.advice.options_for(finding.id):
                return finding
        return None

    def _choice(self, finding: Finding) -> None:
        followed = self.session.followed()
        advice = followed.advice
        guessed = finding.id in followed.suggested
        self.say(*finding_lines(self.session.base, self.session.teller, advice, finding, guessed))
        self.say("", "Which? A letter, or empty for the first.")
        while not self._chosen(advice, finding, self.ask(">").casefold()):
            pass

    def _chosen(self, advice: Advice, finding: Finding, text: str) -> bool:
        options = advice.options_for(finding.id)
        letters = {letter(index): option for index, option in enumerate(options)}
        if text == "back":
            what = self.session.undo()
            self.say(f"Taken back: {what}." if what else "There is nothing to take back.")
            return False
        option = options[0] if not text else letters.get(text.rstrip(")."))
        if option is None:
            self.say(f"There is no '{text}'; {nearest(text, letters)}")
            return False
        reason = ""
        if option.id != options[0].id or option.rulings:
            reason = self.ask("Why this one? (your reason is kept; empty for none)")
        try:
            self.session.choose(finding.id, Choice(option.fix, reason))
        except UsageError as fault:
            self.say(*para(fault.what))
            return False
        return True


def start(session: Session, lines: Iterable[str] | None = None, write: Callable[[str], None] = print) -> None:
    """Run the plain interview on standard input, or on `lines`."""
    if lines is None:
        Plain(session, input, write).run()
        return
    given = iter(lines)

    def read() -> str:
        try:
            return next(given)
        except StopIteration as end:
            raise EOFError from end

    Plain(session, read, write).run()
