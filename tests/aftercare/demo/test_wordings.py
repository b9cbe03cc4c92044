"""The demo owner's own wordings."""

from __future__ import annotations

from aftercare import versions
from aftercare.core.wordcheck import blocks_saving
from aftercare.demo import wordings
from aftercare.models import Wording
from aftercare.versions import Slot
from aftercare.wording import Words, problems
from tests.cast import Cast, make


def test_what_the_demo_s_owner_wrote_stands_up_to_the_check(db: None) -> None:
    cast: Cast = make()

    wordings.write(cast.studio, cast.now)

    assert Wording.objects.count() == 4
    find = versions.finder(cast.studio)
    for row in Wording.objects.exclude(occasion="caution"):
        slot = Slot(row.occasion, row.kind, row.step, row.channel, row.language)
        found = problems(
            slot.occasion, slot.kind, slot.step, slot.channel, slot.language, Words(row.subject, row.body), find
        )
        assert not blocks_saving(found), found
