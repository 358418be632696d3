"""Oracles for zones of gathers, hems let down, fastenings in a slit."""

from figure_oracles import from_inches, oracle, strip

from advisor.figures import edges


@oracle(edges.zone, lambda d: {"part": d.inch(0, 6), "room": d.inch(1, 12)})
def zone_by_trying(part, room):
    """The shortest stretch of the tape, from 2 in up, that is not over 1 1/2 times as full, room allowing."""
    tried = from_inches(2)
    while (tried + part) / tried > 1.5 + 1e-9:
        tried += from_inches(1 / 16)
    return min(tried, room)


@oracle(edges.hem_kept, lambda d: {"old_hem": d.inch(2, 6), "short": d.inch(0, 2)})
def cloth_left(old_hem, short):
    """The fold-up less the part of it that now hangs below the old edge."""
    return strip(0, old_hem).difference(strip(0, short)).length if short else old_hem


@oracle(edges.fastenings, lambda d: {"length": d.inch(1, 20)})
def fastenings_by_trying(length):
    count = 1
    while length / (count + 1) > from_inches(4) + 1e-9:
        count += 1
    return count
