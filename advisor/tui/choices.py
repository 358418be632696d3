"""A list to choose from. The line chosen carries a mark, not only a color, and long lines hang under their own text."""

from collections.abc import Iterable
from dataclasses import dataclass
from textwrap import wrap

from textual.events import Resize
from textual.widgets import OptionList
from textual.widgets.option_list import Option

from advisor.ground import clean
from advisor.tui.keys import DIGITS, LISTS

HERE, HERE_IDLE, ELSEWHERE = "> ", "- ", "  "
"""Before the line chosen while the list has the keys, before it while it has not, and before all others."""


@dataclass(frozen=True)
class Row:
    """A line: its name for the program, what is shown, what stands before it, and a second line below."""

    id: str
    text: str
    head: str = ""
    below: str = ""


class Choices(OptionList):
    """The list. `numbered`: lines up to 9 show their number, from `first` on, and the digit takes the line."""

    BINDINGS = [
        *LISTS,
        *DIGITS,
    ]
    DEFAULT_CSS = """
    Choices, Choices:focus {
        border: none; background: $background; background-tint: transparent; padding: 0 1; min-width: 12;
    }
    Choices > .option-list--option-highlighted { background: $panel; color: $foreground; text-style: none; }
    Choices:focus > .option-list--option-highlighted { background: $primary; color: $background; text-style: bold; }
    Choices > .option-list--option-hover { background: $surface; }
    Choices:ansi > .option-list--option-highlighted { background: ansi_default; color: ansi_default; text-style: none; }
    Choices:ansi:focus > .option-list--option-highlighted {
        background: ansi_default; color: ansi_default; text-style: reverse;
    }
    """

    def __init__(self, *, numbered: bool = False, id: str | None = None) -> None:
        super().__init__(id=id, markup=False)
        self.rows: tuple[Row, ...] = ()
        self.numbered, self.first = numbered, 1

    def show(self, rows: Iterable[Row], at: int = 0, first: int = 1) -> None:
        """Show these lines, with one of them chosen."""
        self.rows, self.first = tuple(rows), first
        self.clear_options()
        self.add_options([Option(self._prompt(i, False), id=row.id) for i, row in enumerate(self.rows)])
        self.highlighted = max(0, min(at, len(self.rows) - 1)) if self.rows else None

    def row(self) -> Row | None:
        """The line chosen."""
        at = self.highlighted
        return self.rows[at] if at is not None and at < len(self.rows) else None

    def action_number(self, number: int) -> None:
        """Take the line with this number, if lines are numbered and there is one."""
        if self.numbered and 0 <= number - self.first < len(self.rows):
            self.highlighted = number - self.first
            self.action_select()

    def watch_highlighted(self, highlighted: int | None) -> None:
        super().watch_highlighted(highlighted)
        self.mark()

    def watch_has_focus(self, _has_focus: bool) -> None:
        super().watch_has_focus(_has_focus)
        self.mark()

    def action_page_up(self) -> None:
        """A page up. A list that is hidden or has no room has no pages."""
        if self.size.height:
            super().action_page_up()  # type: ignore[no-untyped-call]

    def action_page_down(self) -> None:
        """A page down."""
        if self.size.height:
            super().action_page_down()  # type: ignore[no-untyped-call]

    def on_resize(self, event: Resize) -> None:
        self.mark()

    def mark(self) -> None:
        """Put the mark before the line chosen, and wrap all to the width there is."""
        for at in range(min(len(self.rows), self.option_count)):
            prompt = self._prompt(at, at == self.highlighted)
            if self.get_option_at_index(at).prompt != prompt:
                self.replace_option_prompt_at_index(at, prompt)

    def _prompt(self, at: int, here: bool) -> str:
        row = self.rows[at]
        mark = (HERE if self.has_focus else HERE_IDLE) if here else ELSEWHERE
        head = row.head or (
            f"{at + self.first} " if self.numbered and at + self.first < 10 else ELSEWHERE if self.numbered else ""
        )
        opening = mark + clean(head)
        width = max(10, (self.size.width or 80) - 3)
        pad = " " * len(opening)
        lines = wrap(clean(row.text), width, initial_indent=opening, subsequent_indent=pad) or [opening]
        if row.below:
            lines += wrap(clean(row.below), width, initial_indent=pad, subsequent_indent=pad)
        return "\n".join(lines)
