"""Answers to published examples on buttons, zippers, thread, ease, patches, shrinkage and minutes."""

from fractions import Fraction

from published_answers import CM, answers, inch, mm, numbered, row_of

from advisor.figures import INCH, buttons, ease, estimate, patches, shrinkage, stitches, zippers

# --- buttons


@answers("WE-05-01")
def _(given):
    hole = buttons.hole_thick(mm(given["diameter_in"]), mm(given["thickness_in"]))
    inside = buttons.inside_center(hole)
    return {"length_in": inch(hole), "inside_centre_in": inch(inside), "past_centre_in": inch(hole - inside)}


@answers("WE-05-03")
def _(given):
    hole = buttons.hole_thick_worked(mm(given["diameter_in"]), mm(given["thickness_in"]))
    return {"length_in": inch(hole)}


@answers("WE-05-05")
def _(given):
    return {"length_in": inch(buttons.hole_rounded(mm(given["diameter_in"])))}


@answers("WE-05-06")
def _(given):
    return {"length_in": inch(buttons.hole_ball(mm(given["diameter_in"])))}


@answers("WE-05-07")
def _(given):
    diameter = mm(given["diameter_in"])
    return {
        "three_quarters_in": inch(buttons.edge_three_quarters(diameter)),
        "half_plus_quarter_in": inch(buttons.edge_half_and_quarter(diameter)),
        "half_in": inch(buttons.edge_least(diameter)),
        "extension_in": inch(buttons.extension(diameter)),
    }


@answers("WE-05-09")
def _(given):
    return {"extension_in": inch(buttons.extension_tiny(mm(given["diameter_in"])))}


@answers("WE-05-10", "WE-05-12", "WE-05-14")
def _(given):
    return {"ligne": buttons.ligne_nearest(Fraction(given["diameter_mm"]))}


@answers("WE-05-16")
def _(given):
    gap = buttons.gap_even(mm(given["first_from_top_in"]), mm(given["last_at_in"]), given["n"])
    assert buttons.SHIRT_GAP[0] <= gap <= buttons.SHIRT_GAP[1]
    return {"gap_in": inch(gap)}


# --- zippers


@answers("WE-06-01")
def _(given):
    drops = given["front_drop_cm"] * CM, given["back_drop_cm"] * CM
    shorter = Fraction(given["reduction_pct"], 100)
    return {"zip_cm": zippers.for_front(given["body_length_hps_cm"] * CM, *drops, shorter) / CM}


@answers("WE-06-03")
def _(given):
    assert zippers.shorten_by(mm(given["from_in"]), mm(given["to_in"])) == 3 * INCH
    mark = zippers.mark_at(mm(given["to_in"]))
    return {
        "mark_at_in": inch(mark),
        "below_tape_in": inch(zippers.cut_at(mark, zippers.TAIL) - mark),
    }


@answers(*numbered("WE-06-Z{:02d}", 4, 7, 9, 12, 18, 22, 30))
def _(given):
    length = mm(given["length_in"])
    assert zippers.stock_shorter(length) == zippers.stock_longer(length) == length
    return {"length_cm": zippers.label_length(length) / CM}


# --- stitches, thread, needles


@answers("WE-07-01")
def _(given):
    ratio = stitches.THREAD_RATIO.end(str(given["stitch"]), "most")
    total = stitches.thread(given["seam_cm"] * CM, ratio)
    half = stitches.thread_part(total, Fraction(1, 2)) / CM
    return {"total_cm": total / CM, "needle_cm": half, "bobbin_cm": half}


@answers("WE-07-02")
def _(given):
    total = given["total_cm"] * CM
    return {
        f"{thread}_cm": stitches.thread_part(total, given[f"{thread}_share"]) / CM for thread in ("needle", "looper")
    }


@answers("WE-07-04")
def _(given):
    """The source takes 42 in as 1.17 yd; the sample is scaled from there."""
    yard = 36 * INCH
    seam = round(mm(given["seam_in"]) / yard, 2) * yard
    needle, looper = (
        stitches.thread_by_sample(seam, mm(given[f"{thread}_out_in"]), mm(given["sample_in"]))
        for thread in ("needle", "looper")
    )
    all_of_it = stitches.with_waste(needle + looper, Fraction(given["waste_pct"], 100))
    return {
        "needle_yd": needle / yard,
        "looper_yd": looper / yard,
        "total_yd": (needle + looper) / yard,
        "with_waste_yd": all_of_it / yard,
    }


@answers(*numbered("WE-07-C{}", 1, 2, 3, 4, 5), "WE-07-07", "WE-07-09")
def _(given):
    by_class = {101: stitches.ratio_101, 401: stitches.ratio_401}
    ratio = by_class[given["stitch"]](mm(given["thickness_in"]), given["spi"])
    return {"C": ratio, "C_in_per_in": ratio}


