"""Tyres: dimensions, growth, rolling circumference, load at pressure and speed.

Every rule stands here once, with where it comes from. Nothing is taken from the service's own code.
Lengths are mm, rim codes inches, pressures kPa (gauge, cold), loads kg, speeds km/h.
"""

import csv
import re
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

TABLES = Path(__file__).resolve().parent.parent / "TestData"


def whole(value):
    """Nearest whole number, halves up. The rim diameters of the published table (17.5 gives 445) need it so."""
    return int((Fraction(value) + Fraction(1, 2)) // 1)


def read_table(name):
    with open(TABLES / name, encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


# Load index in kg: French order of 24 October 1994, Annex I; Dutch Regeling voertuigen, Annex VIII, annex 4.
LOAD_KG = {int(row["load_index"]): float(row["kg_french_order"]) for row in read_table("load-index.csv")}

# Speed symbols: the same order (F to H); the handbook's p. 291 (V, W, Y); B to E from memory.
SPEED_KMH = {row["symbol"]: float(row["kmh"]) for row in read_table("speed-symbol.csv")}

# Permitted rims of seven sizes, from memory.
LISTED_RIMS = {
    row["size"]: (float(row["minimum_in"]), float(row["maximum_in"]))
    for row in read_table("permitted-rim-width-recalled.csv")
}

METRIC = re.compile(
    r"(?P<kind>P|LT|HL)?(?P<width>\d{3})(?:/(?P<aspect>\d{2,3}))?(?P<make>ZRF|ZR|RF|R|D|B|-)(?P<rim>\d{1,2}(?:\.5)?)(?P<c>C)?")
INCHES = re.compile(r"(?P<diameter>\d{2}(?:\.\d+)?)x(?P<width>\d{1,2}\.\d+)(?P<make>R|-|D|B)(?P<rim>\d{1,2}(?:\.5)?)(?P<lt>LT)?")
SERVICE = re.compile(r"\(?(?P<index>\d{1,3})(?:/\d{1,3})?(?P<symbol>[A-Y])\)?")


@dataclass(frozen=True)
class Tyre:
    marking: str
    rim_in: float
    radial: bool
    width: Fraction  # nominal section width S1
    aspect: float  # None where the size states an outer diameter in inches
    stated_diameter: Fraction  # None for metric sizes
    p_size: bool
    version: str  # "", XL, HL, LL, C, CP, LT
    index: int
    symbol: str
    above_symbol: bool  # bracketed service description
    z_mark: bool
    snow: bool
    list_key: str


def read(marking):
    """Read the sizes the cases use. The marking's groups are separated by single spaces."""
    groups = marking.split(" ")
    size = METRIC.fullmatch(groups[0])
    version = ""
    if size:
        kind = size["kind"] or ""
        aspect = float(size["aspect"]) if size["aspect"] else 82.0  # no aspect marked: UK MOT manual, section 5.2
        width, stated = Fraction(int(size["width"])), None
        version = {"LT": "LT", "HL": "HL"}.get(kind, "C" if size["c"] else "")
        key = f"{size['width']}/{size['aspect']}R{size['rim']}"
    else:
        size = INCHES.fullmatch(groups[0])
        kind, aspect, key = "", None, ""
        stated, width = Fraction(size["diameter"]) * Fraction("25.4"), Fraction(size["width"]) * Fraction("25.4")
        version = "LT" if size["lt"] else ""
    index = symbol = None
    bracketed = False
    for group in groups[1:]:
        service = SERVICE.fullmatch(group)
        if service:
            index, symbol, bracketed = int(service["index"]), service["symbol"], group.startswith("(")
        elif group in ("XL", "HL", "LL", "SL", "CP"):
            version = "" if group == "SL" else group
    return Tyre(
        marking, float(size["rim"]), size["make"] in ("R", "ZR", "RF", "ZRF"), width, aspect, stated, kind == "P",
        version, index, symbol, bracketed, size["make"].startswith("Z"), "M+S" in groups or "3PMSF" in groups, key)


def rim_diameter(tyre):
    """d: code x 25.4 in whole mm (quoted by a tyre engineer)."""
    return whole(Fraction(tyre.rim_in) * Fraction("25.4"))


def section_height(tyre):
    """H: width x aspect in whole mm before doubling (from memory; two of five published rolling radii fit only so)."""
    if tyre.stated_diameter is not None:
        return Fraction(whole(tyre.stated_diameter) - rim_diameter(tyre), 2)
    return whole(tyre.width * Fraction(tyre.aspect) / 100)


def overall_diameter(tyre):
    """D = d + 2H (a lecture note works it so)."""
    return float(rim_diameter(tyre) + 2 * section_height(tyre))


def measuring_rim_in(tyre):
    """Share of the nominal width to the nearest half inch (from memory)."""
    if tyre.aspect is None:
        share = Fraction("0.80")
    else:
        steps = ((75, "0.70"), (60, "0.75"), (50, "0.80"), (45, "0.85"), (35, "0.90"))
        share = next((Fraction(share) for series, share in steps if tyre.aspect >= series), Fraction("0.92"))
    return whole(share * tyre.width / Fraction("25.4") * 2) / 2


def design_width(tyre):
    """S = S1 + 0.4 (A - A1), whole mm (clause of a UN tyre regulation, quoted); A1 = x S1, x from memory."""
    if tyre.aspect is None:
        return whole(tyre.width)  # the marking states it
    x = Fraction("0.70") if tyre.aspect >= 50 else Fraction("0.85")
    measuring = Fraction(measuring_rim_in(tyre)) * Fraction("25.4")
    return whole(tyre.width + Fraction("0.4") * (measuring - x * tyre.width))


def width_on(tyre, rim_width_in):
    """The same clause's slope: 0.4 mm of section for each mm of rim."""
    return float(design_width(tyre)) + 0.4 * 25.4 * (rim_width_in - measuring_rim_in(tyre))


def largest_width_on(tyre, rim_width_in):
    """UN R30 6.1.4, from memory: 4 % radial, 6 % otherwise."""
    return width_on(tyre, rim_width_in) * (1.04 if tyre.radial else 1.06)


def largest_diameter(tyre):
    """UN R30 6.1.5, from memory: d + 2H x 1.04 radial, 1.08 otherwise; 1 % more for snow tyres."""
    growth = 1.04 if tyre.radial else 1.08
    return (rim_diameter(tyre) + 2 * float(section_height(tyre)) * growth) * (1.01 if tyre.snow else 1.0)


def smallest_diameter(tyre):
    """UN R30 6.1.5, from memory: d + 2H x 0.97."""
    return rim_diameter(tyre) + 2 * float(section_height(tyre)) * 0.97


def permitted_rims(tyre):
    """(least, greatest, listed): seven sizes are listed, else measuring rim - 0.5 to + 1.0 in; all from memory."""
    if tyre.list_key in LISTED_RIMS:
        return (*LISTED_RIMS[tyre.list_key], True)
    measuring = measuring_rim_in(tyre)
    return measuring - 0.5, measuring + 1.0, False


def rolling_circumference(tyre, speed_kmh=60.0):
    """ETRTO 3.05 D radial, 2.99 D otherwise at 60 km/h; WdK: 1 % more for each 100 km/h."""
    return (3.05 if tyre.radial else 2.99) * overall_diameter(tyre) * (1 + (speed_kmh - 60.0) / 10000)


# The published table of load against pressure begins at 1.5 bar (the same handbook, p. 290).
LOWEST_TABULATED_KPA = 150.0


def full_load(tyre):
    return None if tyre.index is None else LOAD_KG[tyre.index]


def reference_pressure(tyre):
    """Where the load-index load is reached; none known for C, CP and LT. Owner's manual quoted; kPa from memory."""
    if tyre.version in ("C", "CP", "LT"):
        return None
    raised = tyre.version in ("XL", "HL")
    if tyre.p_size:
        return 280.0 if raised else 240.0
    return 290.0 if raised else 250.0


def speed_share(tyre, speed_kmh):
    """Share of the load that is left at a top speed: handbook p. 291, Fig. 10.1-14. None above the symbol's speed."""
    limit = 300.0 if tyre.above_symbol else SPEED_KMH[tyre.symbol]
    if speed_kmh > limit:
        return None
    full_up_to, per_kmh = {"V": (210, 0.003), "W": (240, 0.005), "Y": (270, 0.005)}.get(tyre.symbol, (speed_kmh, 0.0))
    return 1.0 - per_kmh * max(0.0, speed_kmh - full_up_to)


def capacity(tyre, pressure_kpa, speed_kmh):
    """Load x (p / reference)^0.8, P sizes ^0.5, never more than 1, x the share at speed. None: not told."""
    if tyre.index is None:
        return None
    share = speed_share(tyre, speed_kmh)
    reference = reference_pressure(tyre)
    if share is None or reference is None:
        return None
    filled = min(1.0, (pressure_kpa / reference) ** (0.5 if tyre.p_size else 0.8))
    return full_load(tyre) * filled * share


def pressure_for(tyre, load_kg, speed_kmh):
    """The inverse: reference x (load / load at full pressure)^1.25, P sizes power 2. None beyond the full load."""
    if tyre.index is None:
        return None
    share = speed_share(tyre, speed_kmh)
    reference = reference_pressure(tyre)
    if share is None or reference is None or load_kg > full_load(tyre) * share:
        return None
    return reference * (load_kg / (full_load(tyre) * share)) ** (2.0 if tyre.p_size else 1.25)


def added_for_speed(tyre, speed_kmh):
    """Handbook p. 290: R to V, none to 160 km/h, then evenly 30 kPa up to 210 and no more. None: not told."""
    if tyre.symbol not in ("R", "S", "T", "U", "H", "V"):
        return None
    return 30.0 * min(1.0, max(0.0, (speed_kmh - 160.0) / 50.0))
