"""Sources: ITU-T E.164 through the phonenumbers library (what is valid, and of which kind); numbers of the ranges that
are kept for fiction, where such a range is valid. Which consent which channel needs is the project's own rule.
"""

from __future__ import annotations

import phonenumbers
import pytest

from aftercare.core.reach import EMAIL, SMS, Contact, Purpose, Reach, can_get_texts, only_zone, reach
from aftercare.core.timing import Reason

MOBILE, ADDRESS = "+12125550123", "mia@example.org"
VISITS, REMINDERS = Purpose.VISITS, Purpose.REMINDERS
TEXT, MAIL = Reach(SMS, MOBILE), Reach(EMAIL, ADDRESS)
NO_WAY, NO_CONSENT = Reach(reason=Reason.NO_WAY), Reach(reason=Reason.NO_CONSENT)


def contact(
    *,
    mobile: str = MOBILE,
    email: str = ADDRESS,
    choice: str = "",
    sms: bool | None = None,
    mail: bool | None = None,
    sms_reminders: bool | None = None,
    mail_reminders: bool | None = None,
    stopped: frozenset[str] = frozenset(),
) -> Contact:
    answers = {
        (SMS, VISITS.value): sms,
        (EMAIL, VISITS.value): mail,
        (SMS, REMINDERS.value): sms_reminders,
        (EMAIL, REMINDERS.value): mail_reminders,
    }
    consents = {key: answer for key, answer in answers.items() if answer is not None}
    return Contact(mobile=mobile, email=email, choice=choice, consents=consents, stopped=stopped)


def test_a_text_goes_where_consent_is_on_record() -> None:
    assert reach(contact(sms=True), VISITS) == TEXT


def test_a_blank_consent_to_texts_is_none_and_mail_needs_only_an_address() -> None:
    assert reach(contact(), VISITS) == MAIL


def test_a_refused_consent_to_texts_leaves_mail() -> None:
    assert reach(contact(sms=False), VISITS) == MAIL


def test_her_choice_comes_first() -> None:
    assert reach(contact(sms=True, choice=EMAIL), VISITS) == MAIL
    assert reach(contact(sms=True, choice=SMS), VISITS) == TEXT


def test_her_choice_of_texts_is_no_consent_to_them() -> None:
    assert reach(contact(choice=SMS), VISITS) == MAIL


def test_her_choice_of_mail_is_nothing_without_an_address() -> None:
    assert reach(contact(email="", choice=EMAIL, sms=True), VISITS) == TEXT


def test_her_choice_of_mail_gives_way_where_mail_was_refused() -> None:
    assert reach(contact(choice=EMAIL, sms=True, mail=False), VISITS) == TEXT


@pytest.mark.parametrize("number", ["", "+447700900123", "+442079460958", "nonsense"])
def test_a_number_that_can_get_no_texts_leaves_mail(number: str) -> None:
    assert reach(contact(mobile=number, sms=True), VISITS) == MAIL


def test_a_number_whose_consent_is_blank_and_no_address_is_no_way_to_reach_her() -> None:
    assert reach(contact(email=""), VISITS) == NO_WAY


def test_nothing_on_record_is_no_way_to_reach_her() -> None:
    assert reach(contact(mobile="", email="", sms=True, mail=True), VISITS) == NO_WAY


def test_a_number_that_can_get_no_texts_and_no_address_is_no_way_to_reach_her() -> None:
    assert reach(contact(mobile="+442079460958", email="", sms=True), VISITS) == NO_WAY


def test_a_refusal_of_the_only_address_on_record_is_no_consent() -> None:
    assert reach(contact(email="", sms=False), VISITS) == NO_CONSENT
    assert reach(contact(mobile="", mail=False), VISITS) == NO_CONSENT


def test_mail_that_was_refused_while_texts_are_blank_is_no_consent() -> None:
    assert reach(contact(mail=False), VISITS) == NO_CONSENT


def test_a_refusal_of_what_is_not_on_record_is_no_way_to_reach_her() -> None:
    assert reach(contact(mobile="", email="", sms=False, mail=False), VISITS) == NO_WAY


