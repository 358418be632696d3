"""The interview line by line: ordinary lines, numbered answers, no borders, no redraw. For pipes and readers.

At every question a number, a word or a length answers; at a look over the garment, several numbers. `?` says
that she cannot tell; an empty line leaves it for later; `why` tells why it is asked; `back` takes the last answer
back; `quit` stops. All is saved as it is given.
"""

from collections.abc import Callable, Iterable
from dataclasses import dataclass

from advisor.advise.follow import Followed
from advisor.core.advice import Advice, Plan
from advisor.core.case import Choice, Known
from advisor.core.model import Mm
from advisor.core.question import Question
from advisor.core.work import Finding
from advisor.errors import AdvisorError, nearest
from advisor.interview.agenda import Due
from advisor.interview.over import Over, read_picks
from advisor.interview.session import Session
from advisor.interview.typed import PINCHES, Pinch, pinned, read_amount, read_answer
from advisor.interview.why import count_line, why_lines
from advisor.report.advice import finding_lines
from advisor.report.labels import letter
from advisor.report.lines import para
from advisor.report.overrule import against_words, refused_words
from advisor.report.plan import plan_lines

KEYS = "Answer; or ? cannot say, empty later, why, back, quit."
FOR_NUMBERS = "No answer could change the advice any more. This is for the numbers of the plan."


class Stop(Exception):
    """She wants to stop; all is saved."""


