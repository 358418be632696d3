"""What would change the advice: the value that flips a refusal, and "only if" for what she cannot say."""

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from fractions import Fraction

from advisor.advise.follow import Followed
from advisor.advise.sweep import Group, sweep
from advisor.advise.world import World, world_of
from advisor.core.advice import Advice
from advisor.core.case import Case, Unknown
from advisor.core.model import Key, Value
from advisor.core.question import Question
from advisor.core.work import NodeId, Option, OptionId
from advisor.rulebase.base import RuleBase

KEY_KINDS = ("answer ", "assumed ")


@dataclass(frozen=True)
class Flip:
    """If `key` were `value` (and on, away from what it is now), the option would be open. `upward`: at least."""

    key: Key
    value: Value
    upward: bool


@dataclass(frozen=True)
class OnlyIf:
    """An option that stands only for some values of something she cannot say.

    `words`, or the (least, most) of each run of lengths; `finding` is the title of what it is offered for.
    """

    option: OptionId
    title: str
    finding: str
    key: Key
    runs: tuple[tuple[Value, Value], ...]
    words: tuple[str, ...]


def keys_below(advice: Advice, nodes: Iterable[NodeId], questions: Iterable[Key]) -> tuple[Key, ...]:
    """The asked-for keys that these nodes rest on, sorted."""
    asked = set(questions)
    found: set[Key] = set()
    for root in nodes:
        for node in advice.trace.leaves(root):
            kind, _, key = node.id.partition(" ")
            if f"{kind} " in KEY_KINDS and key in asked:
                found.add(key)
    return tuple(sorted(found))


def flips(base: RuleBase, case: Case, advice: Advice, option: Option) -> tuple[Flip, ...]:
    """For a ruled-out option: per key its refusal rests on, the nearest value that would let it stand."""
    questions = base.garment(case.garment).questions
    world = world_of(case, base.garment(case.garment))
    keys = keys_below(advice, (ruling.node for ruling in option.rulings), questions)
    found = (_flip(base, case, world, option.id, questions[key]) for key in keys)
    return tuple(flip for flip in found if flip is not None)


def _flip(base: RuleBase, case: Case, world: World, option: OptionId, question: Question) -> Flip | None:
    groups = sweep(base, case, question.key)
    open_groups = [group for group in groups if _open(group.followed, option)]
    if not open_groups:
        return None
    if question.kind == "word":
        return Flip(question.key, open_groups[0].values[0], True)
    now = world.model.measures[question.key]
    ends = [(abs(value - now), value, value > now) for group in open_groups for value in _ends(group)]
    _, value, upward = min(ends)
    return Flip(question.key, value, upward)


def _ends(group: Group) -> tuple[Fraction, Fraction]:
    first, last = group.values[0], group.values[-1]
    assert isinstance(first, Fraction) and isinstance(last, Fraction)
    return first, last


def _open(followed: Followed, option: OptionId) -> bool:
    return any(o.id == option and o.open for o in followed.advice.options)


def only_ifs(base: RuleBase, case: Case) -> tuple[OnlyIf, ...]:
    """Every option that hangs on something she cannot say, with the values for which it stands."""
    questions = base.garment(case.garment).questions
    found: list[OnlyIf] = []
    for key in sorted(key for key, answer in case.answers.items() if isinstance(answer, Unknown)):
        groups = sweep(base, case, key)
        for option, (finding, title) in _titles(groups).items():
            standing = [group for group in groups if _open(group.followed, option)]
            if len(standing) < len(groups):
                runs, words = _when(questions[key], groups, standing)
                found.append(OnlyIf(option, title, finding, key, runs, words))
    return tuple(found)


def _titles(groups: tuple[Group, ...]) -> dict[OptionId, tuple[str, str]]:
    """Finding's and fix's title of every option that stands somewhere, in the order of the advice."""
    titles: dict[OptionId, tuple[str, str]] = {}
    for group in groups:
        advice = group.followed.advice
        for option in advice.options:
            finding = advice.finding(option.finding)
            if option.open and finding is not None:
                titles.setdefault(option.id, (finding.title, option.title))
    return dict(sorted(titles.items(), key=lambda item: (item[1][0], item[0])))


def _when(
    question: Question, groups: tuple[Group, ...], standing: list[Group]
) -> tuple[tuple[tuple[Value, Value], ...], tuple[str, ...]]:
    """The runs of lengths, or the words, for which these groups stand."""
    if question.kind == "word":
        return (), tuple(str(word) for group in standing for word in group.values)
    return _runs(groups, lambda group: group in standing), ()


def _runs(groups: tuple[Group, ...], holds: Callable[[Group], bool]) -> tuple[tuple[Value, Value], ...]:
    """Neighboring groups that hold, joined into (least, most) runs."""
    runs: list[tuple[Value, Value]] = []
    last_held = False
    for group in groups:
        if holds(group):
            start = runs.pop()[0] if last_held else group.values[0]
            runs.append((start, group.values[-1]))
        last_held = holds(group)
    return tuple(runs)
