"""Each way a hand can get a case file wrong: which line is named, what is said, and what to do about it."""

from fractions import Fraction
from pathlib import Path

import pytest
from wardrobe import GARMENTS, GOLDEN

from advisor.casefile import MIGRATIONS, parse_case, read_case
from advisor.core.case import Case, Known
from advisor.errors import CaseError

# (line of the golden file as it is, the same line as mistyped, what is said, what to do)
MISTYPED = [
    ("version = 1", "", "'version' is missing", "version = 1"),
    ("version = 1", 'version = "1"', "'version' must be a whole number", "version = 1"),
    ("version = 1", "version = true", "'version' must be a whole number", "version = 1"),
    ("version = 1", "version = 2", "made by a newer version; nothing was changed", "with that version"),
    ("version = 1", "version = 0", "there is no format 0", "version = 1"),
    ('garment = "one_piece"', "", "'garment' is missing", "garment ="),
    ('garment = "one_piece"', 'garment = "one_peice"', "no garment 'one_peice'", "did you mean 'one_piece'?"),
    ('garment = "one_piece"', 'garmet = "one_piece"', "there is no 'garmet'", "did you mean 'garment'?"),
    ('tape = "in"', 'tape = "inch"', "'tape' cannot be 'inch'", "did you mean 'in'?"),
    ('tape = "in"', "tape = 25", "'tape' must be text in quotes", 'name = "text"'),
    (
        'tape = "in"',
        'tape = "in"\nlining = "silk"',
        "there is no 'lining' here",
        "known here: answers, choices",
    ),
    ('sits = "low" ', 'sits = "lwo" ', "'lwo' is no answer to waist.sits", "did you mean 'low'?"),
    ('sits = "low" ', 'sist = "low" ', "nothing is asked about 'sist' of 'waist'", "did you mean 'sits'?"),
    ('sits = "low" ', 'sits = "" ', "'sits' is blank, which neither answers nor erases", "unknown = true"),
    ('sits = "low" ', "sits = low", "this is no value", 'such as "low"'),
    ('sits = "low" ', "sits = true", "'sits' must be text in quotes", "in quotes"),
    ('sits = "low" ', "sits = 2026-11-25", "'sits' must be a table", "{ name = value }"),
    ("[answers.waist]", "[answers.wiast]", "no place 'wiast'", "did you mean 'waist'?"),
    ("[answers.waist]", "[answer.waist]", "no 'answer' here", "did you mean 'answers'?"),
    ("[answers.front]", "[answers.waist]", "a table is begun twice", "under one header"),
    ('round = "27 1/2"', 'round = "27 1/2""', "something follows where the line should end", "'27 1/2\"'"),
    ('round = "27 1/2"', "round = 27.5", "'round' must be text in quotes", '"1 1/2 in"'),
    ('round = "27 1/2"', "round = 027", "something follows where the line should end", "quotes"),
    ('round = "27 1/2"', 'round = "about 27"', "'about 27': an estimate", "leave the word out"),
    ('round = "27 1/2"', 'round = "27 inchs"', "a word that is no unit here", "did you mean 'inches'?"),
    ('round = "27 1/2"', 'round = "2700"', "longer than it can be", "accepted here: 0 in to 118 1/16 in"),
    ('round = "27 1/2"', 'sits = "high"', "a name is given twice", "delete the other"),
    ('how = "measured"', 'how = "mesured"', "'how' cannot be 'mesured'", "did you mean 'measured'?"),
    ('how = "measured"', 'who = "me"', "there is no 'who' here", "did you mean 'how'?"),
    ('how = "measured"', "unknown = true", "must hold either a value or unknown = true", "one of the two"),
    ('low_by = { value = "1 1/2 in", ', "low_by = { ", "must hold either a value or", "one of the two"),
    ("{ unknown = true,", "{ unknown = false,", "tells nothing", "give the value"),
    ("{ unknown = true,", "{ unknown = 1,", "'unknown' must be true or false", "without quotes"),
    ("{ unknown = true,", '{ unknown = true, how = "told",', "neither measured nor told", "delete 'how'"),
    ('"2095/7"', '"2095/0"', "is no exact length in mm", "goes into value"),
    ('"2095/7"', '"29000/7"', "out of the range", "accepted here: 0 in to 15 3/4 in"),
    ('"2095/7"', '"5 in"', "'5 in' is no exact length", "goes into value"),
    ('{ fix = "waist.fixes.raise_seam" }', "{ }", "'fix' is missing", "add fix"),
    ('{ fix = "waist.fixes.raise_seam" }', '{ fix = " " }', "'fix' is empty", "between the quotes"),
    ('{ fix = "waist.fixes.raise_seam" }', '"waist.fixes"', "must be a table", "{ name = value }"),
    ("hardest = 4", "hardest = 6", "'hardest' must be from 1 to 5", "5 the most"),
    ("hardest = 4", "hardest = 4.0", "'hardest' must be a whole number", "without a point"),
    ("hardest = 4", 'hardest = "4"', "'hardest' must be a whole number", "without quotes"),
    ("hardest = 4", "minutes = 0", "'minutes' must be from 1 to 100000 minutes", "if time does not matter"),
    ("hardest = 4", "money = 4.505", "'money' must be an amount of money", "such as 12 or 4.50"),
    ("hardest = 4", 'prices = { zipper = "4.50" }', "'zipper' must be an amount of money", "without quotes"),
    ("hardest = 4", 'cutting = "no"', "'cutting' must be true or false", "without quotes"),
    ("hardest = 4", "visible = 0", "'visible' must be from 1 to 5", "5 the most"),
    ("hardest = 4", "hardness = 4", "there is no 'hardness' here", "did you mean 'hardest'?"),
    ("durability = 1.25", "durability = 3.5", "'durability' must be a number from 0 to 3", "0.5"),
    ("durability = 1.25", "durability = nan", "'durability' must be a number from 0 to 3", "0.5"),
    ("durability = 1.25", "durability = 1e0", "'durability' must be a number from 0 to 3", "0.5"),
    ("durability = 1.25", "durability = true", "'durability' must be a number from 0 to 3", "0.5"),
    ("durability = 1.25", "durably = 1.25", "there is no 'durably' here", "did you mean 'durability'?"),
    ('what = "waist.low_by: measured"', "", "'what' is missing", "delete the entry"),
    ('what = "waist.low_by: measured"', 'what = ""', "'what' is empty", "between the quotes"),
    (
        'at = "2026-11-25T09:30:00"\nwhat',
        'at = "yesterday"\nwhat',
        "'at' is no date and time",
        "or leave it out",
    ),
    (
        'at = "2026-11-25T09:30:00"\nwhat',
        "at = 2026-11-25T09:30:00\nwhat",
        "must be text in quotes",
        'name = "text"',
    ),
]
# A missing line has none to be named: the table's own is, or, at the top, only the file.
LINELESS = {"'version' is missing", "'garment' is missing"}
ELSEWHERE = {"there is no 'lining' here": 1, "'what' is missing": -2}


