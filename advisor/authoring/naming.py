"""Names of new files of the rule base."""

import re
from collections.abc import Iterable
from keyword import iskeyword

from advisor.errors import UsageError, nearest
from advisor.rulebase.load import KINDS, NOT_TOPICS

LONGEST = 40
_NAME = re.compile(r"[a-z][a-z0-9]*(?:_[a-z0-9]+)*")


def plain_name(text: str, what: str) -> str:
    """`text` if it can be the name of a file: a-z, 0-9 and single underscores. UsageError says how to write it."""
    wrong = ""
    if not _NAME.fullmatch(text):
        wrong = "is no name"
    elif iskeyword(text):
        wrong = "is a word of Python"
    elif len(text) > LONGEST:
        wrong = f"is longer than {LONGEST} letters"
    if not wrong:
        return text
    better = "_".join(re.findall(r"[a-z0-9]+", text.casefold()))[:LONGEST].strip("_")
    hint = "small letters, digits and single underscores, a letter first"
    if _NAME.fullmatch(better) and not iskeyword(better) and better != text:
        hint += f": '{better}'"
    raise UsageError(f"{what} '{text}' {wrong}", hint=hint)


def card_name(text: str, topics: Iterable[str], new_topic: bool = False) -> tuple[str, str]:
    """Topic and name out of `waist.seam_tight`. UsageError for a topic there is not, unless it is meant to be new."""
    topic, dot, name = text.strip().replace("/", ".").partition(".")
    known = sorted(topics)
    if not dot:
        hint = f"write topic and name with a dot between, such as {known[0] if known else 'waist'}.{text}"
        raise UsageError(f"'{text}' names no topic", hint=f"{hint}; {nearest('', known)}")
    plain_name(topic, "the topic")
    plain_name(name, "the name")
    if topic in {*KINDS, *NOT_TOPICS}:
        raise UsageError(f"'{topic}' cannot be a topic", hint="it is a folder of another kind; choose another word")
    if topic not in known and not new_topic:
        raise UsageError(f"no topic '{topic}'", hint=f"{nearest(topic, known)}; --new-topic begins one")
    return topic, name
