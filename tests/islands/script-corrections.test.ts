// What a reader put right in a talk finds its place again after edits elsewhere, and is given up where its words are gone.
import { expect, test } from 'vitest';
import {
  correctionAt,
  placesOfCorrections,
  readCorrections,
  settledBy,
} from '../../src/islands/script-corrections.ts';
import { readScript } from '../../src/talk/script.ts';
import { NOT_OURS } from '../../src/talk/settled.ts';

const talk =
  'Welcome. We fill 9 casks a week, and the store holds 9 casks of the first year. Each mash is 1,500 kilos of malt. It ferments for 72 hours.';
const at = (text: string, words: string, from = 0) => {
  const start = text.indexOf(words, from);
  return correctionAt(text, start, start + words.length, 'casksPerWeek');
};
/** The words that corrections find in a text. */
const found = (text: string, ...corrections: Parameters<typeof placesOfCorrections>[0]) =>
  placesOfCorrections(corrections, text, readScript(text).quantities);

test('edits before, behind and between leave it where its words are', () => {
  const put = at(talk, '1,500 kilos');
  for (const text of [
    `Good morning to all 12 of you. ${talk}`,
    `${talk} We bottle at 46 per cent.`,
    talk.replace('Welcome.', 'Here we go:').replace('72 hours', 'three days'),
    talk.replace('Each mash is', 'Well now, every mash that we make is'),
    talk.replaceAll(' ', '\n'),
  ])
    expect(found(text, put)).toEqual([text.indexOf('1,500')]);
});

test('an edit at its edge leaves it with its number, and gives it to no other', () => {
  const days = 'The wash is left alone for three days and three nights. When it is done it has about 8 per cent.';
  const after = days.replace('three days and three nights', 'three whole days and three long nights');
  for (const place of [days.indexOf('three'), days.lastIndexOf('three')]) {
    const put = correctionAt(days, place, place + 5, NOT_OURS);
    const wanted = place === days.indexOf('three') ? after.indexOf('three') : after.lastIndexOf('three');
    expect(found(after, put)).toEqual([readScript(after).quantities.find(({ start, end }) => start <= wanted && wanted < end)!.start]);
  }
  const both = [days.indexOf('three'), days.lastIndexOf('three')].map((place) => correctionAt(days, place, place + 5, NOT_OURS));
  expect(new Set(found(after, ...both)).size).toBe(2);
  const whole = at(talk, '72 hours');
  const edited = talk.replace('for 72 hours', 'for a good long 72 full hours or so');
  expect(found(edited, whole)).toEqual([edited.indexOf('72')]);
  expect(found(talk, at(edited, '72 full hours'))).toEqual([talk.indexOf('72')]);
  // Another number is none of its: not a longer one, nor one of which it is the end.
  const nine = at(talk, '9', talk.indexOf('9 casks'));
  for (const other of ['1.9', '9.5', '39', '9 thousand', 'ninety-9'])
    expect(found(talk.replaceAll('9 casks', `${other} casks`), nine), other).toEqual([undefined]);
  const three = at(days, 'three');
  for (const other of ['three hundred', 'twenty-three', 'four'])
    expect(found(days.replaceAll('three', other), three), other).toEqual([undefined]);
}); // prettier-ignore

test('of words that stand twice each is found by what stands around it, also when the order changes', () => {
  const [first, second] = [at(talk, '9 casks'), at(talk, '9 casks', talk.indexOf('9 casks') + 1)];
  const swapped =
    'The store holds 9 casks of the first year. Welcome. We fill 9 casks a week, and that is that.';
  expect(found(swapped, first)).toEqual([swapped.lastIndexOf('9 casks')]);
  expect(found(swapped, second)).toEqual([swapped.indexOf('9 casks')]);
  const alike = '9 casks. '.repeat(40);
  const tenth = 9 * '9 casks. '.length;
  expect(found(alike, correctionAt(alike, tenth, tenth + 7, NOT_OURS))).toEqual([tenth]);
});

test('where its words are gone, or all around them, it speaks of nothing', () => {
  const put = at(talk, '1,500 kilos');
  expect(found(talk.replace('1,500', '1,600'), put)).toEqual([undefined]);
  expect(found('A lorry weighs 1,500 kilos when empty, they say.', put)).toEqual([undefined]);
});

test('a reading that takes more or fewer words for the quantity is met', () => {
  const quantities = readScript(talk).quantities.map((each) =>
    each.text === '1,500 kilos' ? { ...each, start: each.start - 3, end: each.end - 6 } : each,
  );
  const put = at(talk, '1,500 kilos');
  expect(settledBy([put], talk, quantities)).toEqual({ [talk.indexOf('1,500') - 3]: 'casksPerWeek' });
});

test('what an older build kept by places is read, and what is no correction counts for nothing', () => {
  const place = talk.indexOf('1,500');
  const old = readCorrections(talk, {
    [place]: 'maltPerWeek',
    x: 'maltPerMash',
    3: 'nothing',
    999: NOT_OURS,
  });
  expect(settledBy(old, talk, readScript(talk).quantities)).toEqual({ [place]: 'maltPerWeek' });
  const put = at(talk, '72 hours');
  expect(readCorrections(talk, [put])).toEqual([put]);
  for (const bad of [
    null,
    { ...put, words: '' },
    { ...put, words: 'x'.repeat(1000) },
    { ...put, at: NaN },
    { ...put, figure: '__proto__' },
    { ...put, before: 7 },
    'text',
  ])
    expect(readCorrections(talk, [bad])).toEqual([]);
  expect(
    readCorrections(
      talk,
      Array.from({ length: 2000 }, () => put),
    ).length,
  ).toBe(500);
  for (const bad of [undefined, null, 'x', 7]) expect(readCorrections(talk, bad)).toEqual([]);
});
