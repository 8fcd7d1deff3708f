#!/usr/bin/env python3
"""Four hundred sound, invented pot-still malt-spirit houses, by physics of their own.

Run:  python3 houses.py [--seed 20261128] [--count 400] [--out DIR]

Writes houses.json (the truths), talks.json (fair talks), and
talks_moved_05.json, talks_moved_10.json, talks_moved_20.json (one figure wrong in each).

Units inside: kg, mol, K or degree C, kPa; every volume is litres at 20 degree C; every
strength is per cent by volume at 20 degree C.  Standing of a figure is given beside it:
  [published: ...]   read in a stored copy of the source named
  [memory]           recalled, not seen for this work
  [practice]         common practice of the trade, no source
  [own]              a choice or a fit of this study
"""
import argparse, json, math, os
import numpy as np
from scipy.interpolate import PchipInterpolator, CubicSpline
from scipy.optimize import least_squares, brentq
from scipy.integrate import solve_ivp

# --------------------------------------------------------------------------- constants
M_E, M_W, M_CO2, M_HEX = 46.069, 18.0153, 44.010, 180.156     # g/mol, standard atomic weights
R_GAS = 8.314463                                               # J/(mol K)

# --------------------------------------------------------------------------- 1 densities
# Ethanol-water at 20 degree C: the twelve A coefficients of the general formula of
# Directive 76/766/EEC = OIML R 22 [published: A_1-A_4 read; A_5-A_12 memory, checked below
# against Perry's seven printed densities].
A = [998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388,
     306287.4042, -613838.1234, 747017.2998, -547846.1354, 223446.0334, -39032.85426]
RHO_W = A[0]


def density_ew(w):
    """kg/m3 of an ethanol-water mixture, w = mass fraction of ethanol."""
    r = 0.0
    for a in reversed(A):
        r = r * w + a
    return r


RHO_E = density_ew(1.0)                                        # 789.24


def volume_ew(e, w):
    """Litres at 20 degree C of e kg ethanol with w kg water."""
    m = e + w
    return 1000.0 * m / density_ew(e / m) if m > 0 else 0.0


def abv_of_mass(w):
    return 100.0 * w * density_ew(w) / RHO_E


def strength(e, w):
    return abv_of_mass(e / (e + w))


def mass_from_mole(x):
    return M_E * x / (M_E * x + M_W * (1 - x))


def mole_from_mass(w):
    return (w / M_E) / (w / M_E + (1 - w) / M_W)


_wg = np.linspace(0, 1, 4001)
_mass_of_abv = PchipInterpolator(np.array([abv_of_mass(v) for v in _wg]), _wg)


def mole_of_abv(s):
    return mole_from_mass(float(_mass_of_abv(s)))


def water_to_reduce(e, w, target):
    """kg of water that brings e, w down to `target` % vol (contraction included)."""
    wf = float(_mass_of_abv(target))
    return max(0.0, e * (1 - wf) / wf - w)


def density_extract(p):
    """kg/m3 of a wort of mass fraction p of extract, taken as sucrose, as every gravity
    table of the trade does.  ICUMSA 20 degree C polynomial [memory; agrees with the printed
    NBS C440 rows to 0.00005 in gravity, tested in self_check]."""
    c = [998.2017, 385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.2890]
    r = 0.0
    for a in reversed(c):
        r = r * p + a
    return r


# Specific volumes of what remains dissolved in the wash, L/kg
V_DEXTRIN = 0.615        # as dilute sucrose (998.2/(998.2+385.2) slope gives 0.615) [own, from ICUMSA]
V_GLYCEROL = 0.77        # apparent, dilute, about 71 cm3/mol [memory]
V_ACID = 0.66            # succinic / lactic, dilute [memory]
V_YEAST = 0.72           # yeast dry matter, mostly protein and glucan [memory]

# --------------------------------------------------------------------------- 2 equilibrium


def psat_water(t):
    """kPa, t in degree C.  Wagner-Pruss auxiliary equation (IAPWS) [memory]."""
    T = t + 273.15
    Tc, pc = 647.096, 22064.0
    u = 1 - T / Tc
    s = (-7.85951783 * u + 1.84408259 * u**1.5 - 11.7866497 * u**3 + 22.6807411 * u**3.5
         - 15.9618719 * u**4 + 1.80122502 * u**7.5)
    return pc * np.exp(s * Tc / T)


def psat_ethanol(t):
    """kPa.  Antoine of Gmehling & Onken [published: read], log10 mmHg."""
    return 10 ** (8.1122 - 1592.864 / (t + 226.184)) * 0.1333224


