"""Signing in and out, one's password, one's language, and choosing among several studios."""

from __future__ import annotations

import hashlib
from collections.abc import Callable
from contextlib import suppress
from typing import Any

from django.conf import settings
from django.contrib import messages
from django.contrib.auth.forms import AuthenticationForm, PasswordChangeForm
from django.contrib.auth.middleware import LoginRequiredMiddleware
from django.contrib.auth.views import LoginView, PasswordChangeView
from django.core.cache import cache
from django.core.exceptions import BadRequest, ValidationError
from django.http import Http404, HttpRequest, HttpResponse, HttpResponseBase
from django.shortcuts import redirect, render
from django.urls import reverse_lazy
from django.utils import translation
from django.utils.http import url_has_allowed_host_and_scheme
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _
from django.views.decorators.http import require_POST

from studio import access, records
from studio.views import kept

FAILURES = 10
# With whatever e-mails, from one place: a whole studio is behind one address, and forgets passwords after a holiday.
FAILURES_OF_A_PLACE = 100
MINUTES = 15


class SignInForm(AuthenticationForm):
    """E-mail and password; refuses to look at them after too many failures from one place."""

    error_messages = {  # Django's own shape
        **AuthenticationForm.error_messages,
        "invalid_login": _(
            "This e-mail and this password do not go together. Check both; capitals count in the password. "
            "The studio’s owner can set a new one for you."
        ),
    }

    def __init__(self, request: Any = None, *args: Any, **kwargs: Any) -> None:
        super().__init__(request, *args, **kwargs)
        self.fields["username"].label = _("E-mail")
        widget: Any = self.fields["username"].widget
        widget.input_type = "email"

    def clean(self) -> dict[str, Any]:
        key = _key(self.request, str(self.data.get("username", "")))
        place = _key(self.request, "")
        if cache.get(place, 0) >= FAILURES_OF_A_PLACE:
            raise ValidationError(
                gettext("There were %(n)s failed tries from here. Wait %(minutes)s minutes, then try again.")
                % {"n": FAILURES_OF_A_PLACE, "minutes": MINUTES},
                code="too_many",
            )
        if cache.get(key, 0) >= FAILURES:
            raise ValidationError(
                gettext(
                    "There were %(n)s failed tries with this e-mail from here. Wait %(minutes)s minutes, then try "
                    "again; or ask the studio’s owner to set a new password."
                )
                % {"n": FAILURES, "minutes": MINUTES},
                code="too_many",
            )
        try:
            cleaned: dict[str, Any] = super().clean()
        except ValidationError:
            for count in (key, place):
                _count(count)
            raise
        cache.delete(key)
        return cleaned


class SignIn(LoginView):
    """The door. What was typed before it is handed back behind it."""

    template_name = "studio/sign_in.html"
    form_class = SignInForm
    authentication_form = SignInForm
    redirect_authenticated_user = True

    def get_context_data(self, **more: Any) -> dict[str, Any]:
        return super().get_context_data(kept=self.request.POST.get("kept", ""), **more)

    def form_valid(self, form: AuthenticationForm) -> HttpResponse:
        signed_in = super().form_valid(form)
        typed = kept.Typed.of(self.request.POST.get("kept", ""))
        return kept.send_again(self.request, typed) if typed else signed_in


class SignInFirst(LoginRequiredMiddleware):
    """Every page needs a sign-in; a form that was sent without one is kept until there is one."""

    def handle_no_permission(  # type: ignore[override]  # the stubs know of nothing but a redirect
        self, request: HttpRequest, view_func: Callable[..., Any]
    ) -> HttpResponseBase:
        typed = kept.typed_in(request)
        if typed is None:
            return super().handle_no_permission(request, view_func)
        shown = {"form": SignInForm(request), "kept": typed.signed(), "next": ""}
        return render(request, "studio/sign_in.html", shown, status=403)


class ChangePassword(PasswordChangeView):
    """A new password, for oneself."""

    template_name = "studio/password.html"
    form_class = PasswordChangeForm
    success_url = reverse_lazy("password")

    def dispatch(self, request: HttpRequest, *args: Any, **kwargs: Any) -> Any:
        access.stand(request)
        return super().dispatch(request, *args, **kwargs)

    def form_valid(self, form: Any) -> HttpResponse:
        if form.user.one_time_password:  # her first sign-in: her day comes next, not this form once more
            self.success_url = reverse_lazy("home")
        form.user.one_time_password = False  # saved with the password
        messages.success(self.request, gettext("Your password is changed."))
        return super().form_valid(form)


@require_POST
@access.page()
def choose_studio(request: access.StudioRequest) -> HttpResponse:
    """Go on in another of one's studios."""
    try:
        wanted = int(request.POST.get("studio", ""))
    except ValueError as error:
        raise BadRequest("studio is not a number") from error
    if not access.choose(request, wanted):
        raise Http404
    return redirect("home")


@require_POST
@access.page()
def choose_language(request: access.StudioRequest) -> HttpResponse:
    """Go on in another language, on the page that she was on."""
    language = request.POST.get("language", "")
    try:
        records.choose_language(user=request.user, language=language)
    except ValidationError as error:
        raise BadRequest(" ".join(error.messages)) from error
    translation.activate(language)
    messages.success(request, gettext("Pages, and messages to you, are in English now."))
    back = request.POST.get("next", "")
    here = url_has_allowed_host_and_scheme(back, {request.get_host()}, require_https=request.is_secure())
    return redirect(back if here else "home")


def _count(key: str) -> None:
    cache.add(key, 0, MINUTES * 60)
    with suppress(ValueError):  # it was over between the two: nothing is counted that is forgotten anyway
        cache.incr(key)


def _key(request: HttpRequest | None, email: str) -> str:
    """Name the count of one e-mail's failures from one place, '' of all from there, without keeping either."""
    place = _comes_from(request) if request else ""
    return "sign-in:" + hashlib.sha256(f"{email.strip().lower()}\0{place}".encode()).hexdigest()


def _comes_from(request: HttpRequest) -> str:
    """Return the address that the request came from: behind a proxy, the one that the proxy itself added last."""
    if settings.SECURE_PROXY_SSL_HEADER and (forwarded := request.META.get("HTTP_X_FORWARDED_FOR")):
        return str(forwarded).rpartition(",")[2].strip()
    return str(request.META.get("REMOTE_ADDR", ""))
