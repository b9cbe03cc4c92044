"""The page of blocks holds each block there is."""

from __future__ import annotations

import re
from pathlib import Path

from studio.catalogue import ROOT
from tests.cast import Cast
from tests.pages import SignIn

QUESTIONS = re.compile(r"f-\w+")  # one form's field each, shown or not by the answer before it


# The style sheet of each folder of templates, the narrowest first; what pages share stands in the last.
SHEETS = {
    "templates/aftercare/hers": "aftercare/static/hers.css",
    "templates/letters": "templates/letters/letter.css",
    "templates": "studio/static/look.css",
}


def classes(text: str) -> set[str]:
    return {name for said in re.findall(r'class="([^"]*)"', text) for name in said.split()}


def styled(sheet: str = SHEETS["templates"]) -> set[str]:
    text = (ROOT / sheet).read_text(encoding="utf-8")
    names = re.findall(r"\.([a-z][\w-]*)", re.sub(r"/\*.*?\*/", "", text, flags=re.DOTALL))
    return {name for name in names if not QUESTIONS.fullmatch(name)}


def sheet_of(file: Path) -> str:
    return next(sheet for folder, sheet in SHEETS.items() if file.is_relative_to(ROOT / folder))


def test_every_block_that_is_styled_stands_on_it(cast: Cast, as_: SignIn) -> None:
    page = as_(cast.olga).get("/look").content.decode()

    assert styled() - classes(page) == set()


def test_no_template_uses_a_block_that_is_not_styled() -> None:
    """A name that nothing styles is one mistyped, or left over."""
    known = {sheet: styled(sheet) for sheet in SHEETS.values()}
    strange = {
        f"{file.relative_to(ROOT)}: {name}"
        for file in sorted((ROOT / "templates").rglob("*.html"))
        for name in classes(re.sub(r"\{[%{].*?[%}]\}", " ", file.read_text(encoding="utf-8")))
        if name not in known[sheet_of(file)] and not name.startswith("f-")
    }

    assert strange == set()
