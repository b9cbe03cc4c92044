"""What a client does on her own page by a button: confirm, ask for another day, choose, stop, end her links."""

from __future__ import annotations

from collections.abc import Callable
from datetime import datetime

from django.core.exceptions import ValidationError
from django.http import HttpRequest
from django.utils.translation import gettext as _

from aftercare import choices, tasks, upkeep
from aftercare.core.ticks import Asks
from aftercare.forms.hers import Told
from aftercare.links import Opened
from aftercare.views.her_words import Said, ask, eyes, listen, page_of, told_before


def hear(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    """Do what was posted, and say what came of it."""
    acts: dict[str, Callable[[HttpRequest, Opened, str, datetime], Said]] = {
        "eyes": eyes,
        "confirm": _confirm,
        "move": _move,
        "channel": _channel,
        "language": _language,
        "hours": _hours,
        "stop": _stop,
        "record": _record,
        "end": _end,
        "not_me": _not_me,
    }
    act = acts.get(request.POST.get("do", ""))
    if act is None:
        return Said(problem=_("That button is not on this page any more. Look below, and press it again."), status=400)
    return act(request, opened, language, now)


def _confirm(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    if not page_of(opened, language, now).is_ahead:
        return Said(problem=_over(), status=400, opened="visit")
    if not page_of(opened, language, now).has_asked(Asks.CONFIRM, told_before(opened)) and not ask(
        request, opened, Asks.CONFIRM, language, now
    ):
        return _not_kept("visit")
    return Said(text=_("Thank you: the studio knows that you come."), opened="visit")


def _move(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    """Put it on the front desk's list; an eye that she tells of beside it is answered as anywhere on the page."""
    assert opened.visit is not None
    told = Told.asking(request, Asks.MOVE, opened.visit.pk, language)
    if not page_of(opened, language, now).is_ahead:
        if not told.words:
            return Said(problem=_over(), status=400, opened="visit")
        said = listen(opened, told.in_words_alone(), language, now, "visit")
        said.problem = said.problem or _over()
        return said
    said = listen(opened, told, language, now, "visit")
    if said.heard:
        said.heard = bool(said.answers)
        said.text = _(
            "The studio has it and finds another day with you. Until you hear from them, the visit stays as it is."
        )
    return said


def _over() -> str:
    return _("This visit is not ahead any more. Call the studio for a new one.")


def _not_kept(opened: str) -> Said:
    return Said(problem=_("That could not be written down now. Call the studio."), status=503, opened=opened)


def _channel(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    channel = request.POST.get("channel", "")
    shown = _("Messages about my visits by text") if channel == "sms" else _("Messages about my visits by e-mail")
    return _choose(opened, lambda: choices.choose_channel(opened.client, channel, words_shown=shown, now=now), now)


def _language(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    wanted = request.POST.get("language", "")
    return _choose(opened, lambda: choices.choose_language(opened.client, wanted, now=now), now)


def _hours(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    wanted = request.POST.get("hours", "?")
    return _choose(opened, lambda: choices.choose_hours(opened.client, wanted, now=now), now)


def _choose(opened: Opened, choose: Callable[[], object], now: datetime) -> Said:
    try:
        choose()
    except ValidationError as error:
        return Said(problem=" ".join(error.messages), status=400, opened="messages")
    opened.client.refresh_from_db()
    upkeep.plan_clients([opened.client.pk], now)
    return Said(text=_("Changed. It holds from the next message on."), opened="messages")


def _stop(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    if not choices.stop_everything(opened.client, now=now):
        return Said(text=_("There is no number or address of yours here: nothing goes to you."), opened="messages")
    upkeep.plan_clients([opened.client.pk], now)
    text = _(
        "Stopped: no more texts or e-mails about visits, aftercare or reminders. This page stays. If an eye hurts or "
        "swells, call the studio or see a doctor; do not wait for a message."
    )
    return Said(text=text, opened="messages")


def _record(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    channel = choices.send_record(opened.client, now=now)
    tasks.nudge()
    if channel == "sms":
        return Said(text=_("On its way, by text to your own number."), opened="messages")
    if channel == "email":
        return Said(text=_("On its way, by e-mail to your own address."), opened="messages")
    problem = _("There is no way to write to you. Ask the studio, and they show it to you.")
    return Said(problem=problem, opened="messages")


def _end(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    choices.end_links(opened.client, now=now)
    return Said()


def _not_me(request: HttpRequest, opened: Opened, language: str, now: datetime) -> Said:
    """Somebody else got the link: the number rests, the links end, and the front desk asks for the right one."""
    if not ask(request, opened, Asks.NOT_ME, language, now):
        return _not_kept("messages")
    return Said(text=_("Thank you: the studio is told, and nothing more goes there."), opened="messages")
