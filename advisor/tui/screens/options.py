"""Stage 3: what is wrong, and for each finding its options in order of rank; choose, or overrule with a reason."""

from functools import partial
from typing import ClassVar

from textual import on, work
from textual.app import ComposeResult
from textual.binding import BindingType
from textual.containers import Horizontal, Vertical
from textual.widgets import Input, OptionList

from advisor.advise.flips import Flip, OnlyIf, flips, only_ifs
from advisor.advise.follow import Followed
from advisor.advise.front.offers import Offer
from advisor.advise.overrule import against
from advisor.core.case import Case, Choice, Unknown
from advisor.core.work import Finding, Option
from advisor.errors import AdvisorError, SaveError
from advisor.interview.session import Session
from advisor.report.labels import finding_label, letter
from advisor.report.lines import para
from advisor.report.overrule import against_words, refused_words
from advisor.report.why import why_lines
from advisor.tui.choices import Choices, Row
from advisor.tui.host import host, session_of, undo_key
from advisor.tui.keys import screen_bindings
from advisor.tui.look import Flow, Page, Stage, Text, Where
from advisor.tui.screens.detail import detail_lines, idle_line, risk_words
from advisor.tui.screens.plans import Plans
from advisor.tui.thinking import once
from advisor.tui.unsaved import choice_note
from advisor.tui.windows import Reading

NOTHING = "Nothing is wrong, as far as it has been told. The questions (g, then 2) may find something."


