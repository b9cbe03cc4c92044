"""The files that came with replies, as pages list them: never their content."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from django.db.models import Count, OuterRef, QuerySet, Subquery

from aftercare.models import Attachment, Reply
from studio.aggregates import Listed


def with_files(replies: QuerySet[Reply]) -> QuerySet[Any]:
    """Have each reply bring along which pictures came with it (``listed``), and how many files were not kept."""
    own = Attachment.objects.filter(reply=OuterRef("pk")).order_by().values("reply")
    kept = own.filter(content__isnull=False).annotate(ids=Listed("pk")).values("ids")
    lost = own.filter(content__isnull=True).annotate(n=Count("pk")).values("n")
    return replies.annotate(listed=Subquery(kept), files_lost=Subquery(lost))


def brought(replies: Iterable[Any]) -> list[Any]:
    """Read replies that `with_files` prepared; each has the keys of its ``pictures``."""
    found = list(replies)
    for reply in found:
        reply.pictures = sorted(int(pk) for pk in reply.listed.split(",")) if reply.listed else []
    return found
