"""Plants drawn at random, and the most mashes a week each can do, found by integer programming and not by a timetable.

Needs Python 3 with scipy (its `milp` is the HiGHS solver). Writes plants.json and solved.json beside itself. Hours are
whole, so that a model cut into hours loses nothing. What is asked of a week is written down here once more, from its
definition: nothing is shared with the handbook's own code. Run: python3 tests/study/week/solve.py
"""
import json, math, random, sys, time
from pathlib import Path
import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import coo_matrix

HERE = Path(__file__).parent
WEEK = 168
SECONDS = 60  # for one question to the solver; one that takes longer is written down as not decided


def shift(days, begin, hours):
    return {'days': days, 'from': begin, 'hours': hours}


def plants(count=32, seed=1887):
    """Plants of which each can do some mashes, with vessels that are now too small and now too large for each other."""
    draw = random.Random(seed)
    made = []
    for i in range(count):
        wash = draw.choice([4000, 7500, 12000, 20000, 32000])
        back = round(wash * draw.uniform(0.3, 0.38))
        spirit_back = round(wash * draw.uniform(0.18, 0.28))
        thrice = i % 8 == 7
        wash_groups = [{'number': draw.choice([1, 1, 2, 2, 3]), 'charge': round(wash * draw.choice([0.5, 0.7, 1, 1.05, 1.6])), 'hours': draw.randint(5, 10)}]
        if i % 6 == 5:
            wash_groups.append({'number': 1, 'charge': round(wash * 0.4), 'hours': draw.randint(5, 9)})
        stages = [{'id': 'wash', 'groups': wash_groups, 'charged': wash, 'drawn': 0, 'back': back, 'spirit': 0}]
        through = back
        if thrice:
            between = round(back * 1.3)
            stages.append({'id': 'intermediate', 'groups': [{'number': 1, 'charge': round(between * draw.choice([0.6, 1, 1.2])), 'hours': draw.randint(6, 9)}],
                           'charged': between, 'drawn': between, 'back': round(between * 0.75), 'spirit': 0})
            through = back - between + round(between * 0.75)
        charged = through + spirit_back
        spirit_groups = [{'number': draw.choice([1, 1, 2, 2]), 'charge': round(charged * draw.choice([0.5, 0.8, 1, 1.1, 1.7])), 'hours': draw.randint(6, 12)}]
        stages.append({'id': 'spirit', 'groups': spirit_groups, 'charged': charged, 'drawn': charged, 'back': spirit_back, 'spirit': round(wash * 0.11)})
        days = draw.choice([5, 5, 6, 7, 7])
        short = draw.randint(48, 80)
        largest = max(g['charge'] for s in stages[1:] for g in s['groups'])
        made.append({
            'tuns': [{'number': draw.choice([1, 1, 1, 2]), 'hours': draw.randint(4, 9)}],
            'washbacks': draw.randint(2, 12), 'turnRound': draw.randint(3, 8), 'short': short,
            'weekend': short + draw.choice([0, 12, 30, 48]), 'wash': wash, 'charger': round(wash * draw.choice([0, 0.5, 1])),
            'receiver': round(largest * draw.choice([1.3, 1.6, 2, 3]) + back * draw.choice([0.3, 1])),
            'spiritReceiver': wash, 'stages': stages,
            'mashing': shift(days, 6, draw.choice([24, 24, 24, 16, 10])),
            'distilling': shift(min(7, days + draw.choice([0, 0, 1])), 6, 24 if i % 5 else 16),
        })
    return made


def open_hours(s):
    is_open = [False] * WEEK
    for day in range(s['days']):
        for h in range(s['hours']):
            is_open[(24 * day + s['from'] + h) % WEEK] = True
    return is_open


def may_begin(s, hours):
    is_open = open_hours(s)
    return [all(is_open[(t + h) % WEEK] for h in range(hours)) for t in range(WEEK)]


