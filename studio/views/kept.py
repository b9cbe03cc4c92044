"""What somebody typed is not lost where the page could not take it: her sign-in was over, or the page was too old.

It is shown once more with a button that sends it. Only what came from a page of ours is offered so: what another site
made her browser send is not put one tap away from being done. Passwords are never kept, and files cannot be.
"""

from __future__ import annotations

from dataclasses import dataclass
from urllib.parse import urlsplit

from django.core import signing
from django.http import HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import render
from django.urls import reverse
from django.views.csrf import csrf_failure

SALT = "typed"
WORTH_SHOWING = 20  # letters
FORMS = ("application/x-www-form-urlencoded", "multipart/form-data")


@dataclass(frozen=True, slots=True)
class Typed:
    """A form as it was sent: where to, and what was in it."""

    path: str
    fields: tuple[tuple[str, str], ...]
    had_files: bool = False

    def signed(self) -> str:
        """Return it as one text that only we can have written."""
        return signing.dumps([self.path, self.fields, self.had_files], salt=SALT, compress=True)

    @classmethod
    def of(cls, text: str) -> Typed | None:
        """Return what was signed, or None for a text that we did not write."""
        try:
            path, fields, had_files = signing.loads(text, salt=SALT)
        except signing.BadSignature:
            return None
        return cls(path, tuple((name, value) for name, value in fields), had_files)

    @property
    def words(self) -> list[str]:
        """What was written rather than chosen, as far as it is long enough to be missed."""
        return [value for _name, value in self.fields if len(value) >= WORTH_SHOWING]


def too_old(request: HttpRequest, reason: str = "") -> HttpResponseBase:
    """Answer a form whose proof that it is ours is out of date: show it once more, or say that nothing was changed."""
    typed = typed_in(request)
    if typed is None:
        return csrf_failure(request, reason)
    return send_again(request, typed, status=403)


def send_again(request: HttpRequest, typed: Typed, *, status: int = 200) -> HttpResponse:
    """Show what was typed, and a button that sends it."""
    response = render(request, "studio/send_again.html", {"typed": typed}, status=status)
    response.headers["Cache-Control"] = "no-store"
    return response


def typed_in(request: HttpRequest) -> Typed | None:
    """Return the form that a request carries, if it came from one of our pages and holds no password."""
    if request.method != "POST" or request.content_type not in FORMS or not _is_ours(request):
        return None
    if request.path in (reverse("sign_in"), reverse("password")):
        return None
    fields = tuple(
        (name, value)
        for name in request.POST
        for value in request.POST.getlist(name)
        if name != "csrfmiddlewaretoken" and "password" not in name
    )
    return Typed(request.get_full_path(), fields, bool(request.FILES))


def _is_ours(request: HttpRequest) -> bool:
    came_from = request.headers.get("Origin") or request.headers.get("Referer", "")
    there = urlsplit(came_from)
    return (there.scheme, there.netloc) == (request.scheme, request.get_host())
