// A washback, a tun and casks as they are drawn and written down: the same number for everybody, each can be run, and a strict door.
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { rigOfCasks as casksRig } from '../../src/core/shift/casks/rig.ts';
import { rigOfTun as tunRig } from '../../src/core/shift/tun/rig.ts';
import { rigOfWashback as washbackRig } from '../../src/core/shift/washback/rig.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { drawCasks } from '../../src/shift/casks/draw.ts';
import { houseOfCasks, roundOfCasks, type CasksShift } from '../../src/shift/casks/shift.ts';
import { decodeCasks, encodeCasks } from '../../src/shift/casks/text.ts';
import { drawTunEvents as drawTun } from '../../src/shift/tun/draw.ts';
import { houseOfTun, setupOfTun as tunSetup, type TunShift } from '../../src/shift/tun/shift.ts';
import { decodeTun, encodeTun } from '../../src/shift/tun/text.ts';
import { drawWashbackEvents as drawWashback } from '../../src/shift/washback/draw.ts';
import { houseOfWashback, setupOfWashback as washbackSetup, type WashbackShift } from '../../src/shift/washback/shift.ts'; // prettier-ignore
import { decodeWashback, encodeWashback } from '../../src/shift/washback/text.ts';
import { litres20, strength } from '../../src/core/quantity.ts';
import { answer } from '../core/draw.ts';
import { nested, prototypeKeys } from '../hostile-texts.ts';

const own = answer(line(builtInHouse));
const note = { step: 9, action: { do: 'note', text: 'Quiet <b>night</b>' } } as const;
const washback: WashbackShift = { seed: 7, house: houseOfWashback('Harrowmere', own), done: [{ wash: { volume: litres20(7400), strength: strength(8) }, gravity: 0.998, warmest: 33, score: 88 }], log: [{ step: 3, action: { do: 'set', to: 18.5 } }, { step: 4, action: { do: 'switcher', on: true } }, { step: 5, action: { do: 'read', read: 1.05, corrected: 1.051 } }, note], step: 40 }; // prettier-ignore
const tun: TunShift = { seed: 7, house: houseOfTun('Harrowmere', own), done: [{ volume: 7500, gravity: 1.055, water: 2900, extract: 48, score: 91 }], log: [{ step: 0, action: { do: 'liquor', to: 68.5 } }, { step: 1, action: { do: 'run', to: 'weak' } }, note], step: 40 }; // prettier-ignore
const casks: CasksShift = { seed: 7, house: houseOfCasks('Harrowmere', own), done: [{ first: 300, second: 280, firstAge: 120, secondAge: -1, score: 77 }], log: [{ step: 1, action: { do: 'look', cask: 1 } }, { step: 2, action: { do: 'refuse' } }, note], step: 40 }; // prettier-ignore

test('a shift of each kind is read again as it was written', () => {
  expect(decodeWashback(encodeWashback(washback))).toEqual(washback);
  expect(decodeTun(encodeTun(tun))).toEqual(tun);
  expect(decodeCasks(encodeCasks(casks))).toEqual(casks);
});

const kinds = [
  ['washback', encodeWashback(washback), decodeWashback],
  ['tun', encodeTun(tun), decodeTun],
  ['casks', encodeCasks(casks), decodeCasks],
] as const;
test.each(kinds)('what is no %s is refused in a sentence', (_, text, decode) => {
  const changed = (change: (data: Record<string, unknown>) => void) => {
    const data = JSON.parse(text) as Record<string, unknown>;
    change(data);
    return JSON.stringify(data);
  };
  const wrong = [
    '',
    '[]',
    nested(50_000),
    ...kinds.filter(([, other]) => other !== text).map(([, other]) => other),
    changed((data) => (data['version'] = 9)),
    changed((data) => (data['seed'] = 0)),
    changed((data) => (data['step'] = 1e9)),
    changed((data) => (data['log'] = [{ step: 1, action: { do: 'constructor' } }])),
    changed((data) => (data['log'] = [{ step: 1, action: { do: 'bottle', cask: 2 } }])),
    changed((data) => (data['log'] = [{ step: 1, action: { do: 'liquor', to: 68.3 } }])),
    changed((data) => (data['house'] = { ...(data['house'] as object), more: 1 })),
    changed((data) => (data['house'] = { name: 'Harrowmere' })),
    ...prototypeKeys.map((key) => `{"${key}":1}`),
  ];
  for (const each of wrong) {
    const read = decode(each);
    expect('problem' in read && /[a-z].*\.$/.test(read.problem), each.slice(0, 60)).toBe(true);
  }
});

test('the same number draws the same, others draw others, and of each something comes', () => {
  for (const draw of [(seed: number) => drawWashback(seed, 1, 72), (seed: number) => drawTun(seed, 1), (seed: number) => drawCasks(seed, 1)]) {
    expect(draw(7)).toEqual(draw(7));
    expect(new Set(Array.from({ length: 300 }, (_, i) => JSON.stringify(draw(i + 1)))).size).toBe(300);
  }
  for (let seed = 1; seed <= 300; seed++) {
    const { trips, fan, asks } = drawWashback(seed, 2, 72);
    expect(trips ?? fan ?? asks).toBeDefined();
    const mash = drawTun(seed, 2);
    expect(mash.pulls ?? mash.asks).toBeDefined();
  }
}); // prettier-ignore

test('every number makes a shift that can be run with the built-in house', () => {
  for (let seed = 1; seed <= 40; seed++) {
    expect(washbackRig(washbackSetup(washback), drawWashback(seed, 1, 72))).not.toHaveProperty('refused');
    expect(tunRig(tunSetup(tun), drawTun(seed, 1))).not.toHaveProperty('refused');
    const { setup, events } = roundOfCasks({ ...casks, seed });
    expect(casksRig(setup, events)).not.toHaveProperty('refused');
  }
});
