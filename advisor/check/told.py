"""A report as lines and as data: errors, then notes, then what was checked and what cannot be."""

from dataclasses import asdict
from typing import Any

from advisor.check.fault import Fault
from advisor.check.run import Report
from advisor.check.scope import BLIND, Counts
from advisor.ground import line
from advisor.report.lines import bullets, heading, para

SHOWN_NOTES = 12
VERSION = 1


def report_lines(report: Report, times: bool, every_note: bool) -> list[str]:
    """One line for each error; notes, figures and blind spots below."""
    notes = [fault for fault in report.faults if fault.note]
    lines = [line(fault.told()) for fault in report.errors]
    if notes:
        lines += heading(f"{_number(len(notes), 'note')}: nothing is wrong, but look")
        lines += [line(fault.told()) for fault in (notes if every_note else notes[:SHOWN_NOTES])]
        if len(notes) > SHOWN_NOTES and not every_note:
            lines.append(f"... and {len(notes) - SHOWN_NOTES} more; --notes shows all")
    lines += heading("What was checked")
    lines += _counted(report.counts)
    if times:
        lines += heading("How long it took")
        lines += [f"{seconds:6.2f} s  {name}" for name, seconds in report.seconds]
    lines += heading("What no check here can see")
    lines += bullets(BLIND)
    return [*lines, "", verdict(report)]


def verdict(report: Report) -> str:
    """The last line."""
    notes = len(report.faults) - len(report.errors)
    told = _number(len(report.errors), "error") if report.errors else "No error"
    return f"{told}, {_number(notes, 'note')}, in {sum(seconds for _, seconds in report.seconds):.1f} s of work."


def report_data(report: Report) -> dict[str, Any]:
    """The same for programs."""
    return {
        "version": VERSION,
        "errors": [_fault(fault) for fault in report.errors],
        "notes": [_fault(fault) for fault in report.faults if fault.note],
        "counts": asdict(report.counts),
        "cannot_see": list(BLIND),
        "seconds": {name: round(seconds, 3) for name, seconds in report.seconds},
    }


def _fault(fault: Fault) -> dict[str, Any]:
    return {"check": fault.check, "file": fault.where, "line": fault.line, "what": fault.what, "hint": fault.hint}


def _counted(counts: Counts) -> list[str]:
    rules = counts.findings + counts.answers + counts.vetoes
    quality = ", ".join(f"{count} {quality}" for quality, count in sorted(counts.qualities.items(), key=_most))
    marked = ", ".join(f"{count} {mark.replace(', ', ' and ')}" for mark, count in counts.marked.items())
    items = [
        f"{rules} rules ({counts.findings} findings, {counts.answers} answers, {counts.vetoes} vetoes) and "
        f"{counts.fixes} fixes, with {_number(counts.examples, 'example')} and {counts.near_misses} near misses",
        f"{_number(counts.garments, 'garment')}, {_number(counts.roles, 'role')}, {_number(counts.cases, 'case')}, "
        f"{_number(counts.formulas, 'formula')}",
        f"{counts.sources} sources, {counts.named} of them named by a card, a formula or a table; "
        f"by quality: {quality or 'none'}",
        f"cards, formulas and table rows without a source: {marked or 'none'}",
        f"{counts.worlds} worlds tried, {counts.plans} plans made, work spoiled in {counts.spoiled} ways",
    ]
    return [each for item in items for each in para(item, 2, "- ")]


def _most(item: tuple[str, int]) -> tuple[int, str]:
    return -item[1], item[0]


def _number(count: int, noun: str) -> str:
    return f"{count} {noun}" + ("" if count == 1 else "s")
