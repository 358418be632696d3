"""Names made from titles, and the folders: nothing is ever written outside, whatever the title."""

import hashlib
import os
import re
import stat
from pathlib import Path

import platformdirs
import pytest
from platformdirs.macos import MacOS

from advisor.errors import AdvisorError, SaveError
from advisor.ground import (
    Folders,
    check_inside,
    create_text,
    export_text,
    inside,
    make_folder,
    new_path,
    read_text,
    safe_name,
    user_folders,
)

from .hostile import file_names

PLAIN = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
# Microsoft, "Naming Files, Paths, and Namespaces" (from memory).
RESERVED = {"con", "prn", "aux", "nul"} | {f"{port}{digit}" for port in ("com", "lpt") for digit in range(10)}


def _tree(root: Path) -> dict[str, str]:
    """Every path below `root` with a digest of what is there."""
    found = {}
    for folder, folders, files in os.walk(root):
        for name in files:
            path = Path(folder, name)
            found[str(path)] = hashlib.sha256(path.read_bytes()).hexdigest()
        found.update({str(Path(folder, name)): "folder" for name in folders})
    return found


def test_hostile_titles_stay_in_the_folder(quick_folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    decoy, cases = quick_folder / "decoy", quick_folder / "decoy" / "parent" / "cases"
    cases.mkdir(parents=True)
    for path in (decoy / "outside.toml", decoy / "parent" / "outside.toml", decoy / "x"):
        path.write_text("decoy\n")
    monkeypatch.chdir(cases)
    before = _tree(decoy)
    names = file_names()
    assert len(names) >= 200
    for name in names:
        path = new_path(cases, name, ".toml")
        assert inside(cases, path) and path.parent == cases
        create_text(path, "title\n")
        assert read_text(path)[0] == "title\n"
    new = set(_tree(decoy)) - set(before)
    assert {path: digest for path, digest in _tree(decoy).items() if path in before} == before
    assert all(Path(path).parent == cases for path in new)
    assert len([path for path in new if path.endswith(".toml")]) == len(names)


def test_hostile_names_given_as_paths_are_refused_or_inside(quick_folder: Path) -> None:
    """Someone may also type a file name herself: it is saved inside the folder, or plainly refused."""
    cases = make_folder(quick_folder / "parent" / "cases")
    before = _tree(quick_folder)
    saved = refused = 0
    for name in file_names():
        try:
            export_text(check_inside(cases, cases / name), "title\n")
            saved += 1
        except AdvisorError as refusal:
            assert refusal.hint and not re.search("[\x00-\x09\x0b-\x1f\x7f-\x9f\u202a-\u202e]", str(refusal))
            refused += 1
    assert saved + refused == len(file_names()) >= 200 and saved >= 50 and refused >= 50
    assert all(Path(path).is_relative_to(cases) for path in set(_tree(quick_folder)) - set(before))


def test_safe_names_are_plain() -> None:
    for title in file_names():
        name = safe_name(title)
        assert PLAIN.fullmatch(name) and len(name.encode()) <= 80 and name not in RESERVED, ascii(title)


@pytest.mark.parametrize(
    ("title", "name"),
    [
        ("Wool coat, act two", "wool-coat-act-two"),
        ("Größe Ärmel ñ ç œuf", "grosse-armel-n-c-oeuf"),
        ("  ... ", "untitled"),
        ("Платье", "untitled"),
        ("con", "con-file"),
        ("COM¹", "com1-file"),
        ("../../etc/passwd", "etc-passwd"),
        ("x" * 79 + " y", "x" * 79),
    ],
)
def test_safe_names(title: str, name: str) -> None:
    assert safe_name(title) == name


def test_a_taken_name_is_numbered(tmp_path: Path) -> None:
    assert new_path(tmp_path, "Coat", ".toml").name == "coat.toml"
    (tmp_path / "coat.toml").write_text("")
    (tmp_path / "coat-2.toml").symlink_to("nowhere")
    assert new_path(tmp_path, "Coat", ".toml").name == "coat-3.toml"


def test_inside_follows_links(tmp_path: Path) -> None:
    cases, other = tmp_path / "cases", tmp_path / "cases-other"
    cases.mkdir()
    other.mkdir()
    (cases / "way-out").symlink_to(other)
    (cases / "out.toml").symlink_to(other / "out.toml")
    assert inside(cases, cases / "coat.toml") and inside(cases, cases)
    outside = [other / "x", cases / "way-out" / "x", cases / "out.toml", cases / ".." / "x"]
    for path in [*outside, Path("/etc/passwd")]:
        assert not inside(cases, path)
        with pytest.raises(SaveError, match="outside the folder"):
            check_inside(cases, path)
    assert not inside(tmp_path / "gone", tmp_path / "gone" / "x")
    assert not inside(cases, cases / "a\0b")


def _mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def test_one_variable_moves_everything(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    home = tmp_path / "new" / "home"
    monkeypatch.setenv("ADVISOR_HOME", str(home))
    assert user_folders(create=False) == Folders(home / "data", home / "config", home / "state")
    assert not home.exists()
    folders = user_folders()
    for folder in (*folders, home, home.parent):
        assert _mode(folder) == 0o700
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("ADVISOR_HOME", "here")
    assert user_folders().data == tmp_path / "here" / "data"


@pytest.mark.parametrize("system", [platformdirs.unix.Unix, MacOS])
def test_xdg_variables_are_honored(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, system: type[platformdirs.PlatformDirs]
) -> None:
    """XDG Base Directory Specification 0.8: a variable for each kind of folder, 0700 for what is created."""
    monkeypatch.delenv("ADVISOR_HOME", raising=False)
    monkeypatch.setattr(platformdirs, "PlatformDirs", system)
    for kind in ("DATA", "CONFIG", "STATE"):
        monkeypatch.setenv(f"XDG_{kind}_HOME", str(tmp_path / kind.lower()))
    folders = user_folders()
    for kind, folder in folders._asdict().items():
        assert folder == tmp_path / kind / "alteration-advisor"
        assert _mode(folder) == 0o700


def test_three_folders_where_the_system_has_one(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for name in [name for name in os.environ if name.startswith("XDG_")] + ["ADVISOR_HOME"]:
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setenv("HOME", str(tmp_path))
    monkeypatch.setattr(platformdirs, "PlatformDirs", MacOS)
    folders = user_folders(create=False)
    assert len(set(folders)) == 3 and not any(a in b.parents for a in folders for b in folders)


def test_a_home_that_cannot_be_made_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("ADVISOR_HOME", str(tmp_path / "file"))
    with pytest.raises(SaveError, match="something else of that name is in the way") as refusal:
        user_folders()
    assert refusal.value.where == str(tmp_path / "file") and refusal.value.hint


def test_a_folder_that_is_there_keeps_its_mode(tmp_path: Path) -> None:
    there = tmp_path / "there"
    there.mkdir()
    there.chmod(0o755)
    assert make_folder(there / "cases") == there / "cases"
    assert _mode(there) == 0o755 and _mode(there / "cases") == 0o700
    with pytest.raises(SaveError):
        make_folder(there / "a\0b")
