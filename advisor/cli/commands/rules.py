"""`advisor rules`: the rule base as a person reads it, as software that is checked, and as files that are written."""

from typing import TYPE_CHECKING

import click

from advisor.cli.commands._rules_matrix import matrix_command
from advisor.cli.shared import as_json_option, print_json, print_lines

if TYPE_CHECKING:
    from advisor.authoring.writing import Made
    from advisor.check.material import Material


@click.group()
def command() -> None:
    """The rules behind the advice: list them, explain one, check them all, write new ones."""


command.add_command(matrix_command)


@command.command("list")
@click.option("--topic", default="", help="Only this topic: a folder of rules/, such as waist.")
@as_json_option
def list_command(topic: str, as_json: bool) -> None:
    """Every rule and fix with its title, by topic."""
    from advisor.report.rules import list_data, list_lines
    from advisor.rulebase.base import the_base

    base = the_base()
    if as_json:
        print_json(list_data(base, topic))
    else:
        print_lines(list_lines(base, topic))


@command.command("explain")
@click.argument("rule", metavar="ID")
@as_json_option
def explain_command(rule: str, as_json: bool) -> None:
    """What the rule or fix ID says, why, when, and on whose word. Its last part alone will do."""
    from advisor.report.explain import explain_data, explain_lines
    from advisor.report.rules import card_meant
    from advisor.rulebase.base import the_base

    base = the_base()
    id = card_meant(base, rule)
    if as_json:
        print_json(explain_data(base, id))
    else:
        print_lines(explain_lines(base, id))


@command.command("check")
@click.option("--times", is_flag=True, help="Print how long each check took.")
@click.option("--notes", is_flag=True, help="Print every note, not only the first.")
@as_json_option
def check_command(times: bool, notes: bool, as_json: bool) -> None:
    """Check the whole rule base. Exit code 1 if anything must be mended, 0 if there are only notes."""
    from advisor.check.run import run_checks
    from advisor.check.told import report_data, report_lines
    from advisor.rulebase.locate import rules_folder

    report = run_checks(rules_folder())
    if as_json:
        print_json(report_data(report))
    else:
        print_lines(report_lines(report, times, notes))
    if report.errors:
        raise click.exceptions.Exit(1)


@command.command("docs")
@click.option("--check", is_flag=True, help="Write nothing; exit code 1 if the page is not what the rules say.")
def docs_command(check: bool) -> None:
    """Write rules/README.md, which tells all rules to a reader who does not program."""
    from advisor.authoring.docs import NAME, page
    from advisor.authoring.writing import checkout, refuse_frames, write_page
    from advisor.errors import KnowledgeError
    from advisor.ground import read_text
    from advisor.rulebase.base import the_base

    base = the_base()
    path = checkout(base.folder) / NAME
    refuse_frames(base.folder)
    text = page(base)
    old = read_text(path, error=KnowledgeError)[0] if path.exists() else ""
    if old == text:
        print_lines([f"rules/{NAME} says what the rules say."])
    elif check:
        hint = "run `advisor rules docs` and look at what changed"
        raise KnowledgeError("does not say what the rules say", where=f"rules/{NAME}", hint=hint)
    else:
        write_page(path, text)
        print_lines([f"rules/{NAME} is written anew."])


new_topic_option = click.option("--new-topic", is_flag=True, help="The topic is a new one.")


@command.group("new")
def new_command() -> None:
    """Write the frame of something new. Every FILL in it says what to write there."""


@new_command.command("rule")
@click.argument("name", metavar="TOPIC.NAME")
@click.option("--problem", default="", help="What it finds, if not called after the rule.")
@click.option(
    "--reads", type=click.Choice(["state", "join", "lengths"]), default="state", help="What a finding looks at."
)
@click.option("--answers", default="", metavar="PROBLEM", help="It offers a fix for this problem, --with which.")
@click.option("--with", "fix", default="", metavar="FIX", help="The fix it offers.")
@click.option("--rules-out", default="", metavar="FIX", help="It rules out this fix.")
@new_topic_option
def new_rule(name: str, problem: str, reads: str, answers: str, fix: str, rules_out: str, new_topic: bool) -> None:
    """A rule that finds something; with --answers one that offers a fix; with --rules-out one that forbids it."""
    from advisor.authoring.cards import new_answer, new_finding, new_veto
    from advisor.errors import UsageError

    if sum(map(bool, (problem, answers or fix, rules_out))) > 1:
        hint = "one of --problem, --answers with --with, --rules-out"
        raise UsageError("a rule finds, answers or rules out; one of them", hint=hint)
    if fix and not answers:
        raise UsageError(f"'{fix}' answers nothing", hint="say what with --answers PROBLEM")
    here = _material()
    if rules_out:
        _write(new_veto(here, name, rules_out, new_topic))
    elif answers:
        _write(new_answer(here, name, answers, fix, new_topic))
    else:
        _write(new_finding(here, name, problem, reads, new_topic))


@new_command.command("fix")
@click.argument("name", metavar="TOPIC.NAME")
@click.option("--answers", default="", metavar="PROBLEM", help="The problem it is a fix for.")
@new_topic_option
def new_fix_command(name: str, answers: str, new_topic: bool) -> None:
    """A fix, and the rule that offers it."""
    from advisor.authoring.cards import new_fix

    _write(new_fix(_material(), name, answers, new_topic))


@new_command.command("garment")
@click.argument("name")
@click.argument("places", nargs=-1, metavar="PLACE=ROLE...")
def new_garment_command(name: str, places: tuple[str, ...]) -> None:
    """A kind of garment with these parts, and a case of one. The cloth, the wearer and the workroom are put in."""
    from advisor.authoring.garments import new_garment

    _write(new_garment(_material(), name, places))


@new_command.command("question")
@click.argument("role")
@click.argument("name")
@click.option("--kind", type=click.Choice(["word", "length", "pinch"]), default="word", help="What the answer is.")
def new_question_command(role: str, name: str, kind: str) -> None:
    """A question about every part of ROLE, put into the role's file."""
    from advisor.authoring.questions import add_question
    from advisor.authoring.writing import checkout, told
    from advisor.rulebase.locate import rules_folder

    path, steps = add_question(checkout(rules_folder()), role, name, kind)
    print_lines([f"Put into {told(path)}.", "", "Next:", *(f"- {step}" for step in steps)])


def _material() -> "Material":
    from advisor.authoring.writing import checkout, material_of
    from advisor.rulebase.locate import rules_folder

    return material_of(checkout(rules_folder()))


def _write(made: "Made") -> None:
    from advisor.authoring.writing import told, write

    write(made)
    print_lines([*(f"Written: {told(frame.path)}" for frame in made.frames), "", "Next:"])
    print_lines(f"- {step}" for step in made.next)