def fermentation(plant, full):
    """The weekend's hours where a short fermentation would end in the weekend, after the stills have stopped."""
    s = plant['distilling']
    if s['days'] == 7:
        return plant['short']
    since = (full - s['from']) % WEEK
    stop = 24 * (s['days'] - 1) + s['hours']
    return max(plant['short'], plant['weekend']) if since + plant['short'] > stop else plant['short']


def charges(stage, mashes, by_mash):
    """For each group of stills: charges a week, and each one's part of the week's liquid."""
    total = sum(g['number'] * g['charge'] for g in stage['groups'])
    answer = []
    for g in stage['groups']:
        part = g['number'] * g['charge'] / total
        batches = mashes if by_mash else 1
        each = math.ceil(stage['charged'] * mashes / batches * part / g['charge'] - 1e-9)
        answer.append((each * batches, part / (each * batches)))
    return answer


class Program:
    """An integer program built row by row."""

    def __init__(self):
        self.high, self.low, self.whole, self.rows = [], [], [], []

    def variable(self, low, high, whole):
        self.low.append(low), self.high.append(high), self.whole.append(int(whole))
        return len(self.low) - 1

    def row(self, terms, low, high):
        self.rows.append((terms, low, high))

    def solve(self):
        i, j, v = [], [], []
        for r, (terms, _, _) in enumerate(self.rows):
            for var, c in terms.items():
                if c:
                    i.append(r), j.append(var), v.append(c)
        matrix = coo_matrix((v, (i, j)), shape=(len(self.rows), len(self.low))).tocsr()
        limits = LinearConstraint(matrix, [r[1] for r in self.rows], [r[2] for r in self.rows])
        return milp(np.zeros(len(self.low)), constraints=limits, integrality=self.whole,
                    bounds=Bounds(self.low, self.high), options={'time_limit': SECONDS})


def add(*sums):
    total = {}
    for s, c in sums:
        for var, k in s.items():
            total[var] = total.get(var, 0) + c * k
    return total


