"""What pictures say: an eye in trouble, praise, thanks."""

from __future__ import annotations

EYES = frozenset("👁👀")
PAINED = frozenset("😖😣😫😩😢😭😰😱🤕🤒😥😓🥺😵🥵🤢😨😧😿😞😟🙁☹😔🆘🚨😬🥴💔🩹😮")
# Beside an eye, and a pained face.
PICTURE_SIGNS = {
    "🔥": "burning", "🔴": "redness", "🩸": "redness", "❤": "", "🟥": "redness", "🍅": "redness", "♨": "burning",
    "💧": "watering", "💦": "watering", "🌊": "watering", "🚰": "watering", "😭": "", "🌧": "watering",
    "🎈": "swelling", "🐡": "swelling", "🐝": "swelling", "⚡": "pain", "🔪": "pain",
    "📌": "poking", "🗡": "pain", "🪡": "poking", "🌵": "poking",
    "🌶": "burning", "🏖": "gritty",
}  # fmt: skip
# Beside an open eye, with no face at all.
RED = frozenset("🔴🩸🟥")
PRAISE = frozenset(
    "😍🥰🤩😘❤♥💕💖💗💓💞💜💙💚💛🧡🖤🤍💘🔥👍👌🙏💯✨🙌👏💅😁😀😃😄😊☺🥳🎉💃😻💋⭐🌟👑🤗😎🫶😇🤭💐🌹🌸👸🦋🤙✅☑😚😗😙💝🩷🤌🆒💎"
)
