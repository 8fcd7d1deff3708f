#!/usr/bin/env python3
"""Puts what houses.py wrote into a folder into the two compact files beside this script: python3 compact.py FOLDER"""
import json, os, sys

FROM, TO = sys.argv[1], os.path.dirname(os.path.abspath(__file__))
load = lambda name: json.load(open(os.path.join(FROM, name)))
houses, talks = load('houses.json'), load('talks.json')
moved = [load(f'talks_moved_{part}.json') for part in ('05', '10', '20')]
names = list(houses['houses'][0]['true'])
number = lambda x: int(x) if float(x).is_integer() else x
line = lambda x: json.dumps(x, separators=(',', ':'))


def write(name, head, rows):
    with open(os.path.join(TO, name), 'w') as file:
        file.write('{' + head + ':[\n' + ',\n'.join(map(line, rows)) + '\n]}\n')


rows = []
for i, talk in enumerate(talks['talks']):
    figures = [[f['name'], f['as'], number(f['value'])] for f in talk['figures']]
    values = [number(m['talks'][i]['moved']['movedTo']) for m in moved]
    rows.append({'house': talk['id'], 'figures': figures, 'moved': [moved[0]['talks'][i]['moved']['name'], *values]})
write('talks.json', f'"seed":{line(talks["seed"])},"note":"Fourteen figures of each house as they are said, and one of them moved by 5, 10 and 20 %.","talks"', rows)
write('houses.json', f'"seed":{houses["seed"]},"note":"Every figure of four hundred invented houses, in the order of names; made by houses.py.","names":{line(names)},"houses"',
      [[h['id'], *(number(float(f'{h["true"][n]:.6g}')) for n in names)] for h in houses['houses']])