def possible(plant, mashes, by_mash):
    """True, False, or None when the solver did not decide in time."""
    p = Program()
    tun = plant['tuns'][0]
    may = may_begin(plant['mashing'], tun['hours'])
    begins = [p.variable(0, tun['number'] if may[t] else 0, True) for t in range(WEEK)]
    empties = [p.variable(0, plant['washbacks'], True) for t in range(WEEK)]
    one = lambda variables: {v: 1 for v in variables}
    p.row(one(begins), mashes, mashes)
    p.row(one(empties), mashes, mashes)
    for t in range(WEEK):
        p.row(one({begins[(t - k) % WEEK] for k in range(tun['hours'])}), 0, tun['number'])
    ripe = [tun['hours'] + fermentation(plant, (t + tun['hours']) % WEEK) for t in range(WEEK)]

    runs = []  # stage, group, charges by hour, part of each
    for s in plant['stages']:
        for g, (number, part) in zip(s['groups'], charges(s, mashes, by_mash)):
            may = may_begin(plant['distilling'], g['hours'])
            starts = [p.variable(0, g['number'] if may[t] else 0, True) for t in range(WEEK)]
            p.row(one(starts), number, number)
            for t in range(WEEK):
                p.row(one({starts[(t - k) % WEEK] for k in range(g['hours'])}), 0, g['number'])
            runs.append((s, g, starts, part))

    # At the end of each hour: washbacks that are ripe and not emptied; wash emptied and not drawn, below nothing where a
    # washback is drawn from before it is empty; what is in the receiver for certain. Each week begins as it ends.
    state = lambda low, high, whole=False: [p.variable(low, high, whole) for _ in range(WEEK)]
    most_wash = plant['washbacks'] * plant['wash']
    ready = state(0, plant['washbacks'], True)
    ahead = state(-most_wash, plant['charger'])
    level = state(0, plant['receiver'])
    ripens = [{} for _ in range(WEEK)]
    filled = [{} for _ in range(WEEK)]
    for t in range(WEEK):
        at = (t + ripe[t]) % WEEK
        ripens[at] = add((ripens[at], 1), ({begins[t]: 1}, 1))
        for k in range(ripe[t]):
            filled[(t + k) % WEEK] = add((filled[(t + k) % WEEK], 1), ({begins[t]: 1}, 1))
    for t in range(WEEK):
        p.row(add(({ready[t]: 1, ready[t - 1]: -1}, 1), (ripens[t], -1), ({empties[t]: 1}, 1)), 0, 0)
        charged = [({starts[t]: 1}, part * mashes * plant['wash']) for s, _, starts, part in runs if s['id'] == 'wash']
        p.row(add(({ahead[t]: 1, ahead[t - 1]: -1}, 1), ({empties[t]: 1}, -plant['wash']), *charged), 0, 0)
        p.row({ready[t]: plant['wash'], ahead[t]: 1}, 0, math.inf)  # no wash is drawn before it is ripe
        cleaning = {empties[(t - k) % WEEK]: 1 for k in range(plant['turnRound'])}
        p.row(add((filled[t], 1), ({ready[t]: 1}, 1), (cleaning, 1)), 0, plant['washbacks'])
        change, room = {level[t]: 1, level[t - 1]: -1}, {level[t]: 1}
        for s, g, starts, part in runs:
            drawn, back = (part * mashes * s[k] for k in ('drawn', 'back'))
            change = add((change, 1), ({starts[t]: 1}, drawn), ({starts[(t - g['hours']) % WEEK]: 1}, -back))
            room = add((room, 1), *[({starts[(t - k) % WEEK]: 1}, back) for k in range(g['hours'])])
        p.row(change, 0, 0)
        p.row(room, 0, plant['receiver'])
    answer = p.solve()
    return True if answer.status == 0 else False if answer.status == 2 else None


def whole_runs(s, hours):
    """Runs that one vessel can do in a week, each whole within the shift."""
    if s['days'] * s['hours'] == WEEK:
        return WEEK / hours
    return s['days'] * 24 // hours if s['hours'] == 24 else s['days'] * (s['hours'] // hours)


def bound(plant):
    """No more mashes than this, by the hours of each kind of vessel alone."""
    tun = plant['tuns'][0]

    def fits(n):
        if n > tun['number'] * whole_runs(plant['mashing'], tun['hours']):
            return False
        if n * (tun['hours'] + plant['short'] + plant['turnRound']) > WEEK * plant['washbacks']:
            return False
        return all(number <= g['number'] * whole_runs(plant['distilling'], g['hours'])
                   for s in plant['stages'] for g, (number, _) in zip(s['groups'], charges(s, n, False)))

    return max([n for n in range(1, 80) if fits(n)], default=0)


def most(plant):
    """The most mashes, and those about which the solver did not decide."""
    open_questions = []
    for n in range(bound(plant), 0, -1):
        answers = [possible(plant, n, by_mash) for by_mash in (False, True)]
        if True in answers:
            return n, open_questions
        if None in answers:
            open_questions.append(n)
    return 0, open_questions


if __name__ == '__main__':
    all_plants = plants()
    (HERE / 'plants.json').write_text(json.dumps(all_plants, indent=1) + '\n')
    only = [int(a) for a in sys.argv[1:]]
    kept = HERE / 'solved.json'
    solved = json.loads(kept.read_text()) if kept.exists() else {}
    for i, plant in enumerate(all_plants):
        if (only and i not in only) or (not only and str(i) in solved):
            continue
        begin = time.time()
        n, undecided = most(plant)
        solved[str(i)] = {'most': n, 'undecided': undecided}
        print(i, n, undecided, f'{time.time() - begin:.0f} s', flush=True)
        kept.write_text(json.dumps(solved, indent=1) + '\n')
