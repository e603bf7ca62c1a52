"""A recipe in a page that has no JSON-LD: the lines that a reader sees, from the title to where the recipe ends."""

from __future__ import annotations

import re
from html.parser import HTMLParser

from turnspit.errors import Impossible
from turnspit.recipes.headings import read_part

_UNSEEN = re.compile(r"script|style|noscript|nav|aside|form|button|svg|select|template|footer|figure")
_BLOCK = re.compile(r"address|article|blockquote|br|d[dlt]|div|h[1-6r]|header|li|main|ol|p|section|table|t[dr]|ul")
_PAGE = re.compile(
    r"\s*(?:<!doctype\s+html|<\?xml[^>]*>\s*<html|<html\b|<head\b|<body\b|<article\b|<div\b)", re.IGNORECASE
)
_ENDS = re.compile(
    r"^\W*(?:comments?|reviews?|leave a (?:reply|comment)|you may also like|more recipes|related\b|share\b|"
    r"about the author|comentarios|m[aá]s recetas|recetas relacionadas)",
    re.IGNORECASE,
)
_TITLE_ENDS = re.compile(r"\s+(?:[|–—]|-)\s+.*$")


def is_page(text: str) -> bool:
    """Whether the text is an HTML page or a part of one."""
    return _PAGE.match(text) is not None


def page_text(page: str) -> str:
    """The recipe's lines as plain text. Raises Impossible for a page without a heading that says "Ingredients"."""
    seen = _Seen()
    seen.feed(page)
    seen.close()
    lines = [" ".join(line.split()) for line in "".join(seen.text).split("\n")]
    lines = [line for line in lines if line]
    title = " ".join("".join(seen.headline or seen.title).split())
    title = _TITLE_ENDS.sub("", title) if not seen.headline else title
    if not any(read_part(line) == "ingredients" for line in lines):
        raise Impossible(
            "recipe",
            title or "(page)",
            "is a page without recipe data or a heading that says Ingredients",
            "paste the recipe's own text: name, ingredients, method",
        )
    start = lines.index(title) + 1 if title in lines else 0
    end = next((at for at, line in enumerate(lines[start:], start) if _ENDS.match(line)), len(lines))
    return "\n".join((title or "Recipe", *lines[start:end]))


class _Seen(HTMLParser):
    """Collects the text that is shown, a line for each block; the first h1 and the title beside it."""

    def __init__(self) -> None:
        super().__init__()
        self.text: list[str] = []
        self.headline: list[str] = []
        self.title: list[str] = []
        self._unseen = 0
        self._into: list[str] | None = None

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:  # noqa: ARG002
        """Begin a line, or what is not shown."""
        self._unseen += bool(_UNSEEN.fullmatch(tag))
        self.text += ["\n"] if _BLOCK.fullmatch(tag) else []
        if tag == "title":
            self._into = self.title
        elif tag == "h1" and not self.headline:
            self._into = self.headline

    def handle_endtag(self, tag: str) -> None:
        """End it."""
        self._unseen = max(0, self._unseen - bool(_UNSEEN.fullmatch(tag)))
        self.text += ["\n"] if _BLOCK.fullmatch(tag) else []
        if tag in ("title", "h1"):
            self._into = None

    def handle_data(self, data: str) -> None:
        """Take what is shown; a title is no line of the page."""
        if self._unseen:
            return
        if self._into is not None:
            self._into.append(data)
        if self._into is not self.title:
            self.text.append(data.replace("\n", " "))
