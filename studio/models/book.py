"""How the appointment book comes in: files on their way, and calendars that are polled."""

from __future__ import annotations

from django.db import models
from django.utils.translation import gettext_lazy as _

from studio.models.people import Staff, Studio


class BookFile(models.Model):
    """A file of the appointment book: read, shown as a preview, and written when confirmed."""

    class State(models.TextChoices):
        READING = "reading", _("being read")
        PREVIEW = "preview", _("read: waiting for your go")
        WRITING = "writing", _("being written")
        DONE = "done", _("written")
        FAILED = "failed", _("not written")

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="book_files")
    name = models.CharField(max_length=200)
    format = models.CharField(max_length=3, choices=[("csv", "CSV"), ("ics", "iCalendar")])
    data = models.BinaryField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, related_name="+")
    uploaded_at = models.DateTimeField()
    state = models.CharField(max_length=7, choices=State.choices, default=State.READING)
    skip_bad = models.BooleanField(default=False)
    whole_from = models.DateField(null=True, blank=True)  # “this file is the whole book from A to B”
    whole_to = models.DateField(null=True, blank=True)
    done_rows = models.PositiveIntegerField(default=0)
    all_rows = models.PositiveIntegerField(default=0)
    doing = models.CharField(max_length=60, blank=True)  # what the worker is at, and until when it is believed
    busy_until = models.DateTimeField(null=True, blank=True)
    result = models.JSONField(default=dict)

    class Meta:
        ordering = ["-uploaded_at"]
        indexes = [
            models.Index(
                fields=["uploaded_at"],
                condition=models.Q(state__in=["reading", "writing"]),
                name="book_file_waiting",
            )
        ]

    def __str__(self) -> str:
        return self.name


class CalendarFeed(models.Model):
    """A calendar address that is polled on a schedule."""

    studio = models.OneToOneField(Studio, on_delete=models.CASCADE, related_name="calendar_feed")
    address = models.URLField(_("calendar address"), max_length=500)
    every_minutes = models.PositiveSmallIntegerField(_("look every … minutes"), default=15)
    asked_at = models.DateTimeField(null=True, blank=True)
    read_at = models.DateTimeField(null=True, blank=True)  # the last time that it was read without fault
    etag = models.CharField(max_length=200, blank=True)
    digest = models.CharField(max_length=64, blank=True)
    problem = models.TextField(blank=True)

    def __str__(self) -> str:
        return self.address
