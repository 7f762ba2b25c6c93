"""Writes tests/reference/wet_bulb.csv: wet bulbs by PsychroLib 2.5.0 (the ASHRAE equations; pip install psychrolib==2.5.0).

    python wet_bulb.py > ../reference/wet_bulb.csv

PsychroLib takes an ice bulb below 0 °C, the program liquid water; so the grid ends where the wet bulb falls to 0 °C.
"""

import psychrolib

psychrolib.SetUnitSystem(psychrolib.SI)

print("# Made by tests/scripts/wet_bulb.py with PsychroLib 2.5.0: a general library, not a publication.")
print("id,check,input,with,expected,tolerance,unit,mark,source,at,deviation")
for pascals in [101325, 95000, 84500, 70000]:
    for air in [5, 10, 15, 20, 25, 30, 35, 40]:
        for humidity in [10, 20, 30, 40, 50, 60, 70, 80, 90, 95]:
            wet = psychrolib.GetTWetBulbFromRelHum(air, humidity / 100, pascals)
            if wet <= 0.05:
                continue
            print(
                f"wet-{pascals}-{air}-{humidity},wet_bulb,{air} °C,humidity={humidity} %; pressure={pascals} Pa,"
                f"{wet:.4f},0.005,°C,derived,psychrolib,,"
            )
