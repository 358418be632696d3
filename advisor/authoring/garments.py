"""Frames of garments, with a case to show what is found on one."""

from collections.abc import Iterable

from advisor.authoring.naming import plain_name
from advisor.authoring.writing import Frame, Made
from advisor.check.material import Material
from advisor.errors import UsageError, nearest

CHECK = "fill in every FILL, then run `advisor rules check`"
SHOWN = 6


def new_garment(material: Material, name: str, places: Iterable[str]) -> Made:
    """The frames of a garment and of its first case. `places`: PLACE=ROLE, or a role that is its own place.

    Parts that every garment has are added. UsageError for a role there is not or a place named twice.
    """
    plain_name(name, "the name")
    if name in material.garments:
        raise UsageError(f"there is a garment '{name}'", hint=f"see rules/garments/{name}.toml")
    parts = _shared(material) | _parts(material, places)
    if not parts:
        hint = f"name its parts, such as leg=leg_end; {nearest('', material.roles)}"
        raise UsageError("a garment without any part", hint=hint)
    garment = Frame(material.folder / "garments" / f"{name}.toml", _garment(material, parts))
    case = Frame(material.cases / f"first_{name}.toml", _case(material, name, parts))
    ask = "what rules may find on it shows in `advisor rules check --notes`"
    return Made((garment, case), (CHECK, f"rename the case after who wears it; {ask}"))


def _shared(material: Material) -> dict[str, str]:
    """The parts that every garment has under the same name: the cloth, the wearer, the workroom."""
    kept: list[set[tuple[str, str]]] = [
        {(place.name, place.role) for place in garment.places.values()} for garment in material.garments.values()
    ]
    return dict(sorted(set.intersection(*kept))) if len(kept) > 1 else {}


def _parts(material: Material, places: Iterable[str]) -> dict[str, str]:
    parts: dict[str, str] = {}
    for text in places:
        place, equals, role = text.partition("=")
        place, role = plain_name(place, "the place"), role if equals else place
        if role not in material.roles:
            raise UsageError(f"no role '{role}'", hint=f"{nearest(role, material.roles)}; see rules/roles")
        if place in parts:
            raise UsageError(f"the place '{place}' is named twice", hint="give one of them another name")
        parts[place] = role
    return parts


def _garment(material: Material, parts: dict[str, str]) -> str:
    lines = ["# FILL: one line: what kind of garment, and what it has.", 'title = "FILL: what it is called"', ""]
    lines.append("[places]")
    for place, role in parts.items():
        words = _words(material, place, role)
        lines.append(f'{place} = {{ role = "{role}", words = "{words}" }}')
    lines += [
        "",
        "# FILL: what is so on this kind unless she says otherwise; take the line out if nothing is.",
        "[neutral]",
        *(f'# "{place}.slot" = "a word or a length"' for place in list(parts)[-1:]),
        "",
        "# FILL: two parts sewn to each other, and sums across parts; take these lines out if there are none.",
        "# [reckoned]",
        '# "place.measure" = ["other.measure - other.slot", "a second way to know it"]',
        "#",
        "# [[joins]]",
        '# kind = "band"',
        '# a = "place.measure"',
        '# b = "other.measure"',
    ]
    return "\n".join(lines) + "\n"


def _words(material: Material, place: str, role: str) -> str:
    """What at least two other garments call this place; else what to write."""
    known = [garment.places[place] for _, garment in sorted(material.garments.items()) if place in garment.places]
    words = [each.words for each in known if each.role == role]
    if len(words) > 1:
        return words[0]
    return f"FILL: what she calls {material.roles[role].title}, with 'the'"


def _case(material: Material, name: str, parts: dict[str, str]) -> str:
    lines = [
        "# FILL: whose wardrobe, which rail.",
        "version = 1",
        'title = "FILL: who wears it on the stage"',
        f'garment = "{name}"',
        'tape = "in"',
        'story = "FILL: one or two sentences on the garment and what is wrong with it."',
        "",
        "# FILL: answers with which something is found; take out what is not answered.",
    ]
    for place, role in parts.items():
        slots = sorted(material.roles[role].slots.items(), key=lambda item: (item[1].rank, item[0]))
        if slots:
            lines += [
                f"# [answers.{place}]",
                *(f"# {slot} = {_value(shape.kind, shape.words)}" for slot, shape in slots[:SHOWN]),
            ]
    return "\n".join(lines) + "\n"


def _value(kind: str, words: Iterable[str]) -> str:
    return " or ".join(f'"{word}"' for word in words) if kind == "word" else '{ value = "1 in", how = "measured" }'
