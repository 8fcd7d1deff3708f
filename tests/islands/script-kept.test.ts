// Talks as they are kept and saved: what is hostile or of another version is not read as one.
import { expect, test } from 'vitest';
import {
  decodeTalk,
  encodeTalk,
  FIRST_TALK_NAME,
  LONGEST_TALK,
  talkOfFile,
} from '../../src/islands/script-kept.ts';
import { brokenNames, nested } from '../hostile-texts.ts';

const talk = { name: 'Tuesday', text: 'We fill 9 casks a week.', corrections: [] };

test('a talk is read back as it was saved, also from a file of any name', () => {
  expect(decodeTalk(encodeTalk(talk))).toEqual(talk);
  expect(talkOfFile('other.json', encodeTalk(talk))).toEqual(talk);
  expect(talkOfFile('tour of spring.txt', 'Welcome.')).toEqual({ name: 'tour of spring', text: 'Welcome.', corrections: [] }); // prettier-ignore
});

test('what is no talk is none', () => {
  for (const bad of [null, '', 'null', '7', '[]', '{}', '{"text":7}', nested(20_000), encodeTalk({ ...talk, text: 'x'.repeat(LONGEST_TALK + 1) }), encodeTalk(talk).replace('"version":1', '"version":2')])
    expect(decodeTalk(bad)).toBeUndefined();
  expect(talkOfFile('x.json', encodeTalk(talk).replace('"version":1', '"version":2'))).toHaveProperty('problem');
}); // prettier-ignore

test('a name that cannot be seen is not taken', () => {
  for (const name of Object.values(brokenNames)) {
    const read = decodeTalk(encodeTalk({ ...talk, name }))!;
    expect(read.name).toMatch(/[\p{L}\p{N}\p{P}\p{S}]/u);
    expect(read.name.length).toBeLessThanOrEqual(80);
  }
  expect(decodeTalk(encodeTalk({ ...talk, name: ' ' }))!.name).toBe(FIRST_TALK_NAME);
  expect(talkOfFile('\u202e.txt', 'x')).toMatchObject({ name: FIRST_TALK_NAME });
});
