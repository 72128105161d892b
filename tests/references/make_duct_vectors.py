"""Makes tests/vectors/duct-friction.csv with general-purpose libraries.

Run with Python 3, fluids 1.3.1 (numpy 2.4.6, scipy 1.17.1), all from PyPI:
    python make_duct_vectors.py > ../vectors/duct-friction.csv

Friction by Colebrook's equation, worked wholly in SI units here: density 0.075 lb/ft3,
viscosity such that Re = 66.4 * mm * m/s. The program under test works in inches and fpm, so that
a slip in a unit or a constant shows. Losses in inches of water per 100 ft.
"""

from math import pi
import fluids
from fluids.friction import friction_factor

assert fluids.__version__.startswith("1.3"), fluids.__version__
DENSITY = 0.075 * 0.45359237 / 0.3048**3  # kg/m3
print("kind,inches,cfm,reynolds,factor,in_wc_per_100_ft")
for kind, rough_ft in (("round", 0.0003), ("flex", 0.003)):
    for inches in (3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 20):
        for fpm in (260, 450, 700, 1100):
            d = inches * 0.0254
            cfm = round(fpm * pi * (inches / 12) ** 2 / 4, 1)
            v = cfm * 0.3048**3 / 60 / (pi * d * d / 4)
            reynolds = 66.4 * (d * 1000) * v
            f = friction_factor(Re=reynolds, eD=rough_ft * 0.3048 / d, Method="Colebrook")
            pascals = f * 30.48 / d * DENSITY * v * v / 2
            print(f"{kind},{inches},{cfm},{reynolds:.1f},{f:.8f},{pascals / 249.08891:.8f}")
