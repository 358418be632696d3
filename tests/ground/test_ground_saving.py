"""Saving as the person sees it: links, modes and owners stay, odd names and files are refused in plain words."""

import errno
import os
import shutil
import socket
import stat
import time
from functools import partial
from pathlib import Path

import pytest

from advisor.errors import AdvisorError, CaseError, KnowledgeError, SaveError
from advisor.ground import (
    SIZE_CAP,
    AlreadyThere,
    ChangedOnDisk,
    backup,
    create_text,
    digest_of,
    export_bytes,
    export_text,
    make_folder,
    migrate_text,
    read_text,
    save_text,
)
from advisor.ground.faults import refused

from .inject import system, watched

ROOT_USER = hasattr(os, "geteuid") and os.geteuid() == 0
NOBODY = 65534


def _mode(path: Path) -> int:
    return stat.S_IMODE(path.lstat().st_mode)


def _save_again(path: Path, text: str) -> None:
    save_text(path, text, expect=read_text(path)[1])


def _temps(folder: Path) -> list[str]:
    return [name for name in os.listdir(folder) if name.endswith(".tmp")]


# Links, modes, owners


@pytest.mark.parametrize("mask", [0o000, 0o022, 0o077])
def test_a_new_file_is_private_whatever_the_umask(tmp_path: Path, mask: int) -> None:
    before = os.umask(mask)
    try:
        for number, save in enumerate([create_text, export_text, partial(save_text, expect=None)]):
            path = tmp_path / f"coat-{number}.toml"
            assert save(path, "text\n") == digest_of(b"text\n")
            assert _mode(path) == 0o600 and _mode(tmp_path / f".coat-{number}.toml.lock") == 0o600
        assert _mode(make_folder(tmp_path / "wardrobe")) == 0o700
    finally:
        os.umask(before)


@pytest.mark.parametrize("mode", [0o600, 0o640, 0o644, 0o664, 0o755, 0o606])
def test_the_mode_stays(tmp_path: Path, mode: int) -> None:
    path = tmp_path / "coat.toml"
    path.write_text("old\n")
    path.chmod(mode)
    save_text(path, "new\n", expect=digest_of(b"old\n"))
    assert _mode(path) == mode
    path.chmod(0o600)
    assert path.read_text() == "new\n"


