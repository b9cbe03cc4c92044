"""Letters: one layout for every e-mail, under the studio's logo or name."""

from __future__ import annotations

import base64
import hashlib
import io
import re
from dataclasses import replace
from html.parser import HTMLParser

import pytest
from django.core.exceptions import ValidationError
from PIL import Image

from aftercare import letterhead, wording
from aftercare.versions import slots
from aftercare.wording import Words, compose, first_wording
from tests.cast import Cast, make


@pytest.fixture
def cast(db: None) -> Cast:
    cast = make()
    cast.studio.address = "12 Alder Row, Wrenfield"
    return cast


class _Reader(HTMLParser):
    """What a browser would make of a letter: its elements, what they load or lead to, and its words."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.tags: list[str] = []
        self.addresses: list[str] = []
        self.words = ""
        self.within: list[str] = []
        self.feed(html)

    def handle_starttag(self, tag: str, attributes: list[tuple[str, str | None]]) -> None:
        self.tags.append(tag)
        self.within.append(tag)
        self.addresses += [value or "" for name, value in attributes if name in ("src", "href", "srcset", "background")]
        assert not [name for name, _ in attributes if name.startswith("on") or name == "style"], tag

    def handle_endtag(self, tag: str) -> None:
        while self.within and self.within.pop() != tag:
            pass

    def handle_data(self, data: str) -> None:
        if not {"style", "title"} & set(self.within):
            self.words += f"{data} "


def read(html: str) -> _Reader:
    return _Reader(html)


def bare(text: str) -> list[str]:
    return [word for line in text.split("\n") for word in line.strip().removeprefix("- ").split()]


@pytest.mark.parametrize(
    "slot", [slot for slot in slots() if slot.channel == "email" and slot.occasion not in ("caution", "how_to_stop")]
)
def test_both_forms_say_the_same_words(slot, cast: Cast) -> None:  # type: ignore[no-untyped-def]
    """RFC 2046, 5.1.4: the parts of multipart/alternative carry the same information."""
    facts = replace(
        wording.LONGEST, occasion=slot.occasion, kind=slot.kind, step=slot.step, channel="email", language=slot.language
    )
    words = compose(slot.first(), facts)

    laid_out = letterhead.lay_out(words, cast.studio, None)

    head = cast.studio.name.split()
    assert read(laid_out.html).words.split() == [*head, *bare(laid_out.text)]
    assert laid_out.text.endswith("12 Alder Row, Wrenfield")


def test_the_caution_is_set_apart(cast: Cast) -> None:
    facts = replace(wording.LONGEST, occasion="care", kind="fill", channel="email")
    words = compose(first_wording("care", "fill", 0, "email", "en"), facts)

    html = letterhead.lay_out(words, cast.studio, None).html

    apart = html.split('<div class="caution">')[1].split("</div>")[0]
    assert read(apart).words.split() == bare(words.caution)
    assert "rinse" in apart


@pytest.mark.parametrize(
    "name",
    [
        "<script>alert(1)</script>",
        '"><img src=https://evil.example/x onerror=alert(1)>',
        "<a href=https://evil.example>Mia</a>",
        "[Mia](https://evil.example)",
        "https://evil.example/",
        "&lt;b&gt; <style>*{display:none}</style>",
        "{{ studio }} {% if first %}",
        "- Mia\n\n# Mia:",
    ],
)
def test_a_name_is_text_whatever_it_looks_like(name: str, cast: Cast) -> None:
    facts = replace(wording.LONGEST, occasion="care", kind="fill", channel="email", first_name=name, artist=name)
    plain = replace(facts, first_name="Mia", artist="Ada")
    source = Words("Hello {{ first_name }}", "Hi {{ first_name }}, {{ artist }} says\n\n{{ caution }}", "en")

    hostile = letterhead.lay_out(compose(source, facts), cast.studio, None).html
    usual = letterhead.lay_out(compose(source, plain), cast.studio, None).html

    assert read(hostile).tags == read(usual).tags
    assert read(hostile).addresses == []
    assert " ".join(name.split()) in " ".join(read(hostile).words.split())


def test_links_are_plain_and_nothing_is_loaded_from_outside(cast: Cast, settings) -> None:  # type: ignore[no-untyped-def]
    settings.PUBLIC_URL = "https://lashes.example"
    facts = replace(wording.LONGEST, occasion="alert", channel="email", link="https://lashes.example/morning#flag-7")
    words = compose(first_wording("alert", "", 0, "email", "en"), facts)
    letterhead.save_logo(cast.studio, picture("PNG", (400, 100)), by=cast.olga, now=cast.now)

    html = letterhead.lay_out(words, cast.studio, letterhead.of(cast.studio)).html

    assert read(html).addresses == ["cid:logo", "https://lashes.example/morning#flag-7"]
    assert '<a href="https://lashes.example/morning#flag-7" rel="noreferrer">https://lashes.example/morning#' in html
    assert not re.search(r"@import|url\(|<(?:link|script|iframe|object)", html)


def test_it_says_that_it_suits_light_and_dark(cast: Cast) -> None:
    html = letterhead.lay_out(Words("S", "Hi"), cast.studio, None).html

    assert '<meta name="color-scheme" content="light dark">' in html
    assert "@media (prefers-color-scheme: dark)" in html


def test_its_language_and_direction_are_said(cast: Cast) -> None:
    """WCAG 2.2, 3.1.1: the language of a page."""
    assert '<html lang="es" dir="ltr">' in letterhead.lay_out(Words("S", "Hola", "es"), cast.studio, None).html
    assert '<html lang="ar" dir="rtl">' in letterhead.lay_out(Words("S", "Hi", "ar"), cast.studio, None).html


def contrast(one: str, other: str) -> float:
    """WCAG 2.2, "contrast ratio" and "relative luminance"."""

    def luminance(color: str) -> float:
        channels = [int(color[place : place + 2], 16) / 255 for place in (1, 3, 5)]
        linear = [c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels]
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]

    high, low = sorted((luminance(one), luminance(other)), reverse=True)
    return (high + 0.05) / (low + 0.05)


def test_every_color_of_words_stands_out_in_light_and_in_dark() -> None:
    """WCAG 2.2, 1.4.3: 4.5 to 1."""
    light, dark = letterhead.STYLE.split("@media (prefers-color-scheme: dark)")
    for style, inks in ((light, ("#1d1b18", "#1f4f4a", "#5c554c")), (dark, ("#ece7df", "#8fc7bf", "#b3aa9e"))):
        papers = re.findall(r"(?<!logo \{ )background: (#[0-9a-f]{6})", style)
        assert len(papers) >= 2
        for ink in inks:
            assert f" {ink};" in style
            assert all(contrast(ink, paper) >= 4.5 for paper in papers), ink


def test_the_style_s_hash_is_that_of_what_stands_between_the_tags(cast: Cast) -> None:
    """CSP Level 3, 6.7.3.3: the hash is of the element's exact text."""
    laid_out = letterhead.lay_out(Words("S", "Hi"), cast.studio, None)

    for html, named in zip((laid_out.in_light, laid_out.in_dark), letterhead.STYLE_HASHES, strict=True):
        style = html.split("<style>")[1].split("</style>")[0]
        digest = hashlib.sha256(style.encode()).digest()
        assert named == f"'sha256-{base64.b64encode(digest).decode()}'"


