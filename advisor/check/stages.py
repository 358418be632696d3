"""The order of work holds. A finding reads nothing that a later stage writes; operations can be done, write
what exists, and close what they are chosen for.
"""

from collections.abc import Iterator

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.shape import fits, patterns
from advisor.check.trials import Trials, trials_of
from advisor.check.wording import sentence_faults
from advisor.core.model import Change, Key, Put, place_of, slot_of
from advisor.core.stages import Stage, stage_index
from advisor.core.work import Op
from advisor.errors import nearest
from advisor.knowledge.cards import Card, Find
from advisor.knowledge.facts import Joined
from advisor.rulebase.garment import Garment
from advisor.rulebase.reads import looked_at, slots_read
from advisor.words import names_in


def check(material: Material, book: Book) -> None:
    """Findings against later work, then the operations themselves."""
    trials = trials_of(material)
    _later(material, book, trials)
    for (garment, fix, _), op in sorted(trials.ops.items(), key=lambda item: item[0]):
        _written(material, book, material.garments[garment], fix, op, trials)
        _worded(material, book, fix, op)
    for (fix, id), told in sorted(trials.blocked.items()):
        book.error(
            _of(material, fix), f"'{id}' cannot be done in the plan", f"something it expects is not so there ({told})"
        )
    for (problem, fix), told in sorted(trials.unclosed.items()):
        book.error(
            _of(material, fix), f"does not close '{problem}', which it was chosen for", f"mend its numbers ({told})"
        )
    for broken in trials.broken.values():
        if not broken.what.startswith("two amounts"):
            hint = f"{broken.hint} ({broken.told})" if broken.hint else broken.told
            book.error(_of(material, broken.where.partition(",")[0]), f"no plan can be made: {broken.what}", hint)


def reads(material: Material, garment: Garment, card: Card) -> Iterator[Key]:
    """The keys of a garment that the conditions of a card look at, joins followed to their ends."""
    wanted = slots_read(card)
    for key in (*garment.measures, *garment.states):
        if looked_at(garment.places[place_of(key)].role, slot_of(key), wanted):
            yield key
    for condition in card.conditions():
        for pattern, _ in patterns(condition.element):
            for join, _ in garment.joins:
                if isinstance(pattern, Joined) and fits(garment, join, pattern):
                    yield from (join.a, join.b, *(key for key, _ in join.when))


def _later(material: Material, book: Book, trials: Trials) -> None:
    writes: dict[tuple[str, Key], list[tuple[Stage, str, str, str]]] = {}
    for (where, key, stage), work in sorted(trials.writes.items()):
        writes.setdefault((where, key), []).append((stage, *work))
    for id, card in material.of(Find):
        told: set[tuple[str, str]] = set()
        for garment in material.garments.values():
            own = sorted(set(reads(material, garment, card)))
            found = [(key, *work) for key in own for work in writes.get((garment.id, key), [])]
            for key, stage, fix, op, problem in found:
                if stage_index(stage) <= stage_index(card.stage) or (key, fix) in told:
                    continue
                told.add((key, fix))
                book.error(
                    material.where(id),
                    f"is decided at the stage '{card.stage}' and looks at {key}, which {fix} changes later: it is "
                    f"chosen for '{problem}' at the stage '{stage}' ('{op}')",
                    "give the one a later stage or the other an earlier, or let this look at something else",
                    material.line(id, keyword="stage"),
                )


def _written(material: Material, book: Book, garment: Garment, fix: str, op: Op, trials: Trials) -> None:
    def wrong(what: str, hint: str) -> None:
        book.error(_of(material, fix), f"'{op.id}' {what}", hint)

    for effect in op.effects:
        if isinstance(effect, Change) and effect.key not in garment.measures:
            wrong(f"changes '{effect.key}', which no role declares", nearest(effect.key, garment.measures))
    for put in (*(each for each in op.effects if isinstance(each, Put)), *op.expects):
        verb = "puts" if put in op.effects else "expects"
        if put.key not in garment.states:
            wrong(f"{verb} '{put.key}', which no role declares", nearest(put.key, garment.states))
        elif put.word not in garment.allowed[put.key]:
            wrong(f"{verb} {put.key} = '{put.word}'", f"{nearest(put.word, garment.allowed[put.key])} (rules/roles)")
    for put in op.expects:
        question = garment.questions.get(put.key)
        possible = set(question.words) if question else {garment.states.get(put.key, put.word)}
        possible |= {word for key, word in trials.puts if key == put.key}
        if put.word not in possible and put.word in garment.allowed.get(put.key, ()):
            wrong(
                f"expects {put.key} = '{put.word}', which no operation puts",
                "let an operation before it put that state",
            )


def _worded(material: Material, book: Book, fix: str, op: Op) -> None:
    for text in (op.says, op.check_before, *(f"{need.what} {need.amount}" for need in op.materials)):
        for what, hint in sentence_faults(text, text == op.says):
            book.error(_of(material, fix), f"the text of '{op.id}' {what}", hint)
    for name in names_in(op.says):
        if name not in op.figures:
            what = f"the text of '{op.id}' asks for '{name}', which is none of its figures"
            book.error(_of(material, fix), what, nearest(name, op.figures))
    if not op.reversible and not op.check_before:
        book.error(_of(material, fix), f"'{op.id}' cannot be undone", "say in check_before what to make sure of first")


def _of(material: Material, id: str) -> str:
    """The file of a card; of an operations module its own; else what was named."""
    if id in material.files:
        return material.where(id)
    return id.replace(".", "/") + ".py" if id.startswith("advisor.") else id or "rules"
