"""Routes of the settings."""

from __future__ import annotations

from django.urls import path

from studio.views import duty, settings, staff

urlpatterns = [
    path("settings", settings.settings, name="settings"),
    path("settings/studio", settings.studio_facts, name="studio_facts"),
    path("settings/closing-days", settings.closing_days, name="closing_days"),
    path("settings/closing-days/<int:day_id>/remove", settings.closing_day_remove, name="closing_day_remove"),
    path("settings/duty", duty.duty, name="duty"),
    path("settings/absences", duty.absences, name="absences"),
    path("settings/absences/<int:absence_id>/remove", duty.absence_remove, name="absence_remove"),
    path("settings/adhesives", settings.adhesives, name="adhesives"),
    path("settings/adhesives/<int:adhesive_id>", settings.adhesives, name="adhesive"),
    path("settings/service-names", settings.service_names, name="service_names"),
    path("settings/service-names/<int:name_id>/remove", settings.service_name_remove, name="service_name_remove"),
    path("settings/calendar", settings.calendar, name="calendar"),
    path("settings/calendar/remove", settings.calendar_remove, name="calendar_remove"),
    path("settings/staff", staff.staff, name="staff"),
    path("settings/staff/new", staff.staff_new, name="staff_new"),
    path("settings/staff/<int:staff_id>", staff.staff_edit, name="staff_edit"),
    path("settings/staff/<int:staff_id>/sign-in", staff.staff_sign_in, name="staff_sign_in"),
    path("settings/staff/<int:staff_id>/sign-out", staff.staff_sign_out, name="staff_sign_out"),
]
