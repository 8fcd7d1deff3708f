// Every figure of the house moves the pinned line of alcohol, or says what it moves instead.
import { expect, test } from 'vitest';
import { changeHouse } from '../../src/core/line/change.ts';
import { ledger, paces, type LedgerPace } from '../../src/core/line/ledger.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { builtInHouse, insteadOf, numberFigures, type NumberName } from '../../src/house/figures.ts';
import { answer } from '../core/draw.ts';

const MORE = 1.02;
/** What the pinned line shows: alcohol at every station at every pace, and bottles. */
const pinned = (of: Line) => [
  ...(Object.keys(paces) as LedgerPace[]).flatMap((pace) => Object.values(ledger(of, pace))),
  of.bottling.bottlesPerYear,
];
const before = pinned(answer(line(builtInHouse)));

test.each(Object.keys(numberFigures) as NumberName[])('%s', (name) => {
  const value = builtInHouse[name] * MORE;
  const { house } = answer(changeHouse(builtInHouse, name, value as never));
  const after = pinned(answer(line(house)));
  const moves = after.some((value, i) => Math.abs(value - before[i]!) > 1e-9 * value);
  const says = moves || insteadOf(name) !== undefined;
  expect(says, `${name} moves no alcohol: say what it moves \`instead\` in src/core/figures`).toBe(true);
});

test.each((Object.keys(numberFigures) as NumberName[]).filter((name) => insteadOf(name) !== undefined))(
  '%s has a word because there are houses in which it moves none',
  (name) => {
    for (const foreshotsBy of ['share', 'strength'] as const) {
      const house = { ...builtInHouse, foreshotsBy };
      const [one, two] = [house, { ...house, [name]: house[name] * MORE }].map((each) =>
        pinned(answer(line(each))),
      );
      if (two!.every((value, i) => Math.abs(value - one![i]!) <= 1e-9 * value)) return;
    }
    throw new Error(`${name} always moves alcohol.`);
  },
);
