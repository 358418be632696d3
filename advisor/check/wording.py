"""What a person reads is plain American English without code words, and says where it comes from."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import advisor
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.errors import nearest
from advisor.figures import FORMULAS, TABLES
from advisor.knowledge.cards import Answer, Card
from advisor.knowledge.fix import Fix
from advisor.rulebase.sources import MARKS
from advisor.words import names_in

LONGEST = {
    "title": 60, "why": 420, "wrong_when": 320, "says": 260, "caution": 180,
    "condition": 110, "example": 110, "near miss": 110,
}  # fmt: skip
SENTENCES = {"why", "wrong_when", "says", "caution"}
PROGRAM = Path(advisor.__file__).parent
CARD_MARKS = sorted(set(MARKS) - {"case"})
# British spellings a sewing text is likely to hold, with the American ones; common knowledge, no source.
AMERICAN = {
    "centre": "center", "colour": "color", "grey": "gray", "metre": "meter", "millimetre": "millimeter",
    "centimetre": "centimeter", "mould": "mold", "mouldy": "moldy", "favour": "favor", "neighbour": "neighbor",
    "fibre": "fiber", "labour": "labor", "labelled": "labeled", "travelled": "traveled", "jewellery": "jewelry",
    "programme": "program", "behaviour": "behavior", "odour": "odor", "vapour": "vapor", "practise": "practice",
    "analyse": "analyze", "recognise": "recognize", "realise": "realize", "organise": "organize", "whilst": "while",
    "plough": "plow", "tyre": "tire", "cosy": "cozy", "levelled": "leveled", "levelling": "leveling",
    "unravelled": "unraveled", "bevelled": "beveled", "stabilise": "stabilize", "stabiliser": "stabilizer",
    "neutralise": "neutralize", "minimise": "minimize", "aluminium": "aluminum", "sulphur": "sulfur", "storey": "story",
}  # fmt: skip
_BRITISH = re.compile(rf"\b({'|'.join(AMERICAN)})(s|d|ed|ing)?\b", re.IGNORECASE)
_CODE = re.compile(r"\b[A-Za-z0-9]+(?:_[A-Za-z0-9]+)+\b|\b[a-z]{2,}(?:\.[a-z_]{2,})+\b")
_AFTER = re.compile(r"^    (?!near=)\w+=|^\w", re.MULTILINE)
_INCHES = re.compile(r"\d/\d+\"|\d[ -]inch")


def check(material: Material, book: Book) -> None:
    """Texts, sources and plain speech of every card; then of roles and garments."""
    for id, card in material.cards():
        for field, text, keyword in texts_of(card):
            for what, hint in text_faults(field, text):
                book.error(material.where(id), f"{field} {what}", hint, material.line(id, text, keyword))
        _source(material, book, id, card.source)
        if _may_name_places(material, id):
            _places(material, book, material.where(id), material.tree(id))
        if isinstance(card, Fix):
            _fix(material, book, id, card)
    _vocabulary(material, book)
    _figures(material, book)
    _operations(material, book)
    _unused(material, book)


def texts_of(card: Card | Fix) -> Iterator[tuple[str, str, str]]:
    """(kind of text, text, argument it stands in) for all that a person may read of a card."""
    yield "title", card.title, "title"
    yield "why", card.why, "why"
    if isinstance(card, Fix):
        yield "wrong_when", card.wrong_when, "wrong_when"
        yield from (("caution", caution, "cautions") for caution in card.cautions)
        return
    if not isinstance(card, Answer) or card.says:
        yield "says", card.says, "says"
    yield from (("condition", condition.words, "when") for condition in card.when)
    yield from (("example", example.words, "fires") for example in card.fires)
    yield from (("near miss", near.words, "near") for near in card.near)


def text_faults(field: str, text: str) -> Iterator[tuple[str, str]]:
    """What is wrong with one text of a card, and what to do."""
    if not isinstance(text, str) or not text.strip():
        yield "is empty", "write it"
        return
    if len(text) > LONGEST[field]:
        yield f"has {len(text)} characters, more than {LONGEST[field]}", "say it shorter"
    if field in SENTENCES:
        if text.rstrip()[-1:] not in (".", "?", "!"):
            yield "is no full sentence", "end it with a period"
        if not (text[:1].isupper() or text[:1] in "{0123456789"):
            yield "is no full sentence", "begin it with a capital"
        if field == "why" and len(text.split()) < 5:
            yield "is no full sentence", "say why in five words or more"
    elif text.endswith("."):
        yield "ends with a period", "leave the period out: it is a heading, not a sentence"
    yield from sentence_faults(text, field == "says")


def sentence_faults(text: str, braces: bool = False) -> Iterator[tuple[str, str]]:
    """Code words, British spelling and odd inches in something a person reads; {names} only with `braces`."""
    try:
        names = names_in(text)
    except ValueError:
        yield "has a brace that does not close", "write {name}, or no brace"
        return
    if names and not braces:
        yield f"holds '{{{names[0]}}}', which nothing fills in", "only says may hold {names}; write it out"
    plain = re.sub(r"\{[^}]*\}", "", text)
    for found in _CODE.findall(plain):
        yield f"holds the code word '{found}'", "say it as one says it in the sewing room"
    for word, ending in _BRITISH.findall(plain):
        yield f"says '{word}{ending}'", f"American spelling: '{AMERICAN[word.lower()]}'"
    if _INCHES.search(plain):
        yield "writes inches another way", "write 1 1/2 in"


def _source(material: Material, book: Book, id: str, key: str) -> None:
    if key not in material.sources and key not in CARD_MARKS:
        hint = f"{nearest(key, [*material.sources, *CARD_MARKS])} (rules/sources.toml, or {' or '.join(CARD_MARKS)})"
        book.error(material.where(id), f"no source '{key}'", hint, material.line(id, key, "source"))


def _may_name_places(material: Material, id: str) -> bool:
    """Whether a place or garment stands in the text of a card before its examples, or the examples do not stand last.

    To parse every card takes longer than all else in this check; most of them need not be.
    """
    before, _, examples = material.text(material.files[id]).partition("\n    fires=")
    return bool(material.places_named.search(before) or _AFTER.search(examples))


def _places(material: Material, book: Book, where: str, tree: ast.Module) -> None:
    """A garment or one of its places by name anywhere but in an example."""
    names = {name for garment in material.garments.values() for name in garment.places}
    for node in _outside_examples(tree):
        if not isinstance(node, ast.Constant) or not isinstance(node.value, str):
            continue
        place, dot, slot = node.value.partition(".")
        if dot and place in names and re.fullmatch(r"\w*", slot):
            hint = 'a rule speaks of roles: view.one("role"), MATCH.place or trouble.place'
            book.error(where, f"names the place '{place}'", hint, node.lineno)
        for garment in material.garments:
            if "_" in garment and garment in node.value and re.search(rf"\b{garment}\b", node.value):
                book.error(where, f"names the garment '{garment}'", "a rule speaks of roles", node.lineno)


def _outside_examples(tree: ast.AST) -> Iterator[ast.AST]:
    left = [tree]
    while left:
        node = left.pop()
        yield node
        left += [
            each
            for each in ast.iter_child_nodes(node)
            if not (isinstance(each, ast.keyword) and each.arg in ("fires", "near"))
        ]


def _fix(material: Material, book: Book, id: str, fix: Fix) -> None:
    for axis in ("difficulty", "durability", "visibility"):
        grade = getattr(fix, axis)
        if type(grade) is not int or not 1 <= grade <= 5:
            hint = "a whole number from 1 to 5, as in rules/grades.toml"
            book.error(material.where(id), f"{axis} is {grade!r}", hint, material.line(id, keyword=axis))
    if len(fix.cautions) > 3:
        book.error(
            material.where(id),
            f"has {len(fix.cautions)} cautions",
            "keep the three that matter most",
            material.line(id, keyword="cautions"),
        )


def _vocabulary(material: Material, book: Book) -> None:
    for name, role in sorted(material.roles.items()):
        where = material.where(material.folder / "roles" / f"{name}.toml")
        for slot, entry in sorted(role.slots.items()):
            for text in (entry.name, entry.ask, entry.help, entry.alone, *entry.words.values()):
                for what, hint in sentence_faults(text.replace("{place}", "")):
                    book.error(where, f"slots.{slot} {what}", hint)
        meanings = [(slot, state.meaning) for slot, state in role.states.items()]
        meanings += [(slot, measure.meaning) for slot, measure in role.measures.items()]
        for slot, meaning in sorted(meanings):
            for what, hint in sentence_faults(meaning):
                book.error(where, f"{slot} {what}", hint)
    for id, garment in sorted(material.garments.items()):
        where = material.where(material.folder / "garments" / f"{id}.toml")
        for text in (garment.title, *(place.words for place in garment.places.values())):
            for what, hint in sentence_faults(text):
                book.error(where, f"'{text}' {what}", hint)


def _figures(material: Material, book: Book) -> None:
    """Formulas and tables tell their words and sources too."""
    if not material.shipped:
        return
    sources = {*material.sources, *CARD_MARKS}
    for id, formula in sorted(FORMULAS.items()):
        for what, hint in sentence_faults(formula.words, braces=True):
            book.error("advisor/figures", f"the words of the formula {id} {what}", hint)
        if formula.source not in sources:
            book.error("advisor/figures", f"{id}: no source '{formula.source}'", nearest(formula.source, sources))
    for name, table in sorted(TABLES.items()):
        for key in sorted({row.source for rows in table.rows.values() for row in rows} - sources):
            book.error("advisor/figures", f"table {name}: no source '{key}'", nearest(key, sources))


def _operations(material: Material, book: Book) -> None:
    """Operations speak of roles, as rules do."""
    for path in sorted((PROGRAM / "operations").glob("*.py")) if material.shipped else ():
        _places(material, book, f"advisor/operations/{path.name}", ast.parse(path.read_text(encoding="utf-8")))


def _unused(material: Material, book: Book) -> None:
    if not material.sources:
        return
    files = [*material.folder.rglob("*.py"), *(material.folder / "garments").glob("*.toml"), *PROGRAM.rglob("*.py")]
    written = {key for path in files for key in re.findall(r'"([^"\s]+)"', material.text(path))}
    unused = sorted(set(material.sources) - written)
    if unused:
        hint = ", ".join(unused[:6]) + (", ..." if len(unused) > 6 else "")
        book.note(material.where(material.folder / "sources.toml"), f"{len(unused)} sources no value names", hint)
