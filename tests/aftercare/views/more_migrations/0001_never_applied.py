"""For /healthz to find."""

from __future__ import annotations

from django.db import migrations


class Migration(migrations.Migration):
    """Changes nothing."""
