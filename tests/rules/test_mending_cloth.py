"""Metal, holes, rust, the state of the cloth, and the last look: every option closes what it answers, and is noticed.

Values stand beside their source. "cp" is common practice, no source.
"""

import itertools
from dataclasses import replace

import pytest

from advisor.advise.plan import make_plan
from advisor.core.case import FindingId
from advisor.core.model import Put
from advisor.lengths import read_length
from advisor.words import Teller
from tests.rules.mutate import Answers, base, closes, notices, plan_for, worked, world_for

RUSTED = {"snaps.state": "rusted"}
MARKED = {**RUSTED, "snaps.marks": "rust"}
TORN = {**RUSTED, "snaps.around": "torn", "snaps.weak": "3/8 in"}
FLAP = {**RUSTED, "snaps.part": "flap", "cloth.spare": "yes", "snaps.hole": "5/16 in"}
SPARE = {**RUSTED, "cloth.spare": "yes", "snaps.hole": "1 in"}
LEATHER = {**RUSTED, "cloth.kind": "coated"}
HOLES, RUST, METAL = "holes_open@snaps", "rust_marks@snaps", "metal_rusted@snaps"
CHILD = {"wearer.age": "child"}

# answers, the finding, the fix chosen for it
CLOSING: list[tuple[Answers, FindingId, str]] = [
    (RUSTED, METAL, "mending.fixes.take_metal_off"),
    (RUSTED, METAL, "mending.fixes.replace_metal"),
    ({**RUSTED, "cloth.strength": "thin"}, METAL, "mending.fixes.replace_metal"),
    ({"snaps.state": "unwanted"}, "metal_unwanted@snaps", "mending.fixes.take_metal_off"),
    (RUSTED, HOLES, "mending.fixes.patch_under"),
    (TORN, HOLES, "mending.fixes.patch_under"),
    ({**TORN, "cloth.iron": "no"}, HOLES, "mending.fixes.patch_under"),
    (SPARE, HOLES, "mending.fixes.hemmed_patch"),
    ({**TORN, "cloth.spare": "yes"}, HOLES, "mending.fixes.hemmed_patch"),
    (RUSTED, HOLES, "mending.fixes.darn"),
    (RUSTED, HOLES, "mending.fixes.button_over"),
    (FLAP, HOLES, "mending.fixes.renew_flap"),
    ({**FLAP, **TORN, "snaps.part": "flap"}, HOLES, "mending.fixes.renew_flap"),
    (LEATHER, HOLES, "mending.fixes.glue_patch"),
    (MARKED, RUST, "mending.fixes.rust_lemon"),
    ({**MARKED, "snaps.rust_test": "passed"}, RUST, "mending.fixes.rust_lemon"),
    (MARKED, RUST, "mending.fixes.rust_oxalic"),
    (MARKED, RUST, "mending.fixes.cover_marks"),
    ({"cloth.washed": "no"}, "unwashed@cloth", "cloth.fixes.wash_first"),
    ({"cloth.washed": "no"}, "unwashed@cloth", "cloth.fixes.dry_clean_first"),
    ({"cloth.strength": "thin"}, "thin@cloth", "cloth.fixes.fuse_stay"),
    ({"cloth.strength": "thin"}, "thin@cloth", "cloth.fixes.sew_stay"),
    ({"cloth.strength": "perished", "cloth.spare": "yes"}, "perished@cloth", "cloth.fixes.copy_new"),
    ({"cloth.protective": "medical"}, "protective@cloth", "cloth.fixes.hand_over"),
    ({"cloth.store": "damp"}, "moldy@cloth", "cloth.fixes.air_outdoors"),
    ({"cloth.store": "dusty"}, "unknown_dust@cloth", "cloth.fixes.bag_and_ask"),
    ({"cloth.store": "oily"}, "oil_soaked@cloth", "cloth.fixes.launder_oil"),
    ({**CHILD, "cloth.cords": "neck"}, "cord_at_neck@cloth", "cloth.fixes.cord_out"),
    ({**CHILD, "cloth.cords": "waist"}, "cord_at_waist@cloth", "cloth.fixes.cord_out"),
    ({**CHILD, "cloth.cords": "waist"}, "cord_at_waist@cloth", "cloth.fixes.tack_cord"),
    (CHILD, "small_parts@wearer", "finish.fixes.pull_small_parts"),
]


