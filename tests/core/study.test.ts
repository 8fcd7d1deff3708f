// The figures on the accuracy page are those that the cross-check gives, and it does not accuse the innocent.
import { describe, expect, test } from 'vitest';
import { halves, moves, SUBSET, tally, type Tally } from '../study/judge.ts';
import measured from '../../src/published/measured/study.json';

type Kept = Readonly<Record<keyof typeof halves, readonly Tally[]>>;
const kept = measured as Kept & { readonly subset: Kept };
const of = (tallies: readonly Tally[], by: number) => tallies.find((each) => each.by === by)!;

describe('the study of four hundred houses of another physics', () => {
  test.each(Object.keys(halves) as (keyof typeof halves)[])('%s: a fixed subset comes out as it was kept', (half) => {
    for (const by of moves) {
      const fresh = tally(halves[half].slice(0, SUBSET), by);
      expect(of(kept[half], by).talks).toBe(halves[half].length);
      expect(fresh, 'npm run planted').toEqual(of(kept.subset[half], by));
    }
  }, 60_000); // prettier-ignore

  test.each(Object.keys(halves) as (keyof typeof halves)[])('%s: true figures are called in one talk of a hundred at most, called or doubted in five', (half) => {
    const sound = of(kept[half], 0);
    expect(sound.trueCalled / sound.talks).toBeLessThanOrEqual(0.01);
    expect(sound.noticed / sound.talks).toBeLessThanOrEqual(0.05);
    for (const { astray, talks } of kept[half]) expect(astray / talks).toBeLessThanOrEqual(0.01);
  }); // prettier-ignore
});
