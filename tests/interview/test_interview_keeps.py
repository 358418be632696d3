"""Stop anywhere and go on; looks keep to what was said; going back; "same as" follows; widening never narrows."""

from dataclasses import replace
from fractions import Fraction
from pathlib import Path
from random import Random

import pytest

from advisor.advise.flips import only_ifs
from advisor.advise.follow import follow
from advisor.advise.world import world_of
from advisor.casefile import case_text, parse_case, still_to_tell
from advisor.core.case import Case, Known, Unknown
from advisor.errors import CaseError, UsageError
from advisor.interview.agenda import Due, next_question
from advisor.interview.over import Over, Picks, looked_over, read_picks
from advisor.interview.plain import start
from advisor.interview.session import Session
from advisor.interview.why import why_lines
from advisor.rulebase.base import the_base
from tests.interview.playing import BASE, CASES, bare, full_case, play

AT = "2026-11-25T09:30:00"
IN = Fraction(254, 10)
FULL = {path.stem: full_case(path) for path in CASES}


def over_of(garment: str, *slots: str) -> Over:
    """A look with these questions of a garment."""
    questions = BASE.garment(garment).questions
    items = tuple(questions[slot] for slot in slots)
    return Over(BASE.looks[items[0].look], items)


def session_for(case: Case, path: Path) -> Session:
    session = Session(BASE, path / "case.toml", case, clock=lambda: AT)
    session.save()
    return session


def test_stopped_after_every_prompt_and_read_again_it_asks_the_same() -> None:
    for case, due in play(FULL["old_harlequin"]):
        again = parse_case(case_text(case, BASE.questions()), BASE.questions())
        assert again == case
        # Another case in hand: nothing remembered by identity can help.
        after = next_question(BASE, again)
        assert (after and after.keys) == (due and due.keys)


def test_what_is_not_seen_is_as_usual_and_what_is_seen_is_still_to_tell() -> None:
    over = over_of("trousers", "waist.fits", "hip.fits", "seat.fits", "leg.fits")
    picks = read_picks(over, "2, 4 3?")
    case = looked_over(bare(FULL["coachman"]), over, picks, AT)
    assert case.answers["waist.fits"] == Known("right", "told", AT)
    assert isinstance(case.answers["seat.fits"], Unknown)
    assert still_to_tell(case) == ("hip.fits", "leg.fits") and not {"hip.fits", "leg.fits"} & set(case.answers)
    assert all(isinstance(a, Unknown) for a in looked_over(case, over, read_picks(over, "?"), AT).answers.values())
    with pytest.raises(UsageError, match="'5' is no number of the list"):
        read_picks(over, "1 5")


def test_what_was_picked_out_is_asked_next_by_itself(tmp_path: Path) -> None:
    over = over_of("trousers", "waist.fits", "hip.fits", "seat.fits", "leg.fits")
    case = looked_over(bare(FULL["coachman"]), over, Picks(frozenset({"hip.fits"})), AT)
    due = next_question(BASE, case)
    assert due is not None and due.over is None and due.question.key == "hip.fits"
    wide = replace(case, answers={**case.answers, "hip.fits": Known("wide")})
    due = next_question(BASE, wide)
    assert due is not None and due.question.key == "hip.pinned"


def test_a_sign_with_one_other_answer_is_that_answer() -> None:
    over = over_of("jeans", "fly.edge", "fly.old_holes")
    case = looked_over(bare(FULL["dock_hand"]), over, Picks(frozenset({"fly.old_holes"})), AT)
    assert case.answers["fly.old_holes"].value == "there" and not still_to_tell(case)  # type: ignore[union-attr]


def test_what_comes_after_a_thing_picked_out_is_left_open() -> None:
    over = over_of("jeans", "fly.kind", "fly.worn", "fly.edge")
    case = looked_over(bare(FULL["dock_hand"]), over, Picks(frozenset({"fly.kind"})), AT)
    assert "fly.worn" not in case.answers and case.answers["fly.edge"] == Known("finished", "told", AT)


def test_a_length_seen_to_equal_another_follows_it_when_that_is_measured() -> None:
    over = over_of("jeans", "band.kind", "band.edge")
    case = looked_over(bare(FULL["dock_hand"]), over, Picks(), AT)
    case = replace(case, answers={**case.answers, "jeans.edge": Known(33 * IN, "measured")})
    world = world_of(case, BASE.garment("jeans"))
    assert world.model.measures["band.edge"] == world.model.measures["jeans.edge"] == 33 * IN
    text = case_text(case, BASE.questions())
    assert 'value = "same as jeans.edge"' in text and parse_case(text, BASE.questions()) == case
    with pytest.raises(CaseError, match=r"band\.edge is never 'same as seat\.rise'"):
        parse_case(text.replace("same as jeans.edge", "same as seat.rise"), BASE.questions())


def test_a_look_is_taken_back_whole_and_blank_leaves_it_for_later(tmp_path: Path) -> None:
    session = session_for(bare(FULL["chimney_imp"]), tmp_path)
    lines: list[str] = []
    start(session, ["1", "back", "0", "quit"], lines.append)
    text = " ".join(" ".join(lines).split())
    assert "Taken back: a look at the cloth." in text
    assert text.count("Lay it out in good light") == 2
    assert session.case.answers["cloth.protective"] == Known("no", "told", AT)
    assert "more questions could change the advice" in text
    before, later = session.case, session.due()
    start(session, ["", "quit"], lines.append)
    assert session.case is before and later is not None and set(later.keys) <= session.put_off


def test_why_is_told_in_six_lines_without_ids() -> None:
    case = bare(FULL["chimney_imp"])
    due = next_question(BASE, case)
    single = BASE.garment("one_piece").questions["waist.sits"]
    for each in (due, Due(single, True)):
        assert each is not None
        told = why_lines(BASE, case, each)
        assert 1 <= len(told) <= 6 and all("_" not in line and "@" not in line for line in told)
        assert " ".join(told).startswith("It may show that something is wrong: ")


# Widening: what an answer that is known lets stand, an unknown one lets stand always, or only if.
@pytest.mark.parametrize("name", ["coachman", "head_clerk", "moth_queen"])
def test_an_answer_she_cannot_give_never_narrows_the_advice(name: str) -> None:
    base, full, rng = the_base(), FULL[name], Random(5)
    garment = base.garment(full.garment)
    now = follow(base, world_of(full, garment), {}, full.limits, told=False).advice
    standing = {option.id for option in now.options if option.open}
    assert standing
    known = sorted(key for key, answer in full.answers.items() if isinstance(answer, Known))
    for key in rng.sample(known, 6):
        wider = replace(full, choices={}, answers={**full.answers, key: Unknown()})
        then = follow(base, world_of(wider, garment), {}, full.limits, told=False).advice
        always = {option.id for option in then.options if option.open}
        sometimes = {item.option for item in only_ifs(base, wider)}
        missing = standing - always - sometimes
        assert not missing, f"{key}: {missing}"
