// A trainer's own sheet: its text and back, numbers that stay, versions that differ and are even, marks.
import { describe, expect, test } from 'vitest';
import { hardnessOf, significantFigures } from '../../src/exercises/hardness.ts';
import { resultAtOnce } from '../../src/exercises/in-steps.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { isNumberQuestion, type NumberQuestion } from '../../src/exercises/question.ts';
import {
  askingOwn,
  noteOf,
  ownScore,
  settling,
  HARDNESS_SPREAD,
  type OwnSheet,
} from '../../src/exercises/own/own-sheet.ts';
import { pinnedIn, pinnedWarning } from '../../src/exercises/own/pinned.ts';
import { ownSheetText, readOwnSheet } from '../../src/exercises/own/own-text.ts';
import { kindOfOwnQuestion } from '../../src/exercises/own/own-kind.ts';
import { GENERATOR } from '../../src/exercises/draw.ts';
import { packed, unpackedText } from '../../src/house/packed.ts';
import { alcoholOfMash, whichValve } from './own-examples.ts';
import { hostileTexts } from './own-hostile.ts';

const own = [alcoholOfMash, whichValve];
const all = new Map([...questionKinds, ...own.map(kindOfOwnQuestion)].map((kind) => [kind.id, kind]));
const byForm = (form: string, count: number) =>
  questionKinds
    .filter((kind) => kind.form === form && kind.until === undefined && kind.since <= GENERATOR)
    .slice(0, count);
const sheet: OwnSheet = {
  generator: GENERATOR,
  title: 'Week two',
  minutes: 45,
  passMark: 70,
  shows: 'at the end',
  seed: 'week-two',
  versions: 8,
  house: 'built-in',
  own,
  items: [...byForm('calculation', 6).map(({ id }) => id), byForm('order', 1)[0]!.id, byForm('judgement', 1)[0]!.id, alcoholOfMash.id, whichValve.id].map((kind, i) => ({ kind, key: i + 1, marks: (i % 3) + 1 })),
}; // prettier-ignore
const settled = (of: OwnSheet) => resultAtOnce(settling(of, all));
const asked = (of: OwnSheet, version: number) => resultAtOnce(askingOwn(of, version, all));
const { sheet: fixed, evenness } = settled(sheet);

test('a sheet goes out as text or link and comes back whole, and draws the same', () => {
  expect(readOwnSheet(ownSheetText(fixed))).toEqual(fixed);
  const again = readOwnSheet(unpackedText(packed(ownSheetText(fixed)))!);
  if (typeof again === 'string') throw new Error(again);
  for (const version of [1, 8]) expect(asked(again, version)).toEqual(asked(fixed, version));
  expect(settled(sheet).sheet).toEqual(fixed);
});

test('the questions stand in the trainer’s order, in every version', () => {
  for (const version of [1, 5]) expect(asked(fixed, version).map(({ item }) => item)).toEqual(sheet.items);
  const turned = { ...sheet, items: [...sheet.items].reverse() };
  expect(asked(settled(turned).sheet, 1).map(({ question }) => question.kind)).toEqual(turned.items.map(({ kind }) => kind));
}); // prettier-ignore

test('versions differ in every number question that has draws enough, and lie within the stated spread', () => {
  const versions = Array.from({ length: sheet.versions }, (_, i) => asked(fixed, i + 1));
  for (const [place, { item }] of versions[0]!.entries()) {
    const questions = versions.map((each) => each[place]!.question).filter(isNumberQuestion);
    if (questions.length === 0) continue;
    expect(evenness.repeated, item.kind).not.toContain(place);
    expect(new Set(questions.map(({ answer }) => answer)).size, item.kind).toBe(sheet.versions);
  }
  const byHand = versions.map((each) => each.reduce((sum, { question }) => sum + hardnessOf(question).points, 0));
  expect(evenness.points).toEqual(byHand.map((each) => expect.closeTo(each, 9)));
  expect(evenness.byQuestion).toEqual(versions.map((each) => each.map(({ question }) => hardnessOf(question).points)));
  const mean = byHand.reduce((a, b) => a + b) / byHand.length;
  expect((Math.max(...byHand) - Math.min(...byHand)) / mean).toBeLessThanOrEqual(HARDNESS_SPREAD);
  expect(evenness.repeated).toContain(9); // the question with choices and no numbers is the same for all
}); // prettier-ignore

