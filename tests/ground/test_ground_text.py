"""The text gate: what a terminal would obey comes out as U+FFFD, everything else as it went in."""

import re
import time
import unicodedata

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from rich.cells import cell_len

from advisor.errors import AdvisorError, CaseError, SaveError
from advisor.ground import cells, check_text, clean, is_clean, line
from advisor.ground.text import ELLIPSIS, LINE_LIMIT, MARK_LIMIT, REPLACEMENT

from .hostile import BIDI, NO_WIDTH, SEPARATORS, SURROGATES, TAGS, markup_strings, sequences

# Written from ECMA-48 (C0 00-1F, DEL 7F, C1 80-9F) and the Bidi_Control list of UAX #9, not from the code.
CONTROL = re.compile("[\x00-\x1f\x7f-\x9f]")
CONTROL_BUT_LINES = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f]")
DIRECTION = re.compile("[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]")
OTHER = re.compile("[\u2028\u2029\u200b-\u200d\u2060-\u2064\ufeff\ud800-\udfff\U000e0000-\U000e007f]")


def test_no_sequence_passes() -> None:
    corpus = sequences()
    assert len(corpus) >= 300
    for text in corpus:
        for shown in (clean(text), line(text), line(text, 40)):
            for refused in (CONTROL, DIRECTION, OTHER):
                assert not refused.search(shown), ascii(text)
            shown.encode()  # no half characters: every screen, log and export can write it
        kept = clean(text, newlines=True)
        assert not CONTROL_BUT_LINES.search(kept) and not DIRECTION.search(kept) and not OTHER.search(kept)
        assert not is_clean(text)
        with pytest.raises(CaseError):
            check_text(text, "note")


def test_the_corpus_has_every_kind() -> None:
    """Each introducer in both forms, each invisible character, no repeats: the count alone says little."""
    corpus = sequences()
    for seven_bit, eight_bit in zip("[]PX^_", "\x9b\x9d\x90\x98\x9e\x9f", strict=True):
        assert sum(f"\x1b{seven_bit}" in text for text in corpus) >= 15
        assert sum(eight_bit in text for text in corpus) >= 15
    for char in [*BIDI, *SEPARATORS, *NO_WIDTH, *TAGS, *SURROGATES]:
        assert any(char in text for text in corpus), ascii(char)
    assert len(corpus) == len(set(corpus))


def test_markup_is_only_text() -> None:
    corpus = markup_strings()
    assert len(corpus) >= 50 and {"[/x]", "[@click=app.quit]x[/]", "hem [/2 in] down"} <= set(corpus)
    for text in corpus:
        assert clean(text) == text and check_text(text, "note") == text


def test_every_code_point_by_what_the_library_says_of_it() -> None:
    """Printable by `str.isprintable` stays; what is neither printable nor a space nor unassigned goes."""
    stays = {unicodedata.lookup(name) for name in ("NO-BREAK SPACE", "IDEOGRAPHIC SPACE", "EM SPACE")}
    no_width_letters = {chr(code) for code in (0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x3164, 0xFFA0)}
    checked = 0
    for code in [*range(0x30000), *range(0xE0000, 0xE1000)]:
        char = chr(code)
        kind = unicodedata.category(char)
        if char.isprintable() or char in stays:
            assert (clean(char) == char) == (char not in no_width_letters), hex(code)
        elif kind not in ("Cn", "Co", "Zs"):
            assert clean(char) == REPLACEMENT, hex(code)
        if unicodedata.bidirectional(char) in ("LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"):
            assert clean(char) == REPLACEMENT, hex(code)
        checked += 1
    assert checked == 0x31000


def test_letters_of_all_scripts_stay() -> None:
    for text in (
        "Façon élégante, Ärmel, Größe, ñandú, žluťoučký",
        "e\u0301 u\u0308 a\u0323\u0302",  # the same letters written with marks of their own
        "Платье, φόρεμα, мантія",
        "שִׂמְלָה",  # points and a dot: three marks on one letter
        "कपड़े की सिलाई",
        "外套 上着 외투",
        "½ in × 1⅞ in – 5°",
    ):
        assert clean(text) == text and is_clean(text) and line(text) == text