@pytest.mark.parametrize(("old", "new", "what", "hint"), MISTYPED, ids=[f"{o} -> {n}" for o, n, _, _ in MISTYPED])
def test_a_mistake_is_named_with_line_reason_and_remedy(old: str, new: str, what: str, hint: str) -> None:
    text = GOLDEN.read_text()
    assert text.count(old) >= 1
    row = text[: text.index(old)].count("\n") + 1
    with pytest.raises(CaseError) as caught:
        parse_case(text.replace(old, new, 1), GARMENTS, where="blue.toml")
    refusal = caught.value
    assert what in refusal.what
    assert hint in refusal.hint
    if what in LINELESS:
        assert refusal.where == "blue.toml"
    else:
        assert refusal.where.partition(", character")[0] == f"blue.toml, line {row + ELSEWHERE.get(what, 0)}"


def test_the_line_named_is_the_very_line() -> None:
    """Counted by hand in the golden file, where the story takes lines 8 to 11."""
    text = GOLDEN.read_text()
    for old, new, line in [
        ('sits = "low" ', 'sits = "lwo" ', 16),
        ('how = "pinned"', 'how = "pined"', 18),
        ('sweep = "1 yd 4 1/2 in"', 'sweep = "1 yrd"', 28),
        ('"1/3"', '"1/0"', 37),
        ('what = "front', 'wat = "front', 45),
        ("zipper_kind =", "zipper_kind", 22),
    ]:
        with pytest.raises(CaseError) as caught:
            parse_case(text.replace(old, new), GARMENTS)
        assert caught.value.where.startswith(f"case, line {line}"), (new, caught.value.where)


