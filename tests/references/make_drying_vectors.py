"""Prints the reference numbers of the drying calculator's tests.

Made with Python 3 and PsychroLib 2.5.0:
    python -m venv v && v/bin/pip install psychrolib==2.5.0
    v/bin/python tests/references/make_drying_vectors.py
The tests hold the numbers; nothing is fetched when they run.
"""

import psychrolib

psychrolib.SetUnitSystem(psychrolib.IP)
SEA = psychrolib.GetStandardAtmPressure(0)
KPA = 6.894757293168361

print("saturation over water: F, kPa")
for dry in (32.1, 40, 50, 60, 70, 80, 90, 100):
    print(dry, f"{psychrolib.GetSatVapPres(dry) * KPA:.5f}")

print("dew point: F, RH, F")
for dry, humidity in [(70, 0.5), (60, 0.7), (80, 0.8), (72, 0.4), (90, 0.9), (50, 0.98)]:
    print(dry, humidity, f"{psychrolib.GetTDewPointFromRelHum(dry, humidity):.2f}")

print("outdoor air let in, pressure of its vapor kept: F, RH, indoors F, RH")
for out, humidity, inside in [(35, 0.9, 70), (80, 0.8, 72), (50, 0.6, 68), (90, 0.5, 75)]:
    vapor = psychrolib.GetVapPresFromRelHum(out, humidity)
    print(out, humidity, inside, f"{100 * vapor / psychrolib.GetSatVapPres(inside):.2f}")

print("100 cfm of room air exchanged: room F, RH, outdoors F, RH, lb of water an hour")
for room, humidity, out, outdoors in [(70, 0.5, 35, 0.9), (72, 0.6, 50, 0.6), (65, 0.8, 40, 0.7)]:
    inside = psychrolib.GetHumRatioFromRelHum(room, humidity, SEA)
    let_in = psychrolib.GetHumRatioFromRelHum(out, outdoors, SEA)
    volume = psychrolib.GetMoistAirVolume(room, inside, SEA)
    print(room, humidity, out, outdoors, f"{100 * 60 / volume * (inside - let_in):.4f}")
