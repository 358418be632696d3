"""Hostile texts for every test that puts a text on a screen, in a list, an error, a log or an export.

`sequences()`: what a terminal would obey, built from the grammar of ECMA-48, 5th edition (1991): control
sequences, control strings and single controls (clauses 5.3 to 5.6 and 8.3, numbers from memory).
`markup_strings()`: what a markup parser of a screen library would take for tags. `file_names()`: names that
would leave the folder or mean a device. All are in a fixed order, without repeats.
"""

ESC, BEL = "\x1b", "\x07"
C0 = [chr(code) for code in range(0x20)] + ["\x7f"]
C1 = [chr(code) for code in range(0x80, 0xA0)]

# Bidi_Control: the twelve characters of UAX #9, sections 2.1 to 2.6 (section numbers from memory).
BIDI = [chr(code) for code in (0x061C, 0x200E, 0x200F, *range(0x202A, 0x202F), *range(0x2066, 0x206A))]
SEPARATORS = ["\u2028", "\u2029"]
NO_WIDTH = [chr(code) for code in (0xAD, 0x180E, 0x200B, 0x200C, 0x200D, 0x2060, 0x2061, 0x2064, 0xFEFF, 0xFFF9)]
TAGS = [chr(code) for code in (0xE0001, 0xE0020, 0xE0041, 0xE007F)]
SURROGATES = ["\ud800", "\udbff", "\udc1b", "\udc9b", "\udfff"]

# Each introducer in its 7-bit form and in its 8-bit form (ECMA-48).
CSI = ESC + "[", "\x9b"
OSC = ESC + "]", "\x9d"
DCS = ESC + "P", "\x90"
SOS = ESC + "X", "\x98"
PM = ESC + "^", "\x9e"
APC = ESC + "_", "\x9f"
# A string ends at ST in either form; terminals also take BEL, and break off at CAN, SUB or a bare ESC.
ENDS = ESC + "\\", "\x9c", BEL, "\x18", "\x1a", ESC, ""

# What is known to have been abused, by the CVE record each is in (from memory), and other common bodies.
_OSC_BODIES = (
    "0;hem",  # the title; CVE-2003-0063 puts it back on the command line
    "1;hem",
    "2;hem",
    "4;1;?",
    "7;file:///etc/passwd",
    "8;;http://127.0.0.1/",
    "9;hem",
    "10;?",
    "11;#000000",
    "50;hem",  # CVE-2022-45063 answers with the name of the font
    "52;c;aGVt",
    "104",
    "133;A",
    "777;notify;hem;hem",
)
_DCS_BODIES = (
    "$q\nhem\n",
    "$qm",
    "+q544e",
    "q#0;2;0;0;0",
    "1$r0m",
    "0|17/hem",
    "tmux;hem",
)  # CVE-2008-2383: DECRQSS
_CSI_PARAMETERS = (
    "",
    "0",
    "2",
    "21",
    "1;31",
    "?25",
    "?1049",
    "8;999;999",
    "38;2;1;2;3",
)  # 21 t: CVE-2006-7236
_STRING_BODIES = ("hem", "Gf=24;AAAA", "1;2;3")


def sequences() -> list[str]:
    """Well over 300 texts that a terminal would obey, reorder or swallow; each holds something refused."""
    found = [
        *_controls(),
        *_short_escapes(),
        *_control_sequences(),
        *_control_strings(),
        *_broken(),
        *_invisible(),
    ]
    return list(dict.fromkeys(found))


def _controls() -> list[str]:
    return [f"hem{char}line" for char in [*C0, *C1] if char not in "\n\t"]


def _short_escapes() -> list[str]:
    finals = [ESC + chr(code) for code in range(0x30, 0x7F)]
    return [*finals, *[f"{ESC}{middle}{final}" for middle in " #%()*+" for final in "08@BFG"]]


def _control_sequences() -> list[str]:
    finals = [chr(code) for code in range(0x40, 0x7F)]
    plain = [f"hem{start}2{final}" for start in CSI for final in finals]
    some = [f"{start}{given}{final}hem" for start in CSI for given in _CSI_PARAMETERS for final in "AHJKhlmnpqrtu"]
    return plain + some + [f"{CSI[0]}{middle}{final}" for middle in "!\"$' " for final in "pqrvwz{|}~"]


def _control_strings() -> list[str]:
    bodies = [(OSC, _OSC_BODIES), (DCS, _DCS_BODIES), (SOS, _STRING_BODIES), (PM, _STRING_BODIES)]
    bodies.append((APC, _STRING_BODIES))
    return [
        f"hem{start}{body}{end}line" for starts, texts in bodies for start in starts for body in texts for end in ENDS
    ]


def _broken() -> list[str]:
    """Unterminated, split by other characters, nested in each other, very long."""
    splitters = ["\n", "\t", " ", "\u200b", "\u202e", "\x00", "\x7f", "\u0301", "\ufffd"]
    split = [f"{ESC}{char}[31mhem" for char in splitters] + [f"{ESC}]52;{char}c;aGVt{BEL}" for char in splitters]
    nested = [
        f"{outer}{inner}0;hem{end}{end}"
        for outer in (OSC[0], DCS[0], APC[0], OSC[1], DCS[1])
        for inner in (CSI[0], OSC[0], DCS[1], PM[0])
        for end in (ESC + "\\", BEL)
    ]
    doubled = [
        ESC * 2 + "[2J",
        ESC * 50,
        f"{ESC}[{ESC}[31m",
        f"{ESC}{ESC}\\",
        "\x9b\x9b2J",
        "\xc2\x9b31mhem",
    ]
    long = [
        CSI[0] + "1;" * 500 + "m",
        OSC[0] + "2;" + "x" * 5000,
        DCS[1] + "q" + "~" * 2000,
        ESC + "[" + "9" * 400 + "C",
    ]
    return split + nested + doubled + long


