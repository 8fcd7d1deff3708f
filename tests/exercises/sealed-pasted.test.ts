// Hand-ins found in what was pasted: words passed over, broken lines joined, each once. The opener here knows two texts and nothing else.
import { expect, test } from 'vitest';
import { attemptsOf, handInsIn, pastedNotes } from '../../src/exercises/sealed/pasted.ts';
import type { HandIn } from '../../src/exercises/sealed/hand-in.ts';

const rest = (sign: string) => Array.from({ length: 200 }, (_, i) => (i % 7 === 0 ? sign : i % 11 === 0 ? '-' : 'k')).join(''); // prettier-ignore
const una = `hs1-abcdef012345-${rest('U')}`;
const bo = `hs1-abcdef012345-${rest('B')}`;
const known = new Map([[una, 'Una'], [bo, 'Bo']]); // prettier-ignore
const paste = async (text: string) => {
  const read = await handInsIn(text, (each) => Promise.resolve(known.has(each) ? { name: known.get(each)! } : `No: ${each.slice(0, 4)}`), ({ name }) => name); // prettier-ignore
  return { names: read.found.map(({ name }) => name), notes: pastedNotes(read) };
};
const brokenAt = (text: string, every: number, by: string) => text.match(new RegExp(`.{1,${every}}`, 'g'))!.join(by); // prettier-ignore

test('words around them are passed over and counted in one sentence', async () => {
  const mail = `From: Una\nMail of Monday\n\n${una}\nBest wishes\nBo: ${bo}. Sent late`;
  expect(await paste(mail)).toEqual({
    names: ['Una', 'Bo'],
    notes: ['3 lines without a hand-in were passed over.'],
  });
  expect(await paste('Good morning')).toEqual({ names: [], notes: ['1 line without a hand-in was passed over.'] }); // prettier-ignore
});
test.each([
  ['in two', 140, '\n'],
  ['every 76 signs', 76, '\r\n'],
  ['as a quotation', 60, '\n> '],
  ['with the sign of a soft break', 75, '=\n'],
])('lines that were broken %s are joined where that opens', async (_, every, by) => {
  expect(await paste(`Hello\n${brokenAt(una, every, by)}\nUna Marsh\n${brokenAt(bo, every, by)}`)).toEqual({
    names: ['Una', 'Bo'],
    notes: ['2 lines without a hand-in were passed over.'],
  });
});
test('one that stands there twice is taken once', async () => {
  expect(await paste(`${una}\n${brokenAt(una, 100, '\n')}\n${bo}`)).toEqual({
    names: ['Una', 'Bo'],
    notes: ['1 hand-in was pasted more than once, and is taken once.'],
  });
});
test('one that does not open is told, and takes no other with it', async () => {
  expect(await paste(`${una.slice(0, -1)}\n${bo}\n${bo.slice(0, 150)}`)).toEqual({
    names: ['Bo'],
    notes: ['2 times: No: hs1-'],
  });
});

test('attempts are counted by person and sheet, whatever the version', () => {
  const handIn = (name: string, version: number, handedIn: number, more = {}) => ({ sheet: 'abcdef012345', name, version, handedIn, attempt: 1, ...more }) as HandIn; // prettier-ignore
  expect(attemptsOf([handIn('Una', 5, 20), handIn('una ', 4, 10), handIn('Bo', 5, 30), handIn('Una', 4, 40, { sheet: 'bbcdef012345' })])).toEqual([2, 1, 1, 1]); // prettier-ignore
});

test('one that is broken and does not open takes its long lines with it, and no words behind it', async () => {
  const damaged = `${una.slice(0, -1)}x`;
  expect(await paste(`${brokenAt(damaged, 80, '\n')}\nBest\nwishes`)).toEqual({
    names: [],
    notes: ['No: hs1-', '2 lines without a hand-in were passed over.'],
  });
});

test('why one does not open is told of all its long lines, and not of the words behind them', async () => {
  const open = (text: string) => Promise.resolve(`No: ${text.length}`);
  const { problems } = await handInsIn<string>(
    `${brokenAt(una, 80, '\n')}\nBest\nwishes`,
    open,
    (key) => key,
  );
  expect(problems).toEqual([`No: ${una.length}`]);
});
