"""A client's card: who she is, what was said, what goes to her and why."""

from __future__ import annotations

from django.db.models import BigIntegerField
from django.http import Http404, HttpResponseBase
from django.shortcuts import redirect, render

from aftercare import facts, links
from aftercare.facts import ClientBook
from aftercare.pages import card, consultation, herset, sheet, shown
from studio.access import StudioRequest, page
from studio.forms.clients import PauseForm
from studio.models import Visit


@page()
def client(request: StudioRequest, client_id: int) -> HttpResponseBase:
    """Show the card. Health notes and the conversation only to those who may read them."""
    is_a_key = client_id <= BigIntegerField.MAX_BIGINT  # a larger number trips the database over, not only its query
    book = facts.load([client_id], request.now).get(client_id) if is_a_key else None
    if book is None or book.studio != request.studio:
        raise Http404
    if book.client.merged_into_id is not None:
        return redirect("client", book.client.merged_into_id)
    reads = sheet.reads_health(request.may, book)
    gone, still = card.messages_of(book)
    allowed = {client_id} if reads else set[int]()
    ahead, past = card.visits_of(book, request.now)
    said = card.conversation(card.replies_of(book.client), shown.show(gone, book.rules, allowed)) if reads else []
    every_visit = request.GET.get("visits") == "all"
    return render(
        request,
        "aftercare/client.html",
        {
            "client": book.client,
            "book": book,
            "reads": reads,
            "hers": herset.her_set(book) if request.may.treat else None,
            "still": shown.show(card.recent(still, request.now), book.rules, allowed),
            "said": said[-card.LATEST :],
            "said_more": len(said) > card.LATEST,
            "asked": consultation.newest_of(book, ahead),
            "ahead": ahead,
            "past": past if every_visit else past[: card.FORMER],
            "past_more": 0 if every_visit else max(0, len(past) - card.FORMER),
            "tests": card.tests_of(book) if reads else [],
            "tests_due": book.tests_due if reads else {},
            "reactions": book.reactions if reads else [],
            "consents": list(book.client.consents.select_related("by").order_by("-at", "-pk")),
            "stopped": sorted(book.contact.stopped),
            "resting": book.resting,
            "own_page": _own_page(book, ahead, past) if reads and request.may.treat else "",
            "pause": PauseForm(),
            "changes": request.may.book or reads,
        },
    )


def _own_page(book: ClientBook, ahead: list[Visit], past: list[Visit]) -> str:
    """Return the way to her page about the visit next to today; '' where she has none."""
    visit = next(iter([*ahead[:1], *past[:1]]), None)
    return links.address(links.Purpose.VISIT, visit, revoked=book.revoked) if visit else ""
