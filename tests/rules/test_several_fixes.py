"""A reason against several fixes is written once and met by each of them, and by no other."""

import pytest

from advisor.knowledge.cards import Veto
from tests.rules.mutate import base, plan_for

BACK = {"body.fits": "wide", "body.pinned": "2 in", "body.loose_at": "back"}
CARD = "body.vetoes.sides_back_only"


@pytest.mark.parametrize("seam", ["plain", "felled"])
def test_each_of_them_is_ruled_out_by_the_one_card(seam: str) -> None:
    card = base().rules[CARD]
    assert isinstance(card, Veto) and len(card.fixes) == 2
    options = plan_for({**BACK, "body.side_seam": seam}, garment="shirt").advice.options
    met = {option.fix for option in options if CARD in {ruling.rule for ruling in option.rulings}}
    offered = {option.fix for option in options}
    assert met and met == offered & set(card.fixes)
    assert offered - set(card.fixes), "others are offered, and not ruled out by it"


def test_a_card_for_one_fix_or_for_all_is_as_it_was() -> None:
    vetoes = [card for card in base().rules.values() if isinstance(card, Veto)]
    assert {len(card.fixes) for card in vetoes} >= {0, 1, 2}
    for card in vetoes:
        assert len(card.conditions()) == len(card.when) + (3 if len(card.fixes) > 1 else 2)