@pytest.mark.skipif(not ROOT_USER, reason="only root gives files away")
def test_the_owner_stays_when_root_saves(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_text("old\n")
    os.chown(path, NOBODY, NOBODY)
    path.chmod(0o640)
    _save_again(path, "new\n")
    found = path.stat()
    assert (found.st_uid, found.st_gid, _mode(path)) == (NOBODY, NOBODY, 0o640)


def test_links_stay_and_their_target_is_saved(tmp_path: Path) -> None:
    (tmp_path / "store").mkdir()
    target = tmp_path / "store" / "coat.toml"
    target.write_text("old\n")
    target.chmod(0o644)
    direct, chained = tmp_path / "direct.toml", tmp_path / "chained.toml"
    direct.symlink_to("store/coat.toml")
    chained.symlink_to(direct)
    (tmp_path / "by-folder").symlink_to("store")
    for path in (direct, chained, tmp_path / "by-folder" / "coat.toml"):
        _save_again(path, f"through {path.name}\n")
        assert target.read_text() == f"through {path.name}\n"
        assert direct.is_symlink() and chained.is_symlink() and _mode(target) == 0o644
    assert sorted(os.listdir(tmp_path / "store")) == [".coat.toml.lock", "coat.toml"]


def test_a_dead_link_is_filled_by_a_save_and_refused_by_a_creation(tmp_path: Path) -> None:
    link = tmp_path / "link.toml"
    link.symlink_to("later.toml")
    for make in (create_text, export_text):
        with pytest.raises(AlreadyThere):
            make(link, "text\n")
    assert not (tmp_path / "later.toml").exists()
    save_text(link, "text\n", expect=None)
    assert link.is_symlink() and (tmp_path / "later.toml").read_text() == "text\n"


def test_a_circle_of_links_is_told(tmp_path: Path) -> None:
    (tmp_path / "a").symlink_to("b")
    (tmp_path / "b").symlink_to("a")
    with pytest.raises(SaveError, match="the link leads round in a circle"):
        save_text(tmp_path / "a", "text\n", expect=None)


# Names that are taken, odd or impossible


def test_nothing_is_created_over_another(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_text("old\n")
    for make in (create_text, export_text):
        with pytest.raises(AlreadyThere, match="a file of that name already"):
            make(path, "new\n")
    assert path.read_text() == "old\n"
    assert export_bytes(path, b"%PDF\x00\xff", replace=True) == digest_of(b"%PDF\x00\xff")
    assert path.read_bytes() == b"%PDF\x00\xff"


@pytest.mark.parametrize("code", [errno.EPERM, errno.EOPNOTSUPP])
def test_a_disk_without_hard_links_creates_all_the_same(tmp_path: Path, code: int) -> None:
    def no_links(real, args, kwargs):
        raise system(code)()

    with watched(lambda number, name: no_links if name == "link" else None) as seen:
        create_text(tmp_path / "coat.toml", "text\n")
    assert "replace" in seen and (tmp_path / "coat.toml").read_text() == "text\n"
    assert _temps(tmp_path) == []


def test_a_creation_that_is_overtaken_overwrites_nothing(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"

    def overtaken(real, args, kwargs):
        path.write_text("theirs\n")
        return real(*args, **kwargs)

    with (
        watched(lambda number, name: overtaken if name == "link" else None),
        pytest.raises(AlreadyThere),
    ):
        create_text(path, "mine\n")
    assert path.read_text() == "theirs\n" and _temps(tmp_path) == []


def test_only_files_are_saved_and_read(tmp_path: Path) -> None:
    folder, pipe, plug = tmp_path / "folder", tmp_path / "pipe", tmp_path / "plug"
    folder.mkdir()
    os.mkfifo(pipe)
    with socket.socket(socket.AF_UNIX) as server:
        server.bind(str(plug))
        start = time.monotonic()
        odd = [(folder, "a folder"), (pipe, "a pipe"), (plug, "a socket"), (Path("/dev/null"), "a device")]
        for path, word in odd:
            with pytest.raises(SaveError, match=f"there is {word} of that name"):
                save_text(path, "text\n", expect=None)
            with pytest.raises(CaseError, match=f"this is {word}, not a file"):
                read_text(path)
        assert time.monotonic() - start < 2  # a pipe that nobody fills must not be waited for
    for path in (tmp_path / "..", Path("/"), Path("")):
        with pytest.raises(SaveError):
            save_text(path, "text\n", expect=None)


def test_a_file_marked_read_only_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_text("old\n")
    path.chmod(0o444)
    with pytest.raises(SaveError, match="marked read-only"):
        save_text(path, "new\n", expect=digest_of(b"old\n"))
    assert path.read_text() == "old\n"


@pytest.mark.parametrize(
    ("name", "why"),
    [
        ("x" * 256, "the file name is too long"),
        ("é" * 128, "the file name is too long"),
        ("gone/coat.toml", "the folder is not there"),
        ("file/coat.toml", "a part of the path is a file, not a folder"),
        ("a\0b", "a character no file name may have"),
        ("a\ud800b", "a character no file name may have"),
    ],
)
def test_impossible_names_are_told(tmp_path: Path, name: str, why: str) -> None:
    (tmp_path / "file").write_text("old\n")
    for save in (partial(save_text, expect=None), create_text, export_text):
        with pytest.raises(SaveError, match=why) as refusal:
            save(tmp_path / name, "text\n")
        assert "untouched" in refusal.value.what and refusal.value.hint
        assert str(refusal.value).replace("\n", "").isprintable()
    assert os.listdir(tmp_path) == ["file"]


def test_the_longest_name_can_be_saved(tmp_path: Path) -> None:
    path = tmp_path / ("x" * 255)
    create_text(path, "old\n")
    _save_again(path, "new\n")
    assert path.read_text() == "new\n"


def test_a_folder_removed_while_the_case_is_open(tmp_path: Path) -> None:
    folder = make_folder(tmp_path / "wardrobe")
    digest = create_text(folder / "coat.toml", "old\n")
    shutil.rmtree(folder)
    with pytest.raises(SaveError, match="the folder is not there") as refusal:
        save_text(folder / "coat.toml", "new\n", expect=digest)
    assert refusal.value.where == str(folder / "coat.toml") and "make it again" in refusal.value.hint


def test_texts_that_could_not_be_read_again_are_refused(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    with pytest.raises(SaveError, match="larger than 1,000,000 bytes"):
        create_text(path, "x" * (SIZE_CAP + 1))
    with pytest.raises(SaveError, match=r"half of a character, U\+D800"):
        create_text(path, "hem \ud800")
    assert not path.exists()
    create_text(path, "x" * SIZE_CAP)
    assert len(read_text(path)[0]) == SIZE_CAP


def test_exports_pass_the_text_gate(tmp_path: Path) -> None:
    export_text(tmp_path / "sheet.txt", "hem\x1b[2J\n\tline\u202e\n")
    assert (tmp_path / "sheet.txt").read_text() == "hem\ufffd[2J\n\tline\ufffd\n"
    export_text(tmp_path / "long.txt", "x" * (SIZE_CAP + 5))
    assert (tmp_path / "long.txt").stat().st_size == SIZE_CAP + 5


# Reading


def test_what_is_read(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_bytes(b"\xef\xbb\xbfone\r\ntwo\n")
    text, digest = read_text(path)
    assert text == "one\r\ntwo\n" and digest == digest_of(path.read_bytes())
    # FIPS 180-4, example of SHA-256 for the message "abc".
    assert digest_of(b"abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


def test_what_cannot_be_read_is_told(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_bytes(b"one\ntwo \xff\n")
    with pytest.raises(KnowledgeError, match=r"line 2 is not UTF-8 text \(byte 0xFF\)") as refusal:
        read_text(path, error=KnowledgeError)
    assert refusal.value.where == str(path) and refusal.value.hint
    with path.open("wb") as file:
        file.truncate(50_000_000_000)  # sparse; reading stops at the cap
    with pytest.raises(CaseError, match="larger than 1,000,000 bytes"):
        read_text(path)
    with pytest.raises(CaseError, match="there is no such file"):
        read_text(tmp_path / "gone.toml")
    with pytest.raises(CaseError, match="no file name may have"):
        read_text(tmp_path / "a\0b")


# Backups


def test_backups_are_never_overwritten(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_bytes(b"version = 1\r\n\xff\x00")  # not even text: the copy is of bytes
    path.chmod(0o640)
    assert backup(path) == tmp_path / "coat.toml.bak"
    assert backup(path) == tmp_path / "coat.toml.bak"  # these very bytes are kept already
    path.write_bytes(b"version = 2\n")
    (tmp_path / "coat.toml.bak.2").mkdir()
    (tmp_path / "coat.toml.bak.3").symlink_to("nowhere")
    assert backup(path) == tmp_path / "coat.toml.bak.4"
    assert (tmp_path / "coat.toml.bak").read_bytes() == b"version = 1\r\n\xff\x00"
    assert (tmp_path / "coat.toml.bak.4").read_bytes() == b"version = 2\n"
    assert _mode(tmp_path / "coat.toml.bak") == 0o640
    with pytest.raises(SaveError, match="no such file to back up"):
        backup(tmp_path / "gone.toml")


def test_a_migration_keeps_the_old_file(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    path.write_text("version = 1\n")
    digest, copy = migrate_text(path, "version = 2\n", expect=read_text(path)[1])
    assert (path.read_text(), copy.read_text()) == ("version = 2\n", "version = 1\n")
    assert digest == read_text(path)[1]
    with pytest.raises(ChangedOnDisk):
        migrate_text(path, "version = 3\n", expect=digest_of(b"version = 1\n"))
    assert path.read_text() == "version = 2\n"


def test_a_refusal_the_table_does_not_know_is_told_in_the_systems_words(tmp_path: Path) -> None:
    refusal = refused(tmp_path / "coat.toml", OSError(errno.ENODEV, "No such \x1bdevice"), in_place=False)
    assert isinstance(refusal, AdvisorError)
    assert "the system refused (No such \ufffddevice); what was there before is untouched" in refusal.what
