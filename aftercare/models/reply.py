"""Replies as they came, and the open matters that they make."""

from __future__ import annotations

from django.db import models
from django.utils.translation import gettext_lazy as _

from aftercare.models.line import Line
from aftercare.models.message import Message
from studio.models import Client, Staff, Studio

URGENCIES = ("emergency", "same_day", "unread", "watch", "none")  # of a flag, worst first; unread: not understood
HELD_BY = ("emergency", "same_day")  # those that put her on hold


class Flag(models.Model):
    """An open matter of one client (of several, where they share the address it came from)."""

    class State(models.TextChoices):
        OPEN = "open", _("open")
        TAKEN = "taken", _("taken")
        CLOSED = "closed", _("closed")

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="flags")
    clients = models.ManyToManyField(Client, related_name="flags", blank=True)
    urgency = models.CharField(max_length=10, default="unread")  # one of URGENCIES
    state = models.CharField(max_length=6, choices=State.choices, default=State.OPEN)
    opened_at = models.DateTimeField()
    urgent_since = models.DateTimeField()  # since when it is as urgent as it is: from then on it pages
    call_by = models.DateTimeField(null=True, blank=True)  # by when she was told that a person calls her
    try_again_at = models.DateTimeField(null=True, blank=True)  # she could not be reached: when to try again
    taken_at = models.DateTimeField(null=True, blank=True)
    taken_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    closed_at = models.DateTimeField(null=True, blank=True)
    closed_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")
    outcome = models.CharField(max_length=16, blank=True)  # core.outcomes.Outcome
    words = models.TextField(blank=True)  # the person's own words on closing

    class Meta:
        ordering = ["opened_at"]
        indexes = [
            models.Index(
                fields=["studio", "opened_at"], condition=models.Q(state__in=["open", "taken"]), name="flag_standing"
            )
        ]

    def __str__(self) -> str:
        return f"{self.urgency}, {self.state}"


class Reply(models.Model):
    """What came back to a line from an address. Stored before anything is made of it."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="replies")
    line = models.ForeignKey(Line, on_delete=models.CASCADE, related_name="replies")
    from_address = models.CharField(max_length=254)
    provider_ref = models.CharField(max_length=200)  # unique on its line: the same reply twice is one
    received_at = models.DateTimeField()
    subject = models.CharField(max_length=400, blank=True)
    text = models.TextField(blank=True)  # her own words
    below = models.TextField(blank=True)  # of an e-mail: what her program quoted under them, her signature
    raw = models.TextField(blank=True)
    client = models.ForeignKey(Client, on_delete=models.SET_NULL, null=True, blank=True, related_name="replies")
    answers = models.ForeignKey(Message, on_delete=models.SET_NULL, null=True, blank=True, related_name="answers")
    automatic = models.BooleanField(default=False)  # a machine's: RFC 3834; never answered
    command = models.CharField(max_length=8, blank=True)  # stop, start, help: the standard words alone
    ticked = models.JSONField(default=dict)  # on a page of her own, see core.ticks; {}: it came by the line itself
    reading = models.JSONField(default=dict)  # what the software takes it to say, see core.reading; {} is nothing
    flag = models.ForeignKey(Flag, on_delete=models.SET_NULL, null=True, blank=True, related_name="replies")
    read_at = models.DateTimeField(null=True, blank=True)  # when the software made something of it

    class Meta:
        ordering = ["received_at", "id"]
        verbose_name_plural = "replies"
        constraints = [models.UniqueConstraint(fields=["line", "provider_ref"], name="one_reply_a_provider_ref")]
        indexes = [
            models.Index(fields=["client", "received_at"], name="reply_of_client"),
            models.Index(fields=["studio", "received_at"], name="reply_of_studio"),
            models.Index(fields=["line", "from_address", "received_at"], name="reply_by_address"),
            models.Index(fields=["received_at"], condition=models.Q(read_at=None), name="reply_to_read"),
        ]

    def __str__(self) -> str:
        return f"reply of {self.received_at:%Y-%m-%d %H:%M}"


class Stray(models.Model):
    """A reply to a number that is no line's: nobody's to read, and kept until a line has that number."""

    account = models.CharField(max_length=60)  # of the road that it came by
    provider_ref = models.CharField(max_length=200)
    from_address = models.CharField(max_length=254)
    to_address = models.CharField(max_length=254)
    text = models.TextField(blank=True)
    raw = models.TextField(blank=True)
    received_at = models.DateTimeField()

    class Meta:
        constraints = [models.UniqueConstraint(fields=["account", "provider_ref"], name="one_stray_a_reference")]

    def __str__(self) -> str:
        return f"to {self.to_address}, by {self.account}"


class Attachment(models.Model):
    """A picture or a file that came with a reply, for the artist alone; a picture without the place it was taken at.

    What could not be kept (too large, of a kind that may run code) has no ``content``, and ``problem`` says why.
    """

    reply = models.ForeignKey(Reply, on_delete=models.CASCADE, related_name="attachments")
    name = models.CharField(max_length=200, blank=True)  # as she called it; shown, never used as a path
    kind = models.CharField(max_length=80, blank=True)  # media type by its content, whatever it was called
    content = models.BinaryField(null=True, blank=True)
    size = models.PositiveIntegerField(default=0)  # bytes, as it came
    problem = models.CharField(max_length=200, blank=True)

    class Meta:
        ordering = ["id"]

    def __str__(self) -> str:
        return self.kind


class Wish(models.Model):
    """What a reply asks of the front desk: her booking, a wrong number. It shows no word on health."""

    class Kind(models.TextChoices):
        BOOKING = "booking", _("about a booking")
        CONFIRMED = "confirmed", _("confirms her visit")
        MOVE = "move", _("asks to move her visit")
        FORGET = "forget", _("asks to be forgotten")
        MAY_CANCEL = "may_cancel", _("ended the texts, and may have meant the visit")
        WRONG_PERSON = "wrong_person", _("says she is not the person meant")

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="wishes")
    reply = models.ForeignKey(Reply, on_delete=models.CASCADE, related_name="wishes")
    kind = models.CharField(max_length=12, choices=Kind.choices)
    at = models.DateTimeField()
    seen_to_at = models.DateTimeField(null=True, blank=True)
    seen_to_by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["at"]
        verbose_name_plural = "wishes"
        constraints = [models.UniqueConstraint(fields=["reply", "kind"], name="one_wish_a_reply_and_kind")]
        indexes = [models.Index(fields=["studio", "at"], condition=models.Q(seen_to_at=None), name="wish_standing")]

    def __str__(self) -> str:
        return f"{self.kind}, {self.at:%Y-%m-%d}"
