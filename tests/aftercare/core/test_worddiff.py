"""What differs between two texts."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from aftercare.core.worddiff import Change, compare

TEXTS = st.text(alphabet="ab {}%.\n", max_size=40)


def test_what_was_taken_out_and_what_was_added_stand_where_they_were() -> None:
    assert compare("Keep them dry.", "Keep your lashes dry.") == (
        Change("same", "Keep "),
        Change("taken", "them"),
        Change("added", "your lashes"),
        Change("same", " dry."),
    )


def test_a_field_is_one_word() -> None:
    assert Change("taken", "{{ first_name }}") in compare("Hi {{ first_name }}", "Hi {{ artist }}")


@given(earlier=TEXTS, later=TEXTS)
def test_both_texts_can_be_read_out_of_their_comparison(earlier: str, later: str) -> None:
    changes = compare(earlier, later)

    assert "".join(change.text for change in changes if change.kind != "added") == earlier
    assert "".join(change.text for change in changes if change.kind != "taken") == later
    if earlier == later:
        assert {change.kind for change in changes} <= {"same"}