@pytest.mark.parametrize(("answers", "finding", "fix"), CLOSING)
@pytest.mark.parametrize("tape", ["in", "cm"])
def test_an_option_closes_its_finding_and_every_slip_is_noticed(
    answers: Answers, finding: FindingId, fix: str, tape: str
) -> None:
    work = worked(answers, finding, fix, tape=tape)
    closes(work)
    assert notices(work) >= 1


LEFT: list[tuple[Answers, FindingId]] = [
    ({"snaps.state": "unwanted"}, "metal_unwanted@snaps"),
    (MARKED, RUST),
    ({"cloth.washed": "no"}, "unwashed@cloth"),
    ({"cloth.strength": "thin"}, "thin@cloth"),
    ({"cloth.strength": "perished"}, "perished@cloth"),
    ({"cloth.protective": "flame"}, "protective@cloth"),
    ({"waist.pinned": "4 1/2 in"}, "many_sizes@waist"),
]


@pytest.mark.parametrize(("answers", "finding"), LEFT)
def test_leaving_it_leaves_it_standing(answers: Answers, finding: FindingId) -> None:
    plan = plan_for(answers, {finding: "general.fixes.leave"})
    assert finding in {found.id for found in plan.remains}
    assert plan.blocked == ()


def fixes(answers: Answers, finding: FindingId) -> dict[str, str]:
    """The fixes offered for a finding, each with why it is ruled out, "" where it is not."""
    options = plan_for(answers).advice.options_for(finding)
    return {option.fix: " ".join(ruling.words for ruling in option.rulings) for option in options}


def test_a_hole_is_never_left_bare() -> None:
    for part, around, spare in itertools.product(("flap", "edge", "body"), ("sound", "torn"), ("yes", "no")):
        for kind in ("cotton", "silk", "coated"):
            answers = {**RUSTED, "snaps.part": part, "snaps.around": around, "cloth.spare": spare, "cloth.kind": kind}
            offered = fixes(answers, HOLES)
            assert "general.fixes.leave" not in offered
            assert any(not why for why in offered.values()), answers
            assert not {found.id for found in plan_for(answers).remains}


def test_rusted_metal_has_to_come_off() -> None:
    assert "general.fixes.leave" not in fixes(RUSTED, METAL)


# answers beside RUSTED, the fix they rule out, words of the refusal
REFUSED = [
    ({"snaps.part": "body"}, "button_over", "open cloth"),
    ({"snaps.around": "torn"}, "button_over", "tear on"),
    ({"snaps.hole": "1/2 in", "snaps.button": "5/8 in"}, "button_over", "at least 3/4 in"),
    ({"snaps.part": "edge", "cloth.spare": "yes"}, "renew_flap", "no part"),
    ({"snaps.part": "flap"}, "renew_flap", "no matching cloth"),
    ({}, "hemmed_patch", "no matching cloth"),
    ({"snaps.around": "torn"}, "darn", "pull out"),
    ({"snaps.hole": "9/16 in"}, "darn", "9/16 in wide"),
    ({"cloth.kind": "coated"}, "darn", "needle hole"),
    ({"cloth.kind": "coated"}, "patch_under", "needle hole"),
    ({"cloth.kind": "coated"}, "hemmed_patch", "needle hole"),
]


@pytest.mark.parametrize(("more", "fix", "words"), REFUSED)
def test_a_refusal_names_what_was_seen(more: Answers, fix: str, words: str) -> None:
    assert words in fixes({**RUSTED, **more}, HOLES)[f"mending.fixes.{fix}"]