test('kept numbers stay: in every version, with another seed, another place and another order', () => {
  const place = 8;
  const kept = noteOf(fixed, 3, place)!;
  const was = asked(fixed, 3)[place]!.question;
  const items = sheet.items.map((item, i) => (i === place ? { ...item, kept } : item)).reverse();
  const { sheet: again } = settled({ ...sheet, items });
  for (const version of [1, 4, 8]) expect(asked(again, version)[sheet.items.length - 1 - place]!.question).toEqual(was);
}); // prettier-ignore

test('what is damaged or hostile is refused in a sentence', () => {
  const text = ownSheetText(fixed);
  const spoilt = [(o: Record<string, unknown>) => (o['versions'] = 7), (o: Record<string, unknown>) => (o['items'] = [['x', 1]]), (o: Record<string, unknown>) => (o['title'] = 'a\u202eb'), (o: Record<string, unknown>) => (o['generator'] = GENERATOR + 1), (o: Record<string, unknown>) => (o['own'] = []), (o: Record<string, unknown>) => (o['notes'] = ['?']), (o: Record<string, unknown>) => (o['house'] = '__proto__'), (o: Record<string, unknown>) => (o['shows'] = 'toString')].map((spoil) => { const o = JSON.parse(text) as Record<string, unknown>; spoil(o); return JSON.stringify(o); });
  for (const each of [...spoilt, ...hostileTexts, '[]', 'null', '{"__proto__":{}}', text.slice(0, -2)]) expect(readOwnSheet(each), each.slice(0, 80)).toMatch(/^[A-Z].+\.$/);
  for (const each of hostileTexts) expect(typeof unpackedText(each)).not.toBe('object');
}); // prettier-ignore

test('the measure counts what it says', () => {
  expect([4000, 4550, 0.045, 1, 0, 12.5].map(significantFigures)).toEqual([1, 3, 2, 1, 1, 3]);
  const question = {
    ...(asked(fixed, 1).find(({ question }) => question.kind === alcoholOfMash.id)!.question as NumberQuestion),
    prompt: 'A mash of 4.55\u00a0t and 250\u00a0kg of malt at 12\u202f% moisture. How many kilograms?',
    of: 'mass' as const,
    answer: 100,
    slips: [{ family: 'order' as const, value: 110, say: '' }, { family: 'order' as const, value: 200, say: '' }],
    working: ['4550 + 250 × 0.88 = 4770', 'that is 1 = 1 − 0'],
  }; // prettier-ignore
  // Steps + and ×; one mistake near; 4.55 has two more figures, 250 one, 12 one; t beside kg, and one per cent.
  expect(hardnessOf(question)).toEqual({
    steps: 2,
    near: 1,
    digits: 4,
    units: 2,
    points: 2 * 2 + 1 + 0.5 * 4 + 2,
  });
});

test('marks are weighed, and the pass mark is met at its very edge', () => {
  expect(ownScore({ passMark: 70 }, [3, 5, 2], [1, 0.8, 0])).toEqual({ got: 7, of: 10, isPass: true });
  expect(ownScore({ passMark: 71 }, [3, 5, 2], [1, 0.8, 0]).isPass).toBe(false);
  expect(ownScore({ passMark: 0 }, [3], [1])).toEqual({ got: 3, of: 3 });
});

describe('numbers that were kept, where the sheet is sealed', () => {
  const item = (kept?: string) => ({ kind: 'dust-class', key: 1, marks: 1, ...(kept === undefined ? {} : { kept }) }); // prettier-ignore
  test('are warned of: the sheet stays as it is', () => {
    expect(pinnedWarning({ items: [item('x'), item()], notes: ['x'] })).toMatch(/^1 of its 2 questions has a draw that was kept, so this sheet is not drawn anew: all its numbers stay/); // prettier-ignore
    expect(pinnedWarning({ items: [item('x'), item('x')], notes: ['x'] })).toMatch(
      /^Its draws were kept, so/,
    );
  });
  test('are none where none was kept', () => {
    expect(pinnedWarning({ items: [item()], notes: ['x'] })).toBe('');
    expect(pinnedIn({ items: [item('x')] })).toBe(0); // not drawn yet
  });
});