def test_marks_are_capped() -> None:
    assert clean("e" + "\u0301" * 5000 + "x") == "e" + "\u0301" * MARK_LIMIT + "x"
    assert clean("\u0301" * 9) == "\u0301" * MARK_LIMIT
    assert clean("\u1100" + "\u1161" * 500) == "\u1100" + "\u1161" * MARK_LIMIT
    assert clean("e\u0301\u0302\u0303\u0304o\u0301") == "e\u0301\u0302\u0303\u0304o\u0301"


def test_lines() -> None:
    assert clean("a\nb\tc") == "a\ufffdb\ufffdc"
    assert clean("a\r\nb\tc\rd", newlines=True) == "a\nb\tc\ufffdd"
    assert line("  hem \t at\r\nthe  front\n") == "hem at the front"
    assert line("a\x0bb\u2028c") == "a\ufffdb\ufffdc"


def test_length_is_capped_and_the_cut_shows() -> None:
    assert clean("x" * (LINE_LIMIT + 1)) == "x" * (LINE_LIMIT - 1) + ELLIPSIS
    assert clean("x" * LINE_LIMIT) == "x" * LINE_LIMIT
    assert clean("abcdef", limit=3) == "ab" + ELLIPSIS and clean("abc", limit=0) == ""
    assert clean("x" * 20_000, newlines=True) == "x" * 20_000
    start = time.process_time()
    assert len(clean("\u0301\x1b" * 1_500_000, newlines=True)) <= 1_000_000
    assert len(clean("\x1b[" * 1_500_000)) <= LINE_LIMIT
    assert time.process_time() - start < 5


def test_width_counts_cells() -> None:
    """Against rich, whose tables of widths are its own."""
    for text in ("hem", "Ärmel", "外套", "上着とズボン", "외투", "e\u0301a\u0323", "½ in × 3", "", "ｈｅｍ"):
        assert cells(text) == cell_len(text), text
        for width in range(12):
            cut = line(text, width)
            assert cell_len(cut) <= width
            assert cut == text if cell_len(text) <= width else cut[-1:] in (ELLIPSIS, "")
    assert line("center back seam", 8) == "center " + ELLIPSIS


def test_the_refusal_names_the_character_and_the_place() -> None:
    with pytest.raises(CaseError) as refusal:
        check_text("hem\x1b[31m", "cases/coat.toml, note")
    assert refusal.value.what == "a control character, U+001B, at character 4"
    assert refusal.value.where == "cases/coat.toml, note" and "delete" in refusal.value.hint
    with pytest.raises(CaseError, match=r"U\+202E, at line 2, character 3"):
        check_text("first\nab\u202e", "note", newlines=True)
    with pytest.raises(CaseError, match=r"U\+000A, at line 1, character 6"):
        check_text("first\nab", "note")
    with pytest.raises(CaseError, match=r"surrogate\), U\+D800"):
        check_text("\ud800", "note")
    with pytest.raises(CaseError, match=r"more than 4 marks on one letter, from U\+0301 at character 6"):
        check_text("e" + "\u0301" * 6, "note")
    with pytest.raises(CaseError, match="has 6 characters; at most 5"):
        check_text("abcdef", "note", limit=5)
    with pytest.raises(SaveError):
        check_text("\x00", "title", error=SaveError)
    assert check_text("a\n\tb", "note", newlines=True) == "a\n\tb"


def test_the_place_itself_is_gated() -> None:
    with pytest.raises(AdvisorError) as refusal:
        check_text("\x00", "\x1b]0;hem\x07note")
    assert not CONTROL_BUT_LINES.search(str(refusal.value))


@settings(max_examples=300, deadline=None)
@given(st.text(st.characters() | st.sampled_from("\x1b\x9b\u0301\r\n\u202e\ud800")), st.booleans())
def test_any_text(text: str, newlines: bool) -> None:
    shown = clean(text, newlines=newlines)
    assert clean(shown, newlines=newlines) == shown and is_clean(shown, newlines=newlines)
    assert is_clean(line(text)) and line(line(text)) == line(text)
    assert not (CONTROL_BUT_LINES if newlines else CONTROL).search(shown)
    if is_clean(text, newlines=newlines):
        assert check_text(text, "note", newlines=newlines) == text
    else:
        with pytest.raises(CaseError, match=r"U\+[0-9A-F]{4,6}|characters"):
            check_text(text, "note", newlines=newlines)
