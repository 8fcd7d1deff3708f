// Two tabs on one house: whatever comes late, both end with the same house, and with all that was changed in either.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { line } from '../../src/core/line/line.ts';
import { strength } from '../../src/core/quantity.ts';
import { waysKept } from '../../src/core/figures/standing.ts';
import type { NumberName } from '../../src/house/figures.ts';
import type { WholeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { knownOf, knownPart, withCounted, withGiven } from '../../src/house/parts/known.ts';
import { withPart } from '../../src/house/parts/part.ts';
import { announceChange, hearChange, type TabChange, type HeldHouse } from '../../src/house/join-tabs.ts';

const start: WholeHouse = { name: 'Sallowby', house: builtInHouse, parts: {} };
const changed = (of: WholeHouse, figures: Partial<WholeHouse['house']>): WholeHouse => ({
  ...of,
  house: { ...of.house, ...figures },
});

/** A tab as the store has it, and what it has not heard yet. */
class Tab {
  held: HeldHouse = { here: start, told: start, stamps: {} };
  unheard: TabChange[] = [];
  setAside: WholeHouse[] = [];
  other!: Tab;
  chance: number;
  constructor(chance: number) {
    this.chance = chance;
  }
  change(figures: Partial<WholeHouse['house']>) {
    this.held = { ...this.held, here: changed(this.held.here, figures) };
  }
  write() {
    if (JSON.stringify(this.held.here) === JSON.stringify(this.held.told)) return;
    const { held, change } = announceChange(this.held, this.chance);
    this.held = held;
    this.other.unheard.push(change);
  }
  hear() {
    const change = this.unheard.shift();
    if (!change) return;
    const { gaveWay, ...held } = hearChange(this.held, change);
    this.held = held;
    if (gaveWay) this.setAside.push(gaveWay);
  }
}
function settle(tabs: readonly [Tab, Tab]) {
  for (let i = 0; i < 50; i++)
    for (const tab of tabs) {
      tab.write();
      tab.hear();
    }
}
const two = (): [Tab, Tab] => {
  const [one, other] = [new Tab(0.3), new Tab(0.6)];
  [one.other, other.other] = [other, one];
  return [one, other];
};

const step = fc.record({
  tab: fc.constantFrom(0, 1),
  what: fc.constantFrom('change', 'write', 'hear'),
  value: fc.integer({ min: 0, max: 20 }),
});

test('different figures changed in two tabs are both kept, whenever each hears of the other', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
      const tabs = two();
      const last: Partial<Record<'heartEnd' | 'fillingStrength', number>> = {};
      for (const { tab, what, value } of steps) {
        if (what !== 'change') tabs[tab]![what as 'write' | 'hear']();
        else {
          const [figure, to] =
            tab === 0
              ? (['heartEnd', 58 + value / 4] as const)
              : (['fillingStrength', 60 + value / 8] as const);
          last[figure] = to;
          tabs[tab]!.change({ [figure]: to });
        }
      }
      settle(tabs);
      expect(tabs[0].held.here).toEqual(tabs[1].held.here);
      expect(tabs[0].held.here.house).toEqual({ ...builtInHouse, ...last });
    }),
    { numRuns: 500 },
  );
});

test('of one figure changed in both at once the same value wins in both', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
      const tabs = two();
      for (const { tab, what, value } of steps)
        if (what === 'change') tabs[tab]!.change({ heartEnd: strength(58 + value / 4) });
        else tabs[tab]![what as 'write' | 'hear']();
      settle(tabs);
      expect(tabs[0].held.here).toEqual(tabs[1].held.here);
    }),
    { numRuns: 500 },
  );
});

const keeping = (of: WholeHouse, parts: WholeHouse['parts']): WholeHouse => ({
  ...of,
  parts: { ...of.parts, ...parts },
});

