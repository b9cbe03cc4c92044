"""The questions before a visit: what a client answered, each time, and the owner's own form of them."""

from __future__ import annotations

from django.db import models

from studio.models import Client, Staff, Studio, Visit


class QuestionForm(models.Model):
    """One version of what the owner asks, and of her waiver; the highest is in force, without one the first form."""

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="question_forms")
    version = models.PositiveIntegerField()
    off = models.JSONField(default=list, blank=True)  # keys of core.consultation that are not asked
    waiver = models.JSONField(default=dict, blank=True)  # her own text by language; where there is none, the first one
    at = models.DateTimeField()
    by = models.ForeignKey(Staff, on_delete=models.SET_NULL, null=True, blank=True, related_name="+")

    class Meta:
        ordering = ["-version"]
        constraints = [models.UniqueConstraint(fields=["studio", "version"], name="one_question_form_a_version")]

    def __str__(self) -> str:
        return f"questions, version {self.version}"


class Consultation(models.Model):
    """What a client answered before a visit, once. Rows are only ever added.

    Her health answers are there only where she agreed to their being kept, and until she takes that back: the row then
    stays and says when. They are for owners and for the artists who treat her; from where they were sent is not kept.
    """

    studio = models.ForeignKey(Studio, on_delete=models.CASCADE, related_name="consultations")
    client = models.ForeignKey(Client, on_delete=models.CASCADE, related_name="consultations")
    visit = models.ForeignKey(Visit, on_delete=models.CASCADE, related_name="consultations")
    once = models.CharField(max_length=32)  # of the page that was filled in: sent twice, it is one
    at = models.DateTimeField()
    language = models.CharField(max_length=8)
    questions = models.PositiveSmallIntegerField()  # core.consultation.VERSION
    form = models.PositiveIntegerField(default=0)  # the version of QuestionForm; 0: the first one
    agreed = models.BooleanField()  # to her health answers being kept
    agreed_words = models.TextField(blank=True)  # the words that she was shown
    withdrawn_at = models.DateTimeField(null=True, blank=True)
    answers = models.JSONField(default=dict, blank=True)  # key → said, words, signs; see core.consultation
    more = models.TextField(blank=True)  # what else she wants her artist to know
    style = models.CharField(max_length=200, blank=True)  # the look she wishes: no health answer
    nothing_changed = models.BooleanField(default=False)  # she said so of what she had answered before
    to_look_at = models.PositiveSmallIntegerField(default=0)  # answers that a professional should look at
    changes = models.PositiveSmallIntegerField(default=0)  # answers that differ from those before
    set_lenses = models.BooleanField(null=True, blank=True)  # what this made her card say of lenses; null: nothing
    wore_lenses = models.BooleanField(null=True, blank=True)  # what it said before that
    signed_name = models.CharField(max_length=120, blank=True)
    signed_on = models.DateField(null=True, blank=True)
    waiver = models.TextField(blank=True)  # the very words that were signed
    guardian_name = models.CharField(max_length=120, blank=True)
    guardian_agreed = models.BooleanField(default=False)
    under_18 = models.BooleanField(null=True, blank=True)  # as she said; null: not asked

    class Meta:
        ordering = ["at", "id"]
        constraints = [models.UniqueConstraint(fields=["visit", "once"], name="one_consultation_a_page")]
        indexes = [models.Index(fields=["client", "at"], name="consultation_of_client")]

    def __str__(self) -> str:
        return f"consultation of {self.at:%Y-%m-%d}"

    @property
    def is_kept(self) -> bool:
        """Whether her health answers are there to be read."""
        return self.agreed and self.withdrawn_at is None
