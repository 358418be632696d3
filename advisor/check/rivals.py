"""No two rules contradict or repeat each other, and no problem is left without any option."""

from itertools import combinations

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.trials import Trials, trials_of
from advisor.knowledge.cards import Answer, Find


def check(material: Material, book: Book) -> None:
    """Amounts, answers said twice, and problems with every option ruled out."""
    trials = trials_of(material)
    for broken in trials.broken.values():
        if broken.what.startswith("two amounts"):
            first, *others = broken.where.split(", ")
            book.error(
                material.where(first),
                f"{broken.what}: {' and '.join(others)} says otherwise",
                f"{broken.hint} ({broken.told})",
            )
    _answers(material, book)
    _twice(material, book, trials)
    for rulers, problems in sorted(trials.shut.items()):
        where = material.where(rulers[0]) if rulers and rulers[0] in material.files else "rules"
        told = next(iter(problems.values()))
        book.note(
            where, f"leaves no option for {', '.join(sorted(problems))}, not even leaving it", f"meant so? ({told})"
        )


def _answers(material: Material, book: Book) -> None:
    """The same fix offered for the same problem by two cards, one of which holds always."""
    cards: dict[tuple[str, str], list[tuple[str, Answer]]] = {}
    for id, card in material.of(Answer):
        cards.setdefault((card.problem, card.fix), []).append((id, card))
    for (problem, fix), group in sorted(cards.items()):
        for (one, first), (other, second) in combinations(group, 2):
            same_place = not first.role or not second.role or first.role == second.role
            if same_place and (not first.when or not second.when):
                hint = "keep one of them, or give both conditions that exclude each other"
                hint += f"; the other is {material.where(other)}"
                book.error(material.where(one), f"offers {fix} for '{problem}', and so does {other}", hint)


def _twice(material: Material, book: Book, trials: Trials) -> None:
    for rules, told in sorted({**trials.spoiled.twice, **trials.noted.twice}.items()):
        first, *others = rules
        if isinstance(material.rules[first], Find):
            what = f"finds what {' and '.join(others)} finds too, at the same place"
            book.note(material.where(first), what, f"she hears only the first; keep one ({told})")
        else:
            what = f"offers what {' and '.join(others)} offers too, at the same time"
            book.error(material.where(first), what, f"let their conditions exclude each other ({told})")
    for rule, told in sorted({**trials.spoiled.revoked, **trials.noted.revoked}.items()):
        book.error(
            material.where(rule),
            "fires and then takes it back",
            f"an unless() looks at what its own layer concludes ({told})",
        )
