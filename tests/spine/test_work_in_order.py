"""The order of work where one seam is opened at two stages, and how the trace tells what was done to a measure."""

from advisor.advise.follow import follow
from advisor.advise.order import ordered
from advisor.advise.plan import work_through
from advisor.core.model import Model, Put
from advisor.core.stages import Stage
from advisor.core.work import Op, Spread
from tests.spine.worlds import BASE, case_of, choosing, world

LOW = case_of(waist__sits="low", waist__low_by="1 1/4 in")


def turn(id: str, stage: Stage, before: str, after: str) -> Op:
    """An operation that takes one seam from one state to the next."""
    return Op(
        id, stage, "do", ("sides",), "hand", Spread(1, 1, 1), "Do it.", (Put("sides.seam", after),),
        (Put("sides.seam", before),),
    )  # fmt: skip


def test_a_seam_opened_again_later_does_not_come_before_its_first_closing() -> None:
    ops = (
        turn("take apart", "girth", "sewn", "open"), turn("put together", "girth", "open", "sewn"),
        turn("open", "open", "sewn", "open"), turn("baste", "level", "open", "basted"),
        turn("finish", "level", "basted", "sewn"),
    )  # fmt: skip
    states = {"sides.seam": "sewn"}
    order = ordered(ops, states)
    # By hand: a maker opens, bastes and sews; and at the later stage opens and sews once more.
    assert [op.id for op in order] == ["open", "baste", "finish", "take apart", "put together"]
    assert work_through(order, Model({}, {}, states)) == (Model({}, {}, states), ())


def test_the_trace_says_who_chose_and_names_every_measure() -> None:
    guessed = [n.words for n in follow(BASE, world(LOW), {}).advice.trace.nodes.values()]
    hers = choosing(LOW, waist_low__bodice="waist.fixes.raise_seam")
    chosen = [n.words for n in follow(BASE, world(LOW), hers.choices).advice.trace.nodes.values()]
    assert "Suggested: raise the waist seam" in guessed and "You choose: raise the waist seam" not in guessed
    assert "You choose: raise the waist seam" in chosen
    keys = tuple(f"{key}:".replace("_", " ") for key in BASE.garment("one_piece").names)
    assert not [words for words in guessed if words.startswith(keys)]
