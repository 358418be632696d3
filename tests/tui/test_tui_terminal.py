"""In a real terminal: nothing in the data reaches it as a control; a whole case in tmux; resizing, kill, NO_COLOR."""

import json
import os
import re
import shutil
import signal
import subprocess
import sys
import time
import unicodedata
from collections.abc import Callable, Iterator
from pathlib import Path

import pexpect
import pytest

from advisor.rulebase.base import RuleBase
from tests.ground.hostile import sequences
from tests.tui.play import EXAMPLE

ROOT = Path(__file__).resolve().parents[2]
WAIT = 30.0
# Control sequences, control strings and short escapes: ECMA-48, clauses 5.3 to 5.6 (from memory).
CONTROL = re.compile(
    r"\x1b\[(?P<given>[0-?]*)(?P<final>[ -/]*[@-~])"
    r"|\x1b[\]PX^_][^\x07\x1b]*(?:\x07|\x1b\\)"
    r"|\x1b[ -/]*[0-~]"
)


def environment(home: Path, **more: str) -> dict[str, str]:
    kept = {name: os.environ[name] for name in ("PATH", "HOME", "LANG", "LC_ALL") if name in os.environ}
    return {
        "LANG": "C.UTF-8",
        **kept,
        "TERM": "xterm-256color",
        "PYTHONPATH": str(ROOT),
        "ADVISOR_HOME": str(home),
        **more,
    }


class Terminal:
    """The advisor in a pseudo-terminal; keeps every byte it sends."""

    def __init__(self, home: Path, *arguments: str, size: tuple[int, int] = (100, 24), cwd: Path | None = None) -> None:
        command = [sys.executable, "-m", "advisor", *arguments]
        self.child = pexpect.spawn(
            command[0], command[1:], env=environment(home), cwd=cwd, dimensions=(size[1], size[0]), timeout=WAIT
        )
        self.seen = b""

    def until(self, word: str) -> None:
        """Read until this word is on its way to the screen, and then until nothing more comes."""
        start, limit = len(self.seen), time.monotonic() + WAIT
        while word.encode() not in self.seen[start:]:
            assert time.monotonic() < limit, f"never saw {word!r}"
            self.read(0.2)
        while self.read(0.3):
            pass

    def read(self, seconds: float) -> bool:
        try:
            self.seen += self.child.read_nonblocking(65536, seconds)
            return True
        except (pexpect.TIMEOUT, pexpect.EOF):
            return False

    def send(self, keys: str, word: str) -> None:
        self.child.send(keys)
        self.until(word)

    def quit(self) -> None:
        self.child.send("\x11")
        self.child.expect(pexpect.EOF)
        self.seen += self.child.before or b""
        self.child.close()

    def kinds(self) -> set[str]:
        """The kinds of controls it sent: colors and moves by kind, all others in full."""
        text = self.seen.decode("utf-8")
        found = set()
        for match in CONTROL.finditer(text):
            plain = match["final"] in ("m", "H") and not set(match["given"] or "") - set("0123456789;")
            found.add(match["final"] if plain else match[0])
        rest = CONTROL.sub("", text)
        return found | {hex(ord(char)) for char in rest if unicodedata.category(char) in ("Cc", "Cf", "Cs")}


def shelf_of(home: Path, titles: list[str], names: list[str]) -> None:
    """Own cases with these titles and file names, as far as the disk takes the names."""
    folder = home / "data" / "cases"
    folder.mkdir(parents=True)
    for title, name in zip(titles, names, strict=True):
        text = f'version = 1\ngarment = "one_piece"\ntitle = {json.dumps(title)}\n'.encode(errors="ignore")
        try:
            (folder / f"{name[:60]}.toml").write_bytes(text)
        except (OSError, ValueError):
            (folder / f"{abs(hash(name))}.toml").write_bytes(text)


@pytest.mark.skipif(os.name == "nt", reason="needs a pseudo-terminal")
def test_nothing_in_the_data_reaches_the_terminal_as_a_control(tmp_path: Path) -> None:
    some = [text for text in sequences()[::2] if not any(0xD800 <= ord(char) <= 0xDFFF for char in text)]
    titles, names = [t[:100] for t in some[:100]], [t.replace("/", "") for t in some[100:200]]
    runs = []
    for title, kind in ((["hem"] * 100, "harmless"), (titles, "hostile")):
        home = tmp_path / (kind if kind == "harmless" else "host\x1b]0;x\x07ile")
        shelf_of(home, title, [f"case {n}" for n in range(100)] if kind == "harmless" else names)
        terminal = Terminal(home, size=(100, 230), cwd=tmp_path)
        terminal.until("rules and")
        terminal.send("?", "Where things are")
        terminal.child.send("\x1b")
        terminal.read(0.5)
        terminal.child.send("2")
        terminal.read(1.0)
        terminal.quit()
        runs.append(terminal)
    harmless, hostile = runs
    assert hostile.kinds() <= harmless.kinds()
    # They did come through, as text: the gate leaves a mark where a control was.
    assert hostile.seen.decode().count("\ufffd") > 150 and "\ufffd" not in harmless.seen.decode()


