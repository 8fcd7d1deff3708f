#!/usr/bin/env python3
"""Rounds of two and three distillations, worked by plain recycling: what comes back is put into the next charge,
charge after charge from empty receivers, until nothing changes. Nothing here is taken from the handbook's sums.

Run:  python3 rounds.py > rounds.json

Physics. A still is Rayleigh's law, d ln(moles left) = dx / (y - x), integrated by scipy's DOP853 at 1e-11. The vapour y
that leaves is that over the liquid, and a share r of the way from it to the vapour over itself condensed (one further
stage, r of it). Two models of vapour over liquid, each with the vapour pressures that belong to it:
  van Laar   0.7292 and 0.4104 (log10), Antoine 8.04494/1554.3/222.65 and 7.96681/1668.21/228.0 mmHg, degree C
             [published: de Nevers, Physical and Chemical Equilibrium for Chemical Engineers, p. 186 and Table A.2]
  Wilson     382.30 and 955.45 cal/mol, 58.68 and 18.07 cm3/mol, Antoine 8.1122/1592.864/226.184 and 8.07131/1730.63/233.426
             [published: Gmehling and Onken, DECHEMA collection, by a listing of its constants]
The first is the handbook's own choice and must agree to rounding; the second is another laboratory's, and tells how far
the model carries. Densities at 20 degree C: OIML R 22 = Directive 76/766/EEC. Molar masses: standard atomic weights.

Why recycling: the handbook solves for the settled state directly, by roots; that the state is reached at all, and from
empty receivers, is what a stillhouse wants to know, and needs no root.
"""
import json
import numpy as np
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

M_E, M_W = 46.069, 18.0153
A = [998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388,
     306287.4042, -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426]


def density(w):
    return sum(a * w**k for k, a in enumerate(A))


RHO_E = density(1.0)


def litres(n):
    """Volume, L at 20 degree C, and strength, % vol, of kmol (ethanol, water)."""
    m = n[0] * M_E + n[1] * M_W
    if m <= 0:
        return [0.0, 0.0]
    v = 1000 * m / density(n[0] * M_E / m)
    return [v, 100 * (1000 * n[0] * M_E / RHO_E) / v]


def kmol(v, s):
    """kmol (ethanol, water) of v litres at s % vol."""
    w = brentq(lambda w: 100 * w * density(w) / RHO_E - s, 0, 1, xtol=1e-16, rtol=1e-15)
    m = v * density(w) / 1000
    return np.array([m * w / M_E, m * (1 - w) / M_W])


def fraction_of(strength):
    e, w = kmol(1.0, strength)
    return e / (e + w)


def van_laar(x, t):
    a, b = 0.7292, 0.4104
    d = a * x + b * (1 - x)
    return 10 ** (a * (b * (1 - x) / d) ** 2), 10 ** (b * (a * x / d) ** 2)


def wilson(x, t):
    rt = 1.98721 * (t + 273.15)
    l12 = 18.07 / 58.68 * np.exp(-382.30 / rt)
    l21 = 58.68 / 18.07 * np.exp(-955.45 / rt)
    p, q = x + l12 * (1 - x), (1 - x) + l21 * x
    k = l12 / p - l21 / q
    return np.exp((1 - x) * k) / p, np.exp(-x * k) / q


MODELS = {
    "van Laar": (van_laar, (8.04494, 1554.3, 222.65), (7.96681, 1668.21, 228.0)),
    "Wilson": (wilson, (8.1122, 1592.864, 226.184), (8.07131, 1730.63, 233.426)),
}


def saturation(c, t):
    return 101.325 / 760 * 10 ** (c[0] - c[1] / (c[2] + t))


