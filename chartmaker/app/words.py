"""The window's words pass through here, so that a translation has one place to stand."""

from PySide6.QtCore import QCoreApplication


def tr(text: str) -> str:
    """Give a text in the language of the window; English where nothing else is installed."""
    return QCoreApplication.translate("chartmaker", text) if text else ""


def plain(text: str) -> str:
    """Give a menu's text without the mark of its key and without its dots."""
    return text.replace("&", "").rstrip("…")


def plain_tip(text: str) -> str:
    """Write a text for a tooltip so that nothing in it is taken for markup."""
    escaped = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
    return f"<span>{escaped}</span>"


def grams(value: float) -> str:
    """Write a weight in grams, to the tenth below 10 g."""
    return number(value, 1 if 0 < abs(value) < 9.95 else 0)


def number(value: float, digits: int = 0) -> str:
    """Write a number with a fixed count of digits, and a true minus sign."""
    return f"{value:.{digits}f}".replace("-", "−")
