"""Damaged and hostile files: each opens or is refused in plain words, soon, and is never touched."""

import time
from collections.abc import Callable
from pathlib import Path
from random import Random

import pytest
from wardrobe import GARMENTS, GOLDEN

from advisor.casefile import parse_case, read_case
from advisor.core.case import Case
from advisor.errors import AdvisorError, CaseError

MUTATIONS = 10_000


def _flip(data: bytes, rng: Random) -> bytes:
    at = rng.randrange(len(data))
    return data[:at] + bytes([data[at] ^ (1 << rng.randrange(8))]) + data[at + 1 :]


def _put(data: bytes, rng: Random) -> bytes:
    at = rng.randrange(len(data))
    return data[:at] + rng.choice((b'"', b"'", b"[", b"]", b"{", b"=", b"\n", b"\x1b", b"9", b"\xff")) + data[at:]


def _truncate(data: bytes, rng: Random) -> bytes:
    return data[: rng.randrange(len(data))]


def _by_line(change: Callable[[list[bytes], int, int], None]) -> Callable[[bytes, Random], bytes]:
    def mutate(data: bytes, rng: Random) -> bytes:
        rows = data.split(b"\n")
        change(rows, rng.randrange(len(rows)), rng.randrange(len(rows)))
        return b"\n".join(rows)

    return mutate


def _swap(rows: list[bytes], one: int, other: int) -> None:
    rows[one], rows[other] = rows[other], rows[one]


def _double(rows: list[bytes], one: int, other: int) -> None:
    rows.insert(one, rows[other])


def _delete(rows: list[bytes], one: int, other: int) -> None:
    del rows[one]


WAYS = (_flip, _put, _truncate, _by_line(_swap), _by_line(_double), _by_line(_delete))


def test_ten_thousand_damaged_files_open_or_are_refused_in_the_family() -> None:
    """Line and hint are asked of every refusal; the slowest may take a second on a busy machine."""
    golden = GOLDEN.read_bytes()
    rng = Random(20261125)
    opened = refused = 0
    slowest = 0.0
    for number in range(MUTATIONS):
        data = WAYS[number % len(WAYS)](golden, rng)
        begun = time.perf_counter()
        try:
            case = parse_case(data.decode("utf-8-sig", errors="replace"), GARMENTS, where="v1.toml")
            assert isinstance(case, Case)
            opened += 1
        except AdvisorError as refusal:
            assert refusal.where.startswith("v1.toml") and refusal.what and refusal.hint, repr(refusal)
            assert str(refusal).replace("\n", "").isprintable()
            refused += 1
        slowest = max(slowest, time.perf_counter() - begun)
    assert opened > 1000 and refused > 1000
    assert slowest < 1


def test_reading_damaged_files_never_changes_them(tmp_path: Path) -> None:
    golden = GOLDEN.read_bytes()
    rng = Random(7)
    path = tmp_path / "case.toml"
    for number in range(300):
        data = WAYS[number % len(WAYS)](golden, rng)
        path.write_bytes(data)
        stamp = path.stat().st_mtime_ns
        try:
            assert read_case(path, GARMENTS).path == path
        except CaseError as refusal:
            assert refusal.where.startswith(str(path))
        assert path.read_bytes() == data and path.stat().st_mtime_ns == stamp
    assert list(tmp_path.iterdir()) == [path]


HOSTILE = (
    "\x1b]52;c;cm0gLXJm\x07", "\x1b[2J", "\x9b31m", "\x90q\x9c", "a\x00b", "\x7f", "bell\a", "back\b",
    "\u202eesrever", "\u2066isolated\u2069", "zero\u200bwidth", "\ufeffmark", "line\u2028break", "\ufdd0",
    "e" + "\u0301" * 5, "\u3164", "tab\tstop", "two\nlines",
)  # fmt: skip
FIELDS = (
    ("title", 'title = "The keeper\'s wife, blue dress"', "title = {}"),
    ("garment", 'garment = "one_piece"', "garment = {}"),
    ("told", 'told = "a fold 1/2 in deep at each of two places"', "told = {}"),
    ("answers.waist.sits", 'sits = "low" ', "sits = {} "),
    ("reason", 'reason = "the side seams are piped"', "reason = {}"),
    ("what", 'what = "waist.low_by: measured"', "what = {}"),
    ("answers", "[answers.hem]", "[answers.{}]"),
    ("answers.hem", "depth =", "{} ="),
    ("choices", '"too_wide@skirt"', "{}"),
)


