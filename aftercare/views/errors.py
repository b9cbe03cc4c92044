"""What the records refuse, said to the person at the page."""

from __future__ import annotations

from django.contrib import messages
from django.core.exceptions import ValidationError
from django.http import HttpRequest


def tell(request: HttpRequest, error: ValidationError) -> None:
    """Show each problem under the page's heading."""
    for problem in error.messages:
        messages.error(request, problem)