def test_a_page_that_shows_a_letter_must_escape_it(cast: Cast) -> None:
    laid_out = letterhead.lay_out(Words("S", "Hi"), cast.studio, None)

    assert not any(hasattr(form, "__html__") for form in (laid_out.html, laid_out.in_light, laid_out.in_dark))


def picture(kind: str, size: tuple[int, int], *, noise: bool = False) -> bytes:
    mode = "RGBA" if kind == "PNG" else "RGB"
    made = Image.effect_noise(size, 90).convert(mode) if noise else Image.new(mode, size, (90, 30, 60))
    out = io.BytesIO()
    exif = Image.Exif()
    exif[0x010E] = "where it was taken"
    made.save(out, kind, exif=exif)
    return out.getvalue()


@pytest.mark.parametrize("kind", ["PNG", "JPEG"])
@pytest.mark.parametrize("noise", [False, True])
def test_a_logo_is_made_anew_and_small(kind: str, noise: bool, cast: Cast) -> None:
    head = letterhead.save_logo(cast.studio, picture(kind, (900, 900), noise=noise), by=cast.olga, now=cast.now)

    content = bytes(head.content)
    assert len(content) <= letterhead.LARGEST_LOGO
    assert b"where it was taken" not in content
    assert head.kind == f"image/{kind.lower()}"
    assert (head.width, head.height) == (80, 80)
    with Image.open(io.BytesIO(content)) as kept:
        assert kept.format == kind
        assert kept.size == (160, 160)


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>", "no PNG or JPEG"),
        (b"", "no PNG or JPEG"),
        (b"x" * (letterhead.LARGEST_UPLOAD + 1), "larger than 5 MB"),
        (picture("PNG", (60, 60))[:-40], "cannot be read"),
    ],
    ids=["drawing", "empty", "giant", "torn"],
)
def test_what_is_no_logo_is_refused_with_the_cure_and_changes_nothing(data: bytes, said: str, cast: Cast) -> None:
    kept = letterhead.save_logo(cast.studio, picture("PNG", (60, 60)), by=cast.olga, now=cast.now)

    with pytest.raises(ValidationError, match=said):
        letterhead.save_logo(cast.studio, data, by=cast.olga, now=cast.now)

    head = letterhead.of(cast.studio)
    assert head is not None
    assert bytes(head.content) == bytes(kept.content)


def test_a_picture_that_unfolds_to_a_giant_is_refused(cast: Cast) -> None:
    with pytest.raises(ValidationError, match="million pixels"):
        letterhead.save_logo(cast.studio, picture("PNG", (8000, 6000)), by=cast.olga, now=cast.now)
