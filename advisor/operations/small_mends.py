"""Small mends that a garment comes in with: what fastens a band, belt loops, pocket bags, a lining, a fallen hem.

The law: each is one state that was found and one that is left; where cloth has torn, what carries the mend comes first.
"""

from advisor.core.model import Put
from advisor.core.stages import Stage
from advisor.core.work import Need, Op, Setup, Spread
from advisor.knowledge.view import View


def mend(
    view: View,
    key: str,
    to: str,
    verb: str,
    setup: Setup,
    minutes: tuple[int, int, int],
    says: str,
    stage: Stage,
    *needs: Need,
    given: tuple[Put, ...] = (),
    reversible: bool = True,
    check: str = "",
) -> Op:
    """One mend: the state `key`, as it was found, becomes `to`; `given` must hold before."""
    return Op(
        id=f"{verb} {key}",
        stage=stage,
        verb=verb,
        places=(key.partition(".")[0],),
        setup=setup,
        minutes=Spread(*minutes),
        says=says,
        expects=(Put(key, view.word(key)), *given),
        effects=(Put(key, to),),
        reversible=reversible,
        check_before=check,
        materials=needs,
    )


def back_torn(view: View, band: str) -> tuple[Op, ...]:
    """A patch between the layers of the band where the fastening tore out; nothing where the cloth is whole."""
    if view.word(f"{band}.fastening") != "torn":
        return ()
    says = (
        "Open the band there from the inside. Draw the torn edges together, lay a piece of firm cloth between the "
        "layers, 3/4 in past the weak cloth on every side, and sew it down in close rows. Close the band."
    )
    key = f"{band}.behind"
    return (mend(view, key, "backed", "back", "straight", (10, 15, 25), says, "closure", Need("firm cloth, a scrap")),)


def backed(view: View, band: str) -> tuple[Put, ...]:
    """What a new fastening needs where the old one tore out."""
    return (Put(f"{band}.behind", "backed"),) if view.word(f"{band}.fastening") == "torn" else ()


def patch_loop(view: View, band: str) -> tuple[Op, ...]:
    """A patch behind a loop that took the cloth with it; nothing where the cloth is whole."""
    if view.word(f"{band}.loop") != "torn":
        return ()
    says = (
        "Lay a piece of the same weight behind the hole, larger than the torn cloth by 3/4 in all round, and sew it "
        "down in close rows, the edges of the hole flat on it."
    )
    key = f"{band}.loop_patch"
    return (mend(view, key, "set", "patch", "straight", (8, 12, 20), says, "finish", Need("firm cloth, a scrap")),)


def patched(view: View, band: str) -> tuple[Put, ...]:
    """What a loop needs behind it where the cloth tore."""
    return (Put(f"{band}.loop_patch", "set"),) if view.word(f"{band}.loop") == "torn" else ()
