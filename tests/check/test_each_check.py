"""Each check, and no other, notices the rule base that is broken for it: so each can fail, and none cries wolf."""

import ast
from collections.abc import Callable
from graphlib import TopologicalSorter
from pathlib import Path

import pytest

import advisor.check
from advisor.check.run import CHECKS
from tests.check.mini import FIND, SHORTEN_FIX, VETO, Mini, answer

SHORT = "rules/length/findings/lining_short.py"
SHORTEN_ANSWER = "rules/length/answers/shorten_long.py"
LEAVE_ANSWER = "rules/length/answers/leave_long.py"
THIN = 'given("the cloth is thin", Trait(role="lining", slot="cloth", word="thin")),'


def lies_in_no_folder(mini: Mini) -> None:
    mini.copy(VETO, "rules/length/veto/thin.py")


def is_a_frame(mini: Mini) -> None:
    mini.write("rules/length/answers/more.py", "# FILL: all of it\n")


def is_spelled_another_way(mini: Mini) -> None:
    mini.change(FIND, "hangs out below it", "hides the colour")


def asks_for_what_nothing_binds(mini: Mini) -> None:
    mini.change(VETO, "The cloth of {place}", "The cloth of {plaice}")


def states_another_amount(mini: Mini) -> None:
    mini.change(FIND, 'amount=length("1 in")', 'amount=length("2 in")')


def may_lose_a_condition(mini: Mini) -> None:
    mini.change(VETO, 'near("firm cloth", at=2, word="firm")', 'near("another fix", fix="length.fixes.leave")')


def asks_what_nothing_looks_at(mini: Mini) -> None:
    state = '\n[states.tab]\nstart = "on"\nwords = ["on", "off"]\nmeaning = "its tab"\n'
    mini.write("rules/roles/lining.toml", (mini.folder / "rules/roles/lining.toml").read_text() + state)


def comes_up_in_no_case(mini: Mini) -> None:
    mini.change("cases/wigmaker.toml", 'cloth = "thin"', 'cloth = "firm"')


def is_decided_too_early(mini: Mini) -> None:
    mini.change(SHORT, 'stage="hem"', 'stage="open"')


def does_what_nobody_looks_after(mini: Mini) -> None:
    mini.change(
        SHORTEN_FIX,
        "    return work_of((cutting, sewing))",
        "    washing = Op(\n"
        '        id=f"wash {at}", stage="finish", verb="wash", places=(at,), setup="hand", minutes=Spread(5, 8, 12),\n'
        '        says="Wash it.", expects=(Put(f"{at}.cloth", "firm"),), effects=(Put(f"{at}.cloth", "thin"),),\n'
        "    )\n"
        "    return work_of((cutting, sewing, washing))",
    )


def counts_how_often_it_was_called(mini: Mini) -> None:
    count = "def count(over: object) -> int:\n    CALLS.append(1)\n    return len(CALLS)\n"
    mini.change(FIND, "rule = Find(", f"CALLS: list[int] = []\n\n\n{count}\n\nrule = Find(")
    mini.change(FIND, 'says="{place} is {over}', 'reckons={"count": count},\n    says="{place}, {count}: {over}')


def is_offered_twice(mini: Mini) -> None:
    mini.copy(LEAVE_ANSWER, "rules/length/answers/let_be.py")


def has_no_case(mini: Mini) -> None:
    mini.write("rules/garments/hood.toml", (mini.folder / "rules/garments/cape.toml").read_text())


def may_be_offered_twice(mini: Mini) -> None:
    all_names = "Answer, Trait, fires, given, length, near, problem, such_that, trait"
    mini.change(LEAVE_ANSWER, "Answer, fires, near, problem", all_names)
    mini.copy(
        LEAVE_ANSWER,
        "rules/length/answers/leave_much.py",
        ("when=(),", 'when=(such_that("more than 5 in", lambda amount: amount > 127),),'),
        ('"1 in"', '"6 in"'),
        ("near=(", 'near=(near("less", mm=length("5 in")), '),
    )
    mini.change(LEAVE_ANSWER, "when=(),", f"when=({THIN}),")
    mini.change(LEAVE_ANSWER, '"1 in")', '"1 in"), trait("inside.cloth", "lining", "thin")')
    mini.change(LEAVE_ANSWER, "near=(", 'near=(near("firm", at=1, word="firm"), ')
    case = (mini.folder / "cases/watchman.toml").read_text().replace("1 in", "6 in")
    mini.write("cases/giant.toml", case)