class Nrtl:
    """Non-random two-liquid model, 1 = ethanol, 2 = water.
    The temperature slopes b and the non-randomness 0.3 are the widely printed set [memory];
    the two constants a are refitted here [own] to Carey & Lewis 1932 (Perry 13-1, read), T and y
    together, so that the isobar is the published one and the slope with temperature (wanted for
    the washback at 33 and the cask at 12 degree C) is kept."""
    b12, b21, alpha = 246.18, -586.0809, 0.30

    def __init__(self, a12=-0.8009, a21=3.4578):
        self.a12, self.a21 = a12, a21

    def gamma(self, x, t):
        T = t + 273.15
        t12, t21 = self.a12 + self.b12 / T, self.a21 + self.b21 / T
        g12, g21 = np.exp(-self.alpha * t12), np.exp(-self.alpha * t21)
        z = 1 - x
        l1 = z * z * (t21 * (g21 / (x + z * g21))**2 + t12 * g12 / (z + x * g12)**2)
        l2 = x * x * (t12 * (g12 / (z + x * g12))**2 + t21 * g21 / (x + z * g21)**2)
        return np.exp(l1), np.exp(l2)

    def partial(self, x, t):
        g1, g2 = self.gamma(x, t)
        return x * g1 * psat_ethanol(t), (1 - x) * g2 * psat_water(t)

    def bubble(self, x, p):
        """(T degree C, y) at p kPa for arrays of x: vectorised bisection, ideal vapour
        (fugacity corrections of the two nearly cancel at 1 atm: under 1 %)."""
        x = np.asarray(x, float)
        lo, hi = np.full_like(x, 60.0), np.full_like(x, 110.0)
        for _ in range(50):
            m = 0.5 * (lo + hi)
            pe, pw = self.partial(x, m)
            over = pe + pw > p
            hi, lo = np.where(over, m, hi), np.where(over, lo, m)
        t = 0.5 * (lo + hi)
        pe, pw = self.partial(x, t)
        return t, pe / (pe + pw)


CAREY = [(95.5, .019, .17), (89.0, .0721, .3891), (86.7, .0966, .4375), (85.3, .1238, .4704),
         (84.1, .1661, .5089), (82.7, .2337, .5445), (82.3, .2608, .558), (81.5, .3273, .5826),
         (80.7, .3965, .6122), (79.8, .5079, .6564), (79.7, .5198, .6599), (79.3, .5732, .6841),
         (78.74, .6763, .7385), (78.41, .7472, .7815), (78.15, .8943, .8943)]


def fitted_nrtl():
    d = np.array(CAREY)

    def residual(v):
        t, y = Nrtl(*v).bubble(d[:, 1], 101.325)
        return np.concatenate([(y - d[:, 2]) / 0.005, (t - d[:, 0]) / 0.25])
    s = least_squares(residual, [-0.8009, 3.4578])
    return Nrtl(*s.x)


MIX = fitted_nrtl()

# --------------------------------------------------------------------------- 3 the still


class Still:
    """A pot with a head that returns part of the vapour as condensate.

    Vapour leaves the pot in equilibrium with the liquid (boiling is violent: one stage).  On its
    way up, a share r of its moles condenses on the walls and drains back.  Condensation is
    differential: at each height the film in balance with the passing vapour has composition
    x*(y), but a film that runs in part as a cold rill or spray takes some vapour whole; so
        x_film = e x*(y) + (1 - e) y,      dy/d ln V = -e (y - x*(y)),   V from 1 to 1 - r.
    (No fresh contact of rill and vapour further down: a bare copper neck has no packing.)
    r is a heat loss: it grows with the difference of head and still-house temperature,
        r = r85 (T - 25)/(85 - 25), with latent heat per mole taken equal (38.6 and 40.7 kJ/mol).
    Because r depends on the pot's x alone, Rayleigh's equation has an antiderivative, tabulated
    once per still: ln N(x2)/N(x1) = G(x2) - G(x1), dG = dx/(y_D - x).            [own]"""

    def __init__(self, r85, film, p_kpa, top=0.45):
        # nodes: pot compositions from practically nothing to `top`, a mole fraction
        self.u = np.linspace(math.log(2e-6), math.log(top), 420)
        x = np.exp(self.u)
        t, y0 = MIX.bubble(x, p_kpa)
        # equilibrium curve inverted, on logits, for x*(y)
        xx = np.concatenate([np.exp(np.linspace(math.log(1e-7), math.log(0.3), 400)),
                             np.linspace(0.301, 0.86, 200)])
        _, yy = MIX.bubble(xx, p_kpa)
        lg = lambda v: np.log(v / (1 - v))
        inv = PchipInterpolator(lg(yy), lg(xx))
        r = np.clip(r85 * (t - 25) / 60.0, 0, 0.75)
        total = -np.log(1 - r) * film
        y, n = y0.copy(), 24
        f = lambda q: q - 1 / (1 + np.exp(-inv(lg(q))))
        h = total / n
        for _ in range(n):                                     # Runge-Kutta up the neck
            k1 = f(y); k2 = f(y + h * k1 / 2); k3 = f(y + h * k2 / 2); k4 = f(y + h * k3)
            y = y + h * (k1 + 2 * k2 + 2 * k3 + k4) / 6
        self.r, self.x, self.y0, self.y = r, x, y0, y
        self.G = CubicSpline(self.u, x / (y - x)).antiderivative()
        self._y = CubicSpline(self.u, lg(y))
        self._x_of_abv = PchipInterpolator(abv_of_mass(mass_from_mole(y)), self.u)
        self.top_abv = float(abv_of_mass(mass_from_mole(y[-1])))

    def abv_at(self, x):
        v = float(self._y(math.log(x)))
        return float(abv_of_mass(mass_from_mole(1 / (1 + math.exp(-v)))))

    def x_at(self, abv):
        return math.exp(float(self._x_of_abv(abv)))

    def left(self, x0, n0, x):
        """kmol left in the pot when its liquid has come down to x."""
        return n0 * math.exp(float(self.G(math.log(x)) - self.G(math.log(x0))))

    def cut(self, x0, n0, xa, xb):
        """(kg ethanol, kg water) that came over between pot compositions xa > xb."""
        na, nb = self.left(x0, n0, xa), self.left(x0, n0, xb)
        e = na * xa - nb * xb
        return M_E * e, M_W * (na - nb - e)


