"""The studio's letters: every e-mail in one layout, in HTML and as plain text, under its logo or its name.

The logo travels within the mail (RFC 2392): shown at once, also by programs that load nothing from outside, and nobody
learns when she opens it. All styles stand in one block, without attributes, so that a preview can show a letter under
the pages' own content security policy; a program that drops the block shows a plain letter.
"""

from __future__ import annotations

import base64
import hashlib
import io
from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime
from html import escape
from pathlib import Path
from typing import Final

from babel import Locale
from django.core.exceptions import ValidationError
from django.template.loader import render_to_string
from django.utils.safestring import SafeString, mark_safe
from django.utils.translation import gettext as _
from PIL import Image, ImageOps, UnidentifiedImageError

from aftercare.core import letter, say
from aftercare.models import Letterhead
from aftercare.transports.base import Enclosure
from aftercare.wording import Words
from studio.models import Staff, Studio

LOGO_ID: Final = "logo"
LARGEST_LOGO = 40_000  # bytes, as it is sent with every mail
LARGEST_UPLOAD = 5 * 1024 * 1024
MOST_PIXELS = 40_000_000
WIDEST, TALLEST = 240, 80  # CSS pixels at which it is shown; it is kept at twice that, for sharp screens
_SHARP = 2
STYLE: Final = (Path(__file__).parent.parent / "templates" / "letters" / "letter.css").read_text(encoding="utf-8")
_IN_THE_DARK = "@media (prefers-color-scheme: dark)"
# For previews, which show both whatever the page around them is in.
_SHOWN: Final = {
    "light": STYLE.replace(_IN_THE_DARK, "@media not all"),
    "dark": STYLE.replace(_IN_THE_DARK, "@media all"),
}
STYLE_HASHES: Final = [
    "'sha256-" + base64.b64encode(hashlib.sha256(style.encode()).digest()).decode() + "'" for style in _SHOWN.values()
]


@dataclass(frozen=True, slots=True)
class Letter:
    """An e-mail's two forms, saying the same, and what goes within them."""

    text: str
    html: str
    enclosures: tuple[Enclosure, ...]

    @property
    def in_light(self) -> str:
        """The HTML form as it looks in light mode, for a preview."""
        return self.html.replace(STYLE, _SHOWN["light"])

    @property
    def in_dark(self) -> str:
        """The HTML form as it looks in dark mode, for a preview."""
        return self.html.replace(STYLE, _SHOWN["dark"])


def of(studio: Studio) -> Letterhead | None:
    """Return the head of a studio's letters; None where its name stands alone."""
    return Letterhead.objects.filter(studio=studio).first()


def lay_out(words: Words, studio: Studio, head: Letterhead | None, *, logo: str = f"cid:{LOGO_ID}") -> Letter:
    """Lay an e-mail's words out. ``logo`` is where its picture is found: within the mail, but for a preview."""
    language = say.subtag(words.language)
    shown = {
        "body": _written(letter.parts(words.body, words.caution, words.links)),
        "subject": words.subject,
        "studio": studio,
        "head": head,
        "logo": logo,
        "style": STYLE,
        "language": language,
        "direction": Locale.parse(language).text_direction if language else "ltr",
    }
    text = f"{words.body}\n\n{_place(studio)}" if _place(studio) else words.body
    html = render_to_string("letters/letter.html", shown) + ""  # no longer marked safe: a page must escape it
    return Letter(text, html, (_enclosed(head),) if head is not None else ())


def as_data(head: Letterhead | None) -> str:
    """Return the logo as an address that holds it, for previews: nothing is loaded from anywhere."""
    return f"data:{head.kind};base64,{base64.b64encode(bytes(head.content)).decode()}" if head else ""


def save_logo(studio: Studio, data: bytes, *, by: Staff, now: datetime) -> Letterhead:
    """Keep a logo, made anew from its pixels. Raises ValidationError with the cure for what cannot be one."""
    content, kind, size = _anew(data)
    fields = {"content": content, "kind": kind, "width": size[0], "height": size[1], "at": now, "by": by}
    head, _made = Letterhead.objects.update_or_create(studio=studio, defaults=fields)
    return head


