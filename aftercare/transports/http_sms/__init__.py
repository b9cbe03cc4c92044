"""Texts through any provider that takes them by HTTP: what it wants, says and calls back with is told in options."""

from aftercare.transports.http_sms.road import HttpSms

__all__ = ["HttpSms"]
