"""What the rendered marks say: codes of many layouts, and words that are no code."""

LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"
DIGITS = "0123456789"
# Pairs that look alike are drawn oftener than the rest, both sides equally, so that the net has to tell them by shape.
ALIKE_LETTERS = "OISBZGQDUVTJY"
ALIKE_DIGITS = "0158264"
NARROW = "1I17JL1"
LAYOUTS = (
    ["LLDDDD"] * 10
    + ["DDD"] * 4
    + ["DDDD"] * 5
    + ["LDDD", "LDDDD", "LLDDD", "LLDD", "LDD", "DDL", "DDDL", "DDDDL", "DDDLL", "DLDDD", "LDLDD", "DDLDD", "LLDLDD"]
    + ["L DDD", "L DDDD", "LL DD", "LL DDD", "LL DDDD", "LLL DDDD", "DDD DD", "DD DD", "L DD DD", "DDD DDDD", "L L DD"]
    + ["DD-DD", "LL-DDDD", "DDD-DD", "L-DDD", "LLL-DDDD", "DDDD-DD", "LL-DD-DD", "L-DD-DD", "DDD-L"]
    + ["DD/DD", "DD.DD", "DDDD.DD", "DD/DD/DD", "DD.DD.DD", "L/DDD", "D.DDD", "LL.DDDD", "DDD/DD", "L.DDDD"]
    + ["DDDDD", "DDDDDD", "DDDDDDD", "DDDDDDDD", "LDDDDD", "LDDDDDD", "LLDDDDDD", "LLL DDD", "LLLDDD", "LLLDDDD"]
    + ["LLLDLDD", "LLLDDDD", "LDDDLLL", "LLDDLLL", "LL-LL DDDD", "L-LL DDDD", "LLDDDLL", "DDDDLLL", "DDLLDD"]
)
SEPARATORS = " -./ -"
WORDS = (
    "MADE IN BELGIUM FRANCE ITALY SPAIN GENUINE LEATHER REAL CUIR VERITABLE VERA PELLE ECHT LEDER MAISON ATELIER BRUXELLES"
    " FIRENZE PARIS LONDON ORIGINAL QUALITY HAND CRAFTED SINCE COMPANY AND SONS FINE GOODS BAGS MODEL STYLE SERIE COLLECTION"
    " VINTAGE PORTUGAL ENGLAND GERMANY WIEN MILANO SADDLERS TANNERY NATURAL CALF SKIN COTTON LINING DESIGN STUDIO ONE SIZE"
).split()


def pick(rng, items):
    return items[int(rng.integers(len(items)))]


def letter(rng):
    return pick(rng, ALIKE_LETTERS if rng.random() < 0.35 else LETTERS)


def digit(rng):
    draw = rng.random()
    return pick(rng, ALIKE_DIGITS if draw < 0.3 else NARROW.replace("I", "1").replace("J", "7").replace("L", "4") if draw < 0.42 else DIGITS)


def random_code(rng):
    """3 to 12 characters without any layout, at times with a separator."""
    length = int(rng.integers(3, 13))
    share = rng.random()
    text = [letter(rng) if rng.random() < share else digit(rng) for _ in range(length)]
    if length > 4 and rng.random() < 0.35:
        text[int(rng.integers(1, length - 1))] = pick(rng, SEPARATORS)
    return "".join(text)


def parted(rng, layout):
    """The layout with a separator in it, oftenest where letters meet digits."""
    places = [i for i in range(1, len(layout)) if layout[i] != layout[i - 1]]
    if not places or rng.random() < 0.4:
        places = list(range(1, len(layout)))
    place = pick(rng, places)
    return layout[:place] + pick(rng, SEPARATORS) + layout[place:]


def layout_code(rng):
    layout = pick(rng, LAYOUTS)
    if layout.isalpha() and rng.random() < 0.35:
        layout = parted(rng, layout)
    return "".join(letter(rng) if c == "L" else digit(rng) if c == "D" else c for c in layout)


def code(rng):
    """A text that a code stamp may bear; it has a digit, or it could not be told from a word."""
    while True:
        text = random_code(rng) if rng.random() < 0.15 else layout_code(rng)
        if any(c.isdigit() for c in text):
            return text


def invented(rng):
    """A word of nobody's: syllables, so that a maker's name never seen is still taken for a word."""
    text = ""
    while len(text) < rng.integers(3, 10):
        text += pick(rng, "BCDFGHJKLMNPRSTVWZ") + pick(rng, "AEIOUY") + (pick(rng, "LMNRSTX") if rng.random() < 0.4 else "")
    return text


def words(rng, most=4):
    """A text that is no code: one to a few words in capitals."""
    count = int(rng.integers(1, most + 1)) if rng.random() < 0.6 else 1
    made = [pick(rng, WORDS) if rng.random() < 0.55 else invented(rng) for _ in range(count)]
    if rng.random() < 0.08:
        made.insert(int(rng.integers(len(made) + 1)), pick(rng, ("&", "CO.", "LTD.", "ET FILS", "S.A.")))
    return " ".join(made).replace("&", "AND") if rng.random() < 0.5 else " ".join(made)


def small_words(rng):
    """Words in small letters, with a capital at times."""
    text = words(rng, 3).lower()
    return text.title() if rng.random() < 0.5 else text


def long_number(rng):
    """10 to 20 digits, at times with letters before them, at times in groups."""
    digits = "".join(digit(rng) for _ in range(int(rng.integers(10, 21))))
    if rng.random() < 0.3:
        digits = letter(rng) + letter(rng) + digits[2:]
    if rng.random() < 0.3:
        size = int(rng.integers(3, 6))
        digits = " ".join(digits[i : i + size] for i in range(0, len(digits), size))[:20].strip()
    return digits


def part_number(rng):
    """Letters and digits in three to five runs, as on parts: AB12C34D56."""
    text, letters = "", rng.random() < 0.7
    for _ in range(int(rng.integers(3, 6))):
        most = 5 if not text else 3
        text += "".join(letter(rng) if letters else digit(rng) for _ in range(int(rng.integers(1, most + 1))))
        letters = not letters
    if rng.random() < 0.25:
        text = parted(rng, text)
    return text[:20]


def vehicle_number(rng):
    """17 letters and digits without I, O and Q, the last four digits (ISO 3779)."""
    signs = "".join(c for c in LETTERS if c not in "IOQ")
    body = "".join(pick(rng, signs) if rng.random() < 0.6 else digit(rng) for _ in range(11))
    return body + "".join(digit(rng) for _ in range(6))


def hour(rng):
    """A time of day, at times with its date: its colons are no characters of ours."""
    text = f"{int(rng.integers(0, 24)):0{int(rng.integers(1, 3))}d}:{int(rng.integers(0, 60)):02d}"
    if rng.random() < 0.25:
        text += f":{int(rng.integers(0, 60)):02d}"
    if rng.random() < 0.4:
        date = f"{int(rng.integers(1, 32)):02d}{pick(rng, './- ')}{int(rng.integers(1, 13)):02d}{pick(rng, './- ')}{int(rng.integers(0, 40)):02d}"
        text = date + " " + text if rng.random() < 0.6 else text + " " + date
    return text


def line_text(rng):
    """What a recogniser's training line says: mostly codes, some words so that words are read as words."""
    draw = rng.random()
    if draw < 0.08:
        return words(rng, 2)[:14].replace("&", "").strip()
    if draw < 0.16:
        return part_number(rng) if draw < 0.14 else vehicle_number(rng)
    return long_number(rng) if draw < 0.19 else code(rng)
