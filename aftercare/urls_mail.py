"""Where mail providers tell us what came in and what became of what we sent: anymail's routes, for those with a secret.

Without ``ANYMAIL_WEBHOOK_SECRET`` there are none: whoever found them could write as any client.
"""

from __future__ import annotations

from anymail import urls
from django.conf import settings
from django.contrib.auth.decorators import login_not_required
from django.urls import URLPattern

urlpatterns: list[URLPattern] = []
if settings.ANYMAIL.get("WEBHOOK_SECRET"):
    for pattern in urls.urlpatterns:
        pattern.callback = login_not_required(pattern.callback)  # a provider signs in with the secret
        urlpatterns.append(pattern)