@pytest.mark.parametrize(
    "more",
    [
        {"cloth.kind": "silk"},
        {"cloth.kind": "coated"},
        {"cloth.surface": "metallic"},
        {"snaps.rust_test": "failed"},
        {"snaps.state": "sound"},
    ],
)
def test_acid_stays_away_from_what_it_harms(more: Answers) -> None:
    offered = fixes({**MARKED, **more}, RUST)
    assert offered["mending.fixes.rust_lemon"]
    assert offered["mending.fixes.rust_oxalic"]
    assert not offered["mending.fixes.cover_marks"]


def said(answers: Answers, finding: FindingId, fix: str) -> str:
    """All that an option tells: instructions with their figures, warnings."""
    work = worked(answers, finding, fix)
    teller = Teller(work.world.tape, work.world.garment.places)
    steps = [teller.say(op.says, op.figures) for op in work.option.work.ops]
    needs = [need.what for op in work.option.work.ops for need in op.materials]
    return " ".join([*steps, *needs, work.option.why, work.option.wrong_when, *work.option.cautions])


def test_no_rust_remover_goes_with_bleach_and_none_with_hydrofluoric_acid() -> None:
    """Chlorine fixes rust: RUST-AB, RUST-BZ (published rule case WE-12-15). Hydrofluoric acid: from memory."""
    for fix in ("rust_lemon", "rust_oxalic"):
        words = said(MARKED, RUST, f"mending.fixes.{fix}")
        assert "No bleach" in words and "never goes with bleach" in words
        assert "Never a rust remover with hydrofluoric acid at home" in words
        assert "gloves" in words and "open a window" in words
        needs = {need.what for op in worked(MARKED, RUST, f"mending.fixes.{fix}").ops for need in op.materials}
        assert not any("bleach" in what for what in needs)


def test_oxalic_acid_is_weak_and_given_its_time() -> None:
    """5 %, at least 5 minutes, rinsed, neutralized: RUST-HK."""
    words = said(MARKED, RUST, "mending.fixes.rust_oxalic")
    assert "5 in 100" in words and "5 minutes" in words and "baking soda" in words
    assert "poisonous" in words  # OSHA-OX, NJ-RTK


def test_the_trial_on_a_hidden_seam_waits_as_published() -> None:
    """3 to 5 minutes, rinse, look: CF-INFO, CF-UNI."""
    assert "wait 3 to 5 minutes" in said(MARKED, RUST, "mending.fixes.rust_lemon")


HEAT = [
    {**MARKED, "snaps.around": "torn"},
    {**MARKED, "cloth.washed": "no"},
    {**MARKED, "cloth.strength": "thin", "cloth.washed": "no"},
    {**MARKED, "waist.sits": "low", "waist.low_by": "3/4 in"},
]


@pytest.mark.parametrize("answers", HEAT)
def test_rust_is_out_before_any_heat_and_before_the_wash(answers: Answers) -> None:
    """Heat of dryer or iron before removal can set the mark: RUST-AB. Metal first: common practice, no source."""
    plan = plan_for(answers, {RUST: "mending.fixes.rust_lemon"})
    order = [step.op for step in plan.steps]
    at = {op.id: index for index, op in enumerate(order)}
    rinsed = at["rinse snaps.marks"]
    assert at["take off snaps.state"] < at["try snaps.rust_test"] < at["soak snaps.marks with lemon"] < rinsed
    hot = [op.id for op in order if op.setup == "iron" or op.verb in ("wash", "dry-clean")]
    assert hot and all(rinsed < at[id] for id in hot)
    assert plan.blocked == ()


def test_rust_treated_after_the_iron_stays_in() -> None:
    work = worked(MARKED, RUST, "mending.fixes.rust_lemon")
    iron = tuple(op for op in work.ops if op.setup == "iron")
    rest = tuple(op for op in work.ops if op.setup != "iron")
    rust = tuple(op for op in rest if "marks" in op.id)
    late = (*(op for op in rest if op not in rust), *iron, *rust)
    assert RUST in work.still_open(late)