def pot(e, w):
    """(x, kmol) of the volatile part of a charge; dissolved solids do not boil and, being
    dextrins and glycerol at 2-3 % mass, lower the water's activity by under 0.3 %: neglected."""
    ne, nw = e / M_E, w / M_W
    return ne / (ne + nw), ne + nw


# --------------------------------------------------------------------------- 4 draws
def tri(g, a, m, b):
    return float(g.triangular(a, m, b))


def normal(g, mean, sd, a, b):
    while True:
        v = g.normal(mean, sd)
        if a <= v <= b:
            return float(v)


class Unsound(Exception):
    pass


def one_house(g):
    v, hid = {}, {}
    # ---- size and calendar
    malt = math.exp(g.uniform(math.log(300), math.log(20000)))          # kg, log-uniform, as asked
    size = math.log(malt / 300) / math.log(20000 / 300)                 # 0 tiny .. 1 very large
    malt = round(malt, -1) if malt < 3000 else round(malt / 50) * 50.0  # weighed batches
    if size < 0.35:                                                     # [practice] small: 1-8 a week
        mashes = float(np.clip(round(math.exp(g.normal(1.25, .45)) * 2) / 2, 1, 8))
        weeks = float(g.integers(30, 51))
    elif size < 0.7:
        mashes = float(np.clip(round(math.exp(g.normal(2.2, .4))), 4, 21))
        weeks = float(g.integers(38, 51))
    else:
        mashes = float(np.clip(round(math.exp(g.normal(2.9, .35))), 7, 42))
        weeks = float(g.integers(42, 51))
    if g.random() < .25:                                                # means need not be whole
        mashes = round(mashes + g.uniform(-.4, .4), 1)
        weeks = round(weeks + g.uniform(-.5, .5), 1)
    mashes = max(1.0, mashes)
    # ---- malt and mash
    se = normal(g, 77.9, 1.0, 74.5, 80.3)          # % as is, 76-79 usual [memory: trade specification]
    fer = normal(g, 87.3, 0.9, 84.0, 89.3)         # %, 86-88.5 usual [memory]
    eta = tri(g, .945, .981, .992)                  # extract won of laboratory extract; brief 94-99, trade 97-99 [memory]
    og = normal(g, 1.0590, .0050, 1.047, 1.075)    # 1.050-1.070 usual [memory]
    p_max = brentq(lambda p: density_extract(p) / RHO_W - og, 0.0, 0.3)
    extract = malt * se / 100 * eta                # kg in washback, pipe losses of wort within eta
    wort_mass = extract / p_max
    wort_vol = 1000 * wort_mass / density_extract(p_max)
    water = wort_mass - extract
    # ---- fermentation: a mass balance on the extract that disappears
    done = tri(g, .970, .995, 1.004)               # of the laboratory's fermentable extract; above 1 where
    #                                                limit dextrinase goes on in a long washback [own]
    gone = extract * fer / 100 * done              # kg of real extract lost
    y_eth = tri(g, .474, .486, .494)               # kg ethanol formed per kg lost, water of hydrolysis counted in.
    #   Ceiling 0.538 (maltose), less glycerol, acids, growth, maintenance and bacteria; brief 0.47-0.495;
    #   Dolan's 6.06 L/t per % is 0.478 and the 6.11 of Bringhurst et al. 1996 is 0.482 [published: abstract read]
    e_made = y_eth * gone
    yeast_new = gone * g.uniform(.046, .066)       # kg dry matter; Balling's 0.11/2.0665 is 0.053 [memory]
    sediment = gone * g.uniform(.006, .016)        # extract thrown out of solution: protein and tannin on the yeast [own]
    other_vol = gone * g.uniform(.004, .008)       # fusel oil, acetaldehyde, esters: leave the alcohol count [memory]
    glycerol = gone * g.uniform(.030, .042)        # 3.3 per 100 hexose [practice]; part of the residual extract
    acid = gone * g.uniform(.008, .022)            # succinic 0.6, others 1.2 per 100 [practice]
    # carbon closes the carbon dioxide: sugar taken up = what is gone + by-products left in solution - amino acids
    # taken up; kg C per kg: mixed wort sugars 0.423, protein 0.45, ethanol 0.521, yeast 0.48, glycerol 0.391,
    # acids 0.42, fusel oil 0.62, CO2 0.273 [formulae; yeast and protein memory]
    amino = gone * g.uniform(.006, .012)
    c_in = .423 * (gone + glycerol + acid - amino) + .45 * amino
    co2 = (c_in - .5214 * e_made - .48 * yeast_new - .50 * sediment - .391 * glycerol - .42 * acid - .62 * other_vol) / .2729
    if not .98 < co2 / (e_made * M_CO2 / M_E) < 1.14:      # growth, respiration at pitching, bacteria give more than one for one
        raise Unsound('carbon')
    # mass closes the water: some 0.05 kg/kg bound in splitting maltose (0.0526) and triose (0.0714), less water of growth
    water_bound = e_made + co2 + yeast_new + sediment + other_vol - gone
    if not .0 < water_bound < 0.075 * gone:
        raise Unsound('water of hydrolysis')
    pitch_dm = malt / 1000 * g.uniform(4.5, 7.0)   # kg dry yeast matter per t malt (18-25 kg/t pressed, 27 % dry) [memory]
    pitch_water = pitch_dm * (g.uniform(2.4, 3.0) if g.random() < .6 else g.uniform(4.2, 5.0))  # pressed or cream
    # ethanol and water carried off in the carbon dioxide: gas leaves with a share of saturation at
    # the washback's temperature, rising from set to peak while the ethanol builds up [own]
    t_set, t_peak, sat = g.uniform(17, 21), g.uniform(30, 34.5), g.uniform(.45, .9)
    p_kpa = normal(g, 100.3, 1.1, 96.5, 102.5)     # air pressure, sea level to some 350 m [own]
    e_lost = w_lost = 0.0
    for k in range(20):
        s = (k + .5) / 20
        x, _ = pot(e_made * s, water)
        pe, pw = MIX.partial(x, t_set + (t_peak - t_set) * min(1, 1.6 * s))
        n_gas = co2 / 20 / M_CO2
        dry = p_kpa - sat * (pe + pw)
        e_lost += n_gas * sat * pe / dry * M_E
        w_lost += n_gas * sat * pw / dry * M_W
    e = e_made - e_lost
    w = water - water_bound - w_lost + pitch_water
    residue = extract - gone                       # real extract: dextrin, protein, glycerol, acids
    clear_vol = volume_ew(e, w) + (residue - glycerol - acid) * V_DEXTRIN + glycerol * V_GLYCEROL + acid * V_ACID
    fg = (e + w + residue) / clear_vol * 1000 / RHO_W
    wash_vol = clear_vol + (yeast_new + sediment + pitch_dm) * V_YEAST
    wash_abv = 100 * e / RHO_E * 1000 / wash_vol
    # ---- wash still
    kept = 1 - tri(g, .0005, .002, .007)           # wash left in washback, pipes, charger [own]
    ce, cw = e * kept, w * kept
    ws = Still(tri(g, .02, .09, .23), g.uniform(.5, 1.), p_kpa)
    stop_wash = tri(g, .5, 1.0, 2.0)               # % vol at the safe; 1 usual [practice]
    x0, n0 = pot(ce, cw)
    xs = ws.x_at(stop_wash)
    le, lw = ws.cut(x0, n0, x0, xs)
    pot_ale_e = ce - le
    leak_w = tri(g, .0005, .002, .006)             # vapour, leaks, vents [own]
    leak_we = le * leak_w
    le, lw = le * (1 - leak_w), lw * (1 - leak_w)
    lw_vol, lw_abv = volume_ew(le, lw), strength(le, lw)
    # ---- spirit still, balanced round
    ss = Still(tri(g, .02, .08, .27), g.uniform(.5, 1.), p_kpa)
    stop_sp = tri(g, .5, 1.0, 2.0)
    x_stop = ss.x_at(stop_sp)
    ends = normal(g, 61.0, 2.2, 55.5, 66.0)        # 60 published (Nicol), 57-64 [practice]
    x_end = ss.x_at(ends)
    rule = str(g.choice(['volume', 'time', 'strength'], p=[.35, .40, .25]))
    if rule == 'volume':
        fore = g.uniform(.008, .028)               # share of the charge's volume
    elif rule == 'time':
        minutes, rate = float(g.integers(8, 31)), g.uniform(.035, .070)  # charge share per hour
        fore = minutes / 60 * rate
    else:
        begin_at = g.uniform(70.5, 75.5)
    cap = g.uniform(28.0, 32.0) if g.random() < .6 else None   # "keep at or below 30" [practice]
    if g.random() < .12:
        cap = g.uniform(23.5, 25.5)                # a house that waters its charge down further [own]
    leak_s = tri(g, .0005, .002, .006)

    def round_of(fe, fw):
        e1, w1 = le + fe, lw + fw
        add = water_to_reduce(e1, w1, cap) if cap and strength(e1, w1) > cap else 0.0
        w1 += add
        x1, n1 = pot(e1, w1)
        if x1 >= .44:
            raise Unsound('charge')
        vol = volume_ew(e1, w1)
        if rule == 'strength':
            xb = ss.x_at(begin_at)
            if xb >= x1:
                raise Unsound('never as strong as the first cut')
        else:
            f = lambda x: volume_ew(*ss.cut(x1, n1, x1, x)) - fore * vol
            xb = brentq(f, x1 * (1 - 1e-12), x1 * .55, xtol=1e-13)
        if x_end >= xb * .985:
            raise Unsound('no heart')
        foreshots = ss.cut(x1, n1, x1, xb)
        if volume_ew(*foreshots) > .06 * vol:
            raise Unsound('foreshots')
        heart = ss.cut(x1, n1, xb, x_end)
        feints = ss.cut(x1, n1, x_end, x_stop)
        lees = n1 and (e1 - foreshots[0] - heart[0] - feints[0])
        k = 1 - leak_s
        return dict(e=e1, w=w1, vol=vol, add=add, xb=xb, lees=lees, heart=(heart[0] * k, heart[1] * k),
                    fore=(foreshots[0] * k, foreshots[1] * k), feints=(feints[0] * k, feints[1] * k),
                    back=((foreshots[0] + feints[0]) * k, (foreshots[1] + feints[1]) * k),
                    lost=(foreshots[0] + heart[0] + feints[0]) * leak_s)

    fe, fw = .8 * le, .6 * lw
    for it in range(600):
        q = round_of(fe, fw)
        d = abs(q['back'][0] - fe) / fe + abs(q['back'][1] - fw) / fw
        fe, fw = q['back']
        if d < 1e-11:
            break
    else:
        raise Unsound('no balance')
    he, hw = q['heart']
    heart_alc = he / RHO_E * 1000
    heart_abv = strength(he, hw)
    begins = ss.abv_at(q['xb'])
    # near balance only: the round of which the charge is told had feints a little off the mean
    drift = normal(g, 0, .015, -.035, .035)
    ce1, cw1 = le + q['back'][0] * (1 + drift), lw + q['back'][1] * (1 + drift)
    cw1 += water_to_reduce(ce1, cw1, cap) if cap and strength(ce1, cw1) > cap else 0.0
    ch_vol, ch_abv = volume_ew(ce1, cw1), strength(ce1, cw1)
    # ---- soundness, wide bounds: houses nobody would run are not houses
    y_t = heart_alc / malt * 1000
    for name, val, a, b in [('wash', wash_abv, 6.3, 9.8), ('low wines', lw_abv, 18.5, 27), ('charge', ch_abv, 21, 33),
                            ('heart', heart_abv, 64.5, 72.2), ('begins', begins, 67.5, 78), ('yield', y_t, 362, 425),
                            ('spread', begins - ends, 6, 19), ('heart share', he / ce1, .30, .78)]:
        if not a <= val <= b:
            raise Unsound(name)
    # ---- year
    season = 1 - tri(g, 0, .001, .004)             # start-up and last rounds, bad runs [own]
    per_week = heart_alc * mashes
    per_year = per_week * weeks * season
    # ---- filling.  Everything made is filled into the house's own casks
    if g.random() < .09:
        fill = heart_abv                           # as it runs
    else:
        fill = float(g.choice([63.5, 63.5, 63.5, 63.5, 63.0, 62.0, 60.0, 58.5, 64.0, 65.0, 63.2, 61.5]))
        if fill > heart_abv - .1:
            fill = heart_abv
    fill_loss = tri(g, .0003, .0015, .004)         # filling store [own]
    small = size < .35
    kinds = np.array([55., 128., 195., 250., 500.])           # octave, quarter, barrel, hogshead, butt
    mix = g.dirichlet([.5, 1.0, 3, 1, .3] if small else [.02, .08, 5, 3, .7])
    cask = float(kinds @ mix)
    full = g.uniform(.98, 1.0)                     # of capacity, at filling [own]
    bulk_year = per_year * (1 - fill_loss) / fill * 100
    casks_year = bulk_year / (cask * full)
    years = float(np.clip(math.exp(g.normal(1.6 if small else 2.1, .38)), 3.05, 21))
    years = round(years * 2) / 2 if g.random() < .6 else round(years, 1)
    years = max(years, 3.1)
    # ---- wood: a fluid through two membranes.  Ethanol leaves in proportion to its partial pressure,
    # water to its partial pressure above that of the store's air; water passes wet oak the easier by a
    # factor so set that 63.5 % neither rises nor falls at RH 0.65 (60-70 % [memory]).  Ethanol's way out
    # does not hang on humidity, water's does [published: Oxford Companion to Wine, 'Evaporation'].
    climate = g.random()
    t_store = g.uniform(8, 13) if climate < .75 else (g.uniform(13, 18) if climate < .93 else g.uniform(18, 24))
    rh = g.uniform(.60, .90) if climate < .75 else g.uniform(.50, .80)
    xf = mole_of_abv(63.5)
    pe, pw = map(float, MIX.partial(xf, t_store))
    ease = (pe / xf) * (1 - xf) / (pw - .65 * float(psat_water(t_store)))
    if t_store > 16:
        years = min(years, round(g.uniform(3.1, 9.0), 1))   # hot stores bottle young [practice]
    indrink = g.uniform(.008, .022)                # of the fill; about 2 % [practice], less in wet second fills
    area = (200 / cask) ** (1 / 3)                 # surface per volume
    # first-year rate at 63.5 % and 10 degree C of a barrel, 1.4-2.6 % a year, doubling in about 12 K [practice, own]
    rate10 = g.uniform(.013, .025) * 2 ** ((t_store - 10) / 12) * area
    vol0 = cask * full * (1 - indrink)
    w_f = float(_mass_of_abv(fill))
    e0 = vol0 * density_ew(w_f) / 1000 * w_f
    w0 = vol0 * density_ew(w_f) / 1000 * (1 - w_f)
    n_e0 = e0 / M_E                                # flux so scaled that rate10 is the first year's share of ethanol at 63.5 %

    def leak(t, s):
        x = (s[0] / M_E) / (s[0] / M_E + s[1] / M_W)
        a, b = MIX.partial(x, t_store)
        k = rate10 * n_e0 / pe
        return [-k * a * M_E, -k * ease * (b - rh * psat_water(t_store)) * M_W]
    sol = solve_ivp(leak, (0, years), [e0, w0], rtol=1e-9, atol=1e-9)
    e1, w1 = float(sol.y[0, -1]), float(sol.y[1, -1])
    if e1 < .4 * e0 or w1 < .2 * w0:
        raise Unsound('dry cask')
    loss = 100 * (1 - (e1 / e0) ** (1 / years))    # compound, evaporation alone; indrink stands apart
    out_abv = strength(e1, w1)
    if out_abv > 70 or volume_ew(e1, w1) < .45 * cask * full:
        raise Unsound('too dry or too long in wood')
    bottle_at = float(g.choice([40., 43., 46., 46., 45., 48., 50., 0.]))
    if bottle_at == 0 or bottle_at > out_abv - .3:
        bottle_at = out_abv
    if bottle_at < 40:
        raise Unsound('under forty')
    residue_cask = tri(g, .001, .004, .010)        # left in cask and in disgorging [own]
    filt = tri(g, .002, .006, .015)                # vatting, filter, line [own]
    overfill = g.uniform(0, .003)
    size_cl = float(g.choice([70., 75., 50., 35., 100.], p=[.74, .08, .10, .05, .03]))
    alc_cask = e1 / RHO_E * 1000 * (1 - residue_cask) * (1 - filt)
    per_cask = alc_cask / (bottle_at / 100) / (size_cl / 100 * (1 + overfill))
    leakers = tri(g, 0, .002, .01)                 # casks that never come out
    in_store = casks_year * years * (1 - leakers / 2)
    v.update(maltPerMash=malt, maltPerWeek=malt * mashes, maltPerYear=malt * mashes * weeks,
             mashesPerWeek=mashes, weeksPerYear=weeks, solubleExtract=se, fermentability=fer, spiritYield=y_t,
             wortVolume=wort_vol, originalGravity=og, finalGravity=fg, washVolume=wash_vol, washStrength=wash_abv,
             lowWinesVolume=lw_vol, lowWinesStrength=lw_abv, chargeVolume=ch_vol, chargeStrength=ch_abv,
             heartBegins=begins, heartEnds=ends, heartVolume=volume_ew(he, hw), heartStrength=heart_abv,
             heartAlcohol=heart_alc, alcoholPerWeek=per_week, alcoholPerYear=per_year, fillingStrength=fill,
             caskSize=cask, casksPerWeek=casks_year / weeks, casksPerYear=casks_year, yearsInWood=years,
             casksInStore=in_store, alcoholLoss=loss, bottlingStrength=bottle_at, bottleSize=size_cl,
             bottlesPerCask=per_cask, bottlesPerYear=casks_year * (1 - leakers) * per_cask)
    hid.update(mashEfficiency=eta, attenuationOfFermentable=done, ethanolYieldOfExtract=y_eth, ethanolInGasShare=e_lost / e_made,
               washLeftShare=1 - kept, co2PerEthanolMol=co2 / e_made * M_E / M_CO2, waterBoundShare=water_bound / gone, washStillReturn85=float(np.interp(.02, ws.x, ws.r)), spiritStillReturn85=float(np.interp(.1, ss.x, ss.r)),
               stopWash=stop_wash, stopSpirit=stop_sp, foreshotsRule=rule, foreshotsShare=volume_ew(*q['fore']) / q['vol'],
               foreshotsAndFeintsVolume=volume_ew(*q['back']), foreshotsAndFeintsStrength=strength(*q['back']),
               waterInChargeKg=q['add'], feintsDrift=drift, potAleAlcoholShare=pot_ale_e / e, leesAlcoholShare=q['lees'] / e,
               stillLeakShare=(leak_we + q['lost']) / e, airPressure=p_kpa, seasonFactor=season, fillLoss=fill_loss, fullness=full,
               storeTemperature=t_store, storeHumidity=rh, indrink=indrink, strengthOutOfWood=out_abv, caskResidue=residue_cask,
               filterLoss=filt, overfill=overfill, leakers=leakers, volumeFillToOut=volume_ew(e1, w1) / (cask * full), roundsToBalance=it + 1)
    # ---- closing balances, kg: must be nought to machine precision
    hid['closeFermentationMass'] = ((extract + water + pitch_water) - (e + w + residue + co2 + yeast_new + sediment + other_vol + e_lost + w_lost)) / wort_mass
    hid['closeAlcohol'] = (e_made - e_lost - (e - ce) - pot_ale_e - leak_we - q['lees'] - q['lost'] - he) / e_made
    return v, hid


