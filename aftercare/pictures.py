"""Pictures that clients send: made anew, so that nothing is kept of them but what is to be seen."""

from __future__ import annotations

import io
from dataclasses import dataclass

import pi_heif
from PIL import Image, ImageCms, ImageOps, UnidentifiedImageError

LONGEST_SIDE = 2_048  # pixels
LARGEST_FILE = 10 * 1024 * 1024  # bytes, as it came
MOST_PIXELS = 50_000_000  # a file that unfolds to more is no photo of an eye
MOST_FILES = 8
SMALLEST_PHOTO = 20_000  # bytes, as it came: what is smaller is a sign-off's picture or card
QUALITY = 85
FORMATS = ("JPEG", "PNG", "WEBP", "HEIF", "AVIF", "GIF", "TIFF", "BMP")  # told by content, whatever they are called

# Many telephones' own kind of photo. What else is in such a file (thumbnails, depth, a second picture) is not decoded.
pi_heif.register_heif_opener(thumbnails=False, depth_images=False, aux_images=False)


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
        return _anew(data)
    except UnidentifiedImageError:
        return Kept(problem="Not kept: it is no picture. Ask her to write it, or to send a photo.")
    except Exception:  # broken files break decoders in many ways: none of them may lose her words
        return Kept(problem="Not kept: the picture cannot be read. Ask her to send it again.")


def _anew(data: bytes) -> Kept:
    with Image.open(io.BytesIO(data), formats=FORMATS) as found:
        if found.width * found.height > MOST_PIXELS:
            return Kept(problem="Not kept: it unfolds to more than 50 million pixels. Ask her for a smaller one.")
        found.thumbnail((LONGEST_SIDE, LONGEST_SIDE))  # first of all: a telephone's photo takes 150 MB in full
        upright = ImageOps.exif_transpose(found)
        see_through = upright.mode in ("RGBA", "LA", "PA") or "transparency" in upright.info
        pixels = _in_plain_colors(upright, "RGBA" if see_through else "RGB")
        clean = Image.frombytes(pixels.mode, pixels.size, pixels.tobytes())  # nothing but the pixels
    out = io.BytesIO()
    if see_through:
        clean.save(out, "PNG")
        return Kept("image/png", out.getvalue())
    clean.save(out, "JPEG", quality=QUALITY)
    return Kept("image/jpeg", out.getvalue())


def _in_plain_colors(picture: Image.Image, mode: str) -> Image.Image:
    """Return it in the colors that every screen takes for granted (sRGB).

    Its own color profile goes with all else: without this, what telephones photograph in wider colors would look less
    red than it is.
    """
    profile = picture.info.get("icc_profile")
    if profile and picture.mode in ("RGB", "RGBA", "CMYK", "L"):
        try:
            found = ImageCms.profileToProfile(
                picture,
                io.BytesIO(profile),
                ImageCms.createProfile("sRGB"),
                outputMode="RGB" if mode == "RGB" else None,
            )
        except (ImageCms.PyCMSError, OSError, ValueError):  # a broken profile, or one for other pixels
            found = None
        if found is not None:
            return found.convert(mode)
    return picture.convert(mode)
