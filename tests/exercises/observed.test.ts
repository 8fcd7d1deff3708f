// Observed tasks: what each stage's file holds, model answers with the house's figures, and the record, read strictly.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { sources } from '../../src/core/sources.ts';
import {
  freshRecord,
  readRecord,
  recordText,
  recordTotals,
  type ObservedRecord,
} from '../../src/exercises/observed/record.ts';
import { modelAnswer, type Oral, type Task } from '../../src/exercises/observed/task.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import { lineOf } from '../../src/house/line-of.ts';
import { hostileTexts } from './own-hostile.ts';

const folder = join(import.meta.dirname, '..', '..', 'content', 'tasks');
const cautions = Object.keys(parse(readFileSync(join(folder, '..', 'cautions.yaml'), 'utf8')) as object);
const files = readdirSync(folder).map((file) => ({
  stage: file.replace(/\.yaml$/, ''),
  ...(parse(readFileSync(join(folder, file), 'utf8')) as {
    readonly cautions: readonly string[];
    readonly tasks: readonly Task[];
    readonly oral: readonly Oral[];
  }),
}));
const line = lineOf(builtInHouse);

test('each stage has tasks and questions with their standing, and cautions of the book', () => {
  expect(files.map(({ stage }) => stage).sort()).toEqual([...stages].sort());
  for (const { stage, tasks, oral, cautions: own } of files) {
    expect(cautions, stage).toEqual(expect.arrayContaining([...own]));
    const ids = [...tasks, ...oral].map(({ id }) => id);
    expect(new Set(ids).size, stage).toBe(ids.length);
    for (const { id, rests } of [...tasks, ...oral]) expect(Object.keys(sources), id).toContain(rests);
  }
});

test('model answers carry the figures of the house, and nothing is left in braces', () => {
  expect(modelAnswer('Ends at {house.heartEnd}.', line)).toMatch(/^Ends at [\d.]+\s%\svol\.$/);
  expect(() => modelAnswer('{heart.colour}', line)).toThrow(/heart\.colour/);
  for (const { oral } of files)
    for (const { id, model } of oral) expect(modelAnswer(model, line), id).not.toMatch(/[{}]|NaN|undefined/);
});

const record: ObservedRecord = {
  ...freshRecord('distilling'),
  seen: {
    'haze-cut': { outcome: 'prompted', day: '2026-05-14', note: 'Batch 12' },
    'heat-up': { outcome: 'alone', day: '2026-05-15', note: '' },
  },
};

test('a record goes out as text and comes back, and is summed without a verdict', () => {
  expect(readRecord(recordText(record, '1'), 'distilling')).toEqual(record);
  expect(recordTotals(['haze-cut', 'heat-up', 'balance'], record)).toEqual({ alone: 1, prompted: 1, 'not yet': 0, 'not seen': 1 }); // prettier-ignore
});

test('a record that is damaged, strange or hostile is refused in a sentence', () => {
  expect(readRecord(recordText(record, '1'), 'malting')).toContain('another stage');
  const text = recordText(record, '1');
  const spoilt = [text.replace('prompted', 'toString'), text.replace('2026-05-14', 'today'), text.replace('Batch 12', 'a\u202eb'), text.replace('"haze-cut"', '"__proto__"'), text.replace('"version": 1', '"version": 2'), text.slice(0, -3)]; // prettier-ignore
  for (const each of [...spoilt, ...hostileTexts, 'null', '[]'])
    expect(readRecord(each, 'distilling'), each.slice(0, 60)).toMatch(/^[A-Z].+\.$/);
});
