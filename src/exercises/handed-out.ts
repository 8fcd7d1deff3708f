// Who gets which version of a sheet: names in order, version one for the first; the lines and the list that go with them.
import { oneLine } from './own/one-line.ts';

export interface HandedVersion {
  readonly name: string;
  /** Nothing where there are more names than versions. */
  readonly version: number | undefined;
}
export const LONGEST_NAMES = 6000; // characters of a list of names

/** Names, one a line, each with the version of its place. */
export const handedOut = (names: string, versions: number): readonly HandedVersion[] =>
  names
    .split('\n')
    .map((line) => oneLine(line).slice(0, 60).trim())
    .filter((name) => name !== '')
    .map((name, i) => ({ name, version: i < versions ? i + 1 : undefined }));

/** What is amiss with a list; empty when nothing is. */
export function amissInNames(handed: readonly HandedVersion[]): string {
  const without = handed.filter(({ version }) => version === undefined).map(({ name }) => name);
  const twice = handed.filter(({ name }, i) => handed.findIndex((each) => each.name === name) < i).map(({ name }) => name); // prettier-ignore
  return [
    twice.length > 0 ? `Twice in the list: ${[...new Set(twice)].join(', ')}.` : '',
    without.length > 0 ? `No version is left for ${without.join(', ')}: make the sheet with ${handed.length} versions.` : '',
  ].filter(Boolean).join(' ');
} // prettier-ignore

/** The lines to send, “Name: link”, of those who have a version. */
export const linesToSend = (handed: readonly HandedVersion[], linkOf: (version: number) => string): string =>
  handed
    .flatMap(({ name, version }) => (version === undefined ? [] : [`${name}: ${linkOf(version)}`]))
    .join('\n');
