"""Redoes one determination from an export of Porebench, with nothing but Python 3.

    python3 determination.py FOLDER DETERMINATION_ID

FOLDER is what "porebench export --book lab.porebench FOLDER" wrote. Prints one JSON object. The arithmetic is that of
"porebench factor --trials": readings as typed; what the calibration of a meter corrects is not in it.
"""
import csv
import json
import os
import statistics
import sys
from decimal import ROUND_HALF_EVEN, ROUND_HALF_UP, Decimal

# Litres in a unit, exact by definition of foot, inch, yard and US gallon.
LITRES = {"m3": 1000.0, "L": 1.0, "mL": 0.001, "ft3": 28.316846592, "yd3": 764.554857984,
          "in3": 0.016387064, "gal": 3.785411784}
# How the profiles that come with Porebench round a factor: to 0.1 % air; a 5 goes to the even digit, or away from zero.
TIES = {"astm-c231": ROUND_HALF_EVEN, "aashto-t152": ROUND_HALF_EVEN, "en-12350-7": ROUND_HALF_UP, "jis-a1128": ROUND_HALF_UP}


def rows(folder, name):
    with open(os.path.join(folder, name), encoding="utf-8-sig", newline="") as file:
        return list(csv.DictReader(file))


def water_density(celsius):
    """kg/m3, by Tanaka et al., Metrologia 38 (2001), equation 1."""
    t = celsius
    return 999.974950 * (1 - (t - 3.983035) ** 2 * (t + 301.797) / (522528.9 * (t + 69.34881)))


def factor(trial):
    """G of one trial in % air, or None where a reading is missing."""
    if trial["meter_type"] == "A":
        if not trial["h1_pct"] or not trial["h2_pct"]:
            return None
        return float(trial["h1_pct"]) - float(trial["h2_pct"])
    if not trial["withdrawn"] or not trial["gauge_pct"]:
        return None
    withdrawn = float(trial["withdrawn"])
    litres = float(trial["bowl_volume"]) * LITRES[trial["bowl_volume_unit"]]
    if trial["withdrawn_unit"] == "g":
        if not trial["water_temp_c"]:
            return None
        withdrawn = withdrawn / water_density(float(trial["water_temp_c"]))
    elif trial["withdrawn_unit"] == "mL":
        withdrawn = withdrawn / 1000
    percent = withdrawn if trial["withdrawn_unit"] == "pct" else 100 * withdrawn / litres
    return float(trial["gauge_pct"]) - percent


def main(folder, determination):
    trials = [trial for trial in rows(folder, "trial-sheet.csv") if trial["determination_id"] == determination]
    if not trials:
        sys.exit("no trial of " + determination)
    counted = {}
    for trial in trials:
        value = factor(trial)
        if value is not None and trial["leak"] == "no" and not trial["struck_because"]:
            counted[trial["trial_id"]] = value
    if not counted:
        sys.exit("no trial of " + determination + " counts")
    mix = next(row for row in rows(folder, "mix-design.csv") if row["mix_id"] == trials[0]["mix_id"])
    mean = statistics.fmean(counted.values())
    spread = statistics.stdev(counted.values()) if len(counted) > 1 else None
    ties = TIES[mix["profile_id"] or "astm-c231"]
    # Twelve digits first: a mean of 0.35 that is 0.35000000000000003 in the computer is a tie all the same.
    reported = Decimal(format(mean, ".12g")).quantize(Decimal("0.1"), rounding=ties)
    print(json.dumps({
        "determinationId": determination,
        "trials": counted,
        "accepted": len(counted),
        "meanPercent": mean,
        "standardDeviationPercent": spread,
        "standardErrorPercent": None if spread is None else spread / len(counted) ** 0.5,
        "reportedPercent": float(reported),
    }))


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(sys.argv[1], sys.argv[2])
