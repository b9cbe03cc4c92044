"""The one place that writes records by hand.

Each function takes keywords only, checks, writes in one transaction and raises the revision of every client and visit
concerned; who plans from the records follows by revision. Bad input is a ValidationError that names field and cure, and
changes nothing.
"""

from studio.records.clients import (
    MOST_DECLINED,
    Answer,
    ClientFields,
    end_pauses,
    give_consent,
    note_declined,
    note_no_set,
    pause,
    put_reaction_right,
    record_reaction,
    release_reaction,
    resume,
    save_client,
)
from studio.records.duty import add_absence, remove_absence, save_duty
from studio.records.erasing import erase_client, refuse_erasing
from studio.records.merging import merge, undo_merge
from studio.records.settings import (
    look_at_lot,
    remove_closing_day,
    remove_feed,
    remove_service_name,
    save_adhesive,
    save_closing_day,
    save_feed,
    save_service_name,
    save_studio,
    set_aside,
)
from studio.records.staff import choose_language, give_sign_in, new_password, save_staff, take_sign_in
from studio.records.visits import (
    UsedFields,
    VisitFields,
    cancel_visit,
    count_done,
    mark_done,
    mark_missed,
    record_test_result,
    save_visit,
    unmark,
)

__all__ = [
    "Answer",
    "ClientFields",
    "MOST_DECLINED",
    "UsedFields",
    "VisitFields",
    "add_absence",
    "cancel_visit",
    "choose_language",
    "count_done",
    "end_pauses",
    "erase_client",
    "give_consent",
    "give_sign_in",
    "look_at_lot",
    "mark_done",
    "mark_missed",
    "merge",
    "new_password",
    "note_declined",
    "note_no_set",
    "pause",
    "put_reaction_right",
    "record_reaction",
    "record_test_result",
    "refuse_erasing",
    "release_reaction",
    "remove_absence",
    "remove_closing_day",
    "remove_feed",
    "remove_service_name",
    "resume",
    "save_adhesive",
    "save_client",
    "save_closing_day",
    "save_duty",
    "save_feed",
    "save_service_name",
    "save_staff",
    "save_studio",
    "save_visit",
    "set_aside",
    "take_sign_in",
    "undo_merge",
    "unmark",
]
