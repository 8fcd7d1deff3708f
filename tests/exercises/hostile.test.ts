// Hostile texts at the doors of the exercises: codes, tables, practice, sheets.
import { describe, expect, test } from 'vitest';
import { csvOf } from '../../src/exercises/csv.ts';
import { drawQuestion } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { mark } from '../../src/exercises/mark.ts';
import { decodeProgress, newsIn, noProgress, practised } from '../../src/exercises/progress.ts';
import { readResult, resultCode } from '../../src/exercises/result.ts';
import { seedOf } from '../../src/exercises/seed.ts';
import { isNumberQuestion } from '../../src/exercises/question.ts';
import { readSheetLink, sheetLink } from '../../src/exercises/sheet-link.ts';
import { newsOf } from '../../src/exercises/sheet-news.ts';
import { forms, levels, topics } from '../../src/exercises/topics.ts';
import { askedOf, fixedSheet, questionsAlone, type Worksheet } from '../../src/exercises/worksheet.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { linkOf } from '../../src/house/link.ts';
import { brokenNames, houseText, injections, nested, notNumbers, prototypeKeys } from '../hostile-texts.ts';

const marks = [{ verdict: 'right' }] as const;

describe('a result code', () => {
  test.each([...Object.values(brokenNames), ...injections, ...prototypeKeys, `${'a'.repeat(59)}😀`])(
    'comes back whatever the name (%#)',
    (name) => {
      const result = readResult(resultCode({ sheet: 'abcdefg', version: 1, name, marks }));
      expect(result).toMatchObject({ sheet: 'abcdefg', version: 1, marks });
    },
  );

  test('with a right check and a name that no code writes is refused', () => {
    const body = 'abcdefg-1-1';
    const forged = (name: string) => {
      const check = (seedOf(`${body}-${name}`) % 36 ** 3).toString(36).padStart(3, '0');
      return readResult(`${body}-${check}-${encodeURIComponent(name)}`);
    };
    expect(forged('Ada')).toMatchObject({ name: 'Ada' });
    for (const name of ['\u202eadA', 'A\u0000da', 'Ada\n=1+1', 'a'.repeat(500)])
      expect(forged(name), name).toMatch(/is not a whole result code/);
  });
});