def is_always_ruled_out(mini: Mini) -> None:
    mini.copy(SHORTEN_FIX, "rules/length/fixes/fold.py")
    mini.copy(VETO, "rules/length/vetoes/thin_fold.py", ("length.fixes.shorten", "length.fixes.fold"))
    path = "rules/length/answers/fold_long.py"
    mini.write(path, answer("Fold a long lining", "lining_long", "hem_open", "hem", "length.fixes.fold"))
    mini.change(path, "Answer, fires, near, problem", "Answer, Trait, fires, given, near, trait, problem")
    mini.change(path, "when=(),", f"when=({THIN}),")
    mini.change(path, '"1 in")', '"1 in"), trait("inside.cloth", "lining", "thin")')
    mini.change(path, "near=(", 'near=(near("firm", at=1, word="firm"), ')


def never_applies(mini: Mini) -> None:
    mini.write(
        "rules/roles/yoke.toml",
        'title = "a yoke"\n[slots.cloth]\nname = "the cloth of {place}"\nask = "How is the cloth of {place}?"\n'
        'kind = "word"\nneutral = "firm"\nwords = { firm = "firm", thin = "worn thin" }\n',
    )
    mini.change("rules/garments/cape.toml", "[reckoned]", 'top = { role = "yoke", words = "the yoke" }\n\n[reckoned]')
    mini.copy(
        VETO,
        "rules/length/vetoes/thin_yoke.py",
        ('role="lining", slot="cloth"', 'role="yoke", slot="cloth"'),
        ("place=MATCH.cloth", "place=MATCH.place"),
        ('"inside", "lining"', '"top", "yoke"'),
        ('"inside.cloth", "lining"', '"top.cloth", "yoke"'),
    )


def leaves_a_gap(mini: Mini) -> None:
    mini.change(SHORTEN_ANSWER, "Answer, fires, near, problem", "Answer, fires, length, near, problem, such_that")
    mini.change(SHORTEN_ANSWER, "when=(),", 'when=(such_that("less than 3 in", lambda amount: amount < 76),),')
    mini.change(SHORTEN_ANSWER, "near=(", 'near=(near("more", mm=length("4 in")), ')


def cannot_be_left(mini: Mini) -> None:
    mini.copy(SHORTEN_FIX, "rules/length/fixes/fold.py")
    text = answer("Fold a long lining", "lining_long", "hem_open", "hem", "length.fixes.fold")
    mini.write("rules/length/answers/fold_long.py", text)
    mini.change(LEAVE_ANSWER, '"lining_long"', '"hem_open"')
    mini.change(LEAVE_ANSWER, 'name="hem_open"', 'name="lining_long"')


BROKEN: list[tuple[str, Callable[[Mini], None]]] = [
    ("files", lies_in_no_folder),
    ("unfilled", is_a_frame),
    ("wording", is_spelled_another_way),
    ("vocabulary", asks_for_what_nothing_binds),
    ("examples", states_another_amount),
    ("near misses", may_lose_a_condition),
    ("reach", asks_what_nothing_looks_at),
    ("reach", comes_up_in_no_case),
    ("stages", is_decided_too_early),
    ("verifier", does_what_nobody_looks_after),
    ("order", counts_how_often_it_was_called),
    ("rivals", is_offered_twice),
    ("garments", has_no_case),
    ("subsumed", may_be_offered_twice),
    ("contradicted", is_always_ruled_out),
    ("idle vetoes", never_applies),
    ("gaps", leaves_a_gap),
    ("ladders", cannot_be_left),
]


@pytest.mark.parametrize(("check", "broken"), BROKEN, ids=[broken.__name__ for _, broken in BROKEN])
def test_that_check_speaks_and_no_other(mini: Mini, check: str, broken: Callable[[Mini], None]) -> None:
    broken(mini)
    faults = mini.check().faults
    assert {fault.check for fault in faults} == {check}, "\n".join(f"{f.check}: {f.told()}" for f in faults)


def test_every_check_has_a_rule_base_broken_for_it() -> None:
    assert {name for name, _ in CHECKS} | {"files"} == {check for check, _ in BROKEN}


def test_no_module_of_the_checks_needs_itself() -> None:
    # graphlib.TopologicalSorter refuses a graph that goes round.
    folder = Path(str(advisor.check.__file__)).parent
    needs: dict[str, set[str]] = {}
    for path in folder.glob("*.py"):
        found = [node for node in ast.walk(ast.parse(path.read_text())) if isinstance(node, ast.ImportFrom)]
        names = {node.module.rpartition(".")[2] for node in found if (node.module or "").startswith("advisor.check.")}
        names |= {each.name for node in found if node.module == "advisor.check" for each in node.names}
        needs[path.stem] = names
    assert len(needs) > 20
    assert needs["run"] <= set(TopologicalSorter(needs).static_order())