@pytest.mark.skipif(os.name == "nt", reason="needs a pseudo-terminal")
def test_an_answer_survives_a_kill(tmp_path: Path, base: RuleBase) -> None:
    from advisor.casefile import read_case

    path = tmp_path / "keeper.toml"
    path.write_bytes(EXAMPLE.read_bytes())
    before = path.read_bytes()
    terminal = Terminal(tmp_path / "home", "interview", str(path), cwd=tmp_path)
    terminal.until("x Cannot say")
    terminal.child.send("2")
    limit = time.monotonic() + WAIT
    while path.read_bytes() == before and time.monotonic() < limit:
        terminal.read(0.05)
    os.kill(terminal.child.pid, signal.SIGKILL)
    terminal.child.close(force=True)
    assert len(read_case(path, base.questions()).case.answers) == 4
    assert not [p for p in tmp_path.iterdir() if ".tmp" in p.name]


class Tmux:
    """The advisor in tmux, on a server of its own."""

    def __init__(self, home: Path, cwd: Path, *arguments: str, size: tuple[int, int] = (80, 24), **more: str) -> None:
        self.name = f"advisor-test-{os.getpid()}-{time.monotonic_ns()}"
        words = [f"{name}={value}" for name, value in environment(home, **more).items() if name != "TERM"]
        self.run(
            "-f", "/dev/null", "new-session", "-d", "-x", str(size[0]), "-y", str(size[1]), "-c", str(cwd),
            "env", *words, sys.executable, "-m", "advisor", *arguments,
        )  # fmt: skip

    def run(self, *arguments: str) -> str:
        command = ["tmux", "-L", self.name, *arguments]
        return subprocess.run(command, check=True, capture_output=True, text=True).stdout

    def screen(self, *arguments: str) -> str:
        return self.run("capture-pane", "-p", *arguments)

    def until(self, *words: str) -> str:
        """Poll the screen until it shows all of these."""
        limit = time.monotonic() + WAIT
        while time.monotonic() < limit:
            shown = self.screen()
            if all(word in shown for word in words):
                return shown
            time.sleep(0.05)
        raise AssertionError(f"never saw {words} in\n{shown}")

    def keys(self, *keys: str) -> None:
        for key in keys:
            self.run("send-keys", key)

    def end(self) -> None:
        subprocess.run(["tmux", "-L", self.name, "kill-server"], check=False, capture_output=True)


@pytest.fixture
def tmux(tmp_path: Path) -> Iterator[Callable[..., Tmux]]:
    if not shutil.which("tmux"):
        pytest.skip("tmux is not installed")
    running: list[Tmux] = []
    cwd = tmp_path / "stand"
    cwd.mkdir()

    def start(*arguments: str, **more: str) -> Tmux:
        running.append(Tmux(tmp_path / "home", cwd, *arguments, **more))
        return running[-1]

    yield start
    for one in running:
        one.end()


def test_a_whole_case_in_tmux(tmux: Callable[..., Tmux], tmp_path: Path) -> None:
    folder = tmp_path / "home" / "data" / "cases"
    folder.mkdir(parents=True)
    (folder / "keeper.toml").write_bytes(EXAMPLE.read_bytes())
    one = tmux()
    one.until("Begin a new case", "keeper's overall")
    one.until("rules and")
    one.keys("Down", "Enter")
    one.until("[2 Questions]", "x Cannot say")
    one.keys("1")
    one.until("Saved.")
    one.keys("F4")
    one.until("[3 Options]", "> 1 ", "suggested")
    one.keys("Enter")
    one.until("> a ")
    one.keys("Enter")
    one.until("Chosen.", "chosen:")
    one.keys("g", "4")
    one.until("[4 Plan]", "What is done about what")
    one.run("resize-window", "-x", "44", "-y", "15")
    shown = one.until("[4 Plan]", "? Help  q Quit")
    assert all(len(line) <= 44 for line in shown.splitlines())
    one.run("resize-window", "-x", "30", "-y", "8")
    one.until("make the window larger")
    one.run("resize-window", "-x", "80", "-y", "24")
    one.until("What is done about what")
    one.keys("s")
    one.until("Saved in")
    one.keys("q")
    assert (folder / "keeper.plan.txt").exists()
    assert 'fix = "mending.fixes.take_metal_off"' in (folder / "keeper.toml").read_text()


def test_no_color_leaves_no_hue_and_the_line_chosen_has_its_mark(tmux: Callable[..., Tmux]) -> None:
    one = tmux(NO_COLOR="1")
    one.until("rules and", "> 1 Begin")
    colored = one.screen("-e")
    codes = {code for given in re.findall(r"\x1b\[([\d;:]*)m", colored) for code in re.split("[;:]", given)}
    # 30-37, 40-47 and the bright ones are hues of the terminal, 38 and 48 any color: SGR, ECMA-48 and its followers.
    hues = {str(n) for first in (30, 40, 90, 100) for n in range(first, first + 8)} | {"38", "48"}
    assert not codes & hues
    assert "7" in codes  # reverse, beside the mark
