"""A sheet made from a plan: what the command and the screen share."""

from dataclasses import dataclass

from advisor.core.advice import Plan
from advisor.core.case import Case
from advisor.report.advice import teller_of
from advisor.rulebase.base import RuleBase
from advisor.sheet.content import blocks
from advisor.sheet.pdf import print_sheet
from advisor.sheet.templates import templates

PAPER = {"in": "letter", "cm": "a4"}
"""The paper that is likely where a tape is used: common practice, no source."""


@dataclass(frozen=True)
class Sheet:
    """The bytes of a PDF, and what is on it."""

    data: bytes
    pages: int
    templates: int
    paper: str

    @property
    def told(self) -> str:
        """What is on it, in words, and how to print it."""
        pages, shapes = _counted(self.pages, "page"), _counted(self.templates, "template")
        paper = "A4" if self.paper == "a4" else "Letter"
        return (
            f"{pages} for {paper} paper, {shapes}. Print it at actual size (100 %), and measure the two lines at the "
            "foot before you use a template."
        )


def make_sheet(base: RuleBase, case: Case, plan: Plan, paper: str | None = None) -> Sheet:
    """The sheet of a plan, for "a4" or "letter"; without `paper`, for what goes with the tape of the case."""
    drawings = templates(plan, teller_of(base, case))
    paper = paper or PAPER[case.tape]
    printed = print_sheet(case.title, blocks(base, case, plan), drawings, paper)
    return Sheet(printed.data, printed.pages, len(drawings), paper)


def _counted(number: int, what: str) -> str:
    return f"{number} {what}" + ("" if number == 1 else "s")
