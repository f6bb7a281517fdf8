"""Draws every glyph of every font once, so that a training run needs no font files and no font engine.

usage: python3 atlas.py FONTS_FOLDER OUT.npz

A glyph is kept as a grey mask at a cap height of CAP pixels with its offset and advance, both in those pixels.
"""

import pathlib
import re
import sys

import numpy as np
from PIL import Image, ImageDraw, ImageFont

CAP = 64
CODE = "ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-./"
OTHER = "abcdefghijklmnopqrstuvwxyz&\u00b7"
# Signs that are no characters of ours. What looks like one of ours even to a person (| , \u00b0 _ ~) is not among them.
SIGNS = "$%+*:;#@?!()[]<>=&\u20ac\u00a3\u00a5\u00a7\u00a9\u00ae\u2020\u2021\u00ab\u00bb\u00b6\u2192\u2190\u2191\u2193\u2605\u2665\u2666\u2663\u2660\u25a0\u25b2\u25c6\u2713"
PER_FAMILY = 8
# Ornamental, symbol and script cuts: nobody stamps a code with them.
UNWANTED = re.compile(
    r"outline|script|initial|dingbat|symbol|math|integral|nonunicode|size(one|two|three|four|five)|swash|ornament"
    r"|emoji|music|keyboard|lombard|chancery|variants|\[|shadow|icons|smallcaps|caps|classic|upright.*italic|shield|arrow"
    r"|fill|bullets|logo|standardsymbols|d050000l|z003|cmex|cmsy|cmmi|rsfs|wasy|msam|msbm|stmary|eufm|dsrom|esint"
    r"|biolinum_k|vargenes|junkyard|penguin|domestic|wasn|ocrbf|el_abogado|hairline|class_vtv|glass_ttyvt",
    re.I,
)


def glyph(font, char, scale):
    """The mask of one character, its left and top against the pen on the baseline, and its advance."""
    left, top, right, bottom = font.getbbox(char, anchor="ls")
    if right - left < 1 or bottom - top < 1:
        return None
    image = Image.new("L", (right - left + 2, bottom - top + 2))
    ImageDraw.Draw(image).text((1 - left, 1 - top), char, font=font, fill=255, anchor="ls")
    width = max(1, round(image.width * scale))
    height = max(1, round(image.height * scale))
    mask = np.asarray(image.resize((width, height), Image.Resampling.BOX), dtype=np.uint8)
    return mask, (left - 1) * scale, (top - 1) * scale, font.getlength(char) * scale


def read_font(path):
    """All glyphs of one font file, or nothing if it lacks some or draws boxes for them."""
    font = ImageFont.truetype(str(path), 200)
    box = font.getbbox("H", anchor="ls")
    cap = box[3] - box[1]
    if cap < 60 or cap > 200:
        return None
    scale = CAP / cap
    glyphs = {}
    lacking = glyph(font, "\uffff", scale)  # what the font draws for a character that it has not
    for char in CODE + OTHER + SIGNS:
        drawn = glyph(font, char, scale)
        if drawn is None and char in CODE:
            return None
        if drawn is not None and char in SIGNS and lacking is not None and np.array_equal(drawn[0], lacking[0]):
            continue
        if drawn is not None:
            glyphs[char] = drawn
    seen = {glyphs[c][0].tobytes() for c in "ABCDEFGHKMNPRTUVWXY23456789"}
    heights = [glyphs[c][0].shape[0] for c in "ABEHKMNRTX0123456789"]
    plain = max(heights) < 1.35 * CAP and min(heights) > 0.8 * CAP
    return glyphs if len(seen) == 27 and plain else None


def family(path):
    return re.split(r"[-_ ]|Bold|Italic|Regular|Light|Cond|Med|Oblique|Std", path.stem)[0].lower()[:10]


def collect(folder):
    """The usable fonts of a folder, at most PER_FAMILY of one family, upright ones first."""
    groups = {}
    for path in sorted(folder.iterdir()):
        if not UNWANTED.search(path.name):
            groups.setdefault(family(path), []).append(path)
    fonts = {}
    for members in groups.values():
        members.sort(key=lambda p: (bool(re.search("ital|obl|it\\.", p.name, re.I)), p.name))
        step = max(1, len(members) // PER_FAMILY)
        for path in members[::step][:PER_FAMILY]:
            try:
                glyphs = read_font(path)
            except OSError:
                glyphs = None
            if glyphs:
                fonts[path.stem] = glyphs
    return fonts


def pack(fonts):
    """Arrays that np.savez can hold: one long pixel strip, and one row of numbers a glyph."""
    rows, pixels, names, at = [], [], [], 0
    for index, (name, glyphs) in enumerate(fonts.items()):
        names.append(name)
        for char, (mask, left, top, advance) in glyphs.items():
            rows.append((index, ord(char), at, *mask.shape, left, top, advance))
            pixels.append(mask.ravel())
            at += mask.size
    return {"names": np.array(names), "rows": np.array(rows, np.float64), "pixels": np.concatenate(pixels)}


def load(path):
    """The fonts of a packed atlas: a list of {character: (mask, left, top, advance)}, and their names."""
    data = np.load(path)
    fonts = [{} for _ in data["names"]]
    pixels = data["pixels"]
    for index, code, at, height, width, left, top, advance in data["rows"]:
        at, height, width = int(at), int(height), int(width)
        mask = pixels[at : at + height * width].reshape(height, width)
        fonts[int(index)][chr(int(code))] = (mask, left, top, advance)
    return fonts, list(data["names"])


if __name__ == "__main__":
    found = collect(pathlib.Path(sys.argv[1]))
    np.savez_compressed(sys.argv[2], **pack(found))
    families = {family(pathlib.Path(name)) for name in found}
    print(f"{len(found)} fonts of {len(families)} families")