def test_new_metal_is_set_after_the_rust_is_out() -> None:
    work = worked(MARKED, METAL, "mending.fixes.replace_metal", {RUST: "mending.fixes.rust_lemon"})
    closes(work)
    ids = [op.id for op in work.ops]
    assert ids.index("rinse snaps.marks") < ids.index("set snaps.state")


@pytest.mark.parametrize("answers", [{**MARKED, "snaps.state": "sound"}, {**MARKED, "snaps.rust_test": "failed"}])
def test_advice_that_is_overruled_still_gives_a_plan(answers: Answers) -> None:
    plan = plan_for(answers, {RUST: "mending.fixes.rust_lemon"})
    assert "rinse snaps.marks" in [step.op.id for step in plan.steps] and plan.blocked == ()


def test_the_printed_patch_is_the_published_one() -> None:
    """Hole 1 in, 3/4 in beyond it, 1/4 in turned under: cut 3 in. UMA-PATCH (WE-10-01, hole size ours)."""
    words = said(SPARE, HOLES, "mending.fixes.hemmed_patch")
    assert "cut a patch 3 in wide" in words
    assert "Turn 1/4 in to the wrong side" in words


def test_the_darn_begins_and_ends_half_an_inch_past_the_hole() -> None:
    """1/2 in each side: SCHOOLSEW-D (WE-10-02 with a tear of no width is 1 in); the hole here is 1/16 in."""
    words = said({**RUSTED, "snaps.hole": "1/16 in"}, HOLES, "mending.fixes.darn")
    assert "rows 1 1/16 in long" in words and "1/2 in into sound cloth" in words


@pytest.mark.parametrize(("weak", "patch"), [("0 in", "1 3/4 in"), ("3/8 in", "2 1/2 in"), ("1 in", "3 3/4 in")])
def test_a_patch_is_measured_from_sound_cloth(weak: str, patch: str) -> None:
    """3/4 in beyond sound cloth: margin SCHOOLSEW-P and UMA-PATCH, "beyond sound cloth" cp. The hole is 1/4 in."""
    answers = {**RUSTED, "snaps.around": "torn", "snaps.weak": weak}
    words = said(answers, HOLES, "mending.fixes.patch_under")
    assert f"cut a patch {patch} wide" in words
    assert "Round the corners" in words and "crease" in words
    assert "stitches well apart" in words


def test_weak_cloth_gets_its_stay_before_the_zigzag() -> None:
    for more, verb in (({}, "Fuse a woven stay"), ({"cloth.iron": "no"}, "Baste a woven stay")):
        work = worked({**TORN, **more}, HOLES, "mending.fixes.patch_under")
        ids = [op.id for op in work.ops]
        assert ids.index("stay snaps.around") < ids.index("sew snaps.patch")
        assert verb in said({**TORN, **more}, HOLES, "mending.fixes.patch_under")
    assert "stay" not in " ".join(op.id for op in worked(RUSTED, HOLES, "mending.fixes.patch_under").ops)


def test_a_flap_is_set_by_the_three_numbers_of_the_trade() -> None:
    """3/8 in above the pocket, sewn at 1/8 in, topstitched at 1/4 in: cp. It then clears the mouth by 1/4 in."""
    words = said(FLAP, HOLES, "mending.fixes.renew_flap")
    assert "raw edge 3/8 in above the pocket. Sew 1/8 in from that edge: the fold will lie 1/2 in above" in words
    assert "topstitch 1/4 in below the fold: the line runs 1/4 in above the pocket, which stays open" in words


def test_a_buttonhole_is_the_button_and_an_eighth() -> None:
    """Button + 1/8 in: HB-BH, for a flat, thin button."""
    words = said({**RUSTED, "snaps.button": "5/8 in"}, HOLES, "mending.fixes.button_over")
    assert "Work the buttonhole 3/4 in long" in words
    assert "from each end toward the middle" in words


