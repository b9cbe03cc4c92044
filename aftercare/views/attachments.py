"""A picture that a client sent: for those alone who may read about her health."""

from __future__ import annotations

from django.http import Http404, HttpResponse, HttpResponseBase
from django.shortcuts import get_object_or_404
from django.views.decorators.cache import never_cache
from django.views.decorators.http import require_safe

from aftercare.models import Attachment
from aftercare.views.flags import was_paged
from studio.access import StudioRequest, page


@require_safe
@never_cache
@page("artist")
def attachment(request: StudioRequest, attachment_id: int) -> HttpResponseBase:
    """Give it as what it was made: a browser runs nothing of it, and keeps no copy."""
    row = get_object_or_404(Attachment.objects.select_related("reply"), reply__studio=request.studio, pk=attachment_id)
    if row.content is None or not _may_see(request, row):
        raise Http404
    response = HttpResponse(bytes(row.content), content_type=row.kind)
    response["Content-Disposition"] = f"inline; filename=picture-{row.pk}.{row.kind.rpartition('/')[2]}"
    response["Content-Security-Policy"] = "default-src 'none'; sandbox"
    response["X-Content-Type-Options"] = "nosniff"
    return response


def _may_see(request: StudioRequest, row: Attachment) -> bool:
    if request.may.own:
        return True
    hers = [row.reply.client] if row.reply.client is not None else []
    if row.reply.flag is not None:
        hers += row.reply.flag.clients.all()
    if request.may.read_health_of([client.pk for client in hers]):
        return True
    return row.reply.flag is not None and was_paged(request, row.reply.flag)
