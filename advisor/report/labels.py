"""Numbers for findings and letters for options, so that a person can point at one without an id.

Finding 2, its third option: `2c`. The order is that of the advice, so a label means the same on every screen.
"""

from string import ascii_lowercase

from advisor.core.advice import Advice
from advisor.core.work import Finding, Option
from advisor.errors import UsageError, nearest


def finding_label(advice: Advice, finding: Finding) -> str:
    """ "1" for the first finding, and so on."""
    return str([f.id for f in advice.findings].index(finding.id) + 1)


def option_label(advice: Advice, option: Option) -> str:
    """ "1a" for the first option of the first finding."""
    finding = next(f for f in advice.findings if f.id == option.finding)
    options = [o.id for o in advice.options_for(finding.id)]
    return finding_label(advice, finding) + letter(options.index(option.id))


def letter(index: int) -> str:
    """a to z, then aa, ab and so on."""
    head, tail = divmod(index, len(ascii_lowercase))
    return (letter(head - 1) if head else "") + ascii_lowercase[tail]


def option_at(advice: Advice, finding: str, word: str) -> Option:
    """The option of one finding meant by its letter, label, title or id. UsageError names what it may be."""
    wanted, named = word.strip().casefold(), dict[str, Option]()
    options = advice.options_for(finding)
    for index, option in enumerate(options):
        for name in (option.id, option.fix, option.title, option_label(advice, option), letter(index)):
            named[name.casefold()] = option
    if wanted in named:
        return named[wanted]
    near = nearest(wanted, [option.title for option in options] + [letter(index) for index in range(len(options))])
    raise UsageError(f"there is no fix '{word}' there", hint=near or "nothing is known that would help")


def pointed_at(advice: Advice, word: str) -> Finding | Option:
    """The finding or option meant by a label, a title or an id. UsageError names the labels it may be."""
    wanted = word.strip().casefold()
    named: dict[str, Finding | Option] = {}
    titled: dict[str, list[str]] = {}
    items: tuple[Finding | Option, ...] = (*advice.findings, *advice.options)
    for item in items:
        label = finding_label(advice, item) if isinstance(item, Finding) else option_label(advice, item)
        named[label] = named[item.id.casefold()] = item
        titled.setdefault(item.title.casefold(), []).append(label)
    if wanted in named:
        return named[wanted]
    labels = titled.get(wanted, [])
    if len(labels) == 1:
        return named[labels[0]]
    if labels:
        raise UsageError(f"'{word}' may be any of {len(labels)}", hint=f"say which: {', '.join(labels)}")
    known = [name for name in (*named, *titled) if "@" not in name]
    raise UsageError(
        f"nothing here is called '{word}'", hint=nearest(wanted, known) if known else "nothing was found wrong yet"
    )
