"""What can only be seen by running the rules: examples, near misses, reach, stages, the verifier, order, rivals."""

import json
import os
import subprocess
import sys
from pathlib import Path

from tests.check.mini import FIND, SHORTEN_FIX, VETO, Mini, answer

ROOT = Path(__file__).resolve().parents[2]
OPEN_FIND = "rules/length/findings/hem_open.py"
SHORT_FIND = "rules/length/findings/lining_short.py"
UNPROVED = "add a near miss that only this condition keeps silent"
WORLD = "(cases/watchman.toml)"
DUMP = """
import json, sys
from itertools import islice
from pathlib import Path
from advisor.check.fault import Book
from advisor.check.material import read_material
from advisor.check.order import bytes_of
from advisor.check.probes import of_cases, together
from advisor.check.run import run_checks
from advisor.check.told import report_data
rules, cases = Path(sys.argv[1]) / "rules", Path(sys.argv[1]) / "cases"
data = report_data(run_checks(rules, cases)) | {"seconds": 0}
material = read_material(rules, cases, Book(""))
tried = [*of_cases(material), *islice(together(material.garments["cape"], 1), 8)]
print(json.dumps([data, [bytes_of(material.plain, probe).decode() for probe in tried]]))
"""


def test_a_sentence_is_read_as_the_person_would(mini: Mini) -> None:
    mini.change("rules/roles/lining.toml", '["sewn", "cut"]', '["sewn", "cut", "half_sewn"]')
    mini.change(OPEN_FIND, 'word="cut", place', "word=MATCH.word, place")
    mini.change(
        OPEN_FIND, "Find, Trait, fires, given, near, trait", "Find, Trait, fires, given, near, such_that, trait"
    )
    mini.change(
        OPEN_FIND, "MATCH.place)),),", 'MATCH.place)), such_that("it is not sewn", lambda word: word != "sewn")),'
    )
    mini.change(OPEN_FIND, "The hem of {place} is not sewn.", "The hem of {place} is {word}.")
    mini.change(
        OPEN_FIND,
        'fires=(fires("cut", trait("inside.hem", "lining", "cut")),)',
        'fires=(fires("cut", trait("inside.hem", "lining", "half_sewn")),)',
    )
    assert (
        f"{OPEN_FIND}:13: example 'cut' is told as 'The hem of the lining is half_sewn.', which holds the code word "
        "'half_sewn'; say it as one says it in the sewing room; {role} and state words are code, {place} is not"
    ) in mini.errors()


def test_a_fact_left_out_or_added_proves_a_condition(mini: Mini) -> None:
    mini.change(VETO, 'near("firm cloth", at=2, word="firm")', 'near_without("nothing is known of it", at=2)')
    mini.change(VETO, "near, offered", "near_with, near_without, offered, unless")
    assert mini.errors() == []
    mini.change(
        VETO,
        "place=MATCH.cloth)),)",
        'place=MATCH.cloth)), unless("it is sewn", Trait(role="lining", slot="hem", word="sewn")))',
    )
    unproved = f"{VETO}:10: condition 'it is sewn' is not proved by a near miss; {UNPROVED}"
    assert unproved in mini.errors()
    mini.change(VETO, "at=2),)", 'at=2), near_with("sewn", trait("inside.hem", "lining", "sewn")))')
    assert unproved not in mini.errors()


def test_rules_nothing_can_reach(mini: Mini) -> None:
    mini.copy(
        FIND,
        "rules/length/findings/band_long.py",
        ('kind="fit", role', 'kind="band", role'),
        ('kind="seam"', 'kind="hole"'),
    )
    mini.change("rules/length/findings/band_long.py", 'joined("fit"', 'joined("band"')
    assert (
        "rules/length/findings/band_long.py:13: condition 'the lining is measured against the cape': "
        "no garment has such a join; "
        "see rules/garments for the joins and places there are"
    ) in mini.errors()


def test_a_rule_no_probe_reaches_is_an_error(mini: Mini) -> None:
    mini.change(SHORT_FIND, "-over > slack", "-over > slack + 300")
    mini.change(SHORT_FIND, '"1 in"', '"20 in"')
    mini.remove("rules/length/vetoes/thin_cloth.py")
    assert (
        f"{SHORT_FIND}: no case or probe reaches it; add a case to cases/ on which it counts, or take it out"
        in mini.errors()
    )
    assert (
        "rules/roles/lining.toml: no rule, fix or join looks at 'cloth'; let a rule look at it, or take it out"
        in mini.notes()
    )