test('parts changed in two tabs are both kept, beside the figures, and of one part the same value wins in both', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 40 }), (steps) => {
      const tabs = two();
      const last: Record<string, unknown> = {};
      for (const { tab, what, value } of steps) {
        const it = tabs[tab]!;
        if (what !== 'change') it[what as 'write' | 'hear']();
        else {
          const part = tab === 0 ? 'plant' : 'stock';
          last[part] = { value };
          it.held = { ...it.held, here: keeping(it.held.here, { [part]: { value }, facts: { value } }) };
          it.change({ heartEnd: strength(58 + value / 4) });
        }
      }
      settle(tabs);
      const [one, other] = tabs.map(({ held }) => held.here);
      expect(one).toEqual(other);
      expect(one!.parts).toMatchObject(last);
    }),
    { numRuns: 500 },
  );
});

test('a part taken away in one tab goes from the other too, and what the other has not told yet stays', () => {
  const [one, other] = two();
  for (const tab of [one, other])
    tab.held = { here: keeping(start, { plant: [1] }), told: keeping(start, { plant: [1] }), stamps: {} };
  one.held = { ...one.held, here: { ...one.held.here, parts: {} } };
  one.write();
  other.held = { ...other.held, here: keeping(other.held.here, { stock: [2] }) };
  settle([one, other]);
  expect(one.held.here.parts).toEqual({ stock: [2] });
  expect(other.held.here).toEqual(one.held.here);
});

/** A house in which one figure is known, or counted, or neither any more, as the page keeps it. */
function knowing(of: WholeHouse, list: 'given' | 'counted', name: string, value: unknown): WholeHouse {
  const known = knownOf(of);
  const next = list === 'given' ? withGiven(known, name as 'yeast', value as 'set') : withCounted(known, name as 'heartVolume', value as number);
  return { ...of, parts: withPart(of.parts, knownPart, next) };
} // prettier-ignore

const knownStep = fc.record({
  tab: fc.constantFrom(0, 1),
  what: fc.constantFrom('change', 'write', 'hear'),
  which: fc.integer({ min: 0, max: 4 }),
  value: fc.integer({ min: 0, max: 3 }),
});
const figures = [
  [['given', 'yeast'], ['given', 'maltPerMash'], ['counted', 'heartVolume'], ['counted', 'casksInStore'], ['given', 'heartEnd']],
  [['given', 'washEnd'], ['given', 'feintsEnd'], ['counted', 'feintsVolume'], ['counted', 'potAleVolume'], ['given', 'bottleSize']],
] as const; // prettier-ignore
/** How a figure may be known, or so many of it; 0 for neither any more. */
function toKnown(list: 'given' | 'counted', name: string, value: number) {
  if (value === 0) return undefined;
  const ways = list === 'given' ? waysKept(name as NumberName) : [];
  return list === 'counted' ? 100 * value : ways[value % ways.length];
}

test('what is known of different figures in two tabs is all kept, whenever each hears of the other', () => {
  fc.assert(
    fc.property(fc.array(knownStep, { maxLength: 40 }), (steps) => {
      const tabs = two();
      const last = { given: {}, counted: {} } as Record<'given' | 'counted', Record<string, unknown>>;
      for (const { tab, what, which, value } of steps) {
        const it = tabs[tab]!;
        if (what !== 'change') it[what as 'write' | 'hear']();
        else {
          const [list, name] = figures[tab as 0 | 1][which]!;
          const to = toKnown(list, name, value);
          if (to === undefined) delete last[list][name];
          else last[list][name] = to;
          it.held = { ...it.held, here: knowing(it.held.here, list, name, to) };
        }
      }
      settle(tabs);
      expect(tabs[0].held.here).toEqual(tabs[1].held.here);
      expect({ given: {}, counted: {}, ...(tabs[0].held.here.parts.known as object) }).toEqual(last);
    }),
    { numRuns: 500 },
  );
}); // prettier-ignore