def self_check():
    out = {}
    d = np.array(CAREY)
    t, y = MIX.bubble(d[:, 1], 101.325)
    out['nrtl'] = dict(a12=MIX.a12, a21=MIX.a21, b12=MIX.b12, b21=MIX.b21, alpha=MIX.alpha, meanDifferenceY=float(abs(y - d[:, 2]).mean()), worstDifferenceY=float(abs(y - d[:, 2]).max()),
                       meanDifferenceT=float(abs(t - d[:, 0]).mean()), worstDifferenceT=float(abs(t - d[:, 0]).max()))
    x = np.array([1e-6]); tt, yy = MIX.bubble(x, 101.325)
    out['relativeVolatilityAtNought'] = float(yy[0] / x[0])
    out['gammaEthanolDilute'] = {c: float(MIX.gamma(1e-7, c)[0]) for c in (12., 25., 33., 100.)}
    f = lambda z: float(MIX.bubble(np.array([z]), 101.325)[1][0] - z)
    out['azeotropeMole'] = brentq(f, .8, .96)
    # Perry's printed densities by mass per cent (read)
    perry = {0: 998.23, 2: 994.53, 4: 991.03, 6: 987.80, 8: 984.78, 10: 981.87, 12: 979.10}
    out['worstDensityDifferencePerry'] = max(abs(density_ew(k / 100) - r) for k, r in perry.items())
    nbs = {2: 1.00779, 4: 1.01567, 8: 1.03176, 12: 1.04831, 16: 1.06534, 20: 1.08287}
    out['worstExtractGravityDifference'] = max(abs(density_extract(k / 100) / RHO_W - r) for k, r in nbs.items())
    # the quadrature against a plain numerical integration of the pot
    s = Still(.2, .8, 101.325)
    x0 = mole_of_abv(26.)
    rhs = lambda D, z: [-1.0, -1 / (1 + math.exp(-float(s._y(math.log(z[1] / z[0])))))]
    stop = lambda D, z: z[1] / z[0] - s.x_at(1.0)
    stop.terminal = True
    q = solve_ivp(rhs, (0, .999), [1., x0], rtol=1e-10, atol=1e-13, events=stop)
    out['rayleighTwoWaysDifference'] = float(s.left(x0, 1., s.x_at(1.0)) / q.y[0, -1] - 1)
    return out


