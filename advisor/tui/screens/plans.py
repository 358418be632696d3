"""The plans worth offering, compared in a window over the options: their figures, what changes, and one to take."""

from functools import partial
from typing import ClassVar

from textual import on
from textual.app import ComposeResult
from textual.binding import BindingType
from textual.containers import Vertical
from textual.widgets import OptionList

from advisor.advise.front.offers import Comparison, Offer
from advisor.core.case import Case
from advisor.report.lines import para
from advisor.report.plans import MEANING, difference_lines, figures, held_lines, left_lines, none_lines, title
from advisor.rulebase.base import RuleBase
from advisor.tui.choices import Choices, Row
from advisor.tui.keyline import KeyLine
from advisor.tui.keys import DIGITS, screen_bindings
from advisor.tui.look import Flow, Page, Text
from advisor.tui.windows import FRAME, Window


class Plans(Window[Offer | None]):
    """Gives the plan that was taken, or None."""

    BINDINGS: ClassVar[list[BindingType]] = [*screen_bindings("plans"), *DIGITS]
    DEFAULT_CSS = FRAME.format(name="Plans") + (
        "Plans > .frame { height: 94%; }"
        "Plans.-short > .frame { height: 1fr; }"
        "Plans Choices { height: auto; max-height: 60%; }"
        "Plans Page { height: 1fr; min-height: 2; border-top: solid $primary; }"
        "Plans.-short #ask { display: none; }"
    )

    def __init__(self) -> None:
        super().__init__()
        self.found: Comparison | None = None

    def compose(self) -> ComposeResult:
        with Vertical(classes="frame"):
            yield Text("Which plan for the whole garment?", id="ask")
            yield Choices(numbered=True)
            with Page(can_focus=True):
                yield Flow(lambda: para("Comparing the plans..."), id="changes")
        yield KeyLine("plans")

    def on_mount(self) -> None:
        self.query_one(Page).focus()

    def show(self, base: RuleBase, case: Case, found: Comparison) -> None:
        """The plans were found: show them, or which limit keeps them out."""
        if not self.is_attached:
            return
        self.found = found
        choices = self.query_one(Choices)
        choices.show(Row(str(at), title(offer), "", figures(offer)) for at, offer in enumerate(found.offers))
        self.query_one("#changes", Flow).flow(partial(self.lines, base, case))
        self.query_one("#ask").set_class(not found.offers, "empty")
        if found.offers:
            choices.focus()
        self.refresh_bindings()

    def lines(self, base: RuleBase, case: Case) -> list[str]:
        """What changes between the plans, and what the figures mean."""
        assert self.found is not None
        found = self.found
        if not found.offers:
            return none_lines(base, case, found)
        return [
            *difference_lines(found),
            *held_lines(found),
            *left_lines(found.offers),
            "",
            *para(MEANING),
        ]

    def check_action(self, action: str, parameters: tuple[object, ...]) -> bool | None:
        if action in ("take", "other", "number"):
            return self.found is not None and bool(self.found.offers)
        return True

    @on(OptionList.OptionSelected)
    def taken(self, event: OptionList.OptionSelected) -> None:
        """A plan was taken."""
        event.stop()
        if self.found is not None:
            self.dismiss(self.found.offers[int(event.option.id or 0)])

    def action_number(self, number: int) -> None:
        """The plan with this number, wherever the keys are."""
        if self.found is not None and number <= len(self.found.offers):
            self.dismiss(self.found.offers[number - 1])

    def action_other(self) -> None:
        """From the plans to the text and back."""
        here = self.query_one(Choices).has_focus
        self.query_one(Page if here else Choices).focus()

    def action_back(self) -> None:
        """None of them."""
        self.dismiss(None)
