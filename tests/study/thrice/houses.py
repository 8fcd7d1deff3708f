#!/usr/bin/env python3
"""Invented houses that distil three times, or a part of their low wines three times, by the physics of ../houses.py.

Run:  python3 houses.py > houses.json        (numpy and scipy; half a minute)

A house of ../houses.py is drawn up to its low wines. Those are then distilled twice more, in stills of the same physics (NRTL
fitted to Carey and Lewis 1932, condensation in the neck), by plain recycling: charge after charge until nothing changes. What
comes after goes with the heart's alcohol. Nothing here is taken from the handbook's sums.

three times       intermediate stills take the low wines and all weak feints; their strong feints go to the spirit stills, which
                  take back their own foreshots and strong feints                            [practice: as trade writers tell it]
part              a part of the low wines is run once more, all of it, and joins the rest; foreshots and feints go back to the
                  spirit stills                                                              [practice: one of several ways]
Ranges drawn: heart of three distillations ends 66 to 76 % vol, strong feints 25 to 55; of a part, heart ends 58 to 70, 25 to
90 % of the low wines run again; losses as in ../houses.py, a leak for each still          [own, about what is told of such houses]
"""
import json, math, os, sys
import numpy as np
from scipy.optimize import brentq

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), '..'))
import houses as h

SEED, COUNT = 20261129, 100  # of either kind; the second half of each is not for tuning
TOP = 0.62  # mole fraction, the strongest pot followed: 84 % vol


def run(still, charge, ends, foreshots=0.0):
    """(kg ethanol, kg water) between the strengths at the safe in `ends`, after foreshots of a share of the charge's volume; the last is what stays."""
    x0, n0 = h.pot(*charge)
    if x0 >= TOP:
        raise h.Unsound('charge too strong')
    at, parts = x0, []
    if foreshots:
        vol = h.volume_ew(*charge)
        first = brentq(lambda x: h.volume_ew(*still.cut(x0, n0, x0, x)) - foreshots * vol, x0 * (1 - 1e-12), x0 * .3, xtol=1e-14)
        parts.append(still.cut(x0, n0, x0, first))
        at = first
    begins = still.abv_at(at)
    for end in ends:
        x = still.x_at(end)
        if x >= at * .99:
            raise h.Unsound('nothing between two ends')
        parts.append(still.cut(x0, n0, at, x))
        at = x
    gone = np.sum(parts, axis=0)
    parts.append((charge[0] - gone[0], charge[1] - gone[1]))
    return begins, [np.array(p) for p in parts]


def settle(step, start):
    state = start
    for _ in range(4000):
        told, after = step(state)
        if np.abs(after - state).max() < 1e-12 * np.abs(state).max():
            return told
        state = after
    raise h.Unsound('no balance')


def kg(volume, abv):
    w = float(h._mass_of_abv(abv))
    m = volume * h.density_ew(w) / 1000
    return np.array([m * w, m * (1 - w)])


def redistilled(g, v, pressure, scheme):
    low = kg(v['lowWinesVolume'], v['lowWinesStrength'])
    between = h.Still(h.tri(g, .02, .08, .27), g.uniform(.5, 1.), pressure, TOP)
    spirit = h.Still(h.tri(g, .02, .08, .27), g.uniform(.5, 1.), pressure, TOP)
    stop = h.tri(g, .5, 1., 2.)
    keep1, keep2 = (1 - h.tri(g, .0005, .002, .006) for _ in range(2))  # vapour, leaks, vents of each still
    fore = g.uniform(.005, .025)
    hidden = dict(feintsEnd=stop, pressure=pressure)
    if scheme == 'thrice':
        ends, strong_end = h.normal(g, 71, 2.2, 66, 76), g.uniform(25, 55)
        hidden['strongFeintsEnd'] = strong_end

        def step(state):
            back, weak = state[:2], state[2:]
            _, (strong, weak1, lees1) = run(between, low + weak, [strong_end, stop])
            charge = strong * keep1 + back
            begins, (foreshots, heart, strong2, weak2, lees2) = run(spirit, charge, [ends, strong_end, stop], fore)
            after = np.concatenate([(foreshots + strong2) * keep2, weak1 * keep1 + weak2 * keep2])
            return (charge, heart * keep2, begins), after
    else:
        again = g.uniform(25, 90)
        ends = h.normal(g, 64, 2.6, 58, 70)
        hidden['runAgain'] = again
        part = low * again / 100
        _, (over, _lees) = run(between, part, [stop])
        comes = low - part + over * keep1

        def step(state):
            charge = comes + state
            begins, (foreshots, heart, feints, _lees) = run(spirit, charge, [ends, stop], fore)
            return (charge, heart * keep2, begins), (foreshots + feints) * keep2
    charge, heart, begins = settle(step, np.concatenate([low * .5, low * .2]) if scheme == 'thrice' else low * .8)
    alcohol = heart[0] / h.RHO_E * 1000
    spirit_abv = h.strength(*heart)
    strong_most = 88 if scheme == 'thrice' else 80
    for name, value, a, b in [('begins', begins, ends + 3, 90), ('heart', spirit_abv, ends, strong_most), ('share', heart[0] / charge[0], .25, .9)]:
        if not a <= value <= b:
            raise h.Unsound(name)
    drift = 1 + h.normal(g, 0, .01, -.025, .025)  # the round of which the charge is told
    return dict(chargeVolume=h.volume_ew(*charge) * drift, chargeStrength=h.strength(*charge), heartBegins=begins, heartEnds=ends,
                heartVolume=h.volume_ew(*heart), heartStrength=spirit_abv, heartAlcohol=alcohol), hidden


GROWS = ['alcoholPerWeek', 'alcoholPerYear', 'casksPerWeek', 'casksPerYear', 'casksInStore', 'bottlesPerYear', 'spiritYield']


def houses_of(g, scheme, count):
    out = []
    while len(out) < count:
        try:
            v, hid = h.one_house(g)
            if v['fillingStrength'] > 65.01 or abs(v['fillingStrength'] - v['heartStrength']) < .2:
                raise h.Unsound('filled as it runs')
            new, hidden = redistilled(g, v, hid['airPressure'], scheme)
            if new['heartStrength'] <= v['fillingStrength'] + .1:
                raise h.Unsound('weaker than it is filled')
        except h.Unsound:
            continue
        more = new['heartAlcohol'] / v['heartAlcohol']
        truth = {**v, **{name: v[name] * more for name in GROWS}, **new}
        _, talk = h.talk(g, truth)
        index, sign = int(g.integers(14)), 1 if g.random() < .5 else -1
        moves = [h.moved(talk, index, sign, s)[1] for s in (.05, .1, .2)]
        out.append(dict(scheme=scheme, **{k: float('%.6g' % x) for k, x in hidden.items()},
                        true=[float('%.7g' % truth[k]) for k in h.KIND],
                        said=[[f['name'], f['as'], f['value']] for f in talk],
                        moved=[moves[0]['name'], *(m['movedTo'] for m in moves)]))
    return out


if __name__ == '__main__':
    rows = [row for i, scheme in enumerate(['thrice', 'part-thrice']) for row in houses_of(np.random.default_rng([SEED, i]), scheme, COUNT)]
    print('{"source":"houses.py beside this file: its own physics, nothing of the handbook","seed":%d,"names":%s,"houses":[' % (SEED, json.dumps(list(h.KIND))))
    print(',\n'.join(json.dumps(row, separators=(',', ':')) for row in rows))
    print(']}')