# --------------------------------------------------------------------------- 5 talks
KIND = dict(maltPerMash='mass', maltPerWeek='mass', maltPerYear='mass', mashesPerWeek='small', weeksPerYear='small', solubleExtract='percent',
            fermentability='percent', spiritYield='yield', wortVolume='volume', originalGravity='gravity', finalGravity='gravity',
            washVolume='volume', washStrength='strength', lowWinesVolume='volume', lowWinesStrength='strength', chargeVolume='volume',
            chargeStrength='strength', heartBegins='strength', heartEnds='strength', heartVolume='volume', heartStrength='strength',
            heartAlcohol='volume', alcoholPerWeek='volume', alcoholPerYear='volume', fillingStrength='strength', caskSize='volume',
            casksPerWeek='count', casksPerYear='count', yearsInWood='small', casksInStore='count', alcoholLoss='loss',
            bottlingStrength='strength', bottleSize='nominal', bottlesPerCask='count', bottlesPerYear='count')
UNIT = dict(mass='kg', small='', percent='%', volume='L', gravity='20/20', strength='% vol', count='', loss='% a year', nominal='cL')
UNIT['yield'] = 'L pure alcohol per tonne'


def step_round(v, s):
    return round(round(v / s) * s, 6)


def sig(v, n):
    return round(v, n - 1 - int(math.floor(math.log10(abs(v))))) if v else 0.0


