"""Reading clients' replies: text in, a `Reading` out; no database, no clock, no network.

What `reader` does, in its order, and the rooms of each step:

1. her own words: `quoting`, `tokens`, `spelling`, `language`; another language: `foreign`; in pieces: `lengthy`
2. short answers under a quoted question: `bare`, which asks `questions`, `answers`, `numbered`, `scales`, `judging`
3. phrases found: `lexicon` (its lists in `words`), `phrases`, laid out on a `page`
4. signs and how each stands: `findings`, by `scope`, which asks
   whose it is: `whose`, `theirs`, `she_too`, `proxies`, `told_on`, `story`, `others`;
   whether it is denied: `denial`, `denied_after`, `carried`, `taken_back`, `until_now`, `running_on`, `unmet`;
   when it was, or whether only in mind: `times`, `ends`, `one_end`, `returning`, `long_ago`, `imagined`;
   whether the words are a sign's at all: `seeming`, `hyperbole`, `elsewhere`, `blinking`, `shedding`, `around`
5. how bad, which side, what else: `grading`, `sides`, `pictures`, `topics` (which asks `asking`, `openings`, `hours`,
   `stopping`, `doubt`)
6. the second opinion: `second`, `features`, and what it may change, `second_look`
"""

from __future__ import annotations

from aftercare.core.reading.values import Finding, Reading, Side, Sign, Topic, Urgency

__all__ = ["Finding", "Reading", "Side", "Sign", "Topic", "Urgency", "read"]


def read(text: str) -> Reading:
    """Return what ``text`` says. Any text can be read; spans count its characters."""
    # The lexicon takes half a second to build and much room: it is paid for where something is read, not at each start.
    from aftercare.core.reading import reader

    return reader.read(text)
