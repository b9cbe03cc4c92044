"""Pictures made anew: upright, small enough, and without a word on where they were taken."""

from __future__ import annotations

import base64
import io

import pytest
from PIL import Image, ImageCms

from aftercare import pictures

GPS, ORIENTATION, MAKE = 0x8825, 0x0112, 0x010F  # Exif 2.32, 4.6.4 and 4.6.6


# 64 by 64 points, the left half red; with a maker and a place in its Exif. Made with another library's encoder.
HEIC = base64.b64decode(
    "AAAAHGZ0eXBoZWljAAAAAG1pZjFoZWljbWlhZgAAAZdtZXRhAAAAAAAAACFoZGxyAAAAAAAAAABwaWN0AAAAAAAAAAAAAAAAAAAA"
    "ADRpbG9jAAAAAERAAAIAAQAAAAABuwABAAAAAAAAACwAAgAAAAAB5wABAAAAAAAAAG4AAAA4aWluZgAAAAAAAgAAABVpbmZlAgAA"
    "AAABAABodmMxAAAAABVpbmZlAgAAAQACAABFeGlmAAAAAA5waXRtAAAAAAABAAAA1mlwcnAAAAC3aXBjbwAAAHhodmNDAQNwAAAA"
    "kAAAAAAAHvAA/P34+AAADwNgAAEAGEABDAH//wNwAAADAJAAAAMAAAMAHroCQGEAAQArQgEBA3AAAAMAkAAAAwAAAwAeoCCBBZbq"
    "SSmubgIaDAgAAAMAyAAAAwAIQGIAAQAHRAHBcrAiQAAAABNjb2xybmNseAABAA0ABoAAAAAUaXNwZQAAAAAAAABAAAAAQAAAABBw"
    "aXhpAAAAAAMICAgAAAAXaXBtYQAAAAAAAAABAAEEgQIDBAAAABppcmVmAAAAAAAAAA5jZHNjAAIAAQABAAAAom1kYXQAAAAoKAGv"
    "E4DmqHDT//4mlH/9OueH6eXkSq39UuKj8MUf/ntURUisn/Ik3gAAAAZFeGlmAABNTQAqAAAACAACAQ8AAgAAABQAAAAmiCUABAAA"
    "AAEAAAA6AAAAAEFueWJvZHkncyB0ZWxlcGhvbmUAAAEAAgAFAAAAAwAAAEwAAAAAAAAAKAAAAAEAAAAqAAAAAQAAAC4AAAAB"
)


