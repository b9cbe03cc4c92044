"""The routes of everything that happens because a visit happened."""

from django.urls import include, path

from aftercare.links import Purpose
from aftercare.views.answers import conversation, flag_answer
from aftercare.views.attachments import attachment
from aftercare.views.calls import calls_again
from aftercare.views.client_card import client
from aftercare.views.clients import clients
from aftercare.views.consultation import consultation
from aftercare.views.consulted import client_answers, client_sensitive, questions
from aftercare.views.day_sheet import day_sheet
from aftercare.views.decisions import client_declined, client_pause, client_stop, reaction_new, reaction_release
from aftercare.views.figures import figures, figures_csv
from aftercare.views.forecasts import forecasts
from aftercare.views.forgetting import client_forget, client_links
from aftercare.views.health import healthz
from aftercare.views.her_record import her_photo, her_record, her_record_file
from aftercare.views.hers import her_calendar, her_visit
from aftercare.views.letterhead import letter_head
from aftercare.views.live import first_reminders, going_live
from aftercare.views.lots import lot_aside, lot_ask, lot_looked, lot_report, lot_wearers, lots
from aftercare.views.marking import visit_after, visit_done, visit_missed, visit_unmark
from aftercare.views.messages import messages
from aftercare.views.morning import flag_close, flag_reopen, flag_take, flags_close, morning
from aftercare.views.phone import phone, phone_of, phone_own
from aftercare.views.seen_to import (
    address_see_to,
    early_see_to,
    message_see_to,
    unhappy_see_to,
    wish_hand_over,
    wishes_seen_to,
)
from aftercare.views.telling import tell
from aftercare.views.timing import timing, timing_group, timing_history, timing_put_back
from aftercare.views.unsubscribe import unsubscribe
from aftercare.views.wording_editor import wording, wording_preview
from aftercare.views.wordings import wording_new, wording_versions, wordings
from aftercare.webhooks import hook

urlpatterns = [
    path("hooks/<int:line_id>", hook),  # the first ones, as most calls are theirs
    path("hooks/<int:line_id>/", hook, name="hook"),
    path("hooks/<int:line_id>/<str:secret>", hook),
    path("healthz", healthz, name="healthz"),
    path("today", day_sheet, name="day_sheet"),
    path("today/tell", tell, name="tell"),
    path("visits/<int:visit_id>/done", visit_done, name="visit_done"),
    path("visits/<int:visit_id>/missed", visit_missed, name="visit_missed"),
    path("visits/<int:visit_id>/unmark", visit_unmark, name="visit_unmark"),
    path("visits/<int:visit_id>/after", visit_after, name="visit_after"),
    path("morning", morning, name="morning"),
    path("wishes/seen-to", wishes_seen_to, name="wishes_seen_to"),
    path("wishes/<int:wish_id>/hand-over", wish_hand_over, name="wish_hand_over"),
    path("attachments/<int:attachment_id>", attachment, name="attachment"),
    path("flags/close", flags_close, name="flags_close"),
    path("flags/<int:flag_id>/answer", flag_answer, name="flag_answer"),
    path("flags/<int:flag_id>/take", flag_take, name="flag_take"),
    path("flags/<int:flag_id>/close", flag_close, name="flag_close"),
    path("flags/<int:flag_id>/reopen", flag_reopen, name="flag_reopen"),
    path("clients", clients, name="clients"),
    path("clients/<int:client_id>", client, name="client"),
    path("clients/<int:client_id>/answers", client_answers, name="client_answers"),
    path("clients/<int:client_id>/sensitive", client_sensitive, name="client_sensitive"),
    path("clients/<int:client_id>/conversation", conversation, name="conversation"),
    path("clients/<int:client_id>/declined", client_declined, name="client_declined"),
    path("clients/<int:client_id>/pause", client_pause, name="client_pause"),
    path("clients/<int:client_id>/stop", client_stop, name="client_stop"),
    path("clients/<int:client_id>/address/seen-to", address_see_to, name="address_see_to"),
    path("clients/<int:client_id>/links", client_links, name="client_links"),
    path("clients/<int:client_id>/forget", client_forget, name="client_forget"),
    path("clients/<int:client_id>/reaction", reaction_new, name="reaction_new"),
    path("reactions/<int:reaction_id>/release", reaction_release, name="reaction_release"),
    path("messages/<int:message_id>/seen-to", message_see_to, name="message_see_to"),
    path("visits/<int:visit_id>/unhappy/seen-to", unhappy_see_to, name="unhappy_see_to"),
    path("visits/<int:visit_id>/early/seen-to", early_see_to, name="early_see_to"),
    path("messages", messages, name="messages"),
    path("phone", phone, name="phone"),
    path("phone/own", phone_own, name="phone_own"),
    path("phone/<int:client_id>", phone_of, name="phone_of"),
    path("v/<str:token>", her_visit, name="her_visit"),
    path("v/<str:token>/visit.ics", her_calendar, name="her_calendar"),
    path("d/<str:token>", her_record, name="her_record"),
    path("d/<str:token>/photos/<int:attachment_id>", her_photo, name="her_photo"),
    path("d/<str:token>/record.json", her_record_file, {"kind": "json"}, name="her_record_file"),
    path("d/<str:token>/record.txt", her_record_file, {"kind": "txt"}, name="her_record_file"),
    path("unsubscribe/<str:token>", unsubscribe, name="unsubscribe"),
    path("c/<str:token>", consultation, name="consultation"),
    path("q/<str:token>", consultation, {"purpose": Purpose.ANEW}, name="consultation_anew"),
    path("wordings", wordings, name="wordings"),
    path("wordings/new", wording_new, name="wording_new"),
    path("wordings/<slug:occasion>/<str:variant>/<slug:channel>/<slug:language>", wording, name="wording"),
    path("figures", figures, name="figures"),
    path("figures/<slug:section>/<slug:table>.csv", figures_csv, name="figures_csv"),
    path("settings/questions", questions, name="questions"),
    path(
        "wordings/<slug:occasion>/<str:variant>/<slug:channel>/<slug:language>/preview",
        wording_preview,
        name="wording_preview",
    ),
    path(
        "wordings/<slug:occasion>/<str:variant>/<slug:channel>/<slug:language>/versions",
        wording_versions,
        name="wording_versions",
    ),
    path("settings/lines/read-again", calls_again, name="calls_again"),
    path("settings/letterhead", letter_head, name="letterhead"),
    path("settings/forecasts", forecasts, name="forecasts"),
    path("settings/lots", lots, name="lots"),
    path("settings/lots/<int:adhesive_id>/wearers", lot_wearers, name="lot_wearers"),
    path("settings/lots/<int:adhesive_id>/ask", lot_ask, name="lot_ask"),
    path("settings/lots/<int:adhesive_id>/report", lot_report, name="lot_report"),
    path("settings/lots/<int:adhesive_id>/looked", lot_looked, name="lot_looked"),
    path("settings/lots/<int:adhesive_id>/aside", lot_aside, name="lot_aside"),
    path("settings/timing", timing, name="timing"),
    path("settings/timing/history", timing_history, name="timing_history"),
    path("settings/timing/history/<int:version>", timing_put_back, name="timing_put_back"),
    path("settings/timing/<slug:slug>", timing_group, name="timing_group"),
    path("settings/live", going_live, name="going_live"),
    path("settings/live/first-reminders", first_reminders, name="first_reminders"),
    path("", include("aftercare.urls_records")),
    path("mail/", include("aftercare.urls_mail")),
]
