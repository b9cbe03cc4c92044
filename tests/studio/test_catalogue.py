"""The catalogue holds what the pages say, all of it, and what Django reads is what is edited."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

import pytest
from babel.messages.catalog import Catalog, Message
from babel.messages.mofile import read_mo
from django.template.base import Lexer, TokenType

from studio import catalogue

# printf-style fields and a percent sign (Python, "printf-style String Formatting"), format fields, and tags.
FIELD = re.compile(r"%\(\w+\)[\d.]*[sdf]|%%|%s|\{+\w*(?::[^{}]*)?\}+|</?\w+[^>]*>")
TEMPLATES = catalogue.ROOT / "templates"


@pytest.fixture(scope="module")
def marked() -> Catalog:
    return catalogue.marked()


@pytest.fixture(scope="module", params=catalogue.LANGUAGES)
def spoken(request: pytest.FixtureRequest) -> Catalog:
    return catalogue.read(request.param)


def known(messages: Catalog) -> dict[tuple[object, object], Message]:
    found: dict[tuple[object, object], Message] = {}
    for message in messages:
        if message.id:
            message.id = tuple(message.id) if isinstance(message.id, list) else message.id
            message.string = tuple(message.string) if isinstance(message.string, list) else message.string
            found[message.id, message.context] = message
    return found


def texts(said: object) -> tuple[str, ...]:
    """Return a string's words, or those of its singular and its plural."""
    return tuple(str(one) for one in said) if isinstance(said, tuple) else (str(said),)


def test_every_string_of_the_sources_is_in_it_and_no_other(marked: Catalog, spoken: Catalog) -> None:
    """To mend: python manage.py catalogue, then write what is without words."""
    assert set(known(marked)) - set(known(spoken)) == set()
    assert set(known(spoken)) - set(known(marked)) == set()


def test_every_string_has_its_words_and_none_is_a_guess(spoken: Catalog) -> None:
    bare = [message.id for message in known(spoken).values() if not catalogue.said(message)]

    assert bare == []
    assert [message.id for message in known(spoken).values() if message.fuzzy] == []
    assert spoken.obsolete == {}


def test_words_hold_the_fields_that_their_string_holds(spoken: Catalog) -> None:
    wrong = []
    for message in known(spoken).values():
        fields = [sorted(FIELD.findall(text)) for text in texts(message.id)]
        wrong += [text for text in texts(message.string) if sorted(FIELD.findall(text)) not in fields]

    assert wrong == []


def test_words_begin_and_end_as_their_string_does(spoken: Catalog) -> None:
    """A space, a line break or a full stop lost would run words together on a page."""
    ends = re.compile(r"^(\s*).*?([\s:;,.…]*)$", re.DOTALL)
    pairs = [
        pair
        for message in known(spoken).values()
        for pair in zip(texts(message.id), texts(message.string), strict=True)
    ]

    odd = [
        words
        for text, words in pairs
        if (one := ends.match(text)) and (two := ends.match(words)) and one.groups() != two.groups()
    ]

    assert odd == []


def test_what_django_reads_is_what_is_edited(spoken: Catalog) -> None:
    with catalogue.mo(str(spoken.locale)).open("rb") as file:
        compiled = read_mo(file)
    again = read_mo(BytesIO(catalogue.compiled(spoken)))

    assert {key: message.string for key, message in known(compiled).items()} == {
        key: message.string for key, message in known(again).items()
    }


def test_a_template_s_words_are_found_with_their_plurals_and_contexts(tmp_path: Path) -> None:
    source = tmp_path / "page.html"
    source.write_text(
        "{% load i18n %}<p>{% translate 'One' context 'a number' %}</p>\n  {% if x %}\n"
        "{% blocktranslate count n=n %}{{ n }} set at 5 %{% plural %}{{ n }} sets{% endblocktranslate %}{% endif %}"
    )

    found = {(message, context) for _line, message, _comments, context in catalogue._read(source)}

    assert found == {("One", "a number"), (("%(n)s set at 5 %%", "%(n)s sets"), None)}


# Invented people of the page of blocks: names are the same in every language.
SAME = re.compile(r"[\w.]*(?:Wilhelmina|Konstantinopolitana|Featherstonehaugh|Hohenzollern)[\w.@-]*", re.IGNORECASE)


def bare_words(file: Path) -> list[str]:
    """Return the words of a template that stand outside every mark for translation."""
    text, depth = "", 0
    for token in Lexer(file.read_text(encoding="utf-8")).tokenize():
        if token.token_type == TokenType.BLOCK:
            name = token.contents.split()[0]
            depth += name in ("blocktranslate", "comment", "templatetag")
            depth -= name in ("endblocktranslate", "endcomment")
            depth -= name == "templatetag"  # it has no end
            text += " "
        elif token.token_type == TokenType.TEXT and not depth:
            text += token.contents
    text = re.sub(r"<(code|style|script|svg|text)\b.*?</\1>", " ", text, flags=re.DOTALL)
    said = re.findall(r"\b(?:aria-label|placeholder|title|alt)=\"([^\"]*)\"", text)
    words = " ".join([*said, re.sub(r"<[^>]*>", " ", text)])
    return re.findall(r"[^\W\d_]{2,}", SAME.sub(" ", re.sub(r"&\w+;", " ", words)))


@pytest.mark.parametrize("file", sorted(TEMPLATES.rglob("*.html")), ids=lambda file: str(file.relative_to(TEMPLATES)))
def test_no_word_of_a_page_stands_outside_a_mark(file: Path) -> None:
    assert bare_words(file) == []


SHOWN_TO_PEOPLE = {"ValidationError", "PermissionDenied", "FeedError", "Refused", "Unclear", "success", "error", "said"}
SHOWN_AS = {"label", "help_text", "empty_label", "verbose_name"}
CODE = [file for folder in ("studio", "aftercare") for file in sorted((catalogue.ROOT / folder).rglob("*.py"))]


def bare_strings(file: Path) -> Iterator[str]:
    """Return the strings of a module that are handed to what shows them without being marked."""
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if not isinstance(node, ast.Call):
            continue
        name = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if ast.unparse(node.func).startswith("log."):
            continue
        handed = list(node.args) if name in SHOWN_TO_PEOPLE else []
        handed += [value for one in handed if isinstance(one, ast.Dict) for value in one.values]
        handed += [one.value for one in node.keywords if one.arg in SHOWN_AS]
        for one in handed:
            parts = one.values if isinstance(one, ast.JoinedStr) else [one]
            said = " ".join(str(part.value) for part in parts if isinstance(part, ast.Constant))
            if re.search(r"[^\W\d_]{2,}[ :.]", said):
                yield ast.unparse(one)


def test_no_word_of_the_code_s_that_people_see_stands_outside_a_mark() -> None:
    left_out = {
        f"{file.relative_to(catalogue.ROOT)}: {text}"
        for file in CODE
        if "migrations" not in file.parts and "management" not in file.parts
        for text in bare_strings(file)
    }

    assert left_out == set()


def test_no_string_is_marked_by_a_name_that_the_catalogue_does_not_know() -> None:
    """One marked by another name is never found, so it stays English in every language."""
    names = {
        f"{file.relative_to(catalogue.ROOT)}: {one.asname or one.name}"
        for file in CODE
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.ImportFrom) and node.module == "django.utils.translation"
        for one in node.names
        if "gettext" in one.name and (one.asname or one.name) not in catalogue.MARKS
    }

    assert names == set()
