"""Each break of breaks.toml gets its message, and the small rule base without a break gets none."""

import tomllib
from pathlib import Path

import pytest

from tests.check.mini import Mini

BREAKS = tomllib.loads((Path(__file__).parent / "breaks.toml").read_text(encoding="utf-8"))
ALL = [(f"{kind} {number}", entry) for kind, entries in BREAKS.items() for number, entry in enumerate(entries, 1)]


@pytest.mark.parametrize("entry", [entry for _, entry in ALL], ids=[name for name, _ in ALL])
def test_a_break_gets_its_message(mini: Mini, entry: dict[str, str]) -> None:
    if "old" in entry:
        mini.change(entry["file"], entry["old"], entry["new"])
    else:
        mini.write(entry["file"], entry["new"])
    told = mini.errors()
    assert f"{entry['file']}{entry['told']}" in told, "\n".join(told)


def test_the_small_rule_base_is_sound(mini: Mini) -> None:
    report = mini.check()
    assert report.faults == ()
    counts = report.counts
    assert (counts.findings, counts.answers, counts.vetoes, counts.fixes, counts.cases) == (3, 4, 1, 3, 2)
