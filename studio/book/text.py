"""The text of a book: from bytes to characters, and the few ways in which its words are compared and shown."""

import re
import unicodedata
from collections.abc import Sequence

from django.utils.translation import gettext as _
from django.utils.translation import gettext_lazy, ngettext

from studio.book.rows import BadRow

SHOWN = 60
LISTED = 8  # rows named in a remark

# C0 and C1 controls, the line and paragraph separators, and the marks that turn the direction of writing round.
CONTROL = re.compile("[\x00-\x1f\x7f-\x9f\u2028-\u202e\u2066-\u2069]")
# Marks of no width that copying from a web page leaves behind.
NO_WIDTH = "\u200b\u2060\ufeff"

# First bytes of what people choose by mistake, a name for it, and the cure.
_UTF16 = gettext_lazy('text as UTF-16: save it again as "CSV UTF-8"')
_OTHER_FILES = (
    (
        b"PK\x03\x04",
        "zip",
        gettext_lazy(
            "a zipped file such as an xlsx or ods spreadsheet: save it from the spreadsheet as "
            '"CSV UTF-8" and choose that file'
        ),
    ),
    (
        b"\xd0\xcf\x11\xe0",
        "xls",
        gettext_lazy('an old spreadsheet file: save it from the spreadsheet as "CSV UTF-8" and choose that file'),
    ),
    (b"%PDF", "PDF", gettext_lazy("a printed page: export what it shows as CSV or iCalendar")),
    (b"\x1f\x8b", "gzip", gettext_lazy("a packed file: unpack it and choose the file inside")),
    (b"\xff\xfe", "UTF-16", _UTF16),
    (b"\xfe\xff", "UTF-16", _UTF16),
)
# Names do not hold these: where they come out, the file was not written as Windows-1252 but, say, on an old Mac.
_ODD_IN_1252 = re.compile("[‚ƒ„†‡ˆ‰‹›•˜™¤¦§¨©¬®¯±²³µ¶¸¹»¼½¾×÷]|[a-zß-ÿ][ŠŽŸŒ]|[A-Za-zÀ-ÿ][—–][a-z]")
_UTF8_SEQUENCE = re.compile(rb"[\xc3-\xf4][\x80-\xbf]+")


class Refused(ValueError):
    """A cell that cannot be used; the message is a sentence with the value, what is wrong and the cure."""


class Unreadable(Exception):
    """A file that cannot be read at all; ``bad`` says why, in place of any row."""

    def __init__(self, field: str, value: str, problem: str, *, row: int = 1) -> None:
        super().__init__(problem)
        self.bad = BadRow(row, field, shown(value), problem)


def decode(data: bytes) -> tuple[str, str]:
    """Return the text of a file, without byte order mark, and a note about its encoding (``""`` for UTF-8).

    Raises :class:`Unreadable` for what is empty, is no text, or is in an encoding that cannot be told.
    """
    if not data.strip():
        raise Unreadable("file", "", _("The file is empty: export it again and check that it has rows."))
    for start, name, rest in _OTHER_FILES:
        if data.startswith(start):
            raise Unreadable("file", name, _("The file is {name}, {rest}.").format(name=name, rest=rest))
    if (nul := data.find(b"\0")) >= 0:
        problem = _('The file holds a NUL byte, so it is not plain text in UTF-8: save it again as "CSV UTF-8".')
        raise Unreadable("file", "NUL", problem, row=_line(data, nul))
    try:
        return data.decode("utf-8-sig"), ""
    except UnicodeDecodeError as error:
        return _windows_text(data, error.start)


def _windows_text(data: bytes, offset: int) -> tuple[str, str]:
    value = f"byte 0x{data[offset]:02X}"
    problem = _('The text is not UTF-8 ({value} in line {line}): save the file again as "CSV UTF-8".').format(
        value=value, line=_line(data, offset)
    )
    refused = Unreadable("file", value, problem, row=_line(data, offset))
    if _UTF8_SEQUENCE.search(data) and _holds_utf8(data):
        raise refused
    try:
        text = data.decode("cp1252")
    except UnicodeDecodeError:
        raise refused from None
    if _ODD_IN_1252.search(text) or re.search("[\x00-\x08\x0b\x0c\x0e-\x1f]", text):
        raise refused
    note = _('The file is not UTF-8 and was read as Windows-1252; if accents look wrong, save it again as "CSV UTF-8".')
    return text, note


def _holds_utf8(data: bytes) -> bool:
    # Mixed files exist: two exports pasted together. Reading their UTF-8 half as Windows-1252 makes "JosÃ©" of José.
    for found in _UTF8_SEQUENCE.finditer(data):
        try:
            found.group().decode("utf-8")
        except UnicodeDecodeError:
            continue
        return True
    return False


def _line(data: bytes, offset: int) -> int:
    return data.count(b"\n", 0, offset) + 1


def clean(text: str) -> str:
    """Return the cell without space around it (no-break and zero-width spaces too), accents composed (NFC)."""
    if text.isascii():
        return text.strip()
    text = unicodedata.normalize("NFC", text)
    while (bare := text.strip().strip(NO_WIDTH)) != text:
        text = bare
    return text


def fold(text: str) -> str:
    """Return the text as names are compared: no capitals, single spaces, accents composed."""
    return " ".join(unicodedata.normalize("NFC", text).casefold().split())


def shown(value: str) -> str:
    """Return the value fit for a sentence: no control characters, at most 60 characters."""
    value = CONTROL.sub(lambda found: repr(found.group())[1:-1], value[: SHOWN + 1])
    return value if len(value) <= SHOWN else value[: SHOWN - 1] + "…"


def rows_named(numbers: Sequence[int]) -> str:
    """Name rows in a remark, the first few: "row 7", "rows 7, 9", "rows 7, 9, ... and more"."""
    listed = ", ".join(map(str, dict.fromkeys(numbers[:LISTED])))
    if len(numbers) > LISTED:
        return _("rows {rows} and more").format(rows=listed)
    return ngettext("row {rows}", "rows {rows}", len(numbers)).format(rows=listed)