class Still:
    """Follows Rayleigh's law in u = ln(x / (1 - x)) from 1e-5 to 0.8, once; a run is a look-up on it."""

    def __init__(self, model, pressure, reflux):
        self.gammas, self.pe, self.pw = MODELS[model]
        self.pressure, self.reflux = pressure, reflux
        u0, u1 = np.log(1e-5 / (1 - 1e-5)), np.log(0.8 / 0.2)
        self.ln = solve_ivp(self.slope, (u0, u1), [0.0], method="DOP853", rtol=1e-11, atol=1e-12,
                            dense_output=True).sol

    def over(self, x):
        """Vapour over boiling liquid."""
        def miss(t):
            ge, gw = self.gammas(x, t)
            return x * ge * saturation(self.pe, t) + (1 - x) * gw * saturation(self.pw, t) - self.pressure
        t = brentq(miss, 50, 120, xtol=1e-12, rtol=1e-15)
        return x * self.gammas(x, t)[0] * saturation(self.pe, t) / self.pressure

    def leaves(self, x):
        once = self.over(x)
        return once + self.reflux * (self.over(once) - once)

    def slope(self, u, _):
        x = 1 / (1 + np.exp(-u))
        return [x * (1 - x) / (self.leaves(x) - x)]

    def left(self, a, b):
        """Moles left at fraction b of one mole at a."""
        f = lambda x: self.ln(np.log(x / (1 - x)))[0]
        return np.exp(f(b) - f(a))

    def pot_at(self, strength):
        y = fraction_of(strength)
        return brentq(lambda x: self.leaves(x) - y, 1e-5, 0.8, xtol=1e-16, rtol=1e-14)


def down(still, n, end):
    """What is in the pot once its liquid has come down to mole fraction `end`."""
    total = n.sum()
    x = n[0] / total
    if end >= x:
        return n
    m = total * still.left(x, end)
    return np.array([m * end, m * (1 - end)])


def after_share(still, n, share):
    """What is in the pot once a share of the alcohol has come over."""
    x = n[0] / n.sum()
    f = lambda to: n.sum() * still.left(x, to) * to - (1 - share) * n[0]
    return down(still, n, brentq(f, 1e-5, x, xtol=1e-16, rtol=1e-14)) if share > 0 else n


def spirit_run(stills, n, c):
    """Foreshots, heart, strong feints, weak feints and lees of a charge shared out among stills."""
    out = [np.zeros(2) for _ in range(5)]
    for part, still, pots in stills:
        pot = part * n
        for i, step in enumerate([
            lambda p: after_share(still, p, c["foreshots"]),
            lambda p: down(still, p, pots["heart"]),
            lambda p: down(still, p, pots["strong"]),
            lambda p: down(still, p, pots["weak"]),
        ]):
            after = step(pot)
            out[i] += pot - after
            pot = after
        out[4] += pot
    return out


def sides(stills, groups, cuts):
    """Each group with its part of the liquid, and the pots at which its parts end."""
    total = sum(g["number"] * g["charge"] for g in groups)
    found = []
    for g in groups:
        still = stills[g["reflux"]]
        found.append((g["number"] * g["charge"] / total, still,
                      {name: still.pot_at(s) for name, s in cuts.items()}))
    return found