def _escaped(text: str) -> str:
    return '"' + "".join(f"\\U{ord(char):08X}" for char in text) + '"'


@pytest.mark.parametrize(("field", "old", "new"), FIELDS)
@pytest.mark.parametrize("hostile", HOSTILE, ids=ascii)
def test_no_string_that_a_terminal_obeys_gets_in(field: str, old: str, new: str, hostile: str) -> None:
    text = GOLDEN.read_text()
    row = text[: text.index(old)].count("\n") + 1
    with pytest.raises(CaseError, match="U\\+") as caught:
        parse_case(text.replace(old, new.format(_escaped(hostile)), 1), GARMENTS)
    refusal = caught.value
    assert refusal.where.startswith(f"case, line {row}, ") and field in refusal.where
    assert str(refusal).replace("\n", "").isprintable()


def test_a_story_may_run_over_lines_but_not_hold_controls() -> None:
    head = 'version = 1\ntitle = "x"\ngarment = "apron"\ntape = "in"\n'
    assert parse_case(head + 'story = "one\\n\\ttwo"', GARMENTS).story == "one\n\ttwo"
    with pytest.raises(CaseError, match="a control character, U\\+001B"):
        parse_case(head + 'story = "one\\n\\u001b[2Jtwo"', GARMENTS)


_HEAD = 'version = 1\ntitle = "x"\ngarment = "apron"\ntape = "in"\n'
BIG = {
    "too many bytes": _HEAD + "# " + "x" * 1_000_000,
    "too many bytes in few characters": _HEAD + "# " + "日" * 400_000,
    "nested lists": _HEAD + "story = " + "[" * 20_000,
    "nested tables": _HEAD + "story = " + "{a=" * 20_000,
    "a key of many parts": _HEAD + ".".join("a" * 400_000) + " = 1",
    "a header of many parts": _HEAD + "[" + ".".join("a" * 400_000) + "]",
    "a quoted key of many parts": _HEAD + " . ".join(['"a"'] * 100_000) + " = 1",
    "an inner key of many parts": _HEAD + "limits = { " + ".".join("a" * 100_000) + " = 1 }",
    "a whole number of 5,000 digits": _HEAD + "[limits]\nhardest = " + "1" * 5000,
    "a power of ten": _HEAD + "[limits.weigh]\ndifficulty = 1e999999999999",
    "no number": _HEAD + "[limits.weigh]\ndifficulty = nan",
    "no end": _HEAD + "[limits.weigh]\ndifficulty = inf",
    "many unknown names": _HEAD + "".join(f"n{number} = 1\n" for number in range(15_000)),
    "many answers": _HEAD + "[answers.bib]\n" + "".join(f"n{number} = '1'\n" for number in range(15_000)),
    "a long quote that is not closed": _HEAD + 'story = """' + '\\"' * 400_000,
    "a long word": _HEAD + "[answers.ties]\nkind = '" + "x" * 900_000 + "'",
    "a long length": _HEAD + "[answers.bib]\ndepth = '" + "1" * 9_000 + "'",
    "nothing": "",
    "a byte order mark inside": "\ufeff\ufeff" + _HEAD,
}


@pytest.mark.parametrize("text", BIG.values(), ids=BIG.keys())
def test_files_made_to_choke_a_reader_are_refused_soon(text: str) -> None:
    begun = time.perf_counter()
    with pytest.raises(CaseError) as caught:
        parse_case(text, GARMENTS)
    assert time.perf_counter() - begun < 5  # 1 s when measured alone; the machine is shared
    assert caught.value.hint and len(str(caught.value)) < 500


def test_many_dots_in_texts_and_comments_are_no_deep_name() -> None:
    dots = ".".join("ab" * 50)
    case = parse_case(f"# {dots}\n{_HEAD}story = '{dots}'\n[choices]\n'{dots}' = {{ fix = '{dots}' }}", GARMENTS)
    assert case.story == dots and list(case.choices) == [dots]