@answers("WE-07-06")
def _(given):
    yard = 36 * INCH
    thread = stitches.thread(given["seam_yd"] * yard, given["ratio"])
    return {
        "seam_thread_yd": thread / yard,
        "with_waste_yd": stitches.with_waste(thread, Fraction(given["waste_pct"], 100)) / yard,
    }


@answers(*numbered("WE-07-R{}", 101, 103, 301, 304))
def _(given):
    return {"ratio": stitches.THREAD_RATIO.end(str(given["stitch"]), "most")}


@answers("WE-07-11", *numbered("WE-07-S{}", "06", "08", "10"), *numbered("WE-07-T{}", "06", "08", "10", "12"))
def _(given):
    return {"seam_lb_per_in": stitches.strength_301(given["spi"], given["thread_lb"])}


@answers(*numbered("WE-07-N{}", "09", "12", "16", "18"))
def _(given):
    return {"nm": stitches.needle_metric(given["singer"])}


@answers("WE-07-16")
def _(given):
    return {"blade_mm": stitches.needle_blade(given["nm"])}


@answers("WE-07-17")
def _(given):
    return {"ticket": stitches.ticket_metric(Fraction(given["tex"]))}


@answers("WE-07-27")
def _(given):
    return {"ticket_for_tex_8": stitches.ticket_metric(Fraction(8))}


@answers("WE-07-19", "WE-07-21", "WE-07-22", "WE-07-24", "WE-07-26")
def _(given):
    count = Fraction(given.get("nm", given.get("ne")))
    ticket = stitches.ticket_of_count(count, given["plies"])
    return {"metric_ticket": ticket, "cotton_ticket": ticket, "resultant": ticket / 3}


@answers("WE-07-28")
def _(given):
    return {"spi": stitches.per_inch(given["stitch_mm"])}


@answers("WE-07-29")
def _(given):
    return {"mm": stitches.mm_per_stitch(Fraction(given["spi"]))}


STITCH_WORDS = {
    "denim jeans/jackets/skirts": "denim",
    "twill pants or shorts": "twill trousers",
    "dress pants": "dress trousers",
    "dresses, skirts": "dress or skirt",
    "dress shirt or blouse": "dress shirt",
    "casual shirt, blouse, top": "casual shirt",
}


@answers(*numbered("WE-07-G{}", *range(1, 9)))
def _(given):
    word = STITCH_WORDS.get(given["garment"], given["garment"])
    row = row_of(stitches.STITCHES_PER_INCH, word, given["source"])
    return {"spi_min": row.least, "spi_max": row.most}


# --- ease

EASE_WORDS = {
    "skirt or pants waist": "skirt or trouser waist",
    "pants hip": "trouser hip",
    "pants abdomen": "trouser abdomen",
    "pants knee": "trouser knee",
}


@answers(*numbered("WE-08-{:02d}", *range(1, 14)))
def _(given):
    word = EASE_WORDS.get(given["place"], given["place"])
    row = row_of(ease.USUAL, word, given["source"])
    return {"ease_min_in": inch(row.least), "ease_max_in": inch(row.most, without=99)}


@answers("WE-08-14", "WE-08-16")
def _(given):
    return {"crotch_depth_ease_in": inch(ease.crotch_depth(mm(given["hip_in"])))}


@answers(*numbered("WE-08-J{}", "08", "12", "16"))
def _(given):
    return {
        f"{place}_ease_in": inch(ease.ease(mm(given[f"finished_{place}_in"]), mm(given[f"body_{place}_in"])))
        for place in ("bust", "hip")
    }


# --- patches, shrinkage, minutes


@answers("WE-10-01")
def _(given):
    margin, turn = mm(given["margin_in"]), mm(given["turn_under_in"])
    assert turn == patches.TURN_UNDER
    assert margin == row_of(patches.MARGIN, "plain", given["source"]).least
    return {f"cut_{side}_in": inch(patches.cut(mm(given[f"hole_{side}_in"]), margin, turn)) for side in "wh"}


@answers("WE-10-02")
def _(given):
    assert mm(given["beyond_in"]) == patches.DARN_BEYOND
    return {"stitch_span_across_in": inch(patches.darn_span(Fraction(0), mm(given["beyond_in"])))}


@answers("WE-11-01")
def _(given):
    return {"shrink_pct": 100 * shrinkage.share(mm(given["before_in"]), mm(given["after_in"]))}


@answers("WE-11-03")
def _(given):
    return {"loss_in": inch(shrinkage.loss(mm(given["sleeve_in"]), Fraction(given["pct"], 100)))}


@answers("WE-13-01")
def _(given):
    low, likely, high = (Fraction(given[guess]) for guess in "amb")
    return {"expected": estimate.expected(low, likely, high), "sd": estimate.spread(low, high)}