def test_a_fix_nothing_is_offered_is_an_error(mini: Mini) -> None:
    mini.copy(SHORTEN_FIX, "rules/length/fixes/fold.py")
    path = "rules/length/answers/fold.py"
    mini.write(path, answer("Fold", "hem_open", "lining_long", "finish", "length.fixes.fold"))
    mini.change(path, "Answer, fires, near, problem", "Answer, fires, near, problem, such_that")
    mini.change(path, "when=(),", 'when=(such_that("it is a yard", lambda amount: amount > 900),),')
    mini.change(path, '"1 in"', '"40 in"')
    assert (
        "rules/length/fixes/fold.py: no case or probe is offered this fix; "
        "add a case to cases/ on which it counts, or take it out" in mini.errors()
    )


def test_a_rule_that_only_trials_reach_is_an_error(mini: Mini) -> None:
    mini.change("cases/wigmaker.toml", 'cloth = "thin"', 'cloth = "firm"')
    assert mini.errors() == [
        f"{VETO}: comes up in no case, only in trials; add a case to cases/ on which it counts, or take it out"
    ]


def test_a_finding_reads_nothing_that_later_work_writes(mini: Mini) -> None:
    mini.change(SHORT_FIND, 'stage="hem"', 'stage="open"')
    assert mini.errors() == [
        f"{SHORT_FIND}:8: is decided at the stage 'open' and looks at inside.length, "
        f"which length.fixes.shorten changes later: "
        "it is chosen for 'lining_long' at the stage 'hem' ('cut inside.hem'); "
        "give the one a later stage or the other an earlier, or let this look at something else"
    ]


def test_a_fix_that_does_not_close_what_it_was_chosen_for(mini: Mini) -> None:
    mini.change(SHORTEN_FIX, "times(cut, -1)", "times(cut, -2)")
    mini.change(SHORT_FIND, "lining_short", "lining_long")
    mini.remove("rules/length/answers/leave_short.py")
    told = f"{SHORTEN_FIX}: does not close 'lining_long', which it was chosen for; mend its numbers {WORLD}"
    assert told in mini.errors(), "\n".join(mini.errors())


def test_one_name_for_two_operations_is_told(mini: Mini) -> None:
    mini.change(
        "rules/garments/cape.toml",
        "[reckoned]",
        'outside = { role = "lining", words = "the hood" }\n\n'
        '[reckoned]\n"outside.wanted" = ["outside.length - outside.long_by"]',
    )
    mini.change(
        "rules/garments/cape.toml",
        "[[joins]]",
        '[[joins]]\nkind = "fit"\na = "outside.length"\nb = "outside.wanted"\n\n[[joins]]',
    )
    mini.write(
        "cases/watchman.toml",
        (mini.folder / "cases/watchman.toml").read_text() + '\n[answers.outside]\nfits = "long"\nlong_by = "2 in"\n',
    )
    mini.change(SHORTEN_FIX, 'id=f"cut {at}.hem"', 'id="cut hem"')
    assert (
        f"{SHORTEN_FIX}: no plan can be made: 'cut hem' means two different things; give one of them another id {WORLD}"
    ) in mini.errors()


def test_a_spoiled_plan_is_noticed(mini: Mini) -> None:
    mini.remove(
        SHORT_FIND,
        "rules/length/answers/leave_short.py",
        OPEN_FIND,
        "rules/length/answers/sew_open.py",
        "rules/length/fixes/sew.py",
    )
    told = [fault.told() for fault in mini.faults("verifier")]
    hint = (
        f"let a state it puts or a measure it changes be looked at by a finding or a join, in both directions {WORLD}"
    )
    assert told == [
        f"{SHORTEN_FIX}: nobody would notice 'cut inside.hem' done wrong: one mark less of inside.length; {hint}",
        f"{SHORTEN_FIX}: nobody would notice 'sew inside.hem' done wrong: leaving it out; {hint}",
    ]


def test_advice_that_hangs_on_anything_but_the_case(mini: Mini) -> None:
    mini.change(
        FIND,
        "rule = Find(",
        "CALLS: list[int] = []\n\n\n"
        "def count(over: object) -> int:\n    CALLS.append(1)\n    return len(CALLS)\n\n\nrule = Find(",
    )
    mini.change(
        FIND,
        'says="{place} is {over} too long."',
        'reckons={"count": count},\n    says="{place} is {over} too long, said {count} times."',
    )
    told = [fault.told() for fault in mini.faults("order")]
    assert any(
        line.startswith(
            "cases/watchman.toml: the advice depends on the order of the rules, first in advice findings 0 words; "
        )
        for line in told
    )


def test_rules_that_contradict_each_other(mini: Mini) -> None:
    mini.copy(
        FIND,
        "rules/length/findings/too_long.py",
        ("amount=lambda over: over", "amount=lambda over: over * 2"),
        ('amount=length("1 in")', 'amount=length("2 in")'),
    )
    assert any(
        line.startswith(
            f"{FIND}: two amounts for lining_long@inside: length.findings.too_long "
            f"says otherwise; let one rule reckon the amount ("
        )
        for line in mini.errors()
    ), mini.errors()