test.each(['=1+1', '+1', '-1', '@A1', '\t=1', '\r=1', '\n=1', ' =1', '＝1', 'a;=1', 'a;-1', 'a\n=1', 'a\t@x', ';;=1', 'a;"=1', 'a,=1',
  '＋1', '－1', '＠A1', '﹦1', '﹢1', '﹣1', '﹫A1', '\u200b=1', '\ufeff=1', '\u2060＝1', '\u00ad-1', '\u0000=1', '\u2800=1', '\u3164@A1', 'a;\u200d=1'])(
  'the cell %j is no formula, wherever a spreadsheet cuts it',
  (text) => {
    const table = csvOf([[text, 'b']]);
    for (const cut of [/[,\r\n]/, /[;\r\n]/, /[\t\r\n]/])
      for (const cell of table.split(cut)) expect(cell.replace(/^[\s"\p{C}\p{DI}\u2800]+/u, '').normalize('NFKC')).not.toMatch(/^[=+\-@]/);
  },
); // prettier-ignore
test('a negative number stays a number', () => expect(csvOf([[-1.5]])).toBe('\ufeff-1.5\r\n'));

describe('practice', () => {
  const text = (standing: string, log: string) =>
    `{"format":"malt-spirit-handbook/practice","version":1,"standing":${standing},"log":${log}}`;
  test.each([
    text('[]', '[]'),
    text('{}', '"x"'),
    text('{}', '[]').replace(',"standing":{},"log":[]', ''),
    nested(400_000),
    ' '.repeat(2_000_000),
    '\u0000',
    'null',
  ])('that is no practice is refused (%#)', (given) => {
    const { progress, problems } = decodeProgress(given);
    expect(problems).toHaveLength(1);
    expect(progress).toBe(noProgress);
  });

  test.each([
    ...prototypeKeys.map((key) => text(`{"${key}":${nested(50_000)}}`, '[]')),
    text('{"a":{"box":1e999,"due":1}}', '[]'),
    text('{"a":{"box":1,"due":-1}}', '[]'),
    text('{}', '[{"kind":"a","day":"0000-00-00","verdict":"right"}]'),
    text('{}', '[{"kind":"a","day":"2026-05-14","verdict":"toString"}]'),
    text('{}', '[{"kind":"<b>","day":"2026-05-14","verdict":"right"}]'),
  ])('with an entry that cannot be is used without it (%#)', (given) => {
    const { progress, problems } = decodeProgress(given);
    expect(problems).toEqual(['1 entry of the saved practice could not be read.']);
    expect(progress).toEqual(noProgress);
  });
});

describe('news of practice from another tab', () => {
  const news = (answer: unknown) => JSON.stringify({ answer, new: 0.5 });
  test.each([
    'null', '5', '', '{', '[]', '{}', '"x"', '{"answer":null}', '{"file":1}', nested(100_000),
    news({}), news(['kiln', 'right']), news(['kiln', 'right', '2026-05-14', 1]), news([5, 'right', '2026-05-14']),
    news(['<b>', 'right', '2026-05-14']), news(['kiln', 'toString', '2026-05-14']), news(['kiln', 'unanswered', '2026-05-14']),
    news(['kiln', 'right', '2026-13-14']), news(['kiln', 'right', '9999-12-31']), news(['kiln', 'right', null]),
    news(['k'.repeat(1e6), 'right', '2026-05-14']),
  ])('that cannot be read is none (%#)', (text) => expect(newsIn(text)).toBeUndefined()); // prettier-ignore
  test('that can be read is what was told', () => {
    expect(newsIn(news(['kiln', 'right', '2026-05-14']))).toEqual({
      answer: ['kiln', 'right', '2026-05-14'],
    });
    expect(newsIn('{"file":true,"new":0.5}')).toEqual({ file: true });
  });
  test('of a kind with a prototype’s name stands as any other, and is read again', () => {
    const { standing } = practised(noProgress, 'constructor', 'right', '2026-05-14');
    expect(Object.entries(standing)).toEqual([['constructor', { box: 1, due: 20_588 }]]); // 1 day after 2026-05-14, day 20 587 since 1970
  });
});

describe('a sheet’s link', () => {
  const sheet = (house: string) => `#sheet=1.0.0.0.1.a.1.${house}`;
  test.each([
    `#sheet=${'.'.repeat(1_000_000)}`,
    '#sheet=1.__proto__.0.0.1.a.1.built-in',
    '#sheet=1.0.0.0.1e3.a.1.built-in',
    '#sheet=1.0.0.0.NaN.a.1.built-in',
    '#sheet=1.0.0.0.1.<b>.1.built-in',
    '#sheet=1.0.0.0.1.a.1.constructor',
    '#sheet=1.0.0.0.1.\ud800.1.built-in',
    sheet(linkOf(houseText(`{"heartEnd":${nested(5000)}}`)).slice(1)),
    sheet(linkOf(houseText('{}', brokenNames['text turned round'])).slice(1)),
  ])('is refused in a short sentence (%#)', (hash) => {
    const reading = readSheetLink(hash) as { problem: string };
    expect(reading.problem).toMatch(/\.$/);
    expect(reading.problem.length).toBeLessThan(300);
  });
  test('with forged notes draws questions all the same, or others of their kinds', () => {
    const all: Worksheet = {
      generator: 2,
      topics,
      forms,
      levels,
      count: 40,
      house: 'built-in',
      seed: 'a',
      versions: 1,
    };
    const whole = sheetLink(fixedSheet(all, questionKinds));
    const start = whole.lastIndexOf('.') + 1;
    let read = 0;
    for (const sign of ['0', '1', '_', 'Z', '!', '~']) {
      for (let at = start; at < whole.length; at++) {
        const reading = readSheetLink(whole.slice(0, at) + sign + whole.slice(at + 1));
        if (!reading || 'problem' in reading) continue;
        read++;
        if (read % 20 > 0) continue;
        const asked = askedOf(reading.sheet, 1, questionKinds);
        expect(asked.length).toBeLessThanOrEqual(40);
        for (const { question } of asked)
          if (isNumberQuestion(question)) expect(Number.isFinite(question.answer)).toBe(true);
        expect(newsOf(reading.sheet, asked).join(' ')).not.toMatch(/NaN|undefined|Infinity/);
      }
    }
    expect(read).toBeGreaterThan(20);
  });
  test('of notes without end is passed through in a moment', () => {
    const hash = `#sheet=2.0.0.0.40.a.1.built-in.${'!'.repeat(50_000)}`;
    const reading = readSheetLink(hash);
    expect(reading && 'sheet' in reading ? questionsAlone(reading.sheet, 1, questionKinds) : []).toEqual([]);
  });
  test('of a sound sheet is read', () => expect(readSheetLink(sheet('built-in'))).toHaveProperty('sheet'));
});

test('an answer of any text is marked, and quoted short', () => {
  for (const form of ['sum', 'choice', 'order']) {
    const kind = questionKinds.find((each) => each.form === form && drawQuestion(each, 'a', builtInHouse));
    if (!kind) continue;
    const question = drawQuestion(kind, 'a', builtInHouse)!;
    for (const text of [...notNumbers, ...injections, ...prototypeKeys, ...Object.values(brokenNames)]) {
      const { verdict, say } = mark(question, text);
      expect(verdict, text.slice(0, 40)).not.toBe('right');
      expect(say.length, text.slice(0, 40)).toBeLessThan(600);
      expect(say).not.toMatch(/[\u202e\p{Cs}\u0000]/u);
    }
  }
});
