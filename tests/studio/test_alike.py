"""Looking up names without minding accents and capitals. Outside fact: Unicode's canonical decompositions."""

from __future__ import annotations

import re
import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio.alike import pattern, plain

LATIN = st.text(
    st.characters(min_codepoint=0x41, max_codepoint=0x24F, categories=["Lu", "Ll"]), min_size=1, max_size=12
)


@given(LATIN)
def test_a_name_is_found_by_itself_however_it_is_composed_or_capitalized(name: str) -> None:
    for written in (name, unicodedata.normalize("NFD", name), unicodedata.normalize("NFC", name)):
        assert re.search(pattern(name), written, re.IGNORECASE)
        assert re.search(pattern(plain(name)), written, re.IGNORECASE)


@pytest.mark.parametrize(
    ("asked", "name"), [("thuy", "Thúy"), ("lukasz", "Łukasz"), ("sinead", "SINÉAD"), ("ngoc", "Ngọc")]
)
def test_what_is_typed_without_accents_finds_what_has_them(asked: str, name: str) -> None:
    assert re.search(pattern(asked), name, re.IGNORECASE)


@pytest.mark.parametrize(
    ("asked", "name"), [("ana", "Anna"), ("n.", "Nz"), ("mia", "Mla"), (".*", "Mia"), ("é1", "e2")]
)
def test_other_names_are_not_found(asked: str, name: str) -> None:
    assert not re.search(pattern(asked), name, re.IGNORECASE)
