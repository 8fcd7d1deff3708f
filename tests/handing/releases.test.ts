// Releases one after the other: whose key, how far behind, and what is the reader's own when a newer one comes.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Signed } from '../../src/handing/envelope.ts';
import { readHanded, withKey, withTaken } from '../../src/handing/handed.ts';
import { judgeFile, numberProblem } from '../../src/handing/judge-file.ts';
import { mergedRelease as mergedOrNot, offerOf, type Three } from '../../src/handing/merge.ts';
import type { WholeHouse } from '../../src/house/codec.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { nested, prototypeKeys } from '../hostile-texts.ts';

const clashes = (three: Three) => offerOf(three).clashes;
const changedByReader = (three: Three) => offerOf(three).stays.map(({ what }) => what);
function merged(three: Three, keeps: readonly string[]): WholeHouse {
  const house = mergedOrNot(three, keeps);
  if ('problem' in house) throw new Error(house.problem);
  return house;
}

const file = (change: Partial<Signed>): Signed => ({
  kind: 'house', name: 'Sallowby', release: 1, date: '2026-05-14', signer: 'Ann', key: 'key of Ann', text: 'first', signature: '', ...change,
}); // prettier-ignore
const first = withTaken({}, file({}), 'Sallowby 2');

test('a key is the first, the same as before, known from another house, or another', () => {
  expect(judgeFile(file({}), {})).toMatchObject({ key: 'first', release: 'first' });
  expect(judgeFile(file({ release: 2 }), first)).toMatchObject({ key: 'same' });
  expect(judgeFile(file({ name: 'Thornwath' }), first).ofKey).toContain('you know from Sallowby 2');
  const other = judgeFile(file({ release: 2, key: 'key of another' }), first);
  expect(other.key).toBe('another');
  expect(other.ofKey).toMatch(/^Take care: .* another key/);
  const trusted = withKey(first, file({ release: 2, key: 'key of another', signer: 'Ben' }));
  expect(judgeFile(file({ release: 2, key: 'key of another' }), trusted)).toMatchObject({ key: 'same', release: 'newer' }); // prettier-ignore
  expect(trusted['house:Sallowby']).toMatchObject({ release: 1, text: 'first', signer: 'Ben' });
});

test('a sheet is not taken for a house of its name', () => {
  expect(judgeFile(file({ kind: 'sheet', release: 2 }), first).release).toBe('first');
});

test('an older, a newer, the same and a changed release are told apart, with how far behind in words', () => {
  const third = withTaken({}, file({ release: 3, text: 'third' }), 'Sallowby');
  expect(judgeFile(file({ release: 1 }), third)).toMatchObject({ release: 'older', ofRelease: 'You have release 3; this file is release 1, two releases behind yours. Nothing was changed.' }); // prettier-ignore
  expect(judgeFile(file({ release: 5 }), third)).toMatchObject({ release: 'newer', ofRelease: 'You have release 3: you are two releases behind.' }); // prettier-ignore
  expect(judgeFile(file({ release: 4 }), third).ofRelease).toBe(
    'You have release 3: you are one release behind.',
  );
  expect(judgeFile(file({ release: 203 }), third).ofRelease).toContain('200 releases behind');
  expect(judgeFile(file({ release: 3, text: 'third' }), third)).toMatchObject({ release: 'same' });
  expect(judgeFile(file({ release: 3, text: 'another third' }), third)).toMatchObject({ release: 'changed' });
});

test('numbers of releases go up, and end somewhere', () => {
  expect(numberProblem(4, 3)).toBeUndefined();
  expect(numberProblem(9, 3)).toBeUndefined();
  expect(numberProblem(3, 3)).toContain('the next is 4 or more');
  expect(numberProblem(1, 3)).toContain('Release 3 is out already');
  expect(numberProblem(9999, 9999)).toContain('the last there can be');
});

test('what was handed comes back from storage; what cannot be read is left out', () => {
  expect(readHanded(JSON.stringify(first))).toEqual({ handed: first, isWhole: true });
  expect(readHanded(null)).toEqual({ handed: {}, isWhole: true });
  for (const text of ['', '{', '[]', 'null', nested(3000)]) expect(readHanded(text).isWhole).toBe(false);
  for (const odd of [
    7,
    null,
    {},
    { ...first['house:Sallowby'], release: 'x' },
    { ...first['house:Sallowby'], as: '\u202e' },
  ])
    // prettier-ignore
    expect(readHanded(JSON.stringify({ ...first, x: odd }))).toEqual({ handed: first, isWhole: false });
  for (const name of prototypeKeys) expect(judgeFile(file({ name }), {}).release).toBe('first');
  const many = Array.from({ length: 300 }, (_, i) => i).reduce((all, i) => withTaken(all, file({ name: `House ${i}` }), 'x'), first); // prettier-ignore
  expect(Object.keys(many)).toHaveLength(200);
  expect(many).toHaveProperty('house:House 299');
});

