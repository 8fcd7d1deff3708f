// What is drawn going into a stage is what is drawn coming out: every balance, for the built-in house and many others.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import { flowsOf } from '../../src/islands/in-and-out-flows.ts';
import { answer } from './draw.ts';
import { plainPlant, stills } from './plants.ts';

const sum = (parts: readonly { amount: number }[]) => parts.reduce((total, { amount }) => total + amount, 0);

test.each(stages)('%s: in is out', (stage) => {
  const house = fc.record({
    originalGravity: fc.double({ min: 1.045, max: 1.06, noNaN: true }),
    wortVolume: fc.double({ min: 6500, max: 7500, noNaN: true }),
    heartEnd: fc.double({ min: 58, max: 64, noNaN: true }),
    yearsInWood: fc.integer({ min: 3, max: 20 }),
  });
  fc.assert(
    fc.property(house, (change) => {
      const result = line({ ...builtInHouse, ...change } as typeof builtInHouse);
      if ('refused' in result) return;
      const flows = flowsOf(stage, result);
      expect(flows.length).toBeGreaterThan(0);
      for (const { title, into, out } of flows) {
        expect(Math.abs(sum(out) / sum(into) - 1), title).toBeLessThan(1e-9);
      }
    }),
    { numRuns: 50 },
  );
});

test.each(['twice', 'thrice', 'part-thrice'] as const)('in stills of several kinds, distilled %s, in is out as well', (scheme) => {
  const spiritStills = [stills(1, 3000, 0), stills(1, 2500, 0.35)];
  const flows = flowsOf('distilling', answer(lineWithPlant(builtInHouse, { ...plainPlant, spiritStills, scheme })));
  expect(flows.map(({ title }) => title).includes('The intermediate still')).toBe(scheme !== 'twice');
  for (const { title, kind, into, out } of flows) {
    expect(Math.abs(sum(out) / sum(into) - 1), title).toBeLessThan(1e-9);
    // Spirit and water shrink by 3.6 % at most (OIML R 22: 50 L and 50 L make 96.4 L), so no more than that may be made up for.
    const made = [...into, ...out].filter(({ name }) => name.startsWith('Volume ')).reduce((all, { amount }) => all + amount, 0);
    if (kind === 'volume20') expect(made / sum(into), title).toBeLessThan(0.036);
  }
}); // prettier-ignore
