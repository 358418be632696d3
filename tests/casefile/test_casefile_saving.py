"""Saving: new files, copies, somebody else's changes, and cases that no file could give back."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path

import pytest
from wardrobe import GARMENTS, GOLDEN, generated

from advisor.casefile import MIGRATIONS, answered, case_text, new_case, read_case, write_case
from advisor.core.case import Case, Known
from advisor.errors import AdvisorError, CaseError, SaveError
from advisor.ground import ChangedOnDisk, digest_of

NOW = "2026-11-25T09:30:00"


def begun() -> Case:
    """A case with one answer."""
    return answered(new_case("Apron of the cook", "apron", "cm"), "bib.depth", Known(Fraction(300)), NOW)


def test_a_new_file_opens_as_the_case_and_teaches_the_notation(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    saved = write_case(None, begun(), path, GARMENTS)
    assert saved.digest == digest_of(path.read_bytes()) and saved.text == path.read_text()
    assert read_case(path, GARMENTS) == saved
    assert saved.text.startswith("# ") and "'27 1/2\"'" in saved.text.split("version")[0]


def test_saving_goes_on_from_what_was_saved(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    opened = write_case(None, begun(), path, GARMENTS)
    for seed in range(12):
        opened = write_case(opened, generated(seed), path, GARMENTS)
        assert read_case(path, GARMENTS) == opened


def test_hand_made_comments_live_through_a_save(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    path.write_bytes(GOLDEN.read_bytes())
    opened = read_case(path, GARMENTS)
    write_case(opened, answered(opened.case, "waist.sits", Known("high"), NOW), path, GARMENTS)
    old, new = GOLDEN.read_text().splitlines(), path.read_text().splitlines()
    changed = [number for number, row in enumerate(old) if row != new[number]]
    assert [old[number].partition(" =")[0] for number in changed] == ["sits"]
    assert new[changed[0]].endswith("# seen in the glass")
    assert new[len(old) :] == ["", "[[log]]", f'at = "{NOW}"', 'what = "waist.sits: told, again"']


def test_the_second_of_two_editors_overwrites_nothing(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    write_case(None, begun(), path, GARMENTS)
    mine, theirs = read_case(path, GARMENTS), read_case(path, GARMENTS)
    write_case(theirs, replace(theirs.case, title="theirs"), path, GARMENTS)
    left = path.read_bytes()
    with pytest.raises(ChangedOnDisk, match="nothing was overwritten"):
        write_case(mine, replace(mine.case, title="mine"), path, GARMENTS)
    assert path.read_bytes() == left and read_case(path, GARMENTS).case.title == "theirs"


def test_a_hand_edit_made_meanwhile_is_not_overwritten(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    opened = write_case(None, begun(), path, GARMENTS)
    path.write_text(opened.text + "# by hand\n")
    with pytest.raises(ChangedOnDisk):
        write_case(opened, replace(opened.case, title="mine"), path, GARMENTS)
    assert path.read_text() == opened.text + "# by hand\n"


def test_a_new_case_does_not_take_the_name_of_an_old_one(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    path.write_text("a letter")
    with pytest.raises(SaveError, match="nothing was overwritten"):
        write_case(None, begun(), path, GARMENTS)
    assert path.read_text() == "a letter"


def test_a_copy_keeps_the_comments_and_leaves_the_first_alone(tmp_path: Path) -> None:
    opened = read_case(GOLDEN, GARMENTS)
    before = GOLDEN.read_bytes()
    path = tmp_path / "copy.toml"
    copy = write_case(opened, replace(opened.case, title="Copy"), path, GARMENTS)
    assert copy.path == path and "# seen in the glass" in path.read_text()
    assert GOLDEN.read_bytes() == before
    with pytest.raises(ChangedOnDisk):
        write_case(opened, opened.case, path, GARMENTS)


def test_a_file_reached_by_another_path_is_the_same_file(tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    opened = write_case(None, begun(), path, GARMENTS)
    link = tmp_path / "link.toml"
    link.symlink_to(path)
    write_case(opened, replace(opened.case, title="by the link"), link, GARMENTS)
    assert link.is_symlink() and read_case(path, GARMENTS).case.title == "by the link"


UNWRITABLE = [
    (replace(begun(), story="a\x1b[2Jb"), "a control character"),
    (replace(begun(), title="two\nlines"), "a control character"),
    (replace(begun(), title=" "), "'title' is empty"),
    (replace(begun(), title="x" * 201), "longer than 200 characters"),
    (replace(begun(), garment="apon"), "there is no garment 'apon'"),
    (replace(begun(), version=2), "made by a newer version"),
    (replace(begun(), answers={"bib.width": Known(Fraction(1))}), "nothing is asked about 'width'"),
    (replace(begun(), answers={"bib.depth": Known(Fraction(4000))}), "longer than it can be"),
    (replace(begun(), answers={"bib.depth": Known(Fraction(-10))}), "a minus sign"),
    (replace(begun(), answers={"bib.depth": Known(Fraction(1, 10**40))}), "no exact length"),
    (replace(begun(), answers={"bib.depth": Known("deep")}), "bib.depth = 'deep'"),
    (replace(begun(), answers={"ties.kind": Known(Fraction(10))}), "is no answer to ties.kind"),
    (replace(begun(), answers={"ties.kind": Known("sewn", at="noon")}), "'at' is no date and time"),
    (replace(begun(), limits=replace(begun().limits, hardest=9)), "must be from 1 to 5"),
    (replace(begun(), limits=replace(begun().limits, weigh_durability=Fraction(7, 2))), "from 0 to 3"),
]


@pytest.mark.parametrize(("case", "what"), UNWRITABLE, ids=[what for _, what in UNWRITABLE])
def test_what_a_file_could_not_give_back_is_not_saved(case: Case, what: str, tmp_path: Path) -> None:
    path = tmp_path / "case.toml"
    with pytest.raises(AdvisorError, match=what) as caught:
        write_case(None, case, path, GARMENTS)
    assert "(not saved)" in caught.value.where and not path.exists()
    opened = write_case(None, begun(), path, GARMENTS)
    with pytest.raises(AdvisorError, match=what):
        write_case(opened, case, path, GARMENTS)
    assert path.read_text() == opened.text


def test_a_case_too_large_for_a_file_is_not_saved(tmp_path: Path) -> None:
    with pytest.raises(CaseError, match="larger than 1,000,000 bytes"):
        write_case(None, replace(begun(), story="x" * 1_000_000), tmp_path / "case.toml", GARMENTS)
    assert not (tmp_path / "case.toml").exists()


def test_a_word_that_looks_like_a_length_does_not_slip_through(tmp_path: Path) -> None:
    """Written as "27 in", the word would come back as a length: the reading back must notice."""
    case = replace(begun(), answers={"bib.depth": Known("27 in")})
    with pytest.raises(CaseError, match="would not give the same case"):
        write_case(None, case, tmp_path / "case.toml", GARMENTS)
    assert not (tmp_path / "case.toml").exists()


def test_saving_an_older_format_keeps_a_copy_of_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Format 0 is invented here to try the hook."""
    monkeypatch.setitem(MIGRATIONS, 0, lambda raw: raw | {"version": 1, "tape": "cm"})
    path = tmp_path / "case.toml"
    old = '# old hand\nversion = 0\ntitle = "x"\ngarment = "apron"\n'
    path.write_text(old)
    opened = read_case(path, GARMENTS)
    assert path.read_text() == old
    saved = write_case(opened, opened.case, path, GARMENTS)
    assert (tmp_path / "case.toml.bak").read_text() == old
    assert read_case(path, GARMENTS) == saved and saved.case.tape == "cm"
    assert "version = 1" in saved.text and "# old hand" in saved.text


def test_answers_are_laid_out_in_the_order_of_the_questions() -> None:
    case = replace(
        new_case("x", "one_piece", "in"),
        answers={
            key: Known(Fraction(0)) for key in ("hem.sweep", "front.zipper", "waist.round", "hem.depth", "waist.low_by")
        },
    )
    rows = [
        row.partition(" =")[0] for row in case_text(case, GARMENTS).splitlines() if "0 in" in row or "[answers." in row
    ]
    assert [row for row in rows if not row.startswith("#")] == [
        *(
            "[answers.waist]",
            "low_by",
            "round",
            "[answers.front]",
            "zipper",
            "[answers.hem]",
            "depth",
            "sweep",
        )
    ]
