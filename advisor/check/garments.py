"""Each garment has a case, each case comes to a plan, and each role is that of some place."""

from advisor.advise.plan import make_plan
from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.probes import of_cases
from advisor.check.trials import trials_of
from advisor.errors import AdvisorError, nearest


def check(material: Material, book: Book) -> None:
    """Garments, cases, roles."""
    told = {case.garment for case in material.read_cases.values()}
    for id in sorted(set(material.garments) - told):
        where = material.where(material.folder / "garments" / f"{id}.toml")
        book.error(where, "has no case", f'write cases/<name>.toml with garment = "{id}"')
    used = {place.role for garment in material.garments.values() for place in garment.places.values()}
    for role in sorted(set(material.roles) - used):
        where = material.where(material.folder / "roles" / f"{role}.toml")
        book.error(where, "no garment has a place of this role", "use it in a file of rules/garments, or take it out")
    _cases(material, book)


def _cases(material: Material, book: Book) -> None:
    base, plans = material.plain, trials_of(material).cases
    for name, case in sorted(material.read_cases.items()):
        for finding, choice in sorted(case.choices.items()):
            problem = finding.partition("@")[0]
            if problem not in material.problems:
                book.error(
                    f"cases/{name}",
                    f"chooses for '{problem}', which no finding finds",
                    nearest(problem, material.problems),
                )
            if choice.fix not in material.fixes:
                book.error(
                    f"cases/{name}", f"chooses '{choice.fix}', which is no fix", nearest(choice.fix, material.fixes)
                )
    for probe in of_cases(material):
        try:
            plan = plans.get(probe.told) or make_plan(base, probe.world, probe.choices, probe.limits)
        except Exception as fault:  # a fix may raise anything
            said = fault.what if isinstance(fault, AdvisorError) else f"{type(fault).__name__}: {fault}"
            book.error(probe.told, f"comes to no plan: {said}", "mend the rule or fix it began in")
            continue
        for finding in plan.advice.idle:
            book.note(
                probe.told, f"the choice for '{finding}' is idle", "nothing of that kind is found now; take it out"
            )
        if not plan.advice.findings:
            book.note(probe.told, "nothing is found", "a case should show something")
