"""Numbers of the range reserved for fiction in the North American plan: 555-0100 to 555-0199 (from memory)."""

from __future__ import annotations

import pytest
from django.core.exceptions import ValidationError

from studio.records.numbers import number


@pytest.mark.parametrize(
    ("text", "region", "kept"),
    [
        ("(212) 555-0101", "US", "+12125550101"),
        ("  212 555 0101 ", "US", "+12125550101"),
        ("+1 212 555 0101", "GB", "+12125550101"),
        ("020 7946 0123", "GB", "+442079460123"),  # of Ofcom's numbers for drama, from memory
        ("", "US", ""),
    ],
)
def test_a_number_is_kept_as_e164(text: str, region: str, kept: str) -> None:
    assert number(text, region=region) == kept


@pytest.mark.parametrize("text", ["12", "6.14125E+10", "call her mother", "+1 000 000 0000", "2125550101 ext"])
def test_what_is_no_number_is_refused_on_its_field_with_a_shape_to_follow(text: str) -> None:
    with pytest.raises(ValidationError) as refused:
        number(text, region="US", field="guardian_mobile")

    message = refused.value.message_dict["guardian_mobile"][0]
    assert text[:10] in message
    assert "+1" in message
