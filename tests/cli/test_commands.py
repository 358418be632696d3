"""The commands as a person meets them: exit codes, plain messages, data, and nothing of the folder one stands in."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parents[2]
CASE = """version = 1
title = "The lamplighter, act one"
garment = "one_piece"
tape = "in"

[answers.waist]
sits = "low"
low_by = { value = "1 1/4 in", how = "measured" }
"""


def run(*args: str, cwd: Path, text: str = "") -> subprocess.CompletedProcess[str]:
    env = {**os.environ, "PYTHONPATH": str(ROOT), "ADVISOR_HOME": str(cwd / "home")}
    return subprocess.run(
        [sys.executable, "-m", "advisor", *args],
        cwd=cwd,
        env=env,
        input=text,
        capture_output=True,
        text=True,
        timeout=60,
    )


@pytest.fixture
def case(tmp_path: Path) -> Path:
    path = tmp_path / "lamplighter.toml"
    path.write_text(CASE, encoding="utf-8")
    return path


def test_advise_plan_and_why_tell_the_same(case: Path, tmp_path: Path) -> None:
    advice = run("advise", str(case), cwd=tmp_path)
    plan = run("plan", str(case), cwd=tmp_path)
    why = run("why", str(case), "1", cwd=tmp_path)
    assert (advice.returncode, plan.returncode, why.returncode) == (0, 0, 0), advice.stderr + plan.stderr + why.stderr
    sentence = "1 1/4 in too long"
    for told in (advice.stdout, plan.stdout, why.stdout):
        assert sentence in " ".join(told.split())


def test_lengths_in_json_carry_mm_unit_and_text(case: Path, tmp_path: Path) -> None:
    data = json.loads(run("advise", str(case), "--json", cwd=tmp_path).stdout)
    assert data["version"] == 1
    assert data["findings"][0]["amount"] == {"mm": 31.75, "unit": "in", "text": "1 1/4 in"}
    nodes = {node["id"] for node in data["trace"]}
    assert all(parent in nodes for node in data["trace"] for parent in node["parents"])


@pytest.mark.parametrize(
    ("args", "told"),
    [
        (("frobnicate",), "no command 'frobnicate'"),
        (("advise",), "Missing argument"),
        (("advise", "nowhere.toml"), "no such file"),
        (("why", "lamplighter.toml", "9z"), "nothing here is called '9z'"),
        (("why", "lamplighter.toml", "Leave it as it is"), "say which: 1c, "),
        (("interview", "--plain", "nowhere/fox.toml"), "there is no such folder"),
        (("interview", "--plain", "f" * 300 + ".toml"), "too long"),
        (("advise", "broken.toml"), "broken.toml"),
    ],
)
def test_bad_input_is_refused_plainly(case: Path, tmp_path: Path, args: tuple[str, ...], told: str) -> None:
    (tmp_path / "broken.toml").write_text("version = = 1", encoding="utf-8")
    done = run(*args, cwd=tmp_path)
    assert done.returncode == 2
    assert told in done.stderr
    assert "Traceback" not in done.stderr


def test_an_unknown_slot_gets_the_nearest(tmp_path: Path) -> None:
    path = tmp_path / "typo.toml"
    path.write_text(CASE.replace("low_by", "lowby"), encoding="utf-8")
    done = run("advise", str(path), cwd=tmp_path)
    assert done.returncode == 2 and "low_by" in done.stderr


def test_a_file_beside_the_case_is_never_imported(case: Path, tmp_path: Path) -> None:
    for name in ("pint", "click", "experta", "tomlkit", "pydantic"):
        (tmp_path / f"{name}.py").write_text(f"open({str(tmp_path / 'canary')!r}, 'w').close()\n", encoding="utf-8")
    done = run("plan", str(case), cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    assert not (tmp_path / "canary").exists()


def test_a_plain_interview_from_a_pipe_begins_saves_and_stops(tmp_path: Path) -> None:
    path = tmp_path / "fox.toml"
    typed = "The fox\none_piece\nin\nquit\n"
    done = run("interview", "--plain", str(path), cwd=tmp_path, text=typed)
    assert done.returncode == 0, done.stderr
    assert path.exists() and 'title = "The fox"' in path.read_text(encoding="utf-8")
    assert "\x1b" not in done.stdout
    assert not any(0x2500 <= ord(letter) <= 0x28FF for letter in done.stdout)


def test_help_does_not_load_what_it_does_not_need(tmp_path: Path) -> None:
    code = "import sys; sys.argv=['advisor','--help']\n"
    code += "try:\n import advisor.cli.app as a; a.main()\nexcept SystemExit: pass\n"
    code += "print([m for m in ('textual','pint','experta') if m in sys.modules])"
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    done = subprocess.run([sys.executable, "-c", code], cwd=tmp_path, env=env, capture_output=True, text=True)
    assert done.stdout.strip().endswith("[]"), done.stdout + done.stderr


def with_more(case: Path, more: str) -> str:
    case.write_text(CASE + more, encoding="utf-8")
    return str(case)


@pytest.mark.parametrize("command", ["advise", "plan"])
@pytest.mark.parametrize(
    ("fix", "told"), [("girth.fixes.back_darts", "Sew darts into the back"), ("gone.fixes.away", "do not know")]
)
def test_a_choice_that_is_not_on_offer_is_named(case: Path, tmp_path: Path, command: str, fix: str, told: str) -> None:
    done = run(command, with_more(case, f'[choices]\n"waist_low@bodice" = {{ fix = "{fix}" }}\n'), cwd=tmp_path)
    said = " ".join(done.stdout.split())
    assert "Chosen was:" in said and told in said and "choose again" in said
    assert "Nothing can be done" not in said


@pytest.mark.parametrize("low", [CASE, CASE[: CASE.index("[answers")]], ids=["something wrong", "nothing wrong"])
def test_a_choice_that_waits_is_named(case: Path, tmp_path: Path, low: str) -> None:
    case.write_text(low + '[choices]\n"too_wide@trousers" = { fix = "girth.fixes.back_darts" }\n', encoding="utf-8")
    said = " ".join(run("advise", str(case), cwd=tmp_path).stdout.split())
    assert "Kept, but not needed now" in said
    assert "Too wide at the waist (the trousers): Sew darts into the back, in pairs" in said


def test_what_goes_past_her_limits_is_told(case: Path, tmp_path: Path) -> None:
    path = with_more(case, "[limits]\nhardest = 1\nweakest = 5\n")
    said = " ".join(run("advise", path, cwd=tmp_path).stdout.split())
    assert "Harder than the limit you set: " in said and "Lasts less than the limit you set: " in said
    assert "Leave it as it is [suggested]" in said, "what goes past the limits is never what is suggested"
    assert "than the limit you set" not in run("plan", path, cwd=tmp_path).stdout
    options = json.loads(run("advise", path, "--json", cwd=tmp_path).stdout)["findings"][0]["options"]
    assert [len(option["past_limits"]) for option in options if option["fix"] == "general.fixes.leave"] == [0]
    assert all(
        any("Harder" in line for line in option["past_limits"]) == (option["closes"] and option["difficulty"] > 1)
        for option in options
    )


def test_a_long_title_is_wrapped(case: Path, tmp_path: Path) -> None:
    case.write_text(CASE.replace("The lamplighter, act one", "lamp " * 40), encoding="utf-8")
    for command in ("advise", "plan"):
        assert max(map(len, run(command, str(case), cwd=tmp_path).stdout.splitlines())) <= 78


@pytest.mark.parametrize("args", [["\x1b[31mx"], ["why", "lamplighter.toml", "\x1b[2J"], ["advise", "\x1b]0;x\x07"]])
def test_what_is_typed_is_shown_harmless(case: Path, tmp_path: Path, args: list[str]) -> None:
    done = run(*args, cwd=tmp_path)
    assert done.returncode == 2 and "\x1b" not in done.stderr + done.stdout and "\x07" not in done.stderr


@pytest.mark.skipif(not Path("/dev/full").exists(), reason="no device here that is always full")
@pytest.mark.parametrize("args", [["reckon", "--list"], ["reckon", "--list", "--json"]])
def test_a_full_disk_is_told_plainly(tmp_path: Path, args: list[str]) -> None:
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    with open("/dev/full", "w", encoding="utf-8") as full:
        command = [sys.executable, "-m", "advisor", *args]
        done = subprocess.run(command, cwd=tmp_path, env=env, stdout=full, stderr=subprocess.PIPE, text=True)
    assert done.returncode == 2 and "cannot be written" in done.stderr and "Traceback" not in done.stderr


def test_a_title_that_cannot_be_is_asked_for_again(tmp_path: Path) -> None:
    path = tmp_path / "fox.toml"
    typed = f"{'x' * 300}\nThe \x1b[31mfox\nThe fox\none_piece\nin\nquit\n"
    done = run("interview", "--plain", str(path), cwd=tmp_path, text=typed)
    assert done.returncode == 0, done.stderr
    assert 'title = "The fox"' in path.read_text(encoding="utf-8") and "\x1b" not in done.stdout
