#!/usr/bin/env python3
"""What could be named at most: python3 ceiling.py writes src/published/measured/study-ceiling.json.

One who knows the law of these houses (mean and covariance of all 35 figures, from the half that is not judged), how each
figure is said, that at most one is moved and by how much, and who may be in doubt of five sound talks in a hundred.
"""
import json, os
import numpy as np

HERE = os.path.dirname(os.path.abspath(__file__))
load = lambda name: json.load(open(os.path.join(HERE, name)))
houses, talks = load('houses.json'), load('talks.json')['talks']
names = houses['names']
OWN = ['washStrength', 'lowWinesStrength', 'chargeStrength', 'heartBegins', 'heartEnds', 'heartStrength', 'fillingStrength',
       'bottlingStrength', 'solubleExtract', 'fermentability']
SET = ['mashesPerWeek', 'weeksPerYear', 'yearsInWood', 'bottleSize']


def scale(name, x):
    if name == 'finalGravity':
        return 1000 * (x - 1)
    return np.log(1000 * (x - 1)) if name == 'originalGravity' else np.log(x)


def noise(name, said, x):
    """One standard deviation of what is said, measured on the talks (reasons.md)."""
    pick = lambda about, rounded, exact: {'about': about, 'rounded': rounded, 'exact': exact}[said]
    if name in OWN:
        return pick(.27 if x >= 12 else .14, .14 if x >= 12 else .06, .05) / x
    if 'Gravity' in name:
        return pick(.6, .3, .2) / (1000 * (x - 1) if name == 'originalGravity' else 1)
    if name == 'alcoholLoss':
        return pick(.075, .03, .02) / x
    return pick(.01, .005, .0005) if name in SET else pick(.016, .006, .0012)


truths = np.array([[scale(n, x) for n, x in zip(names, house[1:])] for house in houses['houses']])


def judge(talk, step, law):
    """By how much the best single change mends the talk, and which figure it changes; step 0: as said, tried by `by`."""
    mean, covariance = law
    figures = [(n, a, talk['moved'][step] if step and n == talk['moved'][0] else x) for n, a, x in talk['figures']]
    at = [names.index(n) for n, _, _ in figures]
    off = np.array([scale(n, x) for n, _, x in figures]) - mean[at]
    weigh = np.linalg.inv(covariance[np.ix_(at, at)] + np.diag([noise(*f) ** 2 + 1e-8 for f in figures]))
    whole = off @ weigh @ off

    def best(by):
        found = []
        for k, (name, _, _) in enumerate(figures):
            for sign in (1, -1):
                less = off.copy()
                less[k] -= sign * 60 * by if name == 'finalGravity' else np.log(1 + sign * by)
                found.append((whole - less @ weigh @ less, name))
        return max(found)
    return best


result = {}
for half, (low, high) in {'tuned': (0, 200), 'left out': (200, 400)}.items():
    other = np.r_[0:low, high:400]
    law = truths[other].mean(0), np.cov(truths[other].T)
    rows = []
    for step, by in enumerate((.05, .1, .2), 1):
        doubt = np.quantile([judge(t, 0, law)(by)[0] for t in talks[low:high]], .95)
        found = [judge(t, step, law)(by) for t in talks[low:high]]
        rows.append({'by': by, 'talks': high - low,
                     'first': int(sum(a > doubt and n == t['moved'][0] for (a, n), t in zip(found, talks[low:high]))),
                     'unbound': int(sum(n == t['moved'][0] for (a, n), t in zip(found, talks[low:high])))})
    result[half] = rows
json.dump(result, open(os.path.join(HERE, '..', '..', 'src', 'published', 'measured', 'study-ceiling.json'), 'w'), indent=1)
print(json.dumps(result))
