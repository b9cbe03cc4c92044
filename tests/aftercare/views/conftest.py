"""Pages: a studio on a morning, and ways in."""

from tests.pages import as_, cast, morning_cast, quick_sign_in, quiet_static, strangers

__all__ = ["as_", "cast", "morning_cast", "quick_sign_in", "quiet_static", "strangers"]
