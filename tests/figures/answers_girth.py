"""Answers to published examples on taking in, darts, gathers, pleats and hems."""

from fractions import Fraction

from published_answers import CM, answers, inch, mm, numbered, row_of

from advisor.figures import INCH, darts, ease, gathers, hems, letout, pleats, seams

# --- taking in, letting out


@answers("WE-01-01")
def _(given):
    return {"each_side_in": inch(seams.each_side(mm(given["total_take_in_in"])))}


@answers("WE-01-03")
def _(given):
    return {"new_line_offset_in": inch(letout.new_line(mm(given["total_let_out_in"])))}


@answers("WE-01-04")
def _(given):
    return {"per_side_seam_in": inch(seams.each(mm(given["total_in"]), 2))}


@answers("WE-01-07")
def _(given):
    held = letout.holds(mm(given["outlet_each_side_in"]), mm(given["leave_allowance_in"]), 1)
    return {"max_let_out_total_in": inch(held)}


@answers("WE-01-08", "WE-01-10")
def _(given):
    limit = seams.TAKE_IN_LIMIT.end(given["garment"], "most")
    past = seams.over_limit(mm(given["total_take_in_in"]), limit)
    says = seams.TAKE_IN_LIMIT.row(given["garment"]).says
    advice = "smaller size" if "a smaller size" in says else ""
    return {"allowed": past == 0, "limit_in": inch(limit), "advice": advice}


@answers("WE-01-11")
def _(given):
    limit = letout.LET_OUT_LIMIT.end(given["garment"], "most")
    return {"allowed": seams.over_limit(mm(given["total_let_out_in"]), limit) == 0, "limit_in": inch(limit)}


@answers("WE-01-12")
def _(given):
    side = mm(given["extra_per_side_in"])
    back, chest, under_arm = seams.by_shares(side, (Fraction(1), Fraction(2), Fraction(2)))
    both = 2 * (back + chest + under_arm)
    return {
        "back_in": inch(back),
        "chest_in": inch(chest),
        "under_arm_in": inch(under_arm),
        "both_sides_total_in": inch(both),
    }


@answers("WE-01-13")
def _(given):
    shares = tuple(given["alt_shares_in"])
    parts = seams.by_shares(INCH, shares)
    assert parts == tuple(mm(share) for share in shares)
    return {"sum_in": inch(sum(parts))}


@answers("WE-01-14")
def _(given):
    return {"stated_cm": Fraction(1), "stated_in": inch(CM)}


# --- darts


@answers("WE-02-01")
def _(given):
    excess = ease.ease(mm(given["garment_hip_in"]), mm(given["garment_waist_in"]))
    share = {place: inch(darts.skirt_share(excess, place)) for place in ("side", "front", "back")}
    return {
        "excess_in": inch(excess),
        "side_curve_in": share["side"],
        "front_dart_in": share["front"],
        "back_dart_in": share["back"],
    }


@answers("WE-02-03")
def _(given):
    one = {place: darts.skirt_share(INCH, place) / INCH for place in ("side", "front", "back")}
    assert one == {place: given[f"{place}_share"] for place in one}
    return {"total_share": sum(one[place] * given[f"n_{place}"] for place in one)}


@answers("WE-02-04", "WE-02-05", "WE-02-06")
def _(given):
    (dart,) = (word for word in given if word != "source")
    word = dart.removesuffix("_dart").replace("_", " ")
    row = row_of(darts.STOPS_SHORT, word, given["source"])
    key = {
        "front waist": "end_below_bust_height_in",
        "back waist": "end_below_shoulder_blade_in",
        "underarm": "end_from_bust_point_min_in",
    }[word]
    return {key: inch(row.least)}


@answers("WE-02-09")
def _(given):
    past = darts.past_longest(mm(given["dart_length_in"]))
    return {"allowed": past == 0, "max_in": inch(darts.LONGEST)}


# --- gathers, pleats, tucks


@answers("WE-03-01", "WE-03-03")
def _(given):
    return {"cut_in": inch(gathers.cloth_for(mm(given["finished_in"]), given["ratio"]))}


@answers("WE-03-05", "WE-03-06")
def _(given):
    return {"ratio": gathers.FULLNESS.row(given["fabric"]).most}


@answers("WE-03-07", "WE-03-08", "WE-03-09")
def _(given):
    row = row_of(gathers.FULLNESS, given["weight"].split("/")[0], given["source"])
    return {"ratio_min": row.least, "ratio_max": row.most}


@answers("WE-03-10", "WE-03-12")
def _(given):
    multiple = pleats.knife_multiple(mm(given["underfold_in"]), mm(given["spacing_in"]))
    return {"fabric_multiple": multiple}


@answers("WE-03-14")
def _(given):
    return {"fabric_in": inch(pleats.touching_cloth(mm(given["finished_in"])))}


@answers("WE-03-15")
def _(given):
    row = given["n"], mm(given["pleat_in"]), mm(given["gap_in"])
    return {"finished_in": inch(pleats.gapped_finished(*row)), "fabric_in": inch(pleats.gapped_cloth(*row))}


@answers("WE-03-16")
def _(given):
    return {"extra_in": inch(pleats.tucks_extra(mm(given["tuck_depth_in"]), given["n"]))}


# --- hems

HEM_WORDS = {
    "straight skirt (average)": "straight skirt",
    "moderately flared, medium weight": "moderately flared skirt",
    "straight skirt, sheer": "sheer straight skirt",
    "heavy wool or cotton skirt": "heavy skirt",
    "blouse tucked in": "tucked-in blouse",
    "blouse untucked": "untucked blouse",
    "skirt full or flared": "flared skirt",
    "skirt A-line or straight": "straight skirt",
}


@answers(*numbered("WE-04-{:02d}", *range(1, 20)))
def _(given):
    word = HEM_WORDS.get(given["garment"], given["garment"])
    row = row_of(hems.USUAL_DEPTH, word, given["source"])
    return {"hem_min_in": inch(row.least), "hem_max_in": inch(row.most)}


@answers("WE-04-20")
def _(given):
    found = hems.false_strip(mm(given["leg_flat_width_in"]), mm(given["seam_in"]))
    return {"false_hem_strip_in": inch(found)}


@answers("WE-04-22")
def _(given):
    opening = mm(given["leg_opening_total_in"])
    return {"front_in": inch(hems.leg_front(opening)), "back_in": inch(hems.leg_back(opening))}


@answers("WE-04-23")
def _(given):
    allowance = row_of(hems.USUAL_DEPTH, "womens slacks", given["source"]).most
    assert allowance == given["hem_allowance_cm"] * CM
    below = hems.below_old_fold(given["fray_above_cm"] * CM, allowance)
    return {"cut_below_original_fold_cm": below / CM}


@answers("WE-04-25")
def _(given):
    assert given["narrow_hem_turn_in"] == given["fold_in"]
    return {"allowance_in": inch(hems.double_fold(mm(given["fold_in"])))}