def remove_logo(studio: Studio) -> None:
    """Let the studio's name stand above its letters again."""
    Letterhead.objects.filter(studio=studio).delete()


def _written(parts: Iterable[letter.Part]) -> SafeString:
    """Write a letter's parts in HTML. In Python, where a template's loops would take most of a sweep's time."""
    pieces: list[str] = []
    for part in parts:
        blocks = "".join(_block(block) for block in part.blocks)
        pieces.append(f'<div class="caution">\n{blocks}</div>\n' if part.is_caution else blocks)
    return mark_safe("".join(pieces))  # every word went through _line, which escapes it


def _block(block: letter.Block) -> str:
    lines = [_line(line) for line in block.lines]
    if block.shape == "list":
        return "<ul>\n" + "".join(f"<li>{line}</li>\n" for line in lines) + "</ul>\n"
    tag = "h2" if block.shape == "heading" else "p"
    return f"<{tag}>" + "<br>\n".join(lines) + f"</{tag}>\n"


def _line(runs: Iterable[letter.Run]) -> str:
    return "".join(
        f'<a href="{escape(run.text)}" rel="noreferrer">{escape(run.text)}</a>' if run.link else escape(run.text)
        for run in runs
    )


def _place(studio: Studio) -> str:
    """The postal address, which the law of some countries wants below what invites (16 CFR 316.4, 316.5)."""
    return f"{studio.name}, {studio.address}" if studio.address.strip() else ""


def _enclosed(head: Letterhead) -> Enclosure:
    name = f"logo.{head.kind.rpartition('/')[2]}"
    return Enclosure(name=name, media_type=head.kind, content=bytes(head.content), inline_id=LOGO_ID)


def _anew(data: bytes) -> tuple[bytes, str, tuple[int, int]]:
    if len(data) > LARGEST_UPLOAD:
        raise ValidationError({"logo": _("The file is larger than 5 MB: save the logo smaller.")})
    try:
        with Image.open(io.BytesIO(data), formats=("PNG", "JPEG")) as found:
            if found.width * found.height > MOST_PIXELS:
                raise ValidationError({"logo": _("It has more than 40 million pixels: save the logo smaller.")})
            kind = str(found.format)
            found.thumbnail((WIDEST * _SHARP * 2, TALLEST * _SHARP * 2))
            picture = ImageOps.exif_transpose(found).convert("RGBA" if kind == "PNG" else "RGB")
    except ValidationError:
        raise
    except UnidentifiedImageError as error:
        raise ValidationError({"logo": _("It is no PNG or JPEG file: save the logo as one of these.")}) from error
    except Exception as error:  # broken files break decoders in many ways
        raise ValidationError({"logo": _("The picture cannot be read: save it again, as PNG or JPEG.")}) from error
    picture.thumbnail((WIDEST * _SHARP, TALLEST * _SHARP))
    clean = Image.frombytes(picture.mode, picture.size, picture.tobytes())  # nothing but the pixels
    shown = (max(1, round(clean.width / _SHARP)), max(1, round(clean.height / _SHARP)))
    return _small(clean), f"image/{kind.lower()}", shown


def _small(picture: Image.Image) -> bytes:
    """Write it as small as it must be: fewer colors, or a coarser JPEG, never fewer pixels."""
    if picture.mode == "RGB":
        tries = [(picture, "JPEG", {"quality": quality}) for quality in (88, 75, 60, 40)]
    else:
        tries = [(picture, "PNG", {})]
        tries += [(picture.quantize(colors, Image.Quantize.FASTOCTREE), "PNG", {}) for colors in (256, 64, 16)]
    for made, name, options in tries:
        out = io.BytesIO()
        made.save(out, name, optimize=True, **options)
        if out.tell() <= LARGEST_LOGO:
            return out.getvalue()
    raise ValidationError({"logo": _("It stays larger than 40 kB: use a simpler picture, with fewer colors.")})
