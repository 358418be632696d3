"""rules/README.md: true, the same every time, and refused when it is stale."""

import os
import subprocess
import sys
from pathlib import Path

from click.testing import CliRunner, Result

from advisor.authoring.docs import page
from advisor.cli.app import advisor
from advisor.errors import KnowledgeError, UsageError
from advisor.rulebase.base import read_base
from tests.check.mini import FIND, SHORTEN_FIX, Mini

ROOT = Path(__file__).resolve().parents[2]
DUMP = """
import sys
from pathlib import Path
from advisor.authoring.docs import page
from advisor.rulebase.base import read_base
print(page(read_base(Path(sys.argv[1]))))
"""


def run(*args: str) -> Result:
    return CliRunner().invoke(advisor, ["rules", *args])


def test_the_page_tells_findings_with_answers_fixes_with_grades_and_counts(small: Mini) -> None:
    text = page(read_base(small.folder / "rules"))
    lines = text.splitlines()
    for told in (
        "In all 3 things that may be wrong, 4 answers to them, 3 fixes and 1 reason against a fix, for 1 kind of "
        "garment:",
        "- A cape with a lining",
        "| [Length](#length) | 3 | 4 | 3 | 1 |",
        "**[Lining too long](length/findings/lining_long.py).** A lining that is longer than the cape hangs out "
        "below it. Decided at: lengths and hems; source: common practice, no source.",
        "| [No cutting in thin cloth](length/vetoes/thin_cloth.py) | Cut the lining shorter | the cloth is thin | "
        "common practice, no source |",
        # 8 and 15 minutes for cutting and sewing, 5 and 10, 12 and 25 at the least and the most.
        "| [Cut the lining shorter](length/fixes/shorten.py) | 2 | 4 | 1 | 23 (15 to 37) | The cape itself may still "
        "be let down. | common practice, no source |",
        "| [Leave it as it is](length/fixes/leave.py) | - | - | - | - | It worries the wearer. | common practice, no "
        "source |",
    ):
        assert told in lines, told
    ladder = lines.index("- Cut the lining shorter (difficulty 2, durability 4, visibility 1)")
    assert lines[ladder + 1] == "- Leave it as it is"


def test_a_bar_or_a_tag_in_a_text_does_not_break_the_page(small: Mini) -> None:
    small.change(SHORTEN_FIX, "The cape itself may", "The cape | <b>itself</b> may")
    text = page(read_base(small.folder / "rules"))
    assert "The cape \\| &lt;b>itself&lt;/b> may still be let down." in text


def test_a_stale_page_is_refused_and_written_anew(small: Mini) -> None:
    path = small.folder / "rules/README.md"
    missing = run("docs", "--check").exception
    assert isinstance(missing, KnowledgeError) and not path.exists()
    assert run("docs").stdout == "rules/README.md is written anew.\n"
    assert run("docs", "--check").exit_code == 0
    assert run("docs").stdout == "rules/README.md says what the rules say.\n"
    small.change(FIND, "Lining too long", "Lining that hangs out")
    stale = run("docs", "--check").exception
    assert isinstance(stale, KnowledgeError) and "does not say what the rules say" in stale.what
    assert "Lining too long" in path.read_text()
    assert run("docs").exit_code == 0
    assert "Lining that hangs out" in path.read_text()


def test_no_page_is_made_of_a_frame(small: Mini) -> None:
    assert run("new", "rule", "length.worn").exit_code == 0
    refused = run("docs").exception
    assert isinstance(refused, UsageError) and refused.where == "rules/length/findings/worn.py"


def test_the_same_page_in_every_process(small: Mini) -> None:
    def dump(seed: str) -> str:
        env = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)}
        made = [sys.executable, "-c", DUMP, str(small.folder / "rules")]
        return subprocess.run(made, env=env, capture_output=True, check=True, text=True).stdout

    assert dump("1") == dump("77")


def test_the_page_of_the_rules_that_ship_is_not_stale() -> None:
    done = run("docs", "--check")
    assert done.exit_code == 0, done.exception
