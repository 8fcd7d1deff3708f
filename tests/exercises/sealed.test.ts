// Sealed sheets: nothing that answers goes out, links measured, and what is hostile refused.
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { isNumberQuestion } from '../../src/exercises/question.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import {
  handInInside,
  handInText,
  readHandIn,
  readHandInText,
  type HandIn,
} from '../../src/exercises/sealed/hand-in.ts';
import {
  aboutSource,
  askedOnly,
  onlyVersion,
  readSealed,
  readSource,
  rulesOfSealed,
  rulesTyped,
  sealedText,
  textAsked,
  sourceText,
  type SealedSheet,
} from '../../src/exercises/sealed/sealed-sheet.ts';
import { fixedSheet, questionsAlone, type Worksheet } from '../../src/exercises/worksheet.ts';
import { sheetLink } from '../../src/exercises/sheet-link.ts';
import { forms, levels, topics } from '../../src/exercises/topics.ts';
import { makeSealKey, sealedTo, unsealed } from '../../src/handing/sealing.ts';
import { publicOf } from '../../src/handing/signing.ts';
import { toBase64url, fromBase64url } from '../../src/house/base64url.ts';
import { packed, packedBytes, unpackedBytes } from '../../src/house/packed.ts';
import { injections, nested, prototypeKeys } from '../hostile-texts.ts';

const VERSIONS = 12;
const sheet: Worksheet = fixedSheet(
  {
    generator: 5,
    topics,
    forms,
    levels,
    count: 12,
    seed: 'k3v9q2m8t1x7',
    versions: VERSIONS,
    house: 'built-in',
  },
  questionKinds,
);
const drawn = Array.from({ length: VERSIONS }, (_, i) => questionsAlone(sheet, i + 1, questionKinds));
const key = await makeSealKey();
const source = sourceText({
  sheet: { link: sheetLink(sheet) },
  seen: { 1: createHash('sha256').update('x').digest('base64url').slice(0, 16) },
});
const sealed: SealedSheet = {
  id: 'abcdef012345',
  title: 'Week two',
  minutes: 40,
  to: publicOf(key),
  versions: drawn.map((questions, i) => ({
    version: i + 1,
    questions: questions.map((question) => askedOnly(question, 1)),
  })),
  seal: toBase64url(await sealedTo(publicOf(key), aboutSource('abcdef012345'), packedBytes(source))),
};

describe('a sealed sheet', () => {
  test('holds no seed, kind, title, working, answer or known mistake of any of its questions', () => {
    const text = sealedText(sealed);
    const open = text.replace(sealed.seal, '').replace(sealed.to, '');
    expect(open).not.toContain(sheet.seed);
    for (const note of sheet.notes!) expect(open).not.toContain(note);
    for (const question of drawn.flat()) {
      for (const step of question.working) expect(open).not.toContain(JSON.stringify(step).slice(1, -1));
      expect(open).not.toContain(`"${question.kind}"`);
      if (isNumberQuestion(question))
        for (const { say } of question.slips) expect(open).not.toContain(JSON.stringify(say).slice(1, -1));
      else if ('options' in question)
        for (const { why } of question.options) expect(open).not.toContain(JSON.stringify(why).slice(1, -1));
    }
    // Whatever is in a question that goes out is one of these.
    for (const { questions } of sealed.versions)
      for (const question of questions)
        expect(
          Object.keys(question).every((name) =>
            ['form', 'prompt', 'ask', 'marks', 'lines', 'curve'].includes(name),
          ),
        ).toBe(true);
  });

  test('goes out and comes back as it was, and its seal opens to the sheet', async () => {
    expect(readSealed(sealedText(sealed))).toEqual(sealed);
    const bytes = await unsealed(key, aboutSource(sealed.id), fromBase64url(sealed.seal)!);
    const read = readSource(unpackedBytes(bytes!)!);
    expect(read).toMatchObject({ sheet: { link: sheetLink(sheet) } });
    expect(await unsealed(key, aboutSource('abcdef012346'), fromBase64url(sealed.seal)!)).toBeUndefined();
  });

  test('of one version fits a link; that of twelve versions is measured', () => {
    const all = packed(sealedText(sealed)).length;
    const one = Math.max(
      ...sealed.versions.map(({ version }) => packed(sealedText(onlyVersion(sealed, version))).length),
    );
    console.log(
      `A sealed sheet of 12 questions: ${one} characters for one version, ${all} for ${VERSIONS}; the seal has ${sealed.seal.length}.`,
    );
    expect(one).toBeLessThan(8000); // what programs for messages carry as a rule
    expect(all).toBeLessThan(60_000);
  });

  test('changed by a hand is told by the code of its questions', () => {
    const [first] = sealed.versions;
    const changed = first!.questions.map((question, i) =>
      i === 0 ? { ...question, prompt: `${question.prompt} ` } : question,
    );
    expect(textAsked(changed)).not.toBe(textAsked(first!.questions));
  });

  const hostile: readonly [string, object][] = [
    ['no id', { id: 'short' }],
    ['a key that is none', { to: '<b>' }],
    ['a seal that is none', { seal: '"><script>' }],
    ['no versions', { versions: [] }],
    ['a version twice', { versions: [sealed.versions[0], sealed.versions[0]] }],
    ['a version of none', { versions: [{ version: 1, questions: [] }] }],
    [
      'a question without words',
      { versions: [{ version: 1, questions: [{ form: 'number', prompt: '', ask: '', marks: 1 }] }] },
    ],
    [
      'a question of no form',
      { versions: [{ version: 1, questions: [{ form: '__proto__', prompt: 'a', ask: '', marks: 1 }] }] },
    ],
    [
      'options that are no text',
      {
        versions: [
          { version: 1, questions: [{ form: 'choice', prompt: 'a', ask: '', marks: 1, lines: [1, {}] }] },
        ],
      },
    ],
    [
      'marks without end',
      { versions: [{ version: 1, questions: [{ form: 'number', prompt: 'a', ask: '', marks: 1e9 }] }] },
    ],
    [
      'a curve of a unit that is a key of the prototype',
      {
        versions: [
          {
            version: 1,
            questions: [
              {
                form: 'number',
                prompt: 'a',
                ask: '',
                marks: 1,
                curve: {
                  caption: '',
                  columns: [
                    { kind: 'constructor', label: '', values: [1, 2] },
                    { kind: 'volume', label: '', values: [1, 2] },
                  ],
                },
              },
            ],
          },
        ],
      },
    ],
    [
      'a prompt that turns the direction',
      { versions: [{ version: 1, questions: [{ form: 'number', prompt: 'a\u202eb', ask: '', marks: 1 }] }] },
    ],
    [
      'a thousand versions',
      { versions: Array.from({ length: 1000 }, (_, i) => ({ ...sealed.versions[0], version: i + 1 })) },
    ],
    ['a newer form', { version: 2 }],
  ];
  test.each(hostile)('with %s is refused in a sentence', (_, change) => {
    expect(typeof readSealed(JSON.stringify({ ...JSON.parse(sealedText(sealed)), ...change }))).toBe(
      'string',
    );
  });
  test('that is something else altogether is refused in a sentence', () => {
    for (const text of [
      '',
      'null',
      '[]',
      '3',
      ...injections,
      ...prototypeKeys,
      nested(5000),
      'x'.repeat(2_000_000),
    ]) {
      expect(typeof readSealed(text)).toBe('string');
      expect(typeof readSource(text)).toBe('string');
      expect(typeof readHandInText(text)).toBe('string');
      expect(typeof readHandIn(text, sealed.id)).toBe('string');
    }
  });
});

