"""Rules that cannot work as written are refused when the engine is built, by rule, fault and nearest word.

Each case is a mistake planted in a rule; what must be said follows from the mistake itself.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest
from engine_words import A, Answer, B, Made, Measure, rule, with_v

from advisor.engine import AND, AS, EXISTS, FORALL, MATCH, NOT, OR, TEST, Engine, L, P, RuleSpec, Slot, SlotFact
from advisor.engine.experta_shim import Fact
from advisor.errors import KnowledgeError


def anything(_: object) -> bool:
    return True


WRONG: dict[str, tuple[RuleSpec, str, str]] = {
    "literal of another type": (rule("r", A(v="1")), "A.v holds a str, wanted int", ""),
    "float for a length": (rule("r", Measure(mm=1.5)), "wanted Fraction; a float is not exact", ""),
    "literal inside |": (rule("r", Answer(word=L("yes") | L("nope"))), "'nope', not one of its words", "'no'"),
    "literal inside ~": (rule("r", Answer(word=~L("unsur"))), "'unsur', not one of its words", "'unsure'"),
    "literal beside a name": (rule("r", Answer(word=MATCH.w & L("yse"))), "'yse', not one", "'yes'"),
    "misspelt inside NOT": (rule("r", A(), NOT(Measure(key="hem", mn=3))), "no slot 'mn'", "mm"),
    "misspelt inside FORALL": (rule("r", FORALL(A(), Measure(kee="hem"))), "no slot 'kee'", "'key'"),
    "name of a test": (rule("r", A(v=MATCH.depth), TEST(lambda dept: True)), "TEST asks for 'dept'", "'depth'"),
    "name inside a group's test": (
        rule("r", A(v=MATCH.v), NOT(B(v=MATCH.w), TEST(lambda u, v: True))), "TEST asks for 'u'", ""
    ),
    "name of a group used outside": (
        rule("r", A(), EXISTS(B(v=MATCH.w)), TEST(lambda w: True)), "TEST asks for 'w'", ""
    ),
    "name of the action": (
        RuleSpec("r", 1, (Measure(key=MATCH.key, mm=MATCH.mm),), lambda keys: None), "asks for 'keys'", "'key'"
    ),
    "name bound in one branch only": (
        RuleSpec("r", 1, (OR(A(v=MATCH.v), B()),), lambda v: None), "the action asks for 'v'", ""
    ),
    "test with a default": (rule("r", A(v=MATCH.v), TEST(lambda v, low=3: v > low)), "'low' a default", "closure"),
    "test of anything": (rule("r", A(v=MATCH.v), TEST(lambda *v: True)), "a TEST takes *v", ""),
    "test of nothing": (rule("r", A(), TEST(lambda: True)), "a TEST asks for no bound name", ""),
    "test that is no function": (rule("r", A(), TEST(True)), "TEST takes one function", ""),
    "two functions in a test": (rule("r", A(v=MATCH.v), TEST(anything, anything)), "TEST takes one function", ""),
    "EXISTS before its binder": (with_v("r", EXISTS(B(v=MATCH.v)), A(v=MATCH.v)), "used inside EXISTS before", ""),
    "nested NOT before its binder": (
        with_v("r", NOT(B(), NOT(B(v=MATCH.v))), A(v=MATCH.v)), "'v' is used inside NOT before", "first"
    ),
    "differing from nothing": (rule("r", A(v=~MATCH.u)), "must differ from 'u'", ""),
    "one name for a word and a number": (
        rule("r", A(v=MATCH.x), Answer(name=MATCH.x)), "'x' stands for int values and for str values", "two names"
    ),
    "one name for a fact and a number": (
        rule("r", AS.x << A(), B(v=MATCH.x)), "'x' stands for a whole A and for int values", ""
    ),
    "one name for two facts": (rule("r", AS.f << A(), AS.f << B()), "AS.f is bound twice", ""),
    "a name bound under |": (rule("r", A(v=(MATCH.v & P(anything)) | L(3))), "binds 'v' inside | or ~", "outside"),
    "a class for a pattern": (rule("r", A), "cannot be the class A itself; write A()", ""),
    "a predicate for a pattern": (rule("r", P(anything)), "a condition cannot be P", ""),
    "a plain experta fact": (rule("r", Fact(v=1)), "a condition cannot be Fact", ""),
    "an empty NOT": (rule("r", A(), NOT()), "an empty NOT()", ""),
    "an empty AND inside": (rule("r", OR(A(), AND())), "an empty AND()", ""),
    "FORALL of one pattern": (rule("r", FORALL(A())), "FORALL needs a pattern and what must hold", ""),
    "too many alternatives": (rule("r", *[OR(A(v=1), A(v=2))] * 7), "128 alternatives, more than 64", ""),
    "a layer that is no number": (RuleSpec("r", "1", (A(),), lambda: None), "its layer is not", ""),  # type: ignore[arg-type]
    "conditions that are no tuple": (RuleSpec("r", 1, OR(A(), B()), lambda: None), "not a tuple", ""),
}  # fmt: skip


@pytest.mark.parametrize("case", WRONG)
def test_a_rule_that_cannot_work_is_refused_by_name(case: str) -> None:
    wrong, says, hints = WRONG[case]
    with pytest.raises(KnowledgeError) as caught:
        Engine([rule("fine", A()), wrong])
    assert caught.value.where == "r"
    assert says in caught.value.what
    assert hints in caught.value.hint or hints in caught.value.what


def test_a_class_the_engine_does_not_have_is_refused() -> None:
    with pytest.raises(KnowledgeError, match=r"r: Measure is not a fact class of this engine\n.*'Measured'"):
        Engine([rule("r", Measure())], [type("Measured", (SlotFact,), {"mm": Slot(int)}), A, Made])
    engine = Engine([RuleSpec("r", 1, (A(),), lambda: B(v=1))], [A])
    with pytest.raises(KnowledgeError, match=r"r: B is not a fact class of this engine"):
        engine.run([A(v=1)])
    with pytest.raises(KnowledgeError, match=r"B is not a fact class of this engine"):
        engine.run([B(v=1)])


def test_two_classes_of_one_name_are_refused() -> None:
    other = type("A", (SlotFact,), {"v": Slot(str)})
    with pytest.raises(KnowledgeError, match=r"two fact classes are called A"):
        Engine([rule("r", A()), rule("s", other())])


def test_a_rule_without_an_id_or_that_is_no_rule_is_refused() -> None:
    with pytest.raises(KnowledgeError, match=r"a rule has the id ''"):
        Engine([rule("", A())])
    with pytest.raises(KnowledgeError, match=r"^A is no rule"):
        Engine([A(v=1)])  # type: ignore[list-item]
    with pytest.raises(KnowledgeError, match=r"r: its action cannot be called"):
        Engine([RuleSpec("r", 1, (A(),), None)])  # type: ignore[arg-type]


@pytest.mark.parametrize(
    ("answer", "called"),
    [(lambda: "fact", "str"), (lambda: [Made(by="r", v=1), 3], "int"), (lambda: {"v": 1}, "str")],
)
def test_an_action_that_answers_no_facts_is_refused(answer: Callable[[], Any], called: str) -> None:
    with pytest.raises(KnowledgeError, match=rf"r: {called} is no fact"):
        Engine([RuleSpec("r", 1, (A(),), answer)]).run([A(v=1)])


def test_a_failing_test_is_named() -> None:
    failing = with_v("r", A(v=MATCH.v), B(v=MATCH.w), TEST(lambda v, w: v // w > 1))
    with pytest.raises(KnowledgeError, match=r"r: a TEST of v, w failed with ZeroDivisionError"):
        Engine([failing]).run([A(v=1), B(v=0)])


def test_an_action_may_take_all_names_or_have_defaults_of_its_own() -> None:
    def all_of_them(**bound: Any) -> Made:
        return Made(by=",".join(sorted(bound)), v=bound["v"])

    made = Engine([RuleSpec("r", 1, (AS.f << A(v=MATCH.v), B(v=MATCH.w)), all_of_them)]).run([A(v=1), B(v=2)])
    assert made.of(Made) == (Made(by="f,v,w", v=1),)
    own = RuleSpec("r", 1, (A(v=MATCH.v),), lambda v, more=10: Made(by="r", v=v + more))
    assert Engine([own]).run([A(v=1)]).of(Made) == (Made(by="r", v=11),)