def coarsest(v, true, steps, tol):
    """The roundest number within tol of the truth, as people choose it."""
    for s in steps:
        r = s(v)
        if abs(r - true) <= tol:
            return r
    return steps[-1](true)


def said(g, name, true, how):
    kind = KIND[name]
    S = lambda s: (lambda v: step_round(v, s))
    N = lambda n: (lambda v: sig(v, n))
    if kind == 'nominal':
        return true
    if kind in ('mass', 'volume', 'count'):
        tens = 10 ** math.floor(math.log10(true))
        # "counts to the hundred": hundreds where a count runs to thousands
        hundred = [S(100)] if kind == 'count' and 2000 <= true < 100000 else []
        if how == 'about':
            u = normal(g, 0, .011, -.027, .027)
            return coarsest(true * (1 + u), true, [N(1), S(tens / 2), N(2), S(tens / 20), N(3)], .031 * true)
        if how == 'rounded':
            return coarsest(true, true, hundred + [N(2), S(tens / 20), N(3)], .012 * true)
        err = {'mass': .0008, 'volume': .0015, 'count': .0005}[kind]
        u = normal(g, 0, err, -2 * err, 2 * err)
        w = true * (1 + u)
        if kind == 'count':
            return float(round(w)) if true > 150 else round(w, 1 if true > 20 else 2)
        return float(round(w)) if true > 300 else round(w, 1)
    if kind == 'small':
        if how == 'exact':
            return round(true, 1)
        u = normal(g, 0, .008, -.02, .02) if how == 'about' else 0
        return coarsest(true * (1 + u), true, [S(1), S(.5), S(.1)], (.031 if how == 'about' else .02) * true)
    if kind == 'yield':
        if how == 'exact':
            return step_round(true * (1 + normal(g, 0, .0015, -.003, .003)), .5)
        if how == 'about':
            return coarsest(true * (1 + normal(g, 0, .008, -.02, .02)), true, [S(10), S(5), S(1)], .022 * true)
        return coarsest(true, true, [S(5), S(1)], 2.5)
    if kind == 'gravity':
        if how == 'exact':
            return round(true + normal(g, 0, .0002, -.0004, .0004), 4)
        e = normal(g, 0, .0005, -.001, .001) if how == 'about' else 0
        return round(true + e, 3)
    if kind in ('strength', 'percent'):
        if how == 'exact':
            return round(true + normal(g, 0, .05, -.1, .1), 1)
        if how == 'about':
            sd = .12 if true < 12 else .2
            return coarsest(true + normal(g, 0, sd, -.45, .45), true, [S(1), S(.5), S(.1)], .3 if true < 12 else .51)
        return coarsest(true, true, [S(.5), S(.1)], .15 if true < 12 else .26)
    if kind == 'loss':
        if how == 'exact':
            return round(true * (1 + normal(g, 0, .01, -.02, .02)), 2)
        if how == 'about':
            return coarsest(true + normal(g, 0, .05, -.1, .1), true, [S(1), S(.5), S(.25), S(.1)], .13)
        return coarsest(true, true, [S(.5), S(.1)], .06)
    raise ValueError(kind)


