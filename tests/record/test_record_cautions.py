"""Cautions: three at once, one cause one sentence, dangers first, every one told once and none lost."""

import re
from dataclasses import replace
from pathlib import Path

import pytest

from advisor.advise.plan import make_plan
from advisor.casefile import read_case
from advisor.core.advice import Plan
from advisor.core.case import Case
from advisor.errors import KnowledgeError
from advisor.report.cautions import AT_ONCE, warned
from advisor.report.data import plan_data
from advisor.report.plan import plan_lines
from advisor.rulebase.cautions import cause_of, read_causes
from tests.some_cases import some
from tests.spine.worlds import BASE, world

CASES = sorted((Path(__file__).parents[2] / "cases").glob("*.toml"))
ALL = sorted({caution for fix in BASE.fixes.values() for caution in fix.cautions})
HURTS = re.compile(r"poison|acid\b|burns? |fumes|catch fire|glasses|swallow|make people ill|asbestos|points away", re.I)
"""What hurts a person, told by words of its own: common practice, no source. Not the word list under test."""


def opened(path: Path) -> tuple[Case, Plan]:
    case = read_case(path, BASE.questions()).case
    return case, make_plan(BASE, world(case), case.choices, case.limits)


def one_line(lines: list[str]) -> str:
    return " ".join(" ".join(lines).split())


def part(lines: list[str], title: str) -> list[str]:
    """The items under a heading, each in one line."""
    if title not in lines:
        return []
    start = lines.index(title) + 2
    end = next((at for at in range(start, len(lines)) if not lines[at]), len(lines))
    return [" ".join(item.split()) for item in "\n".join(lines[start:end]).split("  - ") if item.strip()]


@pytest.mark.parametrize("path", some(CASES, 3), ids=lambda path: path.stem)
def test_every_caution_of_a_plan_is_told_once_and_three_at_most_at_the_head(path: Path) -> None:
    case, plan = opened(path)
    cautions = {caution for option in plan.advice.chosen() for caution in option.cautions}
    if not plan.steps:
        return
    whole, short = plan_lines(BASE, case, plan), plan_lines(BASE, case, plan, more=False)
    head, rest = part(whole, "Mind"), part(whole, "More to mind")
    assert len(head) <= AT_ONCE and len(head) == min(AT_ONCE, len(warned(BASE, plan.advice.chosen())))
    beside = [one_line([line]) for line in whole if "Mind: " in line]
    for caution in cautions:
        assert (head + rest).count(caution) + one_line(beside).count(caution) <= 1
        assert caution in head + rest or caution in one_line(whole), "none is lost"
    assert part(short, "More to mind") == []
    assert ("--more tells" in one_line(short)) == bool(rest)
    # The merged sentences at the head and the cautions below are all there is.
    says = {cause.says for cause in BASE.causes}
    assert set(head) | set(rest) <= cautions | says
    data = [text for each in plan_data(BASE, case, plan)["cautions"] for text in each["cautions"]]
    assert sorted(data) == sorted(cautions) and len(set(data)) == len(data)


def test_what_hurts_somebody_is_a_danger_and_comes_first() -> None:
    for caution in ALL:
        cause = cause_of(caution, BASE.causes)
        if HURTS.search(caution):
            assert cause is not None and cause.danger, caution
    for path in some(CASES, 3):
        dangers = [each.danger for each in warned(BASE, opened(path)[1].advice.chosen())]
        assert dangers == sorted(dangers, reverse=True)


def test_every_cause_and_every_word_of_it_is_met() -> None:
    for cause in BASE.causes:
        met = [caution for caution in ALL if cause_of(caution, BASE.causes) == cause]
        assert met, cause.name
        for word in cause.words:
            assert any(word in caution.casefold() for caution in ALL), word


def test_two_fixes_that_cut_metal_warn_once() -> None:
    case, plan = opened(next(path for path in CASES if path.stem == "moth_queen"))
    both = ("Metal flies when it is cut: safety glasses.", "Cut or pried metal flies: wear safety glasses.")
    options = [replace(plan.advice.chosen()[0], cautions=(text,)) for text in both]
    (found,) = warned(BASE, options)
    assert found.danger and found.says.startswith("Metal flies when it is cut or pried:") and found.texts == both
    said = one_line(plan_lines(BASE, case, plan))
    assert said.count("Cut or pried metal flies: wear safety glasses") == 1


def test_dangers_past_three_stand_beside_their_work() -> None:
    case, plan = opened(next(path for path in CASES if path.stem == "moth_queen"))
    dangers = (
        "Metal flies when it is cut.",
        "No oxalic acid near it.",
        "It gives off a poisonous gas.",
        "Oil-soaked cotton can catch fire.",
    )
    last = plan.advice.chosen()[-1]
    options = tuple(replace(o, cautions=dangers if o.id == last.id else ()) for o in plan.advice.options)
    lines = plan_lines(BASE, case, replace(plan, advice=replace(plan.advice, options=options)))
    assert part(lines, "Mind") == list(dangers[:3])
    first = next(number for number, step in enumerate(plan.steps, 1) if last.id in step.serves)
    at = lines.index("    Mind: Oil-soaked cotton can catch fire.")
    assert lines[at + 1].startswith(f"{first:>2}. ") or "CANNOT BE UNDONE" in lines[at + 1]


def test_a_broken_file_is_refused_by_name_and_none_is_no_fault(tmp_path: Path) -> None:
    path = tmp_path / "cautions.toml"
    assert read_causes(path) == ()
    path.write_text('[metal]\nsays = "Mind."\nword = ["x"]\n', encoding="utf-8")
    with pytest.raises(KnowledgeError, match=r"metal\.words"):
        read_causes(path)
