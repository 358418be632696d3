"""The sieve before the sweeps is sound: what it calls unreadable changes nothing, over all a sweep would try.

The yardstick is the advice itself, worked out for every such answer; not its signature alone but every number.
"""

import random

import pytest

from advisor.advise.advise import forget
from advisor.advise.follow import Followed
from advisor.advise.relevant import may_matter
from advisor.advise.sweep import grid, outcome
from advisor.lengths import TAPES
from tests.advise.advise_worlds import BASE, CASES, supposed, world
from tests.some_cases import some

SAMPLE = 5


def _all_but_the_garment(followed: Followed) -> tuple[object, ...]:
    advice = followed.advice
    return advice.findings, advice.options, dict(advice.choices), advice.idle, advice.remains, followed.suggested


@pytest.mark.parametrize("name", some(sorted(CASES), 5))
def test_what_is_unreadable_changes_nothing(name: str) -> None:
    case, pick = CASES[name], random.Random(name)
    forget()
    now, mark = outcome(BASE, case, {})
    here, questions = world(case), BASE.garment(case.garment).questions
    unread = [key for key in sorted(questions) if not may_matter(BASE, here, now.advice, key)]
    assert unread
    for key in pick.sample(unread, min(SAMPLE, len(unread))):
        for value in grid(questions[key], TAPES[case.tape]):
            then, other = outcome(BASE, case, {key: value})
            assert other == mark, f"{key} = {value}"
            assert _all_but_the_garment(then) == _all_but_the_garment(now), f"{key} = {value}"


def test_the_sieve_lets_through_what_matters_and_shuts_something_out() -> None:
    # A sieve that shut out nothing would be sound too, and useless.
    shut, open_ = 0, 0
    pick = random.Random(3)
    for case in CASES.values():
        now, mark = outcome(BASE, case, {})
        here = world(case)
        for suppose in (supposed(case, 1, pick) for _ in range(6)):
            (key,) = suppose
            matters = may_matter(BASE, here, now.advice, key)
            shut += not matters
            open_ += outcome(BASE, case, suppose)[1] != mark
            assert matters or outcome(BASE, case, suppose)[1] == mark
    assert shut > 10 and open_ > 10
