"""What the front desk can reach by links, after a client has told of her eyes in every way that her pages have."""

from __future__ import annotations

import re
from datetime import timedelta

import pytest
from django.test import Client as Browser

from aftercare import links, sending, upkeep
from aftercare.links import Purpose
from aftercare.models import Flag, Message, Wish
from studio import clock
from tests.aftercare.views.test_consultation import filled
from tests.cast import Cast
from tests.pages import SignIn

OF_HEALTH = ("qqhealth", "hives", "swollen", "redness", "light hurts", "latex", "emergency care", "sensitive")
WAY = re.compile(r"/[vcdq]/[0-9A-Za-z]{13,40}")  # to her own pages: whoever has it reads what she told
MOST = 150  # pages: far more than there are


@pytest.mark.django_db
def test_no_page_that_the_desk_can_reach_says_a_word_on_health_or_opens_hers(cast: Cast, as_: SignIn) -> None:
    mia = cast.client("Mia", "Okafor", email="mia@mail.example", sensitive=True, note="qqhealth")
    done, booked = cast.done(mia, cast.at(9, -3)), cast.visit(mia, cast.at(10, 3))
    before = f"/c/{links.token(Purpose.CONSULTATION, booked)}"
    told = filled(eye_now="yes", signs=["redness", "light"], more="qqhealth", latex="yes", latex_words="qqhealth")
    Browser().post(before, told)
    visit = f"/v/{links.token(Purpose.VISIT, booked)}"
    Browser().post(
        f"/v/{links.token(Purpose.VISIT, done)}", {"do": "eyes", "tick": ["swollen", "hives"], "words": "qqhealth"}
    )
    Browser().post(visit, {"do": "move", "words": "qqhealth, o olho inchou muito"})
    Browser().post(visit, {"do": "record"})
    Browser().post(f"/d/{links.token(Purpose.DATA, mia)}", {"do": "forget"})
    upkeep.plan_clients([mia.pk], cast.now)
    sending.sweep(clock.now() + timedelta(minutes=1))
    assert Flag.objects.exists()
    assert {wish.kind for wish in Wish.objects.all()} == {"move", "forget"}
    assert Message.objects.filter(state="handed_over", kind="your_record").exists()

    desk, seen, waiting = as_(cast.dee), set[str](), ["/", f"/clients/{mia.pk}", "/figures"]
    while waiting and len(seen) < MOST:
        path = waiting.pop()
        if path in seen:
            continue
        seen.add(path)
        page = desk.get(path, follow=True)
        if page.status_code != 200:
            continue
        text = page.content.decode()
        assert not [word for word in OF_HEALTH if word in text.lower()], path
        assert not WAY.search(text), path
        waiting += [link.replace("&amp;", "&") for link in re.findall(r'href="(/(?!static/)[^"#]*)"', text)]
    assert 15 < len(seen) < MOST
