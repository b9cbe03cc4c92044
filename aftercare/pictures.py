"""Pictures that clients send: made anew, so that nothing is kept of them but what is to be seen."""

from __future__ import annotations

import io
import warnings
from dataclasses import dataclass

from PIL import Image, ImageOps, UnidentifiedImageError

LONGEST_SIDE = 2_048  # pixels
LARGEST_FILE = 10 * 1024 * 1024  # bytes, as it came
MOST_PIXELS = 50_000_000  # a file that unfolds to more is no photo of an eye
MOST_FILES = 8
QUALITY = 85
FORMATS = ("JPEG", "PNG", "WEBP", "GIF", "TIFF", "BMP")  # told by their content, whatever they are called


@dataclass(frozen=True, slots=True)
class Kept:
    """A file as it is kept; ``content`` is None where it is not, and ``problem`` says why."""

    kind: str = ""
    content: bytes | None = None
    problem: str = ""


def keep(data: bytes) -> Kept:
    """Make a picture anew from its pixels: upright, no larger than needed, without its place, maker or date.

    What is no picture, is too large or cannot be read is not kept.
    """
    if len(data) > LARGEST_FILE:
        return Kept(problem="Not kept: it is larger than 10 MB. Ask her for a smaller one.")
    try:
        with warnings.catch_warnings():
            warnings.simplefilter("error", Image.DecompressionBombWarning)
            return _anew(data)
    except (UnidentifiedImageError, TypeError):
        return Kept(problem="Not kept: it is no picture. Ask her to write it, or to send a photo.")
    except Exception:  # broken files break decoders in many ways: none of them may lose her words
        return Kept(problem="Not kept: the picture cannot be read. Ask her to send it again.")


def _anew(data: bytes) -> Kept:
    with Image.open(io.BytesIO(data), formats=FORMATS) as found:
        if found.width * found.height > MOST_PIXELS:
            return Kept(problem="Not kept: it unfolds to more than 50 million pixels. Ask her for a smaller one.")
        upright = ImageOps.exif_transpose(found)
        see_through = upright.mode in ("RGBA", "LA", "PA") or "transparency" in upright.info
        pixels = upright.convert("RGBA" if see_through else "RGB")
        pixels.thumbnail((LONGEST_SIDE, LONGEST_SIDE))
        clean = Image.frombytes(pixels.mode, pixels.size, pixels.tobytes())  # nothing but the pixels
    out = io.BytesIO()
    if see_through:
        clean.save(out, "PNG", optimize=True)
        return Kept("image/png", out.getvalue())
    clean.save(out, "JPEG", quality=QUALITY)
    return Kept("image/jpeg", out.getvalue())
