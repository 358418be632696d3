"""The words of the Questions screen that are reckoned, and what is marked at a look over the garment."""

from collections.abc import Iterable
from dataclasses import dataclass, field

from advisor.core.case import Answer, Known, TapeName, Unknown
from advisor.interview.begin import TAPE_WORDS
from advisor.interview.over import Over, Picks
from advisor.report.lines import para
from advisor.tui.choices import Row
from advisor.words import capital


def same(held: Answer | None, given: Answer) -> bool:
    """Whether what is given is what the case holds already, whenever it was said."""
    if isinstance(held, Known) and isinstance(given, Known):
        return (held.value, held.told) == (given.value, given.told)
    return isinstance(held, Unknown) and isinstance(given, Unknown)


def paragraphs(texts: Iterable[str]) -> list[str]:
    """Texts as lines, each a paragraph."""
    return [row for text in texts for row in para(text)]


def such_as(tape: TapeName) -> str:
    """A length as it is typed on this tape."""
    return f"{TAPE_WORDS[tape]}, such as {'1 1/2' if tape == 'in' else '3.8'}"


MARKING = "Enter or a number marks a line, 0 takes what is marked. x: cannot say (on 0: of all)."
BOXES = {"": "[ ] ", "seen": "[x] ", "unsure": "[?] "}


@dataclass
class Marks:
    """What is marked on the list of a look: for each key "seen" or "unsure", nothing for the rest."""

    over: Over
    signs: tuple[str, ...]
    marked: dict[str, str] = field(default_factory=dict)

    @classmethod
    def of(cls, over: Over, signs: tuple[str, ...], draft: str) -> "Marks":
        """The marks as they were left, as far as the list still has their lines."""
        kept = (part.partition("=") for part in draft.split())
        return cls(over, signs, {key: mark for key, _, mark in kept if key in over.keys})

    def turn(self, key: str, mark: str) -> None:
        """Mark a line, or take the mark off again."""
        if self.marked.get(key) == mark:
            del self.marked[key]
        else:
            self.marked[key] = mark

    def rows(self) -> Iterable[Row]:
        """The lines: what ends it, then what may be seen."""
        done = f"What is marked ({len(self.marked)}), and nothing else" if self.marked else capital(self.over.look.none)
        yield Row("", done)
        for key, sign in zip(self.over.keys, self.signs, strict=True):
            yield Row(key, BOXES[self.marked.get(key, "")] + sign)

    @property
    def picks(self) -> Picks:
        """What is marked, to be taken."""
        seen = frozenset(key for key, mark in self.marked.items() if mark == "seen")
        return Picks(seen, frozenset(self.marked) - seen)

    @property
    def draft(self) -> str:
        """The marks as a text to keep."""
        return " ".join(f"{key}={mark}" for key, mark in self.marked.items())