class OptionsScreen(Stage):
    """Findings on one side, the options of the highlighted one on the other; below one another when narrow."""

    KEYS = "options"
    STAGE = 3
    BINDINGS: ClassVar[list[BindingType]] = screen_bindings("options")
    DEFAULT_CSS = """
    OptionsScreen #both { height: 1fr; }
    OptionsScreen #left { width: 42; height: 1fr; margin-top: 1; }
    OptionsScreen #right { width: 1fr; height: 1fr; margin-top: 1; }
    OptionsScreen #findings { height: 1fr; }
    OptionsScreen #options { height: auto; max-height: 40%; }
    OptionsScreen #words { padding: 0 1; max-height: 4; }
    OptionsScreen Page { height: 1fr; min-height: 2; padding: 0 1; border-top: solid $primary; }
    OptionsScreen.-narrow #both, OptionsScreen.-slim #both { layout: vertical; }
    OptionsScreen.-narrow #left, OptionsScreen.-slim #left { width: 100%; margin-top: 0; }
    OptionsScreen.-narrow #left, OptionsScreen.-slim #left { height: auto; max-height: 35%; }
    OptionsScreen.-narrow #right, OptionsScreen.-slim #right { width: 100%; margin-top: 0; }
    OptionsScreen.-narrow #findings, OptionsScreen.-slim #findings { height: auto; max-height: 100%; }
    OptionsScreen.-narrow #right { border-top: solid $primary; }
    OptionsScreen.-wide #can { margin-top: 1; }
    OptionsScreen.-short #words { display: none; }
    OptionsScreen #field { height: auto; display: none; padding: 0 1; background: $surface; }
    OptionsScreen #field Horizontal { height: 1; }
    OptionsScreen #field Horizontal Text { width: 2; }
    OptionsScreen #field Input { width: 1fr; background: $panel; }
    OptionsScreen.reason #field { display: block; }
    """

    def __init__(self) -> None:
        super().__init__()
        self.followed: Followed | None = None
        self.hanging: tuple[OnlyIf, ...] = ()
        self.pending: Option | None = None

    def compose(self) -> ComposeResult:
        yield Where(3, session_of(self).case.title)
        with Horizontal(id="both"):
            with Vertical(id="left"):
                yield Text("What is wrong", classes="label")
                yield Choices(id="findings", numbered=True)
            with Vertical(id="right"):
                yield Flow(lambda: para("Working it out..."), id="words")
                yield Text("What can be done, best first", classes="label", id="can")
                yield Choices(id="options")
                with Page(can_focus=True):
                    yield Flow(id="detail")
        with Vertical(id="field"):
            yield Flow(id="reason_ask")
            with Horizontal():
                yield Text("> ")
                yield Input(id="reason", max_length=200, compact=True)
        yield from self.foot()

    def on_mount(self) -> None:
        self.say_held()
        self.work_out("", "")

    # Working out and showing

    def work_out(self, finding: str, fix: str) -> None:
        """Work the advice out anew beside the screen, and show it with this finding and fix on the line."""
        session = session_of(self)
        self.follow(session, session.case, finding, fix)

    @work(thread=True, exclusive=True, group="follow")
    def follow(self, session: Session, case: Case, finding: str, fix: str) -> None:
        """The advice first, then what hangs on answers she could not give."""
        try:
            for followed in once(session.followed):
                self.app.call_from_thread(self.show_all, followed, case, finding, fix)
            if any(isinstance(answer, Unknown) for answer in case.answers.values()):
                for hanging in once(lambda: only_ifs(session.base, case)):
                    self.app.call_from_thread(self.show_hanging, hanging, case)
        except AdvisorError as fault:
            self.app.call_from_thread(host(self).tell, fault)

    def show_all(self, followed: Followed, case: Case, finding: str, fix: str) -> None:
        """Show the findings, with this one on the line."""
        if not self.shows(case):
            return
        self.followed, self.hanging = followed, ()
        findings = followed.advice.findings
        ids = [found.id for found in findings]
        choices = self.query_one("#findings", Choices)
        with self.prevent(OptionList.OptionHighlighted):
            choices.show(map(self.finding_row, findings), ids.index(finding) if finding in ids else 0)
        self.query_one("#can").set_class(not findings, "empty")
        if not findings:
            self.query_one("#words", Flow).flow(lambda: para(NOTHING))
            self.query_one("#options", Choices).show(())
            self.query_one("#detail", Flow).flow(list)
        self.show_options(fix)
        if not fix or not findings:
            choices.focus()

    def show_hanging(self, hanging: tuple[OnlyIf, ...], case: Case) -> None:
        """What stands only for some values of something she cannot say is known now."""
        if self.shows(case):
            self.hanging = hanging
            self.show_detail()

    def finding_row(self, finding: Finding) -> Row:
        """A finding with what is done about it."""
        assert self.followed is not None
        advice = self.followed.advice
        taken = next((option for option in advice.chosen() if option.finding == finding.id), None)
        if taken is None:
            below = "nothing is known that would help"
        else:
            how = "suggested" if finding.id in self.followed.suggested else "chosen"
            below = f"{how}: {taken.title[:1].lower()}{taken.title[1:]}"
        return Row(finding.id, finding.title, f"{finding_label(advice, finding)} ", below)

    def finding(self) -> Finding | None:
        """The finding on the line."""
        row = self.query_one("#findings", Choices).row()
        return self.followed.advice.finding(row.id) if self.followed and row else None

    def option(self) -> Option | None:
        """The option on the line."""
        row = self.query_one("#options", Choices).row()
        if self.followed is None or row is None:
            return None
        return next((option for option in self.followed.advice.options if option.id == row.id), None)

    def show_options(self, fix: str = "") -> None:
        """Show the options of the finding on the line; the one taken is on the line unless `fix` says another."""
        finding = self.finding()
        if finding is None or self.followed is None:
            return
        self.query_one("#words", Flow).flow(lambda: para(finding.words))
        options = self.followed.advice.options_for(finding.id)
        held = self.followed.advice.choices.get(finding.id)
        wanted = fix or (held.fix if held else "")
        at = next((i for i, option in enumerate(options) if option.fix == wanted), 0)
        with self.prevent(OptionList.OptionHighlighted):
            self.query_one("#options", Choices).show(
                (self.option_row(index, option) for index, option in enumerate(options)), at
            )
        self.show_detail()

    def option_row(self, index: int, option: Option) -> Row:
        """An option with its standing in words."""
        assert self.followed is not None
        held = self.followed.advice.choices.get(option.finding)
        standing = [risk_words(option)] if risk_words(option) and not option.rulings else []
        if held and held.fix == option.fix:
            standing.insert(0, "suggested" if option.finding in self.followed.suggested else "chosen")
        if option.rulings:
            standing.append("ruled out")
        return Row(option.id, option.title + (f" ({'; '.join(standing)})" if standing else ""), f"{letter(index)} ")

    def show_detail(self) -> None:
        """Show the option on the line in full."""
        option, session = self.option(), session_of(self)
        if self.followed is None:
            return
        detail, advice = self.query_one("#detail", Flow), self.followed.advice
        if option is None:
            detail.flow(lambda: para("Nothing is known that would help.") if self.finding() else [])
        else:
            suggested = option.finding in self.followed.suggested
            hanging = tuple(item for item in self.hanging if item.option == option.id)
            idle = idle_line(advice)
            found = advice.finding(option.finding)
            # Where the window is low, what is wrong is told here in place of a block of its own.
            head = found.words if found else ""
            detail.flow(
                lambda: [
                    *(para(head) if self.low else ()),
                    *detail_lines(session.base, session.case, advice, option, suggested, hanging),
                    *para(idle),
                ]
            )
        self.query_one(Page).scroll_home(animate=False)
        self.refresh_bindings()

    @on(OptionList.OptionHighlighted, "#findings")
    def other_finding(self) -> None:
        """Another finding is on the line."""
        self.show_options()

    @on(OptionList.OptionHighlighted, "#options")
    def other_option(self) -> None:
        """Another option is on the line."""
        self.show_detail()

    # Choosing

    @on(OptionList.OptionSelected, "#findings")
    def into_options(self) -> None:
        """Enter on a finding goes to its options."""
        if self.query_one("#options", Choices).option_count:
            self.query_one("#options").focus()

    @on(OptionList.OptionSelected, "#options")
    def action_choose(self) -> None:
        """Choose the option on the line; ask for the reason if it is not the first, or is ruled out."""
        option, finding = self.option(), self.finding()
        if option is None or finding is None or self.followed is None:
            return
        advice = self.followed.advice
        if not against(advice, option):
            self.choose(option, "")
            return
        if against(advice, option) == "size":
            self.say(refused_words(advice, option, ""))
            return
        self.pending, words = option, against_words(advice, option)
        ask = "Why this one all the same? Enter keeps it; Esc leaves all as it was."
        self.query_one("#reason_ask", Flow).flow(lambda: para(f"{words} {ask}"))
        self.add_class("reason")
        self.query_one(Input).focus()

    @on(Input.Submitted)
    def reasoned(self, event: Input.Submitted) -> None:
        """The reason was given. Against the advice there must be one."""
        option, reason = self.pending, event.value.strip()
        if option is None or self.followed is None:
            return
        if refused_words(self.followed.advice, option, reason):
            self.say("It goes against the advice: give a reason, or press Esc.")
            return
        if self.choose(option, reason):
            self.no_reason()

    def no_reason(self) -> None:
        """Out of giving a reason."""
        self.pending = None
        self.remove_class("reason")
        self.query_one(Input).value = ""
        self.query_one("#options").focus()

    def choose(self, option: Option, reason: str) -> bool:
        """Save the choice; whether it is in the case."""
        finding, choice = self.finding(), Choice(option.fix, reason)
        try:
            what = f"the choice for '{finding.title}'" if finding else "a choice"
            session_of(self).choose(option.finding, choice, what)
            if (unsaved := host(self).unsaved) is not None:
                unsaved.saved(option.finding)
        except SaveError as fault:
            host(self).refused(fault, choice_note(option.finding, choice))
            return False
        except AdvisorError as fault:
            host(self).tell(fault)
            return False
        risk = " Some of its work cannot be undone; the plan says what to check before." if risk_words(option) else ""
        self.say(f"Chosen.{risk} {undo_key(self)} takes the choice back.")
        self.work_out(option.finding, option.fix)
        return True

    # Keys

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        if action == "plans":
            return self.followed is not None and bool(self.followed.advice.findings)
        if action in ("choose", "why", "other") and self.query("#options"):
            return self.option() is not None or (action == "why" and self.finding() is not None)
        if action == "drop" and self.query("#findings"):
            finding = self.finding()
            return finding is not None and finding.id in session_of(self).case.choices
        return True

    def action_drop(self) -> None:
        """Take the choice for the finding on the line back."""
        finding = self.finding()
        if finding is None:
            return
        try:
            session_of(self).choose(finding.id, None, f"taking back the choice for '{finding.title}'")
        except AdvisorError as fault:
            host(self).refused(fault, "")
            return
        self.say(f"Taken back; the first in rank stands again. {undo_key(self)} brings your choice back.")
        self.work_out(finding.id, "")

    def action_plans(self) -> None:
        """Compare the plans for the whole garment, and take one."""
        window = Plans()
        self.app.push_screen(window, self.plan_taken)
        self.compare(window, session_of(self))

    @work(thread=True, exclusive=True, group="plans")
    def compare(self, window: Plans, session: Session) -> None:
        """Look for the plans while the window waits."""
        case = session.case
        try:
            for found in once(session.compared):
                self.app.call_from_thread(window.show, session.base, case, found)
        except AdvisorError as fault:
            self.app.call_from_thread(host(self).tell, fault)

    def plan_taken(self, offer: Offer | None) -> None:
        """A plan was taken, or none."""
        if offer is None:
            return
        try:
            session_of(self).take(offer.choices, offer.names)
        except AdvisorError as fault:
            host(self).refused(fault, "")
            return
        self.say(f"Taken: {', '.join(offer.names)}. {undo_key(self)} takes all of it back.")
        finding = self.finding()
        self.work_out(finding.id if finding else "", "")

    def action_other(self) -> None:
        """From one list to the other."""
        here = self.query_one("#options").has_focus
        self.query_one("#findings" if here else "#options").focus()

    async def action_back(self) -> None:
        """One step back: from giving a reason, from the options to the findings, to the questions."""
        if self.pending is not None:
            self.no_reason()
        elif not self.query_one("#findings").has_focus and self.query_one("#findings", Choices).option_count:
            self.query_one("#findings").focus()
        else:
            await super().action_back()

    def action_why(self) -> None:
        """Why the option is offered or ruled out; why the finding is there, if the findings have the keys."""
        option = self.option()
        item = self.finding() if self.query_one("#findings").has_focus or option is None else option
        if item is None or self.followed is None:
            return
        reading = Reading(lambda: ["Working it out..."])
        self.app.push_screen(reading)
        self.tell_why(reading, session_of(self), self.followed, item)

    @work(thread=True, exclusive=True, group="why")
    def tell_why(self, reading: Reading, session: Session, followed: Followed, item: Finding | Option) -> None:
        """Look what would change a refusal, and show it all; two levels first."""
        case, advice = session.case, followed.advice

        def turns() -> tuple[Flip, ...]:
            return flips(session.base, case, advice, item) if isinstance(item, Option) and item.rulings else ()

        for turning in once(turns):
            shallow = partial(why_lines, session.base, case, advice, item, turning, deep=False)
            deep = partial(why_lines, session.base, case, advice, item, turning, deep=True)
            self.app.call_from_thread(reading.show, shallow, deep)

    def changed(self, before: Case) -> None:
        """Something was taken back."""
        finding = self.finding()
        self.work_out(finding.id if finding else "", "")
