"""Messages: the only promise to send; their attempts, and what the provider said became of them."""

from __future__ import annotations

from django.db import models
from django.db.models import Q

from aftercare.core.delivery import State
from aftercare.core.timing import Occasion
from aftercare.models.forecast import Forecast
from aftercare.models.line import Line
from studio.models import Client, Staff, Studio, Visit


def occasions() -> list[tuple[str, str]]:
    """Choices as a function, so that a new occasion needs no migration."""
    return [(occasion.value, occasion.value) for occasion in Occasion]


def states() -> list[tuple[str, str]]:
    """Choices as a function, so that a new state needs no migration."""
    return [(state.value, state.value) for state in State]


def _index_of_few(name: str) -> models.Index:
    """Index a link that few messages have: the others' rows, which are written time and again, do not pay for it."""
    return models.Index(fields=[name], condition=Q(**{f"{name}__isnull": False}), name=f"message_of_{name}")


class Message(models.Model):
    """One thing to tell one client, or staff member, about one occasion: promised once.

    ``key`` is made in ``core`` and names the promise within its studio, edition included. ``aim_at``,
    ``no_later_than``, ``planned_from`` and ``about_start`` are what it was planned from; ``due_at`` follows from them.

    Each row is written four times or more until it has arrived, and each time into every index: a link has none of
    its own where another index begins with it.
    """

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="messages", db_index=False)
    key = models.CharField(max_length=120)
    edition = models.PositiveSmallIntegerField(default=1)
    client = models.ForeignKey(
        Client, on_delete=models.CASCADE, null=True, blank=True, related_name="messages", db_index=False
    )
    staff = models.ForeignKey(
        Staff, on_delete=models.CASCADE, null=True, blank=True, related_name="messages", db_index=False
    )
    visit = models.ForeignKey(Visit, on_delete=models.CASCADE, null=True, blank=True, related_name="messages")
    flag = models.ForeignKey(
        "aftercare.Flag", on_delete=models.SET_NULL, null=True, blank=True, related_name="messages", db_index=False
    )  # of a page, and of an answer to a matter
    occasion = models.CharField(max_length=16, choices=occasions)
    step = models.PositiveSmallIntegerField(default=0)
    kind = models.CharField(max_length=24, blank=True)  # which answer: stopped, started, help …
    language = models.CharField(max_length=8, blank=True)  # of an answer: that of her words; '' the one on record
    own_words = models.TextField(blank=True)  # of an answer that a person wrote: goes as it stands
    written_by = models.ForeignKey(
        Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+", db_index=False
    )
    state = models.CharField(max_length=16, choices=states, default=State.PLANNED)
    reason = models.CharField(max_length=200, blank=True)  # why withheld, withdrawn, undelivered or unsure
    rank = models.PositiveSmallIntegerField(default=2)  # whose turn among those due: core.delivery.rank, set by outbox
    channel = models.CharField(max_length=5, blank=True)
    due_at = models.DateTimeField(null=True, blank=True)

    aim_at = models.DateTimeField(null=True, blank=True)
    no_later_than = models.DateTimeField(null=True, blank=True)
    planned_from = models.DateTimeField()
    about_start = models.DateTimeField(null=True, blank=True)  # the visit's start that it speaks of

    # By the database's clock: until when a sender holds it; of an unsure one, when the policy decides (null: it has).
    lease_until = models.DateTimeField(null=True, blank=True)
    tries = models.PositiveSmallIntegerField(
        default=0
    )  # attempts that a passing fault ended, since the last fresh start
    # Until then a failed try, or the provider, has it wait: no plan and no other text has it go by that channel before.
    not_before = models.DateTimeField(null=True, blank=True)
    fell_back = models.BooleanField(default=False)  # the other channel has been tried
    rehearsed = models.BooleanField(default=False)  # handed to the pretend phone only
    line = models.ForeignKey(
        Line, on_delete=models.PROTECT, null=True, blank=True, related_name="messages", db_index=False
    )
    address = models.CharField(max_length=254, blank=True)  # where it was handed over to
    subject = models.CharField(max_length=200, blank=True)  # as handed over
    text = models.TextField(blank=True)  # as handed over
    segments = models.PositiveSmallIntegerField(null=True, blank=True)  # of its newest text
    worded = models.CharField(max_length=80, blank=True)  # by which wording: care/any/sms/en@3; @0 is the first one

    claimed_at = models.DateTimeField(null=True, blank=True)
    handing_over_at = models.DateTimeField(null=True, blank=True)
    handed_over_at = models.DateTimeField(null=True, blank=True)
    ended_at = models.DateTimeField(null=True, blank=True)  # delivered, undelivered, withheld, withdrawn or unsure
    # Of reminders: what it was planned from; and, of one that waited for the owner's go, from when it may leave.
    forecast = models.ForeignKey(
        Forecast, on_delete=models.SET_NULL, null=True, blank=True, related_name="+", db_index=False
    )
    go_from = models.DateTimeField(null=True, blank=True)
    # Of one that did not arrive, or may not have: who has done something about it. It counts until it fails anew.
    seen_to_at = models.DateTimeField(null=True, blank=True)
    seen_to_by = models.ForeignKey(
        Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+", db_index=False
    )

    class Meta:
        constraints = [models.UniqueConstraint(fields=["studio", "key"], name="one_message_a_key")]
        indexes = [
            models.Index(fields=["rank", "due_at"], condition=Q(state="planned"), name="message_due"),
            models.Index(fields=["lease_until"], condition=Q(lease_until__isnull=False), name="message_leased"),
            models.Index(fields=["studio", "state", "due_at"], name="message_by_state"),
            models.Index(fields=["studio", "occasion", "state", "due_at"], name="message_by_occasion"),
            models.Index(fields=["client", "due_at"], name="message_of_client"),
            models.Index(fields=["line", "address"], condition=Q(line__isnull=False), name="message_by_address"),
            models.Index(
                fields=["studio", "worded", "handed_over_at"],
                condition=Q(handed_over_at__isnull=False),
                name="message_by_wording",
            ),
            *(_index_of_few(name) for name in ("staff", "flag", "written_by", "forecast", "seen_to_by")),
        ]

    def __str__(self) -> str:
        return self.key


