"""What pages say, in other languages: the strings marked in the sources, and one catalogue a language.

Works with Babel alone, so that the catalogues can be made and checked on a machine without the gettext tools.
"""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

from babel.messages.catalog import Catalog, Message
from babel.messages.extract import extract
from babel.messages.mofile import write_mo
from babel.messages.pofile import read_po, write_po
from django.apps import apps
from django.conf import settings
from django.utils.translation.template import templatize

ROOT = Path(__file__).resolve().parents[1]
LOCALE = ROOT / "studio" / "locale"
LANGUAGES = tuple(code for code, _name in settings.LANGUAGES if code != settings.LANGUAGE_CODE)
# The functions that mark a string, with the places of singular, plural and context among their arguments.
MARKS = {
    "_": None,
    "form": None,
    "gettext": None,
    "gettext_lazy": None,
    "gettext_noop": None,
    "ngettext": (1, 2),
    "ngettext_lazy": (1, 2),
    "pgettext": ((1, "c"), 2),
    "pgettext_lazy": ((1, "c"), 2),
    "npgettext": ((1, "c"), 2, 3),
}


def marked() -> Catalog:
    """Return every string marked in the sources, by the file it stands in."""
    found = Catalog(charset="utf-8")
    for file in _sources():
        for _line, message, comments, context in _read(file):
            found.add(message, None, [(str(file.relative_to(ROOT)), 1)], auto_comments=comments, context=context)
    return found


def po(language: str) -> Path:
    """Return where a language's catalogue is edited."""
    return LOCALE / language / "LC_MESSAGES" / "django.po"


def mo(language: str) -> Path:
    """Return where Django reads a language's catalogue."""
    return po(language).with_suffix(".mo")


def read(language: str) -> Catalog:
    """Return a language's catalogue as it is edited."""
    with po(language).open("rb") as file:
        return read_po(file, locale=language)


def renewed(language: str) -> Catalog:
    """Return a language's catalogue brought up to the sources: new strings without words, old ones gone.

    Nothing is guessed from strings that are alike.
    """
    catalogue = read(language) if po(language).exists() else Catalog(locale=language, charset="utf-8", fuzzy=False)
    made = catalogue.creation_date  # moved with each look at the sources, it would be in the way of every merge
    catalogue.update(marked(), no_fuzzy_matching=True, update_header_comment=False)
    catalogue.creation_date = made
    catalogue.obsolete.clear()
    return catalogue


def write(language: str, catalogue: Catalog) -> None:
    """Keep a catalogue: to be edited, and as Django reads it."""
    po(language).parent.mkdir(parents=True, exist_ok=True)
    with po(language).open("wb") as file:
        write_po(file, catalogue, width=0, omit_header=False, sort_by_file=True, include_lineno=False)
    mo(language).write_bytes(compiled(catalogue))


def compiled(catalogue: Catalog) -> bytes:
    """Return a catalogue as Django reads it."""
    out = BytesIO()
    write_mo(out, catalogue)
    return out.getvalue()


def said(message: Message) -> bool:
    """Say whether a string has its words, in each of its plurals."""
    words = message.string if isinstance(message.string, tuple | list) else (message.string,)
    return bool(words) and all(words)


def _sources() -> Iterator[Path]:
    ours = sorted(Path(app.path) for app in apps.get_app_configs() if Path(app.path).parent == ROOT)
    for folder in (*ours, ROOT / "templates"):
        files = sorted(path for path in folder.rglob("*") if path.suffix in (".py", ".html"))
        yield from (file for file in files if "migrations" not in file.parts)


def _read(file: Path) -> Iterator[tuple[int, str | tuple[str, ...], list[str], str | None]]:
    text = file.read_text(encoding="utf-8")
    if file.suffix == ".html":
        # What is left of a template are words in no order; inside brackets their indents mean nothing.
        text = f"({templatize(text)}\n)"
    yield from extract("python", BytesIO(text.encode()), keywords=MARKS, comment_tags=("Translators:",))