def talk(g, truth):
    names = [str(n) for n in g.choice(list(KIND), 14, replace=False)]
    order = {n: i for i, n in enumerate(KIND)}
    names.sort(key=order.get)
    mostly = bool(g.random() < .5)
    weights = [.80, .05, .15] if mostly else [.30, .30, .40]       # about, exact, rounded
    out = []
    for n in names:
        how = str(g.choice(['about', 'exact', 'rounded'], p=weights))
        if KIND[n] == 'nominal' or (n in ('fillingStrength', 'bottlingStrength') and how == 'about' and g.random() < .6):
            how = 'exact'                                          # printed on the bottle, set by rule
        out.append({'name': n, 'as': how, 'value': said(g, n, truth[n], how)})
    return mostly, out


def moved(t, index, sign, share):
    r = [dict(f) for f in t]
    f = r[index]
    v, n = f['value'], f['name']
    if n == 'originalGravity':
        w = round(1 + (v - 1) * (1 + sign * share), 4)
    elif n == 'finalGravity':
        w = round(v + sign * share * .060, 4)
    else:
        w = sig(v * (1 + sign * share), 5)
    f['value'] = w
    return r, {'name': n, 'said': v, 'movedTo': w, 'by': sign * share}


def main():
    ap = argparse.ArgumentParser()
    ap.add_argument('--seed', type=int, default=20261128)
    ap.add_argument('--count', type=int, default=400)
    ap.add_argument('--out', default=os.path.dirname(os.path.abspath(__file__)))
    a = ap.parse_args()
    g = np.random.default_rng(a.seed)
    check = self_check()
    print(json.dumps(check, indent=1))
    houses, refused = [], {}
    while len(houses) < a.count:
        try:
            v, h = one_house(g)
        except Unsound as u:
            refused[str(u)] = refused.get(str(u), 0) + 1
            continue
        assert list(v) == list(KIND)
        houses.append({'id': 'house%03d' % (len(houses) + 1), 'true': {k: float('%.8g' % x) for k, x in v.items()},
                       'hidden': {k: (x if isinstance(x, (str, int)) else float('%.6g' % x)) for k, x in h.items()}})
    print('refused draws', refused)
    units = {k: UNIT[KIND[k]] for k in KIND}
    dump = lambda n, o: json.dump(o, open(os.path.join(a.out, n), 'w'), indent=1)
    dump('houses.json', dict(seed=a.seed, units=units, note='true = the quantities asked for; hidden = the causes, for judging only', selfCheck=check, refused=refused, houses=houses))
    g2 = np.random.default_rng([a.seed, 14])
    talks, lists = [], {5: [], 10: [], 20: []}
    for h in houses:
        mostly, t = talk(g2, h['true'])
        talks.append({'id': h['id'], 'mostlyAbout': mostly, 'figures': t})
        index = int(g2.integers(14))
        sign = 1 if g2.random() < .5 else -1
        for s in lists:
            r, m = moved(t, index, sign, s / 100)
            lists[s].append({'id': h['id'], 'mostlyAbout': mostly, 'figures': r, 'moved': m})
    dump('talks.json', dict(seed=[a.seed, 14], talks=talks))
    for s in lists:
        dump('talks_moved_%02d.json' % s, dict(seed=[a.seed, 14], share=s / 100, note='same figure and direction in the three lists', talks=lists[s]))


if __name__ == '__main__':
    main()