class Attempt(models.Model):
    """One try at handing a message over. ``reference`` is ours and travels with it."""

    message = models.ForeignKey(Message, on_delete=models.CASCADE, related_name="attempts", db_index=False)
    number = models.PositiveSmallIntegerField()
    line = models.ForeignKey(Line, on_delete=models.PROTECT, related_name="+", db_index=False)  # lines are not deleted
    provider = models.CharField(max_length=60)  # the road's account
    reference = models.CharField(max_length=40)
    started_at = models.DateTimeField()
    ended_at = models.DateTimeField(null=True, blank=True)
    outcome = models.CharField(max_length=16, blank=True)  # a state's name
    problem = models.CharField(max_length=400, blank=True)
    provider_ref = models.CharField(max_length=120, blank=True)
    # Where the provider knows a message again by a key: the key, a digest of all that went under it, and until when.
    key = models.CharField(max_length=40, blank=True)
    likeness = models.CharField(max_length=32, blank=True)
    key_until = models.DateTimeField(null=True, blank=True)

    class Meta:
        ordering = ["number"]
        constraints = [
            models.UniqueConstraint(fields=["message", "number"], name="one_attempt_a_number"),
            # Not ``unique``: that would make a second index, for LIKE.
            models.UniqueConstraint(fields=["reference"], name="one_attempt_a_reference"),
        ]
        indexes = [models.Index(fields=["provider_ref"], name="attempt_by_provider_ref")]  # plain: see receipts

    def __str__(self) -> str:
        return self.reference


class Receipt(models.Model):
    """What a provider said became of an attempt, stored as it came, matched or not.

    ``account`` is that of the road (`transports.base.Transport.account`), within which a provider's references are
    unique.
    """

    account = models.CharField(max_length=60)
    provider_ref = models.CharField(max_length=120)
    word = models.CharField(max_length=40)  # the provider's word for it
    event = models.CharField(
        max_length=12, blank=True
    )  # what it means to us: delivered, failed; '' nothing, or unknown
    at = models.DateTimeField()
    kept_at = models.DateTimeField()
    raw = models.TextField(blank=True)
    attempt = models.ForeignKey(Attempt, on_delete=models.SET_NULL, null=True, blank=True, related_name="receipts")

    class Meta:
        constraints = [
            models.UniqueConstraint(fields=["account", "provider_ref", "word"], name="one_receipt_a_reference_and_word")
        ]
        indexes = [models.Index(fields=["kept_at"], condition=Q(attempt=None), name="receipt_unmatched")]

    def __str__(self) -> str:
        return f"{self.word}: {self.provider_ref}"


class Heartbeat(models.Model):
    """When a part of the engine last finished its round."""

    name = models.CharField(max_length=40, primary_key=True)
    at = models.DateTimeField()
    note = models.JSONField(default=dict)

    def __str__(self) -> str:
        return self.name