def test_a_stopped_number_gets_no_texts_whatever_the_consent_says() -> None:
    assert reach(contact(sms=True, choice=SMS, stopped=frozenset({SMS})), VISITS) == MAIL


def test_a_stopped_number_and_no_address_is_no_consent() -> None:
    assert reach(contact(sms=True, email="", stopped=frozenset({SMS})), VISITS) == NO_CONSENT


def test_a_stopped_address_gets_no_mail() -> None:
    assert reach(contact(sms=True, choice=EMAIL, stopped=frozenset({EMAIL})), VISITS) == TEXT
    assert reach(contact(mail=True, stopped=frozenset({EMAIL})), VISITS) == NO_CONSENT


def test_consent_to_messages_about_visits_is_none_to_reminders() -> None:
    assert reach(contact(sms=True, mail=True), REMINDERS) == NO_CONSENT


def test_reminders_by_mail_need_a_consent_of_their_own() -> None:
    assert reach(contact(), REMINDERS) == NO_CONSENT
    assert reach(contact(mail_reminders=True), REMINDERS) == MAIL


def test_reminders_by_text_need_a_consent_of_their_own() -> None:
    assert reach(contact(sms_reminders=True), REMINDERS) == TEXT
    assert reach(contact(sms_reminders=False, mail_reminders=False), REMINDERS) == NO_CONSENT


def test_reminders_to_whom_there_is_no_number_and_no_address_have_no_way_to_reach_her() -> None:
    assert reach(contact(mobile="", email="", sms_reminders=True, mail_reminders=True), REMINDERS) == NO_WAY


def test_a_refusal_of_reminders_is_none_of_messages_about_visits() -> None:
    assert reach(contact(sms=True, sms_reminders=False), VISITS) == TEXT
    assert reach(contact(mail_reminders=False), VISITS) == MAIL


def test_the_other_channel_is_taken_where_one_has_failed() -> None:
    assert reach(contact(sms=True), VISITS, avoid=SMS) == MAIL
    assert reach(contact(sms=True, choice=EMAIL), VISITS, avoid=EMAIL) == TEXT


def test_there_is_no_other_channel_without_its_consent_or_address() -> None:
    assert reach(contact(), VISITS, avoid=EMAIL) == NO_WAY
    assert reach(contact(sms=True, email=""), VISITS, avoid=SMS) == NO_WAY
    assert reach(contact(sms=True, mail=False), VISITS, avoid=SMS) == NO_CONSENT


@pytest.mark.parametrize(
    ("written", "region", "e164", "texts"),
    [
        ("020 7946 0958", "GB", "+442079460958", False),  # a fixed line
        ("0412 345 678", "AU", "+61412345678", True),
        ("650 253 0000", "US", "+16502530000", True),  # fixed or mobile, nobody can tell
        ("07700 900123", "GB", "+447700900123", False),  # kept for drama: possible, not valid
        ("(212) 555-0123", "US", "+12125550123", True),
    ],
)
def test_a_number_gets_texts_where_it_is_valid_and_may_be_a_mobile(
    written: str, region: str, e164: str, texts: bool
) -> None:
    parsed = phonenumbers.parse(written, region)

    assert phonenumbers.format_number(parsed, phonenumbers.PhoneNumberFormat.E164) == e164
    assert can_get_texts(e164) is texts


@pytest.mark.parametrize("number", ["", "+", "nonsense", "0412 345 678", "+12345678901234567"])
def test_what_is_no_e164_number_gets_no_texts(number: str) -> None:
    assert not can_get_texts(number)


@pytest.mark.parametrize(
    ("number", "zone"),
    [
        ("+12125550123", "America/New_York"),
        ("+13105550123", "America/Los_Angeles"),
        ("+61412345678", ""),  # an Australian mobile may be anywhere in Australia
        ("+18005550123", ""),  # a free number belongs to no place
        ("+447700900123", ""),  # not valid
        ("", ""),
        ("nonsense", ""),
    ],
)
def test_a_number_tells_its_zone_only_where_it_can_be_in_one_alone(number: str, zone: str) -> None:
    assert only_zone(number) == zone
