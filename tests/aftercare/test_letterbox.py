"""E-mails taken apart, broken ones too."""

from __future__ import annotations

import time
from email import message_from_bytes, message_from_string
from email.message import EmailMessage, Message

import pytest
from anymail.inbound import AnymailInboundMessage
from hypothesis import given, settings
from hypothesis import strategies as st

from aftercare import letterbox, machines
from aftercare.core import reading
from tests.aftercare.test_pictures import photo


def mail(body: str, kind: str = "text/plain; charset=utf-8", **headers: str) -> Message:
    lines = [f"{name.replace('_', '-')}: {value}" for name, value in headers.items()]
    return message_from_string("\n".join([*lines, f"Content-Type: {kind}", "", body]))


def test_a_mail_in_html_alone_is_read_as_text() -> None:
    html = (
        "<html><head><style>p{color:red}</style></head><body><p>My eye is <b>swollen</b></p><p>since Tuesday</p></body>"
    )

    words = letterbox.words_of(mail(html, "text/html; charset=utf-8")).own

    assert "My eye is swollen" in words
    assert "since Tuesday" in words
    assert "color" not in words


def test_the_plain_part_is_taken_where_there_is_one() -> None:
    both = mail(
        "--b\nContent-Type: text/plain\n\nmy eye\n--b\nContent-Type: text/html\n\n<p>other</p>\n--b--",
        "multipart/alternative; boundary=b",
    )

    assert letterbox.words_of(both).own == "my eye"


@pytest.mark.parametrize(
    ("charset", "raw"), [("iso-8859-1", b"est\xe1 rojo"), ("nonsense", b"rojo"), ("utf-8", b"\xff rojo")]
)
def test_any_character_set_is_read_as_well_as_can_be(charset: str, raw: bytes) -> None:
    message = message_from_bytes(b"Content-Type: text/plain; charset=" + charset.encode() + b"\n\n" + raw)

    assert "rojo" in letterbox.body_of(message)


@pytest.mark.parametrize(
    ("kind", "raw", "words"),
    [
        (
            "text/plain; charset=iso-8859-1",
            "can\u2019t open it".encode("cp1252"),
            "can\u2019t open it",
        ),  # WHATWG Encoding, 4.2
        ("text/plain", b"est\xe1 rojo", "est\xe1 rojo"),
        ("text/plain", "está rojo 😳".encode(), "está rojo 😳"),
        ("text/html", b"<p>est\xe1 rojo</p>", "está rojo"),
        ("text/plain; name=text_0.txt", b"my eye is red", "my eye is red"),  # as some telephones send texts on
        ("text/enriched", b"my eye is red", "my eye is red"),
        ("multipart/mixed", b"my eye is red", "my eye is red"),  # and no boundary
        ("garbage", b"my eye is red", "my eye is red"),
    ],
)
def test_her_words_are_found_wherever_a_program_puts_them(kind: str, raw: bytes, words: str) -> None:
    message = AnymailInboundMessage.parse_raw_mime_bytes(f"Content-Type: {kind}\n\n".encode() + raw)

    found = letterbox.read(message)

    assert found.words.own == words
    assert found.files == ()


def test_what_she_forwards_is_not_taken_for_her_words() -> None:
    forwarded = mail(
        "--b\nContent-Type: text/plain\n\nsee this\n"
        "--b\nContent-Type: message/rfc822\n\nSubject: x\nContent-Type: text/plain\n\nmy eye is red\n--b--",
        "multipart/mixed; boundary=b",
    )

    assert letterbox.words_of(forwarded).own == "see this"


def test_what_is_quoted_in_html_is_marked_and_what_stands_under_it_is_hers() -> None:
    html = (
        '<div>On Tue, 9 Mar 2027, Birch wrote:</div><blockquote type="cite"><p>Any redness?</p></blockquote>'
        "<p>yes, and the lid is swollen</p>"
    )

    found = letterbox.words_of(mail(html, "text/html; charset=utf-8"))

    assert found.own == "yes, and the lid is swollen"
    assert "> Any redness?" in found.below


ASKED = "How are your eyes today? Any redness, itching or swelling?"
FROM, SENT = "Birch &lt;hello@birch.example&gt;", "Tuesday, March 9, 2027 10:00"


