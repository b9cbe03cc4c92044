"""Routes of what is written by hand, and of the book coming in."""

from __future__ import annotations

from django.urls import path

from aftercare.views import book, client_forms, lines, merging, visit_forms

urlpatterns = [
    path("clients/new", client_forms.client_new, name="client_new"),
    path("clients/<int:client_id>/edit", client_forms.client_edit, name="client_edit"),
    path("clients/<int:client_id>/consent", client_forms.client_consent, name="client_consent"),
    path("clients/<int:client_id>/merge", merging.client_merge, name="client_merge"),
    path("clients/merged", merging.merges, name="merges"),
    path("clients/merged/<int:merge_id>/undo", merging.merge_undo, name="merge_undo"),
    path("clients/<int:client_id>/visits/new", visit_forms.visit_new, name="visit_new"),
    path("visits/<int:visit_id>/edit", visit_forms.visit_edit, name="visit_edit"),
    path("visits/<int:visit_id>/cancel", visit_forms.visit_cancel, name="visit_cancel"),
    path("visits/<int:visit_id>/test-result", visit_forms.test_result, name="test_result"),
    path("book", book.book, name="book"),
    path("book/files/<int:file_id>", book.book_file, name="book_file"),
    path("book/files/<int:file_id>/names", book.book_file_names, name="book_file_names"),
    path("book/files/<int:file_id>/whole", book.book_file_whole, name="book_file_whole"),
    path("book/files/<int:file_id>/confirm", book.book_file_confirm, name="book_file_confirm"),
    path("book/files/<int:file_id>/drop", book.book_file_drop, name="book_file_drop"),
    path("settings/lines", lines.lines, name="lines"),
]