def test_rules_that_repeat_each_other(mini: Mini) -> None:
    mini.copy(FIND, "rules/length/findings/too_long.py")
    mini.copy("rules/length/answers/leave_long.py", "rules/length/answers/let_be.py")
    report = mini.check()
    assert [fault.told() for fault in report.errors] == [
        "rules/length/answers/leave_long.py: offers length.fixes.leave for 'lining_long', "
        "and so does length.answers.let_be; "
        "keep one of them, or give both conditions that exclude each other; "
        "the other is rules/length/answers/let_be.py",
        "rules/length/answers/leave_long.py: offers what length.answers.let_be offers too, at the same time; "
        f"let their conditions exclude each other {WORLD}",
        "rules/length/findings/too_long.py:11: finds nothing that length.findings.lining_long does not: all its "
        "conditions are there, as they are or stricter; take it out, or let the other leave its cases alone "
        f"({FIND})",
    ]
    assert [fault.told() for fault in report.faults if fault.note] == [
        f"{FIND}: finds what length.findings.too_long finds too, at the same place; "
        f"she hears only the first; keep one {WORLD}"
    ]


def test_a_problem_with_no_way_out_is_a_note(mini: Mini) -> None:
    mini.remove("rules/length/answers/leave_long.py")
    assert any(
        note.startswith(
            f"{VETO}: leaves no option for lining_long, not even leaving it; meant so? (cases/wigmaker.toml)"
        )
        for note in mini.notes()
    ), mini.notes()


def test_a_rule_that_takes_back_what_it_said(mini: Mini) -> None:
    mini.copy(OPEN_FIND, "rules/length/findings/hem_raw.py", ('problem="hem_open"', 'problem="hem_raw"'))
    mini.change(OPEN_FIND, "Find, Trait", "Find, Problem, Trait")
    mini.change(OPEN_FIND, "given, near, trait", "given, near, trait, unless")
    mini.change(
        OPEN_FIND, "MATCH.place)),),", 'MATCH.place)), unless("nothing else is found", Problem(name="hem_raw"))),'
    )
    assert any(
        "fires and then takes it back; an unless() looks at what its own layer concludes (" in line
        for line in mini.errors()
    ), mini.errors()


def test_garments_and_cases(mini: Mini) -> None:
    mini.change("cases/watchman.toml", 'fits = "long"', 'fits = "right"')
    mini.write("rules/roles/yoke.toml", 'title = "a yoke"\n')
    mini.write("rules/garments/hood.toml", (mini.folder / "rules/garments/cape.toml").read_text())
    mini.write(
        "cases/second.toml",
        (mini.folder / "cases/watchman.toml").read_text()
        + '\n[choices]\n"lining_lang@inside" = { fix = "length.fixes.shortn" }\n',
    )
    report = mini.check()
    assert [fault.told() for fault in report.errors if fault.check == "garments"] == [
        "cases/second.toml: chooses 'length.fixes.shortn', which is no fix; did you mean 'length.fixes.shorten'?",
        "cases/second.toml: chooses for 'lining_lang', which no finding finds; did you mean 'lining_long'?",
        'rules/garments/hood.toml: has no case; write cases/<name>.toml with garment = "hood"',
        "rules/roles/yoke.toml: no garment has a place of this role; "
        "use it in a file of rules/garments, or take it out",
    ]
    assert "cases/watchman.toml: nothing is found; a case should show something" in [
        fault.told() for fault in report.faults if fault.note
    ]


def test_a_broken_choice_in_a_plan_is_told_with_its_card(mini: Mini) -> None:
    mini.change("rules/length/fixes/sew.py", "at = trouble.place", 'at = view.one("yoke")')
    told = [
        line
        for line in mini.errors()
        if line.startswith("rules/length/fixes/sew.py: no plan can be made: no place has the role 'yoke'")
    ]
    assert told and "known here: lining" in told[0]


def test_the_same_report_and_advice_in_every_process(mini: Mini) -> None:
    mini.change("cases/watchman.toml", 'fits = "long"', 'fits = "right"')

    def dump(seed: str) -> str:
        env = {**os.environ, "PYTHONHASHSEED": seed, "PYTHONPATH": str(ROOT)}
        return subprocess.run(
            [sys.executable, "-c", DUMP, str(mini.folder)], env=env, capture_output=True, check=True, text=True
        ).stdout

    first = dump("0")
    assert json.loads(first)[0]["notes"] and len(json.loads(first)[1]) == 10
    assert dump("4242") == first