@dataclass
class Plain:
    """A plain interview over `read` (a line, or "" at the end of input raising EOFError) and `write`."""

    session: Session
    read: Callable[[], str]
    write: Callable[[str], None]

    def run(self) -> None:
        """Deciding questions, choices, sizing questions, plan. Returns when done or stopped."""
        try:
            self._questions(sizing=False)
            while not self._choices():
                self._questions(sizing=False)
            self._questions(sizing=True)
            plan = self.session.plan()
            self.say("", *plan_lines(self.session.base, self.session.case, plan))
            self._keep(plan)
        except (Stop, EOFError):
            self.say("", "Stopped. Everything answered so far is saved; start again with the same case to go on.")

    def _keep(self, plan: Plan) -> None:
        """Put the plan just printed on record; what stands in the way of that is told, and the plan stands."""
        try:
            self.session.keep(plan)
        except AdvisorError as fault:
            self.say(*para(fault.what), *para(fault.hint, 2))

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

    def _questions(self, sizing: bool) -> None:
        """All questions that decide; with `sizing`, those for the numbers of the chosen plan too."""
        started = False
        while (dues := self.session.dues()) and (dues[0].decides or sizing):
            if not started:
                self.say("", KEYS)
                started = True
            count = sum(due.decides for due in dues)
            self.say("", *para(count_line(count, len(self.session.put_off)) if count else FOR_NUMBERS))
            if dues[0].over:
                self._over(dues[0], dues[0].over)
            else:
                self._question(dues[0])

    def _over(self, due: Due, over: Over) -> None:
        """A look: several numbers at once."""
        self.say(*para(over.look.ask))
        for number, sign in enumerate(over.signs(self.session.world, self.session.teller), 1):
            self.say(*para(sign, 2, f"{number} "))
        self.say(*para(f"Numbers with blanks between, or 0: {over.look.none}. 3? means you cannot say of the third."))
        while not self._looked(due, over):
            pass

    def _looked(self, due: Due, over: Over) -> bool:
        """Read one line for a look; whether it is dealt with."""
        text = self.ask(">")
        try:
            if (done := self._command(due, text)) is None:
                self.session.look_over(over, read_picks(over, text))
                done = True
            return done
        except AdvisorError as fault:
            self._refuse(fault)
            return False

    def _question(self, due: Due) -> None:
        question = due.question
        self.say(*para(question.ask))
        if question.help:
            self.say(*para(question.help, 2))
        if question.alone and self.session.alone:
            self.say(*para(f"Alone: {question.alone}", 2))
        for number, meaning in enumerate(question.words.values(), 1):
            self.say(*para(meaning, 2, f"{number} "))
        while not self._taken(due):
            pass

    def _taken(self, due: Due) -> bool:
        """Read one line for a question; whether it is dealt with."""
        text = self.ask(">")
        try:
            done = self._command(due, text)
            return self._dealt(due.question, text) if done is None else done
        except AdvisorError as fault:
            self._refuse(fault)
            return False

    def _refuse(self, fault: AdvisorError) -> None:
        self.say(*para(str(fault.what)), *para(fault.hint, 2))

    def _command(self, due: Due, text: str) -> bool | None:
        """What can be typed at every question: whether the question is dealt with by it; None if it is no command."""
        command = text.casefold()
        if not text:
            self.session.later(*due.keys)
            return True
        if command == "back":
            return self._back()
        if command == "why":
            self.say(*why_lines(self.session.base, self.session.case, due))
            return False
        return None

    def _dealt(self, question: Question, text: str) -> bool:
        command = text.casefold()
        if question.kind == "pinch" and command not in ("?", "unknown"):
            depth = read_amount(question, text, self.session.teller)
            known = self._pinch(question, depth)
            if known is not None:
                self.session.answer(question.key, known)
            return known is not None
        self.session.answer(question.key, read_answer(question, text, self.session.teller, self.session.clock()))
        return True

    def _back(self) -> bool:
        """Take the last answer or choice back; whether there was one."""
        what = self.session.undo()
        self.say(f"Taken back: {what}." if what else "There is nothing to take back.")
        return bool(what)

    def _pinch(self, question: Question, depth: Mm) -> Known | None:
        """What a pinched depth comes to; None if she goes back to give the depth anew."""
        if depth == 0:
            return pinned(question, depth, PINCHES[-1], self.session.teller, self.session.clock())
        self.say(f"What is {self.session.teller.value(depth)}?")
        for number, pinch in enumerate(PINCHES, 1):
            self.say(*para(pinch.words, 2, f"{number} "))
        while True:
            text = self.ask(">")
            if text.casefold() == "back":
                self.say(*para(question.ask))
                return None
            given = self._numbered(text)
            if given is not None:
                return pinned(question, depth, given, self.session.teller, self.session.clock())

    def _numbered(self, text: str) -> Pinch | None:
        if text in ("1", "2", "3"):
            return PINCHES[int(text) - 1]
        self.say("Give 1, 2 or 3; or back.")
        return None

    def _choices(self) -> bool:
        """For every finding, knock-ons as they appear: show the options, take a choice. False if she went back."""
        while True:
            followed = self.session.followed()
            finding = self._unsettled(followed.advice)
            if finding is None:
                return True
            if not self._choice(followed, finding):
                return False

    def _unsettled(self, advice: Advice) -> Finding | None:
        """The first finding with options of which none is chosen."""
        for finding in advice.findings:
            fixes = {option.fix for option in advice.options_for(finding.id)}
            held = self.session.case.choices.get(finding.id)
            if fixes and (held is None or held.fix not in fixes):
                return finding
        return None

    def _choice(self, followed: Followed, finding: Finding) -> bool:
        """Take the choice for one finding. False if she took the last answer or choice back instead."""
        guessed = finding.id in followed.suggested
        limits = self.session.case.limits
        self.say(*finding_lines(self.session.base, self.session.teller, followed.advice, finding, guessed, limits))
        self.say("", "Which? A letter, or empty for the first.")
        while True:
            text = self.ask(">").casefold()
            if text != "back":
                if self._chosen(followed.advice, finding, text):
                    return True
            elif self._back():
                return False

    def _chosen(self, advice: Advice, finding: Finding, text: str) -> bool:
        options = advice.options_for(finding.id)
        letters = {letter(index): option for index, option in enumerate(options)}
        option = options[0] if not text else letters.get(text.rstrip(")."))
        if option is None:
            self.say(*para(f"There is no '{text}'; {nearest(text, letters)}"))
            return False
        reason = ""
        if option.id != options[0].id or option.rulings:
            self.say(*para(against_words(advice, option)))
            reason = self.ask("Why this one all the same? (Your reason is kept; empty to choose again.)")
            if refusal := refused_words(advice, option, reason):
                self.say(*para(refusal))
                return False
        try:
            self.session.choose(finding.id, Choice(option.fix, reason))
        except AdvisorError as fault:
            self.say(*para(fault.what), *para(fault.hint, 2))
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
