"""The rule base in words: what a check found."""

from typing import Any

from advisor.ground import line


def check_lines(report: Any, times: bool) -> list[str]:
    """Errors, then notes, one a line."""
    lines = [line(fault.told()) for fault in report.faults if not fault.note]
    lines += [line(f"note: {fault.told()}") for fault in report.faults if fault.note]
    if times:
        lines += [f"{name}: {seconds:.2f} s" for name, seconds in report.seconds]
    lines.append(f"{len(report.errors)} errors, {len(report.faults) - len(report.errors)} notes")
    return lines


def check_data(report: Any) -> dict[str, Any]:
    """The same as data."""
    return {"version": 1, "errors": [fault.told() for fault in report.errors]}