# How mail programs set out an answer in HTML, described by its structure (common practice, no source).
@pytest.mark.parametrize(
    ("html", "own", "urgency"),
    [
        (  # a line that says who wrote, then a block that is marked as quoted
            f"<div>my left eye burns</div><br><div class='a_quote'><div>On Tue, Mar 9, 2027 at 10:00 AM {FROM} wrote:"
            f"<br></div><blockquote class='a_quote'><div>{ASKED}</div></blockquote></div>",
            "my left eye burns",
            "same_day",
        ),
        (  # a block of headers under a line drawn, and no mark at all
            f"<div>no redness at all, thank you</div><hr><div><b>From:</b> {FROM}<br><b>Sent:</b> {SENT}<br>"
            f"<b>To:</b> Mia<br><b>Subject:</b> How are your eyes</div><div>{ASKED}</div>",
            "no redness at all, thank you",
            "none",
        ),
        (  # a telephone's: its name, and the line inside the quotation
            f"<body>Can&#39;t open my eye<br><div>Sent from my phone</div><blockquote type='cite'>On Mar 9, 2027, at "
            f"10:00 AM, {FROM} wrote:<br></blockquote><blockquote type='cite'><div>{ASKED}</div></blockquote></body>",
            "Can't open my eye",
            "emergency",
        ),
        (  # the same in Spanish, in a table
            f"<table><tr><td><p>S&iacute;, un poco</p></td></tr></table><div>El mar, 9 mar 2027 a las 10:00, {FROM} "
            "escribi&oacute;:</div><blockquote type='cite'>¿Enrojecimiento, picazón o hinchazón?</blockquote>",
            "Sí, un poco",
            "same_day",
        ),
        ("<p>my&nbsp;eye&nbsp;is&nbsp;red</p>", "my eye is red", "same_day"),
    ],
    ids=["quoted", "headers", "telephone", "spanish", "spaces"],
)
def test_an_answer_in_html_is_read_as_she_meant_it(html: str, own: str, urgency: str) -> None:
    found = letterbox.words_of(mail(html, "text/html; charset=utf-8"))

    quoted = "\n".join(f"> {line}" for line in found.below.splitlines())
    assert found.own == own
    assert reading.read(f"{found.own}\n\n{quoted}").urgency == urgency


def test_files_come_with_their_names_and_pictures_inside_the_text_too() -> None:
    both = mail(
        "--b\nContent-Type: text/plain\n\nsee\n"
        "--b\nContent-Type: image/png\nContent-Transfer-Encoding: base64\n\nAAAA\n"
        '--b\nContent-Type: application/pdf\nContent-Disposition: attachment; filename="a.pdf"\n\nx\n--b--',
        "multipart/mixed; boundary=b",
    )

    assert [name for name, _data in letterbox.files_of(both)] == ["", "a.pdf"]
    assert letterbox.words_of(both).own == "see"


def test_a_signed_mails_signature_is_no_file_of_hers() -> None:
    signed = mail(
        "--b\nContent-Type: text/plain\n\nsee\n"
        '--b\nContent-Type: application/pkcs7-signature; name="smime.p7s"\n\nx\n--b--',
        'multipart/signed; boundary=b; protocol="application/pkcs7-signature"',
    )

    assert letterbox.files_of(signed) == ()


def test_what_is_kept_whole_has_no_photo_in_it_that_tells_where_it_was_taken() -> None:
    made = EmailMessage()
    made["From"], made["To"], made["Subject"] = "mia@mail.example", "hello@birch.example", "Eyes"
    made.set_content("left lid is itchy")
    made.add_alternative(
        '<p>left lid is itchy <img src="data:image/jpeg;base64,' + "QUJD" * 30 + '"></p>', subtype="html"
    )
    made.add_attachment(photo(), maintype="image", subtype="jpeg", filename="IMG_7.jpg")
    message = AnymailInboundMessage.parse_raw_mime_bytes(bytes(made))

    raw = letterbox.read(message).raw

    again = message_from_string(raw)
    held = b"".join(part.get_payload(decode=True) or b"" for part in again.walk() if not part.is_multipart())  # type: ignore[misc]
    assert b"left lid is itchy" in held
    assert b"Anybody's telephone" not in held
    assert b"QUJD" not in held
    assert f"a file of {len(photo())} bytes".encode() in held
    assert letterbox.files_of(message)[0][1] == photo()  # what came in is not changed by it


BROKEN = [
    "From: a\x00b <<>>\nTo: ,,,<\n\nmy eye is red",
    'From: a@[::1\nTo: (((\nCc: "\n\nmy eye is red',
    "From: =?utf-8?b?////?= <mia@mail.example>\nSubject: =?nonsense?q?a?=\n\nmy eye is red",
    "From: mia@mail.example, zoe@mail.example\nTo: Hello <HELLO@birch.example\n\nmy eye is red",
    "From: Mia mia@mail.example>\nDate: yesterday\nMessage-ID: <<>\n\nmy eye is red",
    'Content-Type: text/plain; charset="=?x?q?y?="\n\nmy eye is red',
    "Content-Type: text/plain; charset=hex\n\nmy eye is red",
    "Content-Transfer-Encoding: base64\n\nmy eye is red!",
    "Content-Type: multipart/mixed; boundary=x\n\n--x\n\nmy eye is red\n--x\n"
    "Content-Type: image/jpeg\xa0; name=a.jpg\n\nx\n--x--",
]


