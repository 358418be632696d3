"""What can be seen on paper: files, words, vocabulary. Each test breaks one thing and reads the exact message."""

from tests.check.mini import FIND, VETO, Mini


def test_a_file_that_cannot_be_read_hides_nothing_else(mini: Mini) -> None:
    mini.change(VETO, "rule = Veto(", "rule = Veto((")
    mini.change(FIND, "below it.", "bellow its center_back.")
    told = mini.errors()
    assert any(
        line.startswith(f"{VETO}:5: cannot be loaded: SyntaxError") and line.endswith("mend the file") for line in told
    )
    assert f"{FIND}:9: why holds the code word 'center_back'; say it as one says it in the sewing room" in told


def test_a_name_that_does_not_exist_is_told_with_its_line(mini: Mini) -> None:
    mini.change(FIND, "MATCH, Find", "MATCHES, Find")
    assert any(line.startswith(f"{FIND}:3: cannot be loaded: ImportError") for line in mini.errors())


def test_one_file_holds_one_card(mini: Mini) -> None:
    mini.change(FIND, "rule = Find(", "other = rule = Find(")
    assert (
        f"{FIND}: holds a Find called 'other' and a Find called 'rule' where one Find called 'rule' belongs; "
        "a file in findings/ says `rule = Find(...)` once, and nothing else"
    ) in mini.errors()


def test_a_card_of_the_wrong_kind_is_refused(mini: Mini) -> None:
    mini.copy(VETO, "rules/length/answers/thin.py")
    assert (
        "rules/length/answers/thin.py: holds a Veto called 'rule' where one Answer called 'rule' belongs; "
        "a file in answers/ says `rule = Answer(...)` once, and nothing else"
    ) in mini.errors()


def test_a_file_in_the_wrong_folder_is_told(mini: Mini) -> None:
    mini.copy(VETO, "rules/length/veto/thin.py")
    assert mini.errors() == [
        "rules/length/veto/thin.py: lies where no card belongs; rules/<topic>/<kind>/<name>.py; did you mean 'vetoes'?"
    ]


def test_words_of_the_vocabulary_are_read_too(mini: Mini) -> None:
    mini.change("rules/roles/lining.toml", "How does {place} hang?", "How does {place} hang at center_back?")
    assert mini.errors() == [
        "rules/roles/lining.toml: slots.fits holds the code word 'center_back'; "
        "say it as one says it in the sewing room"
    ]


def test_a_source_nobody_names_is_a_note(mini: Mini) -> None:
    mini.write("rules/sources.toml", '[MADE-UP]\ntitle = "A page made up for this test"\nseen = "whole"\n')
    assert mini.errors() == []
    assert mini.notes() == ["rules/sources.toml: 1 sources no value names; MADE-UP"]
    mini.change(FIND, '"common-practice"', '"MADE-UP"')
    assert mini.notes() == []


def test_a_test_compares_with_words_that_can_be(mini: Mini) -> None:
    mini.change(
        VETO,
        'word="thin", place=MATCH.cloth)),)',
        'word=MATCH.word)), such_that("it is thin", lambda word: word in ("thin", "worn")))',
    )
    mini.change(VETO, "problem, trait", "problem, such_that, trait")
    assert (
        f"{VETO}:10: condition 'it is thin': nothing it looks at is ever 'worn'; known here: firm, thin"
        in mini.errors()
    )


def test_every_problem_is_answered_and_every_fix_offered(mini: Mini) -> None:
    mini.remove("rules/length/answers/leave_short.py", "rules/length/answers/sew_open.py")
    told = mini.errors()
    assert (
        "rules/length/findings/hem_open.py:7: no answer card answers 'hem_open'; write "
        'rules/<topic>/answers/<name>.py with problem="hem_open", if only for general.fixes.leave'
    ) in told
    assert any(
        line.startswith("rules/length/findings/lining_short.py:7: no answer card answers 'lining_short'")
        for line in told
    )
    assert (
        "rules/length/fixes/sew.py: no answer card offers this fix; "
        'write rules/<topic>/answers/<name>.py with fix="length.fixes.sew"'
    ) in told


def test_an_answer_for_another_role_than_the_finding_has(mini: Mini) -> None:
    mini.write(
        "rules/roles/yoke.toml",
        'title = "a yoke"\n[states.seam]\nstart = "sewn"\nwords = ["sewn"]\nmeaning = "its seam"\n',
    )
    path = "rules/length/answers/leave_long.py"
    mini.change(path, "    fix=", '    role="yoke",\n    fix=')
    assert f"{path}:8: 'lining_long' is never found at a 'yoke'; known here: lining" in mini.errors()