def test_windows_line_ends_and_a_byte_order_mark_are_read_and_counted_alike(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    data = GOLDEN.read_bytes()
    path.write_bytes(b"\xef\xbb\xbf" + data.replace(b"\n", b"\r\n"))
    assert read_case(path, GARMENTS).case == read_case(GOLDEN, GARMENTS).case
    path.write_bytes(path.read_bytes().replace(b'"low"', b'"lwo"'))
    with pytest.raises(CaseError) as caught:
        read_case(path, GARMENTS)
    assert caught.value.where == f"{path}, line 16"


def test_what_cannot_be_read_at_all_is_refused(tmp_path: Path) -> None:
    with pytest.raises(CaseError, match="no such file"):
        read_case(tmp_path / "none.toml", GARMENTS)
    with pytest.raises(CaseError, match="a folder, not a file"):
        read_case(tmp_path, GARMENTS)
    (tmp_path / "latin.toml").write_bytes(b'version = 1\ntitle = "caf\xe9"\n')
    with pytest.raises(CaseError, match="line 2 is not UTF-8 text"):
        read_case(tmp_path / "latin.toml", GARMENTS)


def test_no_measure_is_told_that_she_did_not_type_there() -> None:
    text = GOLDEN.read_text().replace('how = "measured"', 'how = "mesured"')
    with pytest.raises(CaseError) as caught:
        parse_case(text, GARMENTS)
    assert "1 1/2" not in str(caught.value) and "38" not in str(caught.value)


def test_other_ways_to_write_the_same_case_are_read() -> None:
    head = 'version = 1\ntitle = "x"\ngarment = "one_piece"\ntape = "in"\n'
    same = parse_case(head + '[answers.waist]\nsits = "low"\nround = "27 1/2"', GARMENTS)
    for body in (
        'answers.waist.sits = "low"\nanswers.waist.round = \'27 1/2"\'',
        'answers = { waist = { sits = "low", round = "2 ft 3.5 in" } }',
        '[answers]\nwaist.sits = { value = "low" }\nwaist.round = { value = "69.85 cm", how = "told" }',
        '[answers.waist.sits]\nvalue = "low"\n[answers.waist.round]\nmm = "1397/2"',
        '["answers"."waist"]\n"si\\u0074s" = """low"""\n\'round\' = "27½"',
    ):
        assert parse_case(head + body, GARMENTS) == same


def test_a_choice_whose_finding_is_gone_is_kept() -> None:
    case = read_case(GOLDEN, GARMENTS).case
    assert case.choices["too_wide@skirt"].fix == "girth.fixes.paired_darts"


def test_an_older_format_is_brought_up_step_by_step(monkeypatch: pytest.MonkeyPatch) -> None:
    """Formats 0 and -1 are invented here to try the hook: in them the title was called otherwise."""

    def from_zero(raw: dict[str, object]) -> dict[str, object]:
        return {("title" if name == "name" else name): value for name, value in raw.items()} | {"version": 1}

    def from_before(raw: dict[str, object]) -> dict[str, object]:
        return {("name" if name == "called" else name): value for name, value in raw.items()} | {"version": 0}

    body = 'garment = "apron"\ntape = "cm"\n[answers.bib]\ndepth = "30"\n'
    monkeypatch.setitem(MIGRATIONS, 0, from_zero)
    monkeypatch.setitem(MIGRATIONS, -1, from_before)
    case = parse_case('version = -1\ncalled = "apron of the cook"\n' + body, GARMENTS)
    assert case == Case("apron", "apron of the cook", "cm", answers={"bib.depth": Known(Fraction(300))})
    with pytest.raises(CaseError, match="there is no format -2"):
        parse_case('version = -2\ncalled = "x"\n' + body, GARMENTS)
