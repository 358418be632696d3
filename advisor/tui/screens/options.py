"""Stage 3: what is wrong, and for each finding its options in order of rank; choose, or overrule with a reason."""

from typing import ClassVar

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal, Vertical, VerticalScroll
from textual.screen import Screen
from textual.widgets import Footer, Input, OptionList
from textual.widgets.option_list import Option as Line

from advisor.advise.flips import flips
from advisor.advise.follow import Followed
from advisor.core.case import Choice
from advisor.core.work import Finding, Option
from advisor.errors import AdvisorError
from advisor.ground import clean
from advisor.report.advice import option_lines
from advisor.report.labels import finding_label, letter
from advisor.report.why import why_lines
from advisor.tui.host import host, session_of
from advisor.tui.look import Reading, Text, Where


class OptionsScreen(Screen[None]):
    """Findings on one side, the options of the highlighted one on the other; below one another when narrow."""

    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("c", "choose", "Choose"),
        Binding("w", "why", "Why"),
        Binding("d", "drop", "Unchoose"),
        Binding("tab", "app.focus_next", "Other list", show=False),
        Binding("escape", "cancel", "Cancel", show=False),
    ]
    DEFAULT_CSS = """
    OptionsScreen Horizontal { height: 1fr; }
    OptionsScreen OptionList { border: none; background: $background; height: auto; max-height: 45%; }
    OptionsScreen OptionList:focus { background: $surface; }
    OptionsScreen #findings { width: 36; height: 1fr; max-height: 100%; }
    OptionsScreen Vertical { width: 1fr; padding-left: 1; }
    OptionsScreen VerticalScroll { height: 1fr; border-top: solid $primary; }
    OptionsScreen Input { display: none; border: tall $primary; }
    OptionsScreen.-reason Input { display: block; }
    OptionsScreen.-narrow #findings { width: 26; }
    OptionsScreen.-slim Horizontal { layout: vertical; }
    OptionsScreen.-slim #findings { width: 100%; height: 5; }
    """
    HORIZONTAL_BREAKPOINTS = [(0, "-slim"), (60, "-narrow"), (90, "-wide")]

    def __init__(self) -> None:
        super().__init__()
        self.followed: Followed | None = None
        self.pending: Option | None = None

    def compose(self) -> ComposeResult:
        yield Where(3, session_of(self).case.title)
        with Horizontal():
            yield OptionList(id="findings", markup=False)
            with Vertical():
                yield Text("", id="words")
                yield OptionList(id="options", markup=False)
                with VerticalScroll():
                    yield Text("", id="detail")
                yield Input(placeholder="why this one? Enter keeps your reason", id="reason", max_length=200)
        yield Footer()

    def on_mount(self) -> None:
        self.refresh_all(0, 0)
        self.query_one("#findings").focus()

    def refresh_all(self, finding: int, option: int) -> None:
        """Work the advice out anew and show it, with these lines highlighted."""
        self.followed = session_of(self).followed()
        listing = self.query_one("#findings", OptionList)
        listing.clear_options()
        findings = self.followed.advice.findings
        listing.add_options([Line(self._finding_line(f), id=f.id) for f in findings])
        if not findings:
            self.query_one("#words", Text).update(
                "Nothing is wrong, as far as it has been told.\n2 goes to the questions."
            )
            return
        listing.highlighted = min(finding, len(findings) - 1)
        self.show_options(option)

    def _finding_line(self, finding: Finding) -> str:
        assert self.followed is not None
        chosen = finding.id in session_of(self).case.choices
        return f"{finding_label(self.followed.advice, finding)} {'*' if chosen else ' '} {clean(finding.title)}"

    def finding(self) -> Finding | None:
        """The finding that is highlighted."""
        at = self.query_one("#findings", OptionList).highlighted
        if self.followed is None or at is None or at >= len(self.followed.advice.findings):
            return None
        return self.followed.advice.findings[at]

    def option(self) -> Option | None:
        """The option that is highlighted."""
        finding, at = self.finding(), self.query_one("#options", OptionList).highlighted
        if self.followed is None or finding is None or at is None:
            return None
        options = self.followed.advice.options_for(finding.id)
        return options[at] if at < len(options) else None

    def show_options(self, at: int = 0) -> None:
        """Show the options of the highlighted finding."""
        finding = self.finding()
        if finding is None or self.followed is None:
            return
        self.query_one("#words", Text).update(clean(finding.words))
        options = self.followed.advice.options_for(finding.id)
        listing = self.query_one("#options", OptionList)
        listing.clear_options()
        listing.add_options([Line(self._option_line(i, o)) for i, o in enumerate(options)])
        if options:
            listing.highlighted = min(at, len(options) - 1)
        self.show_detail()

    def _option_line(self, index: int, option: Option) -> str:
        assert self.followed is not None
        choice = self.followed.advice.choices.get(option.finding)
        mark = " "
        if choice and choice.fix == option.fix:
            mark = ">" if option.finding in self.followed.suggested else "*"
        end = "  (ruled out)" if option.rulings else ""
        return f"{mark} {letter(index)} {clean(option.title)}{end}"

    def show_detail(self) -> None:
        """Show the highlighted option in full."""
        option = self.option()
        lines = option_lines(session_of(self).teller, option, "", "") if option else []
        self.query_one("#detail", Text).update("\n".join(line.strip() for line in lines[1:]))

    @on(OptionList.OptionHighlighted, "#findings")
    def other_finding(self) -> None:
        """Another finding is highlighted."""
        self.show_options()

    @on(OptionList.OptionHighlighted, "#options")
    def other_option(self) -> None:
        """Another option is highlighted."""
        self.show_detail()

    @on(OptionList.OptionSelected, "#findings")
    def into_options(self) -> None:
        """Enter on a finding goes to its options."""
        self.query_one("#options").focus()

    @on(OptionList.OptionSelected, "#options")
    def action_choose(self) -> None:
        """Choose the highlighted option; ask for the reason if it is not the first."""
        option, finding = self.option(), self.finding()
        if option is None or finding is None or self.followed is None:
            return
        first = self.followed.advice.options_for(finding.id)[0]
        if option.id == first.id and not option.rulings:
            self._choose(option, "")
            return
        self.pending = option
        self.add_class("-reason")
        self.query_one(Input).focus()

    @on(Input.Submitted)
    def reasoned(self, event: Input.Submitted) -> None:
        """The reason was given (or left empty)."""
        if self.pending is not None:
            self._choose(self.pending, event.value.strip())
        self.action_cancel()

    def action_cancel(self) -> None:
        """Out of giving a reason."""
        self.pending = None
        self.remove_class("-reason")
        self.query_one(Input).value = ""
        self.query_one("#options").focus()

    def _choose(self, option: Option, reason: str) -> None:
        try:
            session_of(self).choose(option.finding, Choice(option.fix, reason))
        except AdvisorError as fault:
            host(self).tell(fault)
            return
        self._again()

    def action_drop(self) -> None:
        """Take the choice for the highlighted finding back."""
        finding = self.finding()
        if finding is not None and finding.id in session_of(self).case.choices:
            session_of(self).choose(finding.id, None)
            self._again()

    def _again(self) -> None:
        at = self.query_one("#findings", OptionList).highlighted or 0
        option = self.query_one("#options", OptionList).highlighted or 0
        self.refresh_all(at, option)

    def action_why(self) -> None:
        """Why the highlighted option is offered or ruled out; why the finding is there, if that has the focus."""
        session = session_of(self)
        option = self.option()
        item: Finding | Option | None = option if self.query_one("#options").has_focus and option else self.finding()
        if item is None or self.followed is None:
            return
        advice = self.followed.advice
        turning = flips(session.base, session.case, advice, item) if isinstance(item, Option) and item.rulings else ()
        self.app.push_screen(Reading(why_lines(session.base, session.case, advice, item, turning, deep=True)))
