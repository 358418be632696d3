"""Shared by all tests: hypothesis without a clock, and no skip that nobody allowed."""

import os
from pathlib import Path

import pytest
from hypothesis import settings

settings.register_profile("steady", deadline=None, derandomize=True)
settings.load_profile("steady")

ALLOWED = Path(__file__).parent.parent / ".ci" / "allowed_skips.txt"


def allowed_skips() -> tuple[str, ...]:
    """The beginnings of the node ids that may be skipped in CI."""
    lines = ALLOWED.read_text(encoding="utf-8").splitlines()
    return tuple(line.split()[0] for line in lines if line.strip() and not line.startswith("#"))


def pytest_terminal_summary(terminalreporter: pytest.TerminalReporter) -> None:
    skipped = [report.nodeid for report in terminalreporter.getreports("skipped")]
    odd = [node for node in skipped if not node.startswith(allowed_skips())] if allowed_skips() else skipped
    if os.environ.get("CI") and odd:
        terminalreporter.section("skipped without leave")
        for node in odd:
            terminalreporter.write_line(node)


def pytest_sessionfinish(session: pytest.Session) -> None:
    reporter = session.config.pluginmanager.getplugin("terminalreporter")
    if not os.environ.get("CI") or reporter is None:
        return
    skipped = [report.nodeid for report in reporter.getreports("skipped")]
    leave = allowed_skips()
    if any(not (leave and node.startswith(leave)) for node in skipped) and session.exitstatus == 0:
        session.exitstatus = 1
