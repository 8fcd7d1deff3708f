// Who gets which version of a sheet.
import { expect, test } from 'vitest';
import { amissInNames, handedOut, linesToSend } from '../../src/exercises/handed-out.ts';

test('names get versions in order, one each, and the lines carry their links', () => {
  const handed = handedOut(' Una  Thornwath \n\nZoë Marsh\r\n', 3);
  expect(handed).toEqual([
    { name: 'Una Thornwath', version: 1 },
    { name: 'Zoë Marsh', version: 2 },
  ]);
  expect(amissInNames(handed)).toBe('');
  expect(linesToSend(handed, (version) => `https://example.org/${version}`)).toBe(
    'Una Thornwath: https://example.org/1\nZoë Marsh: https://example.org/2',
  );
});

test('nobody shares a version: who is left over and who stands twice is said', () => {
  const handed = handedOut('Una\nZoë\nUna\nIda', 3);
  expect(handed.at(-1)).toEqual({ name: 'Ida', version: undefined });
  expect(amissInNames(handed)).toBe(
    'Twice in the list: Una. No version is left for Ida: make the sheet with 4 versions.',
  );
  expect(linesToSend(handed, String)).toBe('Una: 1\nZoë: 2\nUna: 3');
});
