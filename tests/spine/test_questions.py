"""What she cannot say gives "only if"; a refusal names the value that flips it; what cannot matter is not asked."""

from dataclasses import replace
from fractions import Fraction

from advisor.advise.flips import flips, only_ifs
from advisor.advise.follow import follow
from advisor.advise.sweep import grid, outcome
from advisor.core.case import Case, Known
from advisor.core.work import Option
from advisor.interview.agenda import next_question
from advisor.interview.stand import decides
from advisor.lengths import INCH_TAPE, read_length
from tests.spine.worlds import BASE, case_of, world

DART, SEAM = "girth.fixes.back_darts", "girth.fixes.center_back"


def loose(**answers: str) -> Case:
    """Trousers 2 in too wide down to the high hip, with back pockets."""
    told = {
        "waist__pinned": "2 in", "trousers__edge": "34 in", "trousers__loose_to": "high_hip",
        "trousers__dart_room": "6 in", "back_pocket__there": "there", "back_pocket__gap": "3 in",
        "back_pocket__below": "2 in",
    }  # fmt: skip
    return case_of(**{**told, **answers})


def option(case: Case, fix: str) -> Option:
    advice = follow(BASE, world(case), case.choices).advice
    return next(o for o in advice.options if o.fix == fix)


def test_near_pockets_rule_the_seam_out_and_name_the_gap_that_flips_it() -> None:
    case = loose()
    seam = option(case, SEAM)
    assert seam.rulings and option(case, DART).open
    advice = follow(BASE, world(case), case.choices).advice
    turning = {flip.key: flip for flip in flips(BASE, case, advice, seam)}
    flip = turning["back_pocket.gap"]
    assert flip.upward and isinstance(flip.value, Fraction)
    # The value is the very edge: there the seam stands, one mark of the tape below it does not.
    at = replace(case, answers={**case.answers, "back_pocket.gap": Known(flip.value)})
    under = replace(case, answers={**case.answers, "back_pocket.gap": Known(flip.value - INCH_TAPE.mark)})
    assert option(at, SEAM).open and not option(under, SEAM).open


def test_a_gap_nobody_can_measure_gives_only_if() -> None:
    case = loose(back_pocket__gap="?")
    found = {item.option: item for item in only_ifs(BASE, case) if item.key == "back_pocket.gap"}
    item = found[f"too_wide@trousers>{SEAM}"]
    assert len(item.runs) == 1
    least, most = item.runs[0]
    assert isinstance(least, Fraction) and most == BASE.garment("one_piece").questions["back_pocket.gap"].most
    open_at = replace(case, answers={**case.answers, "back_pocket.gap": Known(least)})
    shut_at = replace(case, answers={**case.answers, "back_pocket.gap": Known(least - INCH_TAPE.mark)})
    assert option(open_at, SEAM).open and not option(shut_at, SEAM).open
    # What does not hang on the gap is not listed as hanging on it.
    assert f"too_wide@trousers>{DART}" not in found


def test_a_question_that_cannot_matter_is_not_asked_and_truly_cannot() -> None:
    case = loose()
    question = BASE.garment("one_piece").questions["trousers.allowance"]  # for letting out; nothing is too narrow
    assert not decides(BASE, case, question)
    now = outcome(BASE, case, {})[1]
    values = grid(question, INCH_TAPE)
    assert len(values) > 5
    assert all(outcome(BASE, case, {question.key: value})[1] == now for value in values)
    tight = case_of(trousers__edge="30 in", wearer__waist="31 in")
    assert decides(BASE, tight, question)


def test_what_comes_after_another_answer_is_not_asked_before_it() -> None:
    asked = []
    case = case_of()
    for _ in range(6):
        due = next_question(BASE, case, frozenset(asked))
        assert due is not None
        asked.append(due.question.key)
    assert not {"waist.low_by", "waist.high_by", "back_pocket.gap"} & set(asked)
    low = case_of(waist__sits="low")
    others = frozenset(BASE.garment("one_piece").questions) - {"waist.low_by"}
    due = next_question(BASE, low, others)
    assert due is not None and due.question.key == "waist.low_by"


def test_an_answer_that_no_longer_means_anything_changes_nothing() -> None:
    right = case_of(waist__sits="right")
    stale = replace(right, answers={**right.answers, "waist.low_by": Known(read_length("1 in", unit="in"))})
    assert outcome(BASE, right, {})[1] == outcome(BASE, stale, {})[1]