describe('a time and a pass mark set at sealing', () => {
  const seen = { 1: 'abcdefghijklmnop' };
  const of = { sheet: { link: sheetLink(sheet) }, seen };
  test('are in the seal, and a seal without them means what it did', () => {
    const rules = { minutes: 40, passMark: 60 };
    expect(readSource(sourceText({ ...of, rules }))).toEqual({ ...of, rules });
    const old = readSource(sourceText(of));
    expect(old).toEqual(of);
    expect(rulesOfSealed({ minutes: 0, passMark: 0 }, (old as typeof of & { rules?: never }).rules)).toEqual({ minutes: 0, passMark: 0 }); // prettier-ignore
  });
  test('stand only where the sheet has none of its own', () => {
    expect(rulesOfSealed({ minutes: 30, passMark: 0 }, { minutes: 40, passMark: 60 })).toEqual({ minutes: 30, passMark: 60 }); // prettier-ignore
  });
  test.each([null, 3, {}, { minutes: -1, passMark: 0 }, { minutes: 1.5, passMark: 0 }, { minutes: 10, passMark: 101 }])('%j in a seal is refused', (rules) => {
    expect(typeof readSource(sourceText({ ...of, rules: rules as never }))).toBe('string');
  }); // prettier-ignore
  test('are read as they are typed', () => {
    expect(rulesTyped('', ' ')).toEqual({ minutes: 0, passMark: 0 });
    expect(rulesTyped('40', ' 60 ')).toEqual({ minutes: 40, passMark: 60 });
    for (const [time, pass] of [['forty', ''], ['481', ''], ['-1', ''], ['', '101'], ['', '59.5']] as const) expect(typeof rulesTyped(time, pass)).toBe('string'); // prettier-ignore
  });
});

describe('a sealed hand-in', () => {
  const handIn: HandIn = { sheet: sealed.id, version: 3, name: 'Zoë Marsh', answers: Array.from({ length: 12 }, () => '1,234.5 L'), begun: 1_778_750_000_000, handedIn: 1_778_752_000_000, day: '2026-05-14', attempt: 1, seen: 'abcdefghijklmnop' };
  test('is short enough to be sent, and comes back whole', async () => {
    const seal = await sealedTo(publicOf(key), 'x', new TextEncoder().encode(handInInside(handIn)));
    const text = handInText(sealed.id, toBase64url(seal));
    console.log(`A sealed hand-in of 12 answers: ${text.length} characters.`);
    expect(text.length).toBeLessThan(1000);
    expect(readHandInText(`  ${text}\n`)).toEqual({ sheet: sealed.id, seal: toBase64url(seal) });
    expect(readHandIn(handInInside(handIn), sealed.id)).toEqual(handIn);
  });
  test.each([
    ['of another sheet', { sheet: 'abcdef012346' }],
    ['of no version', { version: 0 }],
    ['with a name that is not seen', { name: 'Una\u202e' }],
    ['with a name without end', { name: 'U'.repeat(61) }],
    ['without answers', { answers: [] }],
    ['with an answer that is no text', { answers: [12] }],
    ['with an answer without end', { answers: ['1'.repeat(201)] }],
    ['of no day', { day: 'today' }],
    ['of a 36th attempt', { attempt: 36 }],
    ['of no time', { handedIn: -1 }],
    ['with no code of what was seen', { seen: '' }],
  ])('%s is refused in a sentence', (_, change) => {
    expect(typeof readHandIn(handInInside({ ...handIn, ...change } as HandIn), sealed.id)).toBe('string');
  });
}); // prettier-ignore