def _invisible() -> list[str]:
    odd = [*BIDI, *SEPARATORS, *NO_WIDTH, *TAGS, *SURROGATES]
    reordered = [f"{start}hem{ESC}[0m line{end}" for start in BIDI for end in ("\u202c", "\u2069")]
    piled = ["e" + "\u0301" * count for count in (5, 50, 5000)] + ["\u1100" + "\u1161" * 50]
    return [f"hem{char}line" for char in odd] + [char * 3 for char in odd] + reordered + piled


def markup_strings() -> list[str]:
    """Over 50 texts that a parser of square-bracket markup could choke on or obey. All are clean text."""
    tags = [
        "b",
        "/b",
        "/",
        "",
        " ",
        "/x",
        "red",
        "bold red on blue",
        "#ff0000",
        "not a style",
        "link=hem",
        "@click",
        "$accent",
    ]
    alone = [f"[{tag}]" for tag in tags] + [f"hem [{tag}] line" for tag in tags]
    clicks = [
        "[@click=app.quit]x[/]",
        "[@click=app.bell()]x[/]",
        "[@click=screen.dismiss('x')]x[/]",
        "[@click=]x[/]",
        "[@click=app.no_such_action]x[/]",
        "[link=http://127.0.0.1/]x[/link]",
        "[on red]x[/on red]",
        "[b][i]x[/b][/i]",
    ]
    notes = [
        "hem [/2 in] down",
        "waist [1/2 in] in",
        "[3] buttons",
        "[x] done",
        "a[0] = b[1]",
        "5/8 in [see note]",
    ]
    broken = [
        "[",
        "]",
        "[[",
        "]]",
        "[]",
        "[[]]",
        "[/",
        "[b",
        "b]",
        "[b[",
        "\\[b]",
        "\\",
        "[b\\]",
        "\\\\[/x]",
        "[/x][/y][/z]",
    ]
    others = [
        "{0}",
        "{hem!r}",
        "%s%n",
        "${HOME}",
        "<b>hem</b>",
        "&amp;",
        "`id`",
        ":smile:",
        "**hem**",
        "~hem~",
        "|hem|",
    ]
    long = ["[" * 1000, "[b]" * 500, "[/]" * 500, "[@click=a(" + "(" * 200, "[red" + " red" * 500 + "]"]
    return list(dict.fromkeys([*alone, *clicks, *notes, *broken, *others, *long]))


def file_names() -> list[str]:
    """Well over 200 names that would leave the folder, hide, mean a device, run as an option, or not fit."""
    targets = ["etc/passwd", "outside.toml", "decoy/inner.toml", "x"]
    climbs = [
        "../",
        "../../",
        "..\\",
        "..\\..\\",
        "/",
        "//",
        "~/",
        "./../",
        "a/../../",
        "%2e%2e/",
        "..;/",
        "....//",
        "C:\\",
        "\\\\?\\",
    ]
    climbing = [climb + target for climb in climbs for target in targets]
    dots = [
        ".",
        "..",
        "...",
        ". .",
        ".hidden",
        "..hidden",
        "hem.",
        "hem..",
        " .",
        ". ",
        "-",
        "--",
        "-rf",
        "--help",
        "-o hem",
    ]
    devices = [f"{port}{digit}" for port in ("COM", "LPT", "com", "lpt") for digit in "0123456789\u00b9\u00b2\u00b3"]
    devices += [
        "CON",
        "PRN",
        "AUX",
        "NUL",
        "con",
        "nul.txt",
        "CON.toml",
        "aux.",
        "CONIN$",
        "CONOUT$",
        "CLOCK$",
        "prn:",
    ]
    shell = [f"hem{char}line" for char in "*?\"<>|:;&$`'!(){}[]#%^=+,@~\\"] + [
        "$(id)",
        "`id`",
        "%PATH%",
        "a;id",
        "a&&id",
    ]
    long = ["a" * length for length in (80, 81, 255, 256, 400, 5000)] + [
        "\u00e9" * 200,
        "\U0001f9f5" * 100,
        "/" * 300,
        "." * 300,
    ]
    blank = ["", " ", "\t", "\n", "   \n ", "\u00a0", "\u3000"]
    scripts = [
        "\u041f\u043b\u0430\u0442\u044c\u0435",
        "\u5916\u5957",
        "\u0645\u0639\u0637\u0641",
        "Fa\u00e7on \u00e9l\u00e9gante",
        "Stra\u00dfe",
    ]
    scripts += ["\u0130\u0131", "\ufb01n", "\u2460", "\u216b", "\u1e9e"]
    odd = [f"hem{char}line" for char in [*C0, *BIDI, *SURROGATES]] + ["\x00", "../\x00", "\x00/etc/passwd"]
    return list(dict.fromkeys([*climbing, *dots, *devices, *shell, *long, *blank, *scripts, *odd]))
