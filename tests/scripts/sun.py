"""Writes the grid of tests/reference/sun.csv: sunrise and sunset by pvlib 0.16.1 (pip install pvlib==0.16.1 tzdata==2026.6).

    python sun.py > ../reference/sun.csv

Sunrise of a day, and the sunset that follows it, by the clock of the zone, from pvlib's positions of the sun. The example of the
algorithm's own report is by pvlib's event function, as the report has it: it looks over the day of UTC, so that the sunset it
gives for the 17th is that of the evening of the 16th by the clock there.
"""

import zoneinfo
from datetime import date

import pandas
from pvlib import solarposition

# The rules of the clock of the tzdata package, not those of the machine.
zoneinfo.reset_tzpath(to=())

# As the algorithm's own example has it: 17 October 2003, 7 h behind UTC, TT-UT 67 s.
NREL = (39.742476, -105.1786, "Etc/GMT+7", date(2003, 10, 17), 67.0)
PLACES = [
    (41.2, -96.4, "America/Chicago"),
    (49.9, -97.1, "America/Winnipeg"),
    (52.5, 13.4, "Europe/Berlin"),
    (60.0, 25.0, "Europe/Helsinki"),
    (65.0, 25.5, "Europe/Helsinki"),
    (-34.5, 147.2, "Australia/Sydney"),
    (-43.6, 172.0, "Pacific/Auckland"),
    (0.5, 36.8, "Africa/Nairobi"),
    (-15.6, -56.1, "America/Cuiaba"),
    (28.6, 77.2, "Asia/Kolkata"),
]
# Solstices and equinoxes, and the days about changes of the clock in these zones.
DAYS = [
    date(2031, 1, 5), date(2031, 3, 8), date(2031, 3, 9), date(2031, 3, 10), date(2031, 3, 20), date(2031, 3, 30),
    date(2031, 4, 6), date(2031, 6, 12), date(2031, 6, 21), date(2031, 8, 15), date(2031, 9, 23), date(2031, 9, 28),
    date(2031, 10, 5), date(2031, 10, 26), date(2031, 11, 1), date(2031, 11, 2), date(2031, 11, 3), date(2031, 12, 21),
]


def events(latitude, longitude, zone, day):
    """The first sunrise of the local day and the sunset after it: where the sun's middle crosses -50 minutes of arc."""
    begin = pandas.Timestamp(day).tz_localize(zone)
    times = pandas.date_range(begin, periods=36 * 60, freq="min")
    up = solarposition.spa_python(times, latitude, longitude, altitude=0, delta_t=75.0)["elevation"].to_numpy() + 50 / 60
    rise = next(n for n in range(len(up) - 1) if up[n] < 0 <= up[n + 1])
    sets = next(n for n in range(rise + 1, len(up) - 1) if up[n] >= 0 > up[n + 1])
    # Between two minutes the sun moves evenly.
    return [times[n] + pandas.Timedelta(seconds=60 * up[n] / (up[n] - up[n + 1])) for n in (rise, sets)]


def row(name, place, day, event, at, note=""):
    latitude, longitude, zone = place
    print(
        f"{name}-{event},sun,{day},latitude={latitude}; longitude={longitude}; zone={zone}; event={event},"
        f"{at.strftime('%Y-%m-%dT%H:%M:%S')},{5 if note else 2},s,derived,pvlib,{note},"
    )


print("# Made by tests/scripts/sun.py with pvlib 0.16.1: a general library, not a publication.")
print("id,check,input,with,expected,tolerance,unit,mark,source,at,deviation")
noon = pandas.DatetimeIndex([pandas.Timestamp(NREL[3]) + pandas.Timedelta(hours=12)]).tz_localize(NREL[2])
found = solarposition.sun_rise_set_transit_spa(noon, *NREL[:2], delta_t=NREL[4])
rise, sets = found["sunrise"].iloc[0], found["sunset"].iloc[0]
note = "the example of NREL/TP-560-34302; its printed times are from memory"
row("sun-nrel", NREL[:3], NREL[3], "rise", rise, note)
evening = sets.replace(day=16)
row("sun-nrel", NREL[:3], evening.date(), "set", evening, f"{note}; over the day of UTC: the evening before")
rise, sets = events(*NREL[:4])
row("sun-golden", NREL[:3], NREL[3], "rise", rise)
row("sun-golden", NREL[:3], NREL[3], "set", sets)
for place in PLACES:
    for day in DAYS:
        rise, sets = events(*place, day)
        name = f"sun-{place[2].split('/')[1].lower()}-{place[0]:g}-{day}"
        row(name, place, day, "rise", rise)
        row(name, place, day, "set", sets)