const houseOf = (change: Partial<WholeHouse['house']>, parts: WholeHouse['parts'] = {}): WholeHouse => ({
  name: 'Sallowby',
  house: { ...builtInHouse, ...change } as WholeHouse['house'],
  parts,
});
type Change = Partial<Record<'heartEnd' | 'yearsInWood' | 'barrels' | 'hogsheads', number>>;
const three = (had: Change, yours: Change, theirs: Change) => ({
  had: houseOf(had as never),
  yours: { ...houseOf({ ...had, ...yours } as never), name: 'Sallowby 2' },
  theirs: houseOf({ ...had, ...theirs } as never),
});

test('what only one side changed stands, under the reader’s own name for the house', () => {
  const all = three({}, { yearsInWood: 12 }, { heartEnd: 60 });
  expect(clashes(all)).toEqual([]);
  expect(changedByReader(all)).toEqual(['yearsInWood']);
  expect(merged(all, [])).toMatchObject({
    name: 'Sallowby 2',
    house: { yearsInWood: 12, heartEnd: 60 },
  });
});

test('what both changed is asked, with both values, and holds as chosen', () => {
  const all = three({ yearsInWood: 10 }, { yearsInWood: 12, heartEnd: 61 }, { yearsInWood: 8, barrels: 70 });
  expect(clashes(all)).toEqual([
    expect.objectContaining({
      what: 'yearsInWood',
      was: '10\u00a0years',
      yours: '12\u00a0years',
      theirs: '8\u00a0years',
    }),
  ]);
  expect(merged(all, []).house).toMatchObject({ yearsInWood: 8, heartEnd: 61, barrels: 70 });
  expect(merged(all, ['yearsInWood']).house).toMatchObject({
    yearsInWood: 12,
    heartEnd: 61,
    barrels: 70,
  });
  expect(clashes(three({}, { yearsInWood: 12 }, { yearsInWood: 12 }))).toEqual([]); // both to the same
});

test('parts go whole: one that one side changed stands, one that both changed is asked', () => {
  const [had, own, new_] = [{ plant: [1], malts: ['a'] }, { plant: [2], malts: ['a'], facts: { x: 1 } }, { plant: [3], malts: ['b'] }]; // prettier-ignore
  const all = { had: houseOf({}, had), yours: houseOf({}, own), theirs: houseOf({}, new_) };
  expect(clashes(all).map(({ what }) => what)).toEqual(['plant']);
  expect(merged(all, []).parts).toEqual({ plant: [3], malts: ['b'], facts: { x: 1 } });
  expect(merged(all, ['plant']).parts).toEqual({ plant: [2], malts: ['b'], facts: { x: 1 } });
  const without = { ...all, theirs: houseOf({}, { malts: ['a'] }) }; // the release has no plant any more
  expect(merged(without, []).parts).toEqual({ malts: ['a'], facts: { x: 1 } });
});

test('what is known goes figure by figure, and what both counted otherwise is asked', () => {
  const known = (given: object, counted: object) => ({ known: { given, counted } });
  const all = {
    had: houseOf({}, known({ heartEnd: 'measured' }, { casksInStore: 900 })),
    yours: houseOf({}, known({ heartEnd: 'measured', yeast: 'measured' }, { casksInStore: 950 })),
    theirs: houseOf({}, known({ barrels: 'set' }, { casksInStore: 1000 })),
  };
  expect(clashes(all).map(({ what }) => what)).toEqual(['casksInStore']);
  const given = { yeast: 'measured', barrels: 'set' };
  expect(merged(all, []).parts).toEqual(known(given, { casksInStore: 1000 }));
  expect(merged(all, ['casksInStore']).parts).toEqual(known(given, { casksInStore: 950 }));
});

test('where both changes cannot stand together it is said, and nothing is put together', () => {
  // A heart that ends below where the feints do: neither change alone makes that.
  const cannot = { had: houseOf({}), yours: houseOf({ feintsEnd: 58 } as never), theirs: houseOf({ heartEnd: 57 } as never) }; // prettier-ignore
  expect(mergedOrNot(cannot, [])).toMatchObject({ problem: expect.stringMatching(/\.$/) });
  expect(offerOf(cannot).stays.map(({ what }) => what)).toEqual(['feintsEnd']);
});

test('whatever each side changed, each figure is one of the three, and a change of one side alone is never lost', () => {
  const change = fc.record({ heartEnd: fc.integer({ min: 58, max: 66 }), yearsInWood: fc.integer({ min: 3, max: 30 }), barrels: fc.integer({ min: 0, max: 90 }), hogsheads: fc.integer({ min: 0, max: 25 }) }, { requiredKeys: [] }); // prettier-ignore
  fc.assert(
    fc.property(change, change, change, fc.boolean(), (had, yours, theirs, keep) => {
      const all = three(had, yours, theirs);
      const asked = clashes(all).map(({ what }) => what);
      const here = mergedOrNot(all, keep ? asked : []);
      if ('problem' in here) return fc.pre(false);
      for (const figure of ['heartEnd', 'yearsInWood', 'barrels', 'hogsheads'] as const) {
        const [a, b, c] = [all.had, all.yours, all.theirs].map(({ house }) => house[figure]);
        expect(here.house[figure]).toBe(a === b ? c : a === c ? b : keep ? b : c);
      }
    }),
    { numRuns: 200 },
  );
});