def photo(size: tuple[int, int] = (60, 40), kind: str = "JPEG", **exif: object) -> bytes:
    found = Image.new("RGB", size, "white")
    found.paste("red", (0, 0, size[0] // 2, size[1]))
    written = Image.Exif()
    written[MAKE] = "Anybody's telephone"
    written[ORIENTATION] = exif.get("orientation", 1)
    written.get_ifd(GPS)[2] = (40.0, 42.0, 46.0)  # a latitude
    out = io.BytesIO()
    found.save(out, kind, exif=written)
    return out.getvalue()


def opened(content: bytes | None) -> Image.Image:
    assert content is not None
    return Image.open(io.BytesIO(content))


@pytest.mark.parametrize("kind", ["JPEG", "PNG", "WEBP", "TIFF"])
def test_nothing_is_kept_but_what_is_to_be_seen(kind: str) -> None:
    data = photo(kind=kind)
    assert b"Anybody's telephone" in data or kind != "JPEG"

    kept = pictures.keep(data)

    assert kept.problem == ""
    assert kept.kind == "image/jpeg"
    found = opened(kept.content)
    assert dict(found.getexif()) == {}
    assert not set(found.info) & {"exif", "xmp", "comment", "icc_profile", "photoshop"}
    assert kept.content is not None
    assert b"telephone" not in kept.content


def test_telephones_own_kind_of_photo_is_kept_as_others_are() -> None:
    assert b"Anybody's telephone" in HEIC

    kept = pictures.keep(HEIC)

    assert (kept.kind, kept.problem) == ("image/jpeg", "")
    found = opened(kept.content).convert("RGB")
    assert found.size == (64, 64)
    red, green, _blue = found.getpixel((10, 30))  # type: ignore[misc]
    assert (red > 200, green < 60) == (True, True)
    assert kept.content is not None
    assert b"telephone" not in kept.content
    assert dict(found.getexif()) == {}


def wide_colors() -> bytes:
    """A profile in which blue is called red and red blue: whoever leaves it out sees another color."""
    plain = bytearray(ImageCms.ImageCmsProfile(ImageCms.createProfile("sRGB")).tobytes())
    red, blue = plain.index(b"rXYZ"), plain.index(b"bXYZ")
    plain[red : red + 4], plain[blue : blue + 4] = plain[blue : blue + 4], plain[red : red + 4]
    return bytes(plain)


@pytest.mark.parametrize("mode", ["RGB", "RGBA"])
def test_its_colors_are_those_that_its_profile_means(mode: str) -> None:
    out = io.BytesIO()
    Image.new(mode, (20, 20), (0, 0, 255, 255)[: len(mode)]).save(out, "PNG", icc_profile=wide_colors())

    found = opened(pictures.keep(out.getvalue()).content).convert("RGB")

    red, _green, blue = found.getpixel((10, 10))  # type: ignore[misc]
    assert (red > 200, blue < 60) == (True, True)
    assert "icc_profile" not in found.info


@pytest.mark.parametrize("profile", [b"no profile at all", b""])
def test_a_broken_profile_loses_no_picture(profile: bytes) -> None:
    out = io.BytesIO()
    Image.new("RGB", (20, 20), "red").save(out, "PNG", icc_profile=profile)

    assert pictures.keep(out.getvalue()).kind == "image/jpeg"


@pytest.mark.parametrize("mode", ["L", "1", "P", "CMYK", "I;16", "LA"])
def test_pictures_of_every_make_are_kept(mode: str) -> None:
    out = io.BytesIO()
    Image.new(mode, (30, 20)).save(out, "TIFF" if mode == "CMYK" else "PNG")

    assert pictures.keep(out.getvalue()).problem == ""


def test_it_stands_upright_as_it_was_taken() -> None:
    kept = pictures.keep(photo((60, 40), orientation=6))  # Exif: turn it by 90 degrees to see it upright

    found = opened(kept.content).convert("RGB")
    assert found.size == (40, 60)
    red, _green, blue = found.getpixel((20, 10))  # type: ignore[misc]
    assert (red > 200, blue < 60) == (True, True)  # the left half lies at the top


def test_it_is_no_larger_than_needed() -> None:
    assert opened(pictures.keep(photo((4000, 1000))).content).size == (2048, 512)
    assert opened(pictures.keep(photo((300, 200))).content).size == (300, 200)


def test_what_one_can_see_through_stays_so() -> None:
    out = io.BytesIO()
    Image.new("RGBA", (10, 10), (255, 0, 0, 0)).save(out, "PNG")

    kept = pictures.keep(out.getvalue())

    assert kept.kind == "image/png"
    assert opened(kept.content).mode == "RGBA"


@pytest.mark.parametrize(
    ("data", "said"),
    [
        (b"%PDF-1.7 ...", "it is no picture"),
        (b"<svg onload=alert(1)></svg>", "it is no picture"),
        (b"MZ\x90\x00 anything that runs", "it is no picture"),
        (b"", "it is no picture"),
        (photo()[:200], "cannot be read"),
        (b"\xff" * (pictures.LARGEST_FILE + 1), "larger than 10 MB"),
    ],
)
def test_what_is_not_kept_says_why_and_what_to_do(data: bytes, said: str) -> None:
    kept = pictures.keep(data)

    assert kept.content is None
    assert said in kept.problem
    assert "Ask her" in kept.problem


def test_a_file_that_unfolds_without_end_is_not_unfolded() -> None:
    out = io.BytesIO()
    Image.new("1", (9_000, 9_000)).save(out, "PNG", optimize=True)
    assert len(out.getvalue()) < 100_000

    assert "unfolds to more than 50 million pixels" in pictures.keep(out.getvalue()).problem
