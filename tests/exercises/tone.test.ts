// The tone of an option tells nothing: a reader who learnt it from other kinds, or from older sheets, is hardly better than chance; and the measure hears it where it tells.
import { expect, test } from 'vitest';
import { offChance, readByTone } from './tone.ts';

const DRAWS = 60;
const OVERALL = 10; // points of a hundred that a reader by tone may be off chance, over all kinds with options in words
const EACH = 40; // the same on any one kind, which has ten options or so, so that one word weighs much
const FAR = 20; // and few kinds are so far off
const FEW = 3;

test('no reader by tone is far off chance, over all kinds or on any', { timeout: 0 }, () => {
  const all = readByTone(DRAWS);
  expect(all.length).toBeGreaterThan(20);
  for (const [name, off] of Object.entries(offChance(all))) {
    expect(Math.abs(off), name).toBeLessThanOrEqual(OVERALL);
    const each = all.map((one) => [one.kind.id, Math.abs(offChance([one])[name]!)] as const);
    for (const [id, far] of each) expect(far, `${id}, ${name}`).toBeLessThanOrEqual(EACH);
    const far = each.flatMap(([id, points]) => (points > FAR ? [id] : []));
    expect(far.length, `${name}: ${far.join()}`).toBeLessThanOrEqual(FEW);
  }
});

test('the readers hear what the sixth generator gave away', { timeout: 0 }, () => {
  for (const [name, off] of Object.entries(offChance(readByTone(40, 6))))
    expect(off, name).toBeGreaterThan(30);
});