def test_eyes_are_covered_when_metal_is_cut() -> None:
    for fix in ("take_metal_off", "replace_metal"):
        words = said(RUSTED, METAL, f"mending.fixes.{fix}")
        assert "safety glasses" in words
        assert any("safety glasses" in caution for caution in base().fixes[f"mending.fixes.{fix}"].cautions)


PROTECTIVE = ["flame", "visible", "chemical", "medical", "flotation", "sleepwear"]
MANY = {
    "waist.sits": "low", "waist.low_by": "1 in", "waist.pinned": "2 in", "snaps.state": "rusted",
    "cloth.washed": "no", "leg.fits": "long", "leg.long_by": "20 mm",
}  # fmt: skip


@pytest.mark.parametrize("word", PROTECTIVE)
def test_nothing_on_a_protective_garment_is_altered(word: str) -> None:
    """A hem of 20 mm on bands 60 mm up would break the 50 mm rule: CR-20471 (WE-12-12). Ordinary thread on a flame
    resistant garment is refused: WORKRITE (WE-12-13). Lounge robes are sleepwear: CPSC-LOUNGE (WE-12-17)."""
    plan = plan_for({**MANY, "cloth.protective": word})
    assert [step.op.id for step in plan.steps] == ["hand over cloth.fate"]
    for option in plan.advice.options:
        keeps = option.fix in ("general.fixes.leave", "cloth.fixes.hand_over")
        assert option.open is keeps, option.id
    assert plan_for({"cloth.protective": "no"}).steps == ()


@pytest.mark.parametrize(
    ("word", "standards"),
    [("flame", "NFPA 2112 and 2113"), ("visible", "EN ISO 20471"), ("sleepwear", "16 CFR 1615 and 1616")],
)
def test_the_standard_is_named(word: str, standards: str) -> None:
    """Families as in NFPA2113, CR-20471, CPSC-SLEEP."""
    finding = plan_for({"cloth.protective": word}).advice.finding("protective@cloth")
    assert finding is not None and standards in finding.words


def test_the_exempt_infant_sizes_are_told_in_centimeters() -> None:
    """64.8 cm in one piece, to 9 months: CPSC-SLEEP (WE-12-08); the 25.75 in beside it is 65.4 cm (WE-12-09)."""
    why = base().rules["cloth.findings.protective_sleepwear"].why
    assert "9 months" in why and "64.8 cm" in why and "25" not in why


def test_no_cord_stays_at_a_childs_neck() -> None:
    """US sizes 2T-12 none at hood or neck: FR2011, CPSC-DRAW (WE-12-01). EU to 7 years or 134 cm none, to 14 years
    none with free ends: TUKES (WE-12-05, WE-12-06). Past the US sizes it is still advised (WE-12-03): a child is a
    child here, whatever the size on the label."""
    answers = {**CHILD, "cloth.cords": "neck"}
    assert set(fixes(answers, "cord_at_neck@cloth")) == {"cloth.fixes.cord_out"}
    words = base().rules["cloth.findings.cord_at_neck"].why
    assert "2T to 12" in words and "134 cm" in words and "14 years" in words
    assert plan_for({"cloth.cords": "neck"}).advice.finding("cord_at_neck@cloth") is None


def test_a_waist_cord_of_a_child_is_short_and_tacked() -> None:
    """3 in (75 mm) outside the channel at its widest, bar-tacked at center back, no toggles: CPSC-DRAW, F1816."""
    words = said({**CHILD, "cloth.cords": "waist"}, "cord_at_waist@cloth", "cloth.fixes.tack_cord")
    assert "no more than 3 in" in words and "center back" in words and "toggles" in words


def test_iron_dots_are_the_published_ones() -> None:
    """110 C without steam, 150 C, 200 C: GINETEX (WE-11-I1 to WE-11-I3); 120/160/210 was an older code."""
    words = base().garment("one_piece").questions["cloth.iron"].words
    assert "110 C" in words["one"] and "no steam" in words["one"]
    assert "150 C" in words["two"] and "200 C" in words["three"]


