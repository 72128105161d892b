"""Prints the flows of changed and blocked branches that stand in the tests of the duct calculators.

Run with Python 3 and fluids 1.3.1 (PyPI). Colebrook's equation by fluids, flows by halving.
A 6-in galvanized branch of 100 effective ft that gives 100 cfm, one change at a time.
"""

from math import exp, pi, sqrt
from fluids.friction import friction_factor


def loss(inches, feet, cfm, rough=0.0003, times=1.0, zeta=0.0):
    fpm = cfm / (pi * inches**2 / 4 / 144)
    f = friction_factor(Re=8.56 * inches * fpm, eD=rough * 12 / inches, Method="Colebrook")
    return (f * times * feet * 12 / inches + zeta) * 0.075 * (fpm / 1097) ** 2


def at(rises, want, most=1000.0):
    low, high = 0.1, most
    for _ in range(100):
        middle = (low + high) / 2
        low, high = (middle, high) if rises(middle) < want else (low, middle)
    return low


held = loss(6, 100, 100)
print(f"now {held:.4f} in wc")
for added in (10, 22, 40):
    print(f"+{added} ft: {at(lambda q: loss(6, 100 + added, q), held):.1f} cfm")
for slack in (0, 4, 15, 30):
    times = 1 + 0.58 * slack * exp(-0.126 * 6)
    flex = lambda q: loss(6, 100, q) + loss(6, 12, q, 0.003, times)
    print(f"+12 ft flex, {slack} % short: {at(flex, held):.1f} cfm")
print(f"+22 ft of 7 in: {at(lambda q: loss(6, 100, q) + loss(7, 22, q), held):.1f} cfm")
other = lambda q: loss(6, 140, q) - loss(6, 100, (300 - q) / 2)
print(f"+40 ft, one of three, 300 cfm held: {at(other, 0, 300.0):.3f} cfm")
for b in (0.9, 0.75, 0.5, 0.3, 0.25):
    zeta = ((1 - b) + sqrt(0.5) * (1 - b) ** 0.375) ** 2 / b**2
    alone = at(lambda q: loss(6, 100, q, zeta=zeta), held)
    three = at(lambda q: loss(6, 100, q, zeta=zeta) - loss(6, 100, (300 - q) / 2), 0, 299.0)
    print(f"open {b}: {alone:.1f} cfm; one of three, 300 cfm held: {three:.1f} cfm")
for feet in (80, 110):
    first = at(lambda q: loss(6, feet, q) - loss(6, 120, 200 - q), 0, 199.0)
    print(f"{feet} and 120 ft, 200 cfm: {first:.1f} cfm at {loss(6, feet, first):.4f} in wc")