test('what is known of one figure in both tabs, beside all that a house keeps: both end alike, however it comes', () => {
  fc.assert(
    fc.property(fc.array(knownStep, { maxLength: 60 }), (steps) => {
      const tabs = two();
      for (const { tab, what, which, value } of steps) {
        const it = tabs[tab]!;
        if (what !== 'change') it[what as 'write' | 'hear']();
        else if (which === 4) it.held = { ...it.held, here: { ...it.held.here, parts: value === 0 ? {} : { ...it.held.here.parts, facts: { value } } } };
        else {
          const [list, name] = figures[0][which]!;
          it.held = { ...it.held, here: knowing(it.held.here, list, name, toKnown(list, name, value)) };
          it.change({ heartEnd: strength(58 + value) });
        }
      }
      settle(tabs);
      expect(tabs[0].held.here).toEqual(tabs[1].held.here);
    }),
    { numRuns: 500 },
  );
}); // prettier-ignore

test('by hand: one tab gives the yeast, the other counts the heart, and each keeps both', () => {
  const [one, other] = two();
  one.held = { ...one.held, here: knowing(start, 'given', 'yeast', 'set') };
  other.held = { ...other.held, here: knowing(start, 'counted', 'heartVolume', 850) };
  settle([one, other]);
  for (const tab of [one, other])
    expect(tab.held.here.parts.known).toEqual({ given: { yeast: 'set' }, counted: { heartVolume: 850 } });
});

test('what is known and cannot be read is no reason to lose what is told beside it', () => {
  for (const known of ['all of it', [1], { given: 7 }, { counted: null, more: 1 }, { given: { nothing: {} } }]) {
    const [one, other] = two();
    for (const tab of [one, other]) tab.held = { here: keeping(start, { known }), told: keeping(start, { known }), stamps: {} };
    one.change({ fillingStrength: strength(62) });
    other.held = { ...other.held, here: knowing(other.held.here, 'given', 'yeast', 'set') };
    settle([one, other]);
    expect(one.held.here).toEqual(other.held.here);
    expect(one.held.here.house.fillingStrength).toBe(62);
    expect(one.held.here.parts.known).toMatchObject({ given: { yeast: 'set' } });
  }
}); // prettier-ignore

test('another house, opened in one tab, is opened in the other, whatever was changed there', () => {
  const [one, other] = two();
  one.change({ fillingStrength: strength(62) });
  one.write();
  other.held = {
    ...other.held,
    here: { name: 'Thornwath', house: { ...builtInHouse, heartEnd: strength(60) }, parts: {} },
  };
  settle([one, other]);
  expect(one.held.here).toEqual(other.held.here);
  expect(one.held.here.name).toBe('Thornwath');
});

test.each(['both told before they hear', 'one not told yet'])(
  'two changes that do not run together end alike in both tabs, and the one that gives way is set aside: %s',
  (when) => {
    const [one, other] = two();
    one.change({ foreshotsBy: 'strength', foreshotsStrength: strength(72) });
    other.change({ heartEnd: strength(68) });
    const houses = [one, other].map(({ held }) => held.here);
    for (const { house } of houses) expect('refused' in line(house)).toBe(false);
    expect('refused' in line({ ...houses[0]!.house, heartEnd: strength(68) })).toBe(true);
    one.write();
    if (when === 'both told before they hear') other.write();
    other.hear();
    settle([one, other]);
    expect(one.held.here).toEqual(other.held.here);
    const wins = houses.findIndex((house) => JSON.stringify(house) === JSON.stringify(one.held.here));
    expect(wins).not.toBe(-1);
    expect([...one.setAside, ...other.setAside]).toEqual([houses[1 - wins]]);
  },
);

test('the number of a change is the clock’s, and greater than every number known', () => {
  const clock = Date.UTC(2026, 4, 14);
  const held: HeldHouse = { here: changed(start, { heartEnd: strength(60) }), told: start, stamps: {} };
  expect(announceChange(held, 0.5, clock).change.stamp).toBe(clock + 0.5);
  expect(announceChange({ ...held, stamps: { name: clock + 9.25 } }, 0.5, clock).change.stamp).toBe(
    clock + 10.5,
  );
});
