"""Where mail providers tell us what came in and what became of what we sent: anymail's routes, for those with a secret.

Without ``ANYMAIL_WEBHOOK_SECRET`` there are none: whoever found them could write as any client.
"""

from __future__ import annotations

from typing import Any

from anymail import urls
from anymail.signals import inbound
from django.conf import settings
from django.contrib.auth.decorators import login_not_required
from django.urls import URLPattern

from aftercare.mailhooks import Bounded


def _callback(pattern: URLPattern) -> Any:
    """Return the provider's view; where mails come in, one that no mail keeps busy for long."""
    view = getattr(pattern.callback, "view_class", None)
    if view is None or view.signal is not inbound or issubclass(view, Bounded):
        return pattern.callback
    return type(view.__name__, (Bounded, view), {}).as_view(**pattern.callback.view_initkwargs)  # type: ignore[attr-defined]


urlpatterns: list[URLPattern] = []
if settings.ANYMAIL.get("WEBHOOK_SECRET"):
    for pattern in urls.urlpatterns:
        pattern.callback = login_not_required(_callback(pattern))  # a provider signs in with the secret
        urlpatterns.append(pattern)
