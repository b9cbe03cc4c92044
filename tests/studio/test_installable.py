"""The service on a phone's home screen. Outside facts: W3C, Web Application Manifest (members, icon purposes)."""

from __future__ import annotations

import json
from typing import Any

import pytest
from django.contrib.staticfiles import finders
from django.test import Client as Browser
from PIL import Image

from tests.cast import Cast
from tests.pages import SignIn

GREEN = (31, 79, 74)  # icon.svg's ground, #1f4f4a
SAFE = 0.4  # of the smaller side: the radius of a maskable icon's safe zone, W3C manifest, "Icon masks and safe zone"


def found(name: str) -> str:
    path = finders.find(name)
    assert isinstance(path, str)
    return path


@pytest.fixture(scope="module")
def manifest() -> dict[str, Any]:
    with open(found("manifest.webmanifest"), encoding="utf-8") as file:
        read: dict[str, Any] = json.load(file)
    return read


def test_it_opens_with_the_morning_list_and_looks_like_itself(
    manifest: dict[str, Any], cast: Cast, as_: SignIn
) -> None:
    assert (manifest["start_url"], manifest["scope"], manifest["display"]) == ("/morning", "/", "standalone")
    assert as_(cast.ada).get(manifest["start_url"]).status_code == 200
    page = Browser().get("/sign-in").content.decode()
    assert '<link rel="manifest" href="/static/manifest.webmanifest">' in page
    assert '<link rel="apple-touch-icon" href="/static/icon-180.png">' in page


def test_each_icon_is_as_large_as_it_is_said_to_be(manifest: dict[str, Any]) -> None:
    drawn = [icon for icon in manifest["icons"] if icon["type"] == "image/png"]
    assert {icon["sizes"] for icon in drawn} == {"192x192", "512x512"}

    for icon in drawn:
        with Image.open(found(icon["src"])) as image:
            assert f"{image.width}x{image.height}" == icon["sizes"]
            assert near(image.convert("RGB").getpixel((2, 2)), GREEN)
    with Image.open(found("icon-180.png")) as image:
        assert image.size == (180, 180)


def test_no_mask_cuts_into_the_icon_that_is_made_to_be_cut(manifest: dict[str, Any]) -> None:
    (icon,) = [icon for icon in manifest["icons"] if icon.get("purpose") == "maskable"]

    with Image.open(found(icon["src"])) as image:
        pixels, half = image.convert("RGB"), image.width / 2
        outside = [
            (x, y)
            for x in range(0, image.width, 4)
            for y in range(0, image.height, 4)
            if ((x - half) ** 2 + (y - half) ** 2) ** 0.5 > SAFE * image.width
        ]
        assert all(near(pixels.getpixel(place), GREEN) for place in outside)


def near(color: Any, other: tuple[int, int, int]) -> bool:
    return all(abs(one - two) <= 6 for one, two in zip(color, other, strict=True))


def test_nothing_of_anybody_is_kept_on_the_phone(cast: Cast, as_: SignIn) -> None:
    """No service worker, so no page with people on it outlives its sign-in."""
    page = as_(cast.ada).get("/morning").content.decode()

    assert "serviceWorker" not in page
    with open(found("keys.js"), encoding="utf-8") as file:
        assert "serviceWorker" not in file.read()
