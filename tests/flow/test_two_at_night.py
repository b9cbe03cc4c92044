"""Two at night: an eye that will not open, from her text to the patch test that comes before her next set.

A real round of the engine at each moment; what staff do, they do on the pages, signed in.
"""

from __future__ import annotations

from datetime import datetime, timedelta

import pytest

from aftercare import facts, receiving, tasks, upkeep
from aftercare.lines import lines_of
from aftercare.models import Flag, Message
from aftercare.transports import memory
from studio.models import Reaction, Staff, Studio
from tests.cast import Cast
from tests.letters import MEMORY
from tests.pages import SignIn, as_, cast, quick_sign_in, quiet_static, words

__all__ = ["as_", "cast", "quick_sign_in", "quiet_static"]
ADA, OLGA, NOOR = "+12125550111", "+12125550112", "+12125550113"


class Night:
    """One studio that is live, and what left it at each moment."""

    def __init__(self, cast: Cast) -> None:
        self.cast = cast
        self.midnight = cast.at(0)  # staff see to it in the morning after, which is now

    def at(self, hours: int, minutes: int = 0) -> datetime:
        return self.midnight + timedelta(hours=hours, minutes=minutes)

    def round(self, at: datetime) -> dict[str, str]:
        """Let the engine look once; return the texts that left, by whom they went to."""
        before = len(memory.taken)
        tasks.send_due(studio_id=self.cast.studio.pk, now=at)
        return {one.address: one.text for one in memory.taken[before:]}


@pytest.fixture
def night(cast: Cast) -> Night:
    """Mia wears a set that Ada did the day before, and has a fill booked in ten days."""
    Studio.objects.update(live_since=cast.now - timedelta(days=30), third_contact=cast.noor)
    lines_of(cast.studio)
    cast.studio.lines.update(transport=MEMORY)
    for person, number in ((cast.ada, ADA), (cast.olga, OLGA), (cast.noor, NOOR)):
        Staff.objects.filter(pk=person.pk).update(mobile=number, morning_at="12:00")
    mia = cast.client("Mia", "Quist", sensitive=False, language="en")
    cast.done(mia, cast.at(12, -1), "full set")
    cast.visit(mia, cast.at(14, 11))
    evening = cast.at(21, -1)
    upkeep.catch_up(evening, studio=cast.studio)
    tasks.send_due(studio_id=cast.studio.pk, now=evening)
    return Night(cast)


def test_an_eye_that_will_not_open_at_two_at_night(night: Night, as_: SignIn) -> None:
    cast, mia = night.cast, night.cast.clients["Mia"]
    ahead = mia.messages.filter(occasion="prepare", state="planned")
    assert ahead.exists()
    line = lines_of(cast.studio)["sms"]

    # 2:00: she writes. The same round answers her, holds what was planned, and pages her artist.
    receiving.receive(line, mia.mobile, "woke up and i cant open my right eye!!", received_at=night.at(2))
    left = night.round(night.at(2))
    assert set(left) == {mia.mobile, ADA}
    assert left[mia.mobile].startswith("Do not force the eye open")
    assert "911" in left[mia.mobile]
    assert left[mia.mobile].endswith("Do not wait for us.")
    assert not [word for word in ("Mia", "Quist", "eye") if word in left[ADA]]
    assert not ahead.exists()
    assert mia.messages.filter(occasion="prepare", state="withheld", reason="on hold").exists()

    # Nobody takes it: the owner after a quarter of an hour, the third contact after half an hour.
    assert set(night.round(night.at(2, 14))) == set()
    assert set(night.round(night.at(2, 15))) == {OLGA}
    assert set(night.round(night.at(2, 30))) == {NOOR}

    # She writes again, the same: the answer goes again only after ten minutes, and nobody is paged twice for it.
    receiving.receive(line, mia.mobile, "still cant open it", received_at=night.at(2, 31))
    assert set(night.round(night.at(2, 31))) == {mia.mobile}

    # After an hour she is told that nobody could see it, and everybody is called once more.
    told = night.round(night.at(3))
    assert set(told) == {mia.mobile, ADA, OLGA, NOOR}
    assert "nobody here could see your message yet" in told[mia.mobile]

    # Ada wakes up, says that she has it, and calls.
    flag = Flag.objects.get()
    ada = as_(cast.ada)
    assert "cant open my right eye" in words(ada.get("/morning"))
    assert "Ada has this since" in words(ada.post(f"/flags/{flag.pk}/take", follow=True))
    assert set(night.round(night.at(4))) == set()

    # What came of it goes on her record and holds her.
    done = {"outcome": "saw_doctor", "words": "An eye doctor saw her at eight.", "on_record": "on"}
    page = words(ada.post(f"/flags/{flag.pk}/close", done, follow=True))
    assert "she is on hold until someone releases her" in page
    reaction = Reaction.objects.get()
    assert (reaction.client, reaction.outcome, reaction.side) == (mia, "saw_doctor", "right")
    assert "sealed_eye" in reaction.signs
    assert facts.load([mia.pk], cast.now)[mia.pk].hold_why == "a reaction is on record"
    assert "on hold: decide and call" in words(ada.get(f"/today?day={cast.at(14, 11):%Y-%m-%d}")).lower()

    # She still wears the set: one check the next day, in spite of the hold. Nothing else is asked of that set.
    checks = Message.objects.filter(client=mia, occasion="check", state="planned")
    assert [check.aim_at for check in checks] == [cast.at(10, 1)]

    # A person releases her, "test first": the patch test for her booked fill is due, and her instructions go again.
    assert not facts.load([mia.pk], cast.now)[mia.pk].tests_due
    form = {"clinician_consulted": "yes", "test_first": "yes"}
    assert "Released." in words(ada.post(f"/reactions/{reaction.pk}/release", form, follow=True))
    book = facts.load([mia.pk], cast.now)[mia.pk]
    assert not book.on_hold
    assert len(book.tests_due) == 1
    assert mia.messages.filter(occasion="patch_test", state="planned").exists()
    assert mia.messages.filter(occasion="prepare", state="planned").exists()
