"""What a fix at a front opening comes to: the operations of zippers and rows of fastenings, chained.

zippers.py      out, shorter, new, back in         fastenings.py   strips, rows, snaps, hooks
buttonholes.py  holes and buttons                  here            the chains, one for each fix
"""

from advisor.core.figure import Figure
from advisor.core.work import Op, Work
from advisor.figures.formula import figure
from advisor.figures.rows import fly_part
from advisor.knowledge.fix import work_of
from advisor.knowledge.view import Trouble, View, amount
from advisor.operations import buttonholes, fastenings, zippers


def shorten_from_bottom(trouble: Trouble, view: View) -> Work:
    """The old zipper out, shortened at its lower end, set in again."""
    return _shorten(trouble, view, top=False)


def shorten_from_top(trouble: Trouble, view: View) -> Work:
    """The old zipper out, shortened at its upper end, set in again."""
    return _shorten(trouble, view, top=True)


def _shorten(trouble: Trouble, view: View, top: bool) -> Work:
    place = trouble.place
    length, run = view.measure(f"{place}.closure"), view.measure(f"{place}.opening")
    ops = (
        zippers.unpick_zipper(view, place),
        *zippers.shorten(view, place, "zipper", length, run, top),
        zippers.set_in(view, place, "zipper"),
    )
    return work_of(ops)


def new_zipper(trouble: Trouble, view: View) -> Work:
    """A bought zipper in place of the old one, shortened where stock is longer."""
    place = trouble.place
    run = view.measure(f"{place}.opening")
    ops = (
        *_cleared(view, place),
        *zippers.lay_new(view, place, "new_zipper", run, zippers.old_run(view, place)),
        zippers.set_in(view, place, "new_zipper"),
    )
    return work_of(ops)


def buttons(trouble: Trouble, view: View) -> Work:
    """Buttons that show, all the way down."""
    return _buttoned(trouble, view, "buttons")


def hidden_placket(trouble: Trouble, view: View) -> Work:
    """Buttons behind the front, their holes in a strip of their own."""
    return _buttoned(trouble, view, "placket")


def _buttoned(trouble: Trouble, view: View, kind: str) -> Work:
    place, hidden = trouble.place, kind == "placket"
    run = view.measure(f"{place}.opening")
    before = _kind_after(view, place)
    mark = fastenings.mark_row(view, place, run, "buttonholes", before)
    spots = tuple(mark.figures.values())
    ops: tuple[Op, ...] = (
        *_lapped(view, place, run),
        mark,
        buttonholes.work_holes(view, place, len(spots), before, hidden),
        buttonholes.cut_holes(view, place, len(spots)),
        *((buttonholes.tack_between(view, place, spots),) if hidden and len(spots) > 1 else ()),
        buttonholes.sew_buttons(view, place, len(spots), before, kind),
    )
    return work_of(ops)


def buttons_over_fly(trouble: Trouble, view: View) -> Work:
    """Buttons that show down to the waist, a zipper in a fly below it."""
    place = trouble.place
    to_waist: Figure = view.measure(f"{place}.top_to_waist")
    fly = figure(fly_part, "fly", opening=view.measure(f"{place}.opening"), to_waist=to_waist)
    before = _kind_after(view, place)
    mark = fastenings.mark_row(view, place, to_waist, "buttonholes", before, to_the_end=True)
    count = len(mark.figures)
    ops = (
        *_lapped(view, place, to_waist),
        *zippers.lay_new(view, place, "fly_zipper", fly, None),
        zippers.set_fly(view, place),
        mark,
        buttonholes.work_holes(view, place, count, before, hidden=False),
        buttonholes.cut_holes(view, place, count),
        buttonholes.sew_buttons(view, place, count, before, "buttons_over_fly", fly=True),
    )
    return work_of(ops, fly=fly)


def new_snaps(trouble: Trouble, view: View) -> Work:
    """New snaps all the way down."""
    place = trouble.place
    run, before = view.measure(f"{place}.opening"), _kind_after(view, place)
    ops = (
        *_lapped(view, place, run),
        fastenings.mark_row(view, place, run, "snaps", before),
        fastenings.set_snaps(view, place, before),
    )
    return work_of(ops)


def drop_lowest(trouble: Trouble, view: View) -> Work:
    """The lowest fastenings off, the rest respaced."""
    return work_of(fastenings.drop_lowest(view, trouble.place, amount(trouble, "shorten_by")))


def add_fastening(trouble: Trouble, view: View) -> Work:
    """One fastening more."""
    return work_of((fastenings.add_fastening(view, trouble.place, amount(trouble, "open_by")),))


def hooks_at_top(trouble: Trouble, view: View) -> Work:
    """Hooks above a zipper that is too short."""
    return work_of((fastenings.hooks_at_top(view, trouble.place, amount(trouble, "open_by")),))


def sew_end_shut(trouble: Trouble, view: View) -> Work:
    """The zipper moved up and the lower end of the opening sewn shut."""
    place = trouble.place
    ops = (
        zippers.unpick_zipper(view, place),
        zippers.sew_end_shut(view, place, amount(trouble, "sewn_shut")),
        zippers.set_in(view, place, "zipper"),
    )
    return work_of(ops)


def lengthen_holes(trouble: Trouble, view: View) -> Work:
    """Buttonholes cut longer."""
    return work_of((buttonholes.lengthen_holes(view, trouble.place),))


def shorten_holes(trouble: Trouble, view: View) -> Work:
    """Buttonholes closed at one end."""
    return work_of((buttonholes.shorten_holes(view, trouble.place),))


def new_slider(trouble: Trouble, view: View) -> Work:
    """A new slider on the old teeth."""
    return work_of((zippers.new_slider(view, trouble.place),))


def face_edge(trouble: Trouble, view: View) -> Work:
    """Bare edges faced."""
    return work_of((fastenings.face_edge(view, trouble.place),))


def patch_edge(trouble: Trouble, view: View) -> Work:
    """Holes in the edge patched."""
    return work_of((fastenings.mend_holes(view, trouble.place),))


def tack_placket(trouble: Trouble, view: View) -> Work:
    """The hidden strip tacked between its holes."""
    return work_of((buttonholes.tack_later(view, trouble.place),))


def _cleared(view: View, place: str) -> tuple[Op, ...]:
    """What closes the opening now, taken off; nothing where that is done already."""
    kind = view.word(f"{place}.kind")
    if kind in zippers.ZIPPERS:
        return (zippers.unpick_zipper(view, place),)
    if kind == "snaps" and not fastenings.metal_is_gone(view):
        return fastenings.take_snaps_off(view, place)
    return ()


def _kind_after(view: View, place: str) -> str:
    """What closes the opening once it is cleared: nothing, or the word for metal that went as work of its own."""
    return "none" if _cleared(view, place) else view.word(f"{place}.kind")


def _lapped(view: View, place: str, run: Figure) -> tuple[Op, ...]:
    """The opening cleared, and strips for a lap where the fronts meet edge to edge."""
    made = fastenings.strips(view, place, run, _kind_after(view, place)) if fastenings.needs_strips(view, place) else ()
    return (*_cleared(view, place), *made)