@pytest.mark.parametrize("raw", BROKEN)
@pytest.mark.parametrize("line_end", ["\n", "\r\n"])
def test_a_broken_mail_is_read_as_far_as_it_can_be(raw: str, line_end: str) -> None:
    message = AnymailInboundMessage.parse_raw_mime_bytes(raw.replace("\n", line_end).encode())

    found = letterbox.read(message)

    assert "my eye is red" in found.words.own or "base64" in raw
    assert found.raw


def test_addresses_are_found_in_broken_headers_too() -> None:
    found = letterbox.read(AnymailInboundMessage.parse_raw_mime(BROKEN[3]))

    assert (found.sender, found.recipients) == ("mia@mail.example", ("hello@birch.example",))


HTML = "From: a@b.example\nContent-Type: text/html; charset=utf-8\n\n"


@pytest.mark.parametrize(
    "raw",
    [
        HTML + "<style" * 80_000,  # before, a quarter of an hour
        HTML + "<script>x</scrip" * 30_000,
        HTML + "<blockquote class=" * 27_000,
        HTML + "<blockquote cite=x>" * 20_000,
        HTML + "data:image/png;base64," * 20_000,
        HTML + "<" * 400_000,
        f"From: {'a' * 300_000}\n\nx",
        f"From: a@b.example\nTo: {'a@b.example, ' * 30_000}\n\nx",
        f"From: a@b.example\nSubject: {'=?utf-8?q?=ff?= ' * 20_000}\n\nx",
        f"From: a@b.example\nReferences: {'<a@b> ' * 50_000}\n\nx",
    ],
    ids=lambda raw: raw[:20].partition("\n")[0] + str(len(raw)),
)
def test_no_mail_keeps_others_waiting(raw: str) -> None:
    message = AnymailInboundMessage.parse_raw_mime_bytes(raw.encode())
    started = time.process_time()

    found = letterbox.read(message)
    machines.wrote(message)
    machines.references(message)

    assert time.process_time() - started < 2
    assert found.raw


@pytest.mark.parametrize(
    ("block", "is_quoted"),
    [
        ('<blockquote type="cite">', True),
        ('<blockquote cite="mid:a@b.example">', True),
        ('<BLOCKQUOTE class="any_quote" style="margin:0">', True),
        ('<blockquote style="margin-left:40px">', False),  # how some programs indent what she writes
        ("<blockquote>", False),
    ],
)
def test_a_block_is_quoted_where_a_program_says_so(block: str, is_quoted: bool) -> None:
    found = letterbox.words_of(mail(f"<p>hi</p>{block}my eye is red</blockquote>", "text/html; charset=utf-8"))

    assert ("my eye is red" in found.own) is not is_quoted
    assert "my eye is red" in found.own + found.below


def test_a_header_without_end_is_cut_and_the_rest_is_read() -> None:
    raw = f"To: {'x@y.example, ' * 30_000}\nFrom: mia@mail.example\nSubject: Eyes\n\nmy eye is red"

    found = letterbox.read(AnymailInboundMessage.parse_raw_mime(raw))

    assert (found.sender, found.subject, found.words.own) == ("mia@mail.example", "Eyes", "my eye is red")
    assert len(found.raw) < 20_000


@pytest.mark.filterwarnings("ignore")  # Python's own, of invalid escapes in character sets made up here
@settings(max_examples=80, deadline=None)
@given(
    head=st.lists(
        st.tuples(
            st.sampled_from(["From", "To", "Cc", "Subject", "Message-ID", "Content-Type", "Content-Disposition"]),
            st.one_of(
                st.text(max_size=40),
                st.sampled_from(["multipart/mixed; boundary=x", "message/rfc822", "text/html", "multipart/report"]),
                st.sampled_from(
                    ["attachment; filename*=x''%ff", "<a@b>", "a@[", "=?utf-8?q?=ff?=", "text/plain; charset=\x00"]
                ),
            ),
        ),
        max_size=6,
    ),
    body=st.one_of(
        st.binary(max_size=800), st.sampled_from([b"--x\n\n--x--", b"--x\nContent-Type: message/rfc822\n\n\n"])
    ),
)
def test_whatever_comes_in_is_taken_apart_without_a_fault(head: list[tuple[str, str]], body: bytes) -> None:
    lines = "".join(f"{name}: {value}\n" for name, value in head).encode("utf-8", "surrogatepass")
    for parse in (message_from_bytes, AnymailInboundMessage.parse_raw_mime_bytes):
        message = parse(lines + b"\n" + body)
        letterbox.read(message)
        machines.wrote(message)
        machines.report_of(message)