def test_it_is_washed_whole_and_measured_before_anything_is_opened_marked_or_cut() -> None:
    """Wash before the length is marked: IKAT (WE-14-03). Clean before pressing and steam: MSIN (WE-14-06)."""
    plan = plan_for({**MANY, "snaps.state": "unwanted"}, {"unwashed@cloth": "cloth.fixes.wash_first"})
    ids = [step.op.id for step in plan.steps]
    parts = [step.op.id for step in plan.steps if step.op.places[0] not in ("cloth", "snaps")]
    assert ids[0] == "wash cloth.washed"
    assert ids.index("measure cloth.ready") < min(ids.index(id) for id in parts)
    assert any(step.op.setup == "iron" for step in plan.steps)
    assert plan.blocked == ()


def test_all_other_work_comes_before_a_hem_is_marked() -> None:
    """TX-L359, NMSU-C314 (WE-14-01); lengths before buttons are spaced again: MN-M35, HB-BH (WE-14-05)."""
    plan = plan_for({**MANY, "cloth.washed": "yes"})
    stages = [step.op.stage for step in plan.steps]
    assert stages == sorted(stages, key=["open", "mend", "level", "girth", "join", "closure", "hem", "finish"].index)


def test_shrinkage_divides() -> None:
    """Cloth that loses 3 in 100: 10 in wanted is cut 10 / 0.97 = 10.309 in, 10 5/16 on the tape; times 1.03 would
    be 10 5/16 too, so the exact value is looked at. SHR-KEM."""
    work = worked({"cloth.washed": "no"}, "unwashed@cloth", "cloth.fixes.wash_first")
    cut = work.option.work.figures["cut"].value
    assert cut == read_length("10 in", unit="in") * 100 / 97
    assert "is cut 10 5/16 in for 10 in" in said({"cloth.washed": "no"}, "unwashed@cloth", "cloth.fixes.wash_first")


def test_perished_cloth_is_not_worth_starting() -> None:
    plan = plan_for({**MANY, "cloth.strength": "perished"})
    assert plan.steps == ()
    assert "not worth starting" in next(f.words for f in plan.advice.findings if f.problem == "perished")


def test_unknown_dust_stops_everything() -> None:
    """No shaking, no blowing, container labeled: OSHA-LAUN, OSHA-PB."""
    plan = plan_for({**MANY, "cloth.store": "dusty"})
    assert [step.op.id for step in plan.steps] == ["bag cloth.store"]


def test_far_too_large_is_said_past_four_inches() -> None:
    """4 in is the ceiling for jeans: NINEL; 3 in at the center back of trousers: SCL. Both are told."""
    assert plan_for({"waist.pinned": "4 in"}).advice.finding("many_sizes@waist") is None
    assert plan_for({"waist.pinned": "4 1/16 in"}).advice.finding("many_sizes@waist") is not None
    why = base().rules["general.findings.many_sizes"].why
    assert "3 in" in why and "4 in" in why


def test_side_openings_are_meant_to_be_open() -> None:
    world = world_for({})
    assert world.model.states["side_opening.seam"] == "open"
    assert plan_for({}).advice.findings == ()


@pytest.mark.parametrize(
    ("key", "word", "finding"),
    [
        ("trousers.center_back", "open", "seam_left_open@trousers"),
        ("trousers.sides", "basted", "seam_left_open@trousers"),
        ("trunk.inseams", "open", "seam_left_open@trunk"),
        ("side_opening.beside", "open", "seam_left_open@side_opening"),
        ("leg.hem", "raw", "hem_left_raw@leg"),
        ("waist.line", "marked", "line_left_marked@waist"),
        ("trousers.press", "due", "press_due@trousers"),
        ("waist.seam", "open", "seam_left_open@waist"),
    ],
)
def test_what_is_left_bare_is_found_and_can_be_finished(key: str, word: str, finding: FindingId) -> None:
    world = world_for({})
    world = replace(world, model=world.model.apply([Put(key, word)]))
    plan = make_plan(base(), world, {})
    assert finding in {found.id for found in plan.advice.findings}
    assert plan.remains == () and plan.blocked == ()