def settle(case, model):
    refluxes = {g["reflux"] for kind in ("wash", "intermediate", "spirit") for g in case[kind]}
    stills = {r: Still(model, case["pressure"], r) for r in refluxes}
    wash = kmol(*case["washOf"])
    low = np.zeros(2)
    for part, still, pots in sides(stills, case["wash"], {"end": case["washEnd"]}):
        low += part * wash - down(still, part * wash, pots["end"])

    thrice = case["scheme"] == "thrice"
    cuts = {"heart": case["heart"], "strong": case["strong"] if thrice else case["feints"], "weak": case["feints"]}
    spirit = sides(stills, case["spirit"], cuts)
    between = sides(stills, case["intermediate"], cuts) if case["intermediate"] else []
    if case["scheme"] == "part-thrice":
        again = case["runAgain"] / 100 * low
        over = sum((part * again - down(still, part * again, pots["weak"]) for part, still, pots in between), np.zeros(2))
        comes, lees1, first = low - again + over, again - over, again
    weak, back = np.zeros(2), np.zeros(2)
    last = None
    for charges in range(1, 2001):
        if thrice:
            first = low + weak
            strong, weak1, lees1 = np.zeros(2), np.zeros(2), np.zeros(2)
            for part, still, pots in between:
                a = down(still, part * first, pots["strong"])
                b = down(still, a, pots["weak"])
                strong, weak1, lees1 = strong + part * first - a, weak1 + a - b, lees1 + b
            comes = strong
        elif case["scheme"] == "twice":
            comes, lees1, first = low, np.zeros(2), np.zeros(2)
        charge = comes + back
        fore, heart, strong2, weak2, lees2 = spirit_run(spirit, charge, case)
        back = fore + strong2
        weak = (weak1 if thrice else 0) + weak2
        if not thrice:
            back = back + weak2
        state = np.concatenate([charge, first])
        if last is not None and np.all(np.abs(state - last) <= 1e-13 * np.abs(state).max()):
            break
        last = state
    return {
        "charges": charges,
        "lowWines": litres(low),
        "intermediateCharge": litres(first),
        "charge": litres(charge),
        "foreshots": litres(fore),
        "heart": litres(heart),
        "feints": litres(strong2 + weak2),
        "lees": litres(lees1 + lees2),
        "closes": float(np.abs((lees1 + heart + lees2) / low - 1).max()),
    }


one = lambda reflux, charge=8000, number=1: {"number": number, "charge": charge, "reflux": reflux}
CASES = [
    {"name": "three times, one still of each kind", "scheme": "thrice", "pressure": 101.325, "washOf": [7500, 8.0], "washEnd": 1,
     "wash": [one(0.05)], "intermediate": [one(0.08)], "spirit": [one(0.1)],
     "foreshots": 0.03, "heart": 70, "strong": 40, "feints": 1},
    {"name": "three times, strong feints down to 20 and a low cut", "scheme": "thrice", "pressure": 98.0, "washOf": [32000, 8.6], "washEnd": 1,
     "wash": [one(0.1)], "intermediate": [one(0.15)], "spirit": [one(0.2)],
     "foreshots": 0.015, "heart": 62, "strong": 20, "feints": 0.5},
    {"name": "three times, unequal stills of every kind", "scheme": "thrice", "pressure": 101.325, "washOf": [20000, 7.4], "washEnd": 1.5,
     "wash": [one(0.02, 9000), one(0.12, 4000, 2)], "intermediate": [one(0.05, 6000), one(0.25, 3000)],
     "spirit": [one(0.1, 4000), one(0.3, 2500, 2)], "foreshots": 0.02, "heart": 74, "strong": 50, "feints": 1},
    {"name": "half of the low wines run again", "scheme": "part-thrice", "pressure": 101.325, "washOf": [12000, 7.8], "washEnd": 1,
     "wash": [one(0.05)], "intermediate": [one(0.1)], "spirit": [one(0.12)], "runAgain": 50,
     "foreshots": 0.02, "heart": 66, "strong": 1, "feints": 1},
    {"name": "four fifths of the low wines run again, unequal spirit stills", "scheme": "part-thrice", "pressure": 101.325, "washOf": [12000, 8.2],
     "washEnd": 1, "wash": [one(0.05)], "intermediate": [one(0)], "spirit": [one(0.05, 5000), one(0.2, 3000)], "runAgain": 80,
     "foreshots": 0.01, "heart": 68, "strong": 1, "feints": 1},
    {"name": "twice, unequal stills of both kinds", "scheme": "twice", "pressure": 101.325, "washOf": [32000, 8.0], "washEnd": 1,
     "wash": [one(0.02, 12000), one(0.15, 7000, 3)], "intermediate": [], "spirit": [one(0.05, 9000), one(0.25, 5000)],
     "foreshots": 0.02, "heart": 63, "strong": 1, "feints": 1},
]

if __name__ == "__main__":
    rows = [{**case, "by": {model: settle(case, model) for model in MODELS}} for case in CASES]
    print(json.dumps({"source": "rounds.py beside this file: computed from the constants named there", "cases": rows}, indent=1))
