"""Prints the reference numbers of the air calculators' tests.

Made with Python 3, PsychroLib 2.5.0 and fluids 1.3.0:
    python -m venv v && v/bin/pip install psychrolib==2.5.0 fluids==1.3.0
    v/bin/python tests/references/make_air_vectors.py
The tests hold the numbers; nothing is fetched when they run.
"""

from math import exp, pi, sqrt

import fluids
import psychrolib

psychrolib.SetUnitSystem(psychrolib.IP)
SEA = psychrolib.GetStandardAtmPressure(0)

print("altitude ft, pressure ratio")
for feet in range(0, 8001, 1000):
    print(feet, f"{psychrolib.GetStandardAtmPressure(feet) / SEA:.6f}")

print("moist air: dry bulb F, RH, psia -> lb dry air/cu ft, Btu/lb F, Btu/h per cfm F")
for dry, humidity, feet in [(70, 0.0, 0), (55, 0.9, 0), (75, 0.5, 0), (105, 0.1, 0), (75, 0.5, 5000)]:
    pressure = psychrolib.GetStandardAtmPressure(feet)
    ratio = psychrolib.GetHumRatioFromRelHum(dry, humidity, pressure)
    volume = psychrolib.GetMoistAirVolume(dry, ratio, pressure)
    heat = psychrolib.GetMoistAirEnthalpy(dry + 1, ratio) - psychrolib.GetMoistAirEnthalpy(dry, ratio)
    print(dry, humidity, feet, f"{1 / volume:.5f}", f"{heat:.5f}", f"{60 * heat / volume:.5f}")


def loss(diameter, cfm, roughness):
    """in wc per 100 ft; inches, cfm, feet."""
    fpm = cfm / (pi / 4 * (diameter / 12) ** 2)
    factor = fluids.friction.Colebrook(8.56 * diameter * fpm, roughness * 12 / diameter)
    return factor * 1200 / diameter * 0.075 * (fpm / 1097) ** 2


def carries(diameter, target, roughness, times=1.0):
    low, high = 1.0, 5000.0
    for _ in range(80):
        middle = (low + high) / 2
        if loss(diameter, middle, roughness) * times < target:
            low = middle
        else:
            high = middle
    return low


print("duct in: flexible 4 % slack at 0.08, tight at 0.08, metal at 0.10, cfm")
for diameter in (4, 5, 6, 7, 8, 9, 10, 12):
    slack = 1 + 0.58 * 4 * exp(-0.126 * diameter)
    print(
        diameter,
        f"{carries(diameter, 0.08, 0.003, slack):.1f}",
        f"{carries(diameter, 0.08, 0.003):.1f}",
        f"{carries(diameter, 0.10, 0.0003):.1f}",
    )

print("parcel on the axis of a jet: drop's coefficient, temperature decay 0.73 of velocity's")
# dy/dx = w/V(x), dw/dx = g dT(x)/(T V(x)), V = V0 r/x, dT = 0.73 dT0 r/x, r = K sqrt(A): in units
# of g dT0/(T V0^2 r), y/x^3.
steps = 200_000
x, w, y = 0.0, 0.0, 0.0
for at in range(steps):
    x = (at + 0.5) / steps
    w += 0.73 / steps
    y += w * x / steps
print(f"{y:.3f}")
assert abs(y - 0.243) < 0.001 and sqrt(2) > 1
