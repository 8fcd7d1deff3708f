// The few figures of the other door, as they were typed: kept in the browser, and put into words a line each.
import { keepText, keptText, storageKey } from '../browser/browser-store.ts';
import type { Line } from '../core/line/line.ts';
import { plain, quotableFigures, quotableNames, type QuotableName } from '../core/cross-check/quoted.ts';
import { ofHouse } from '../talk/own-house.ts';
import { decodeTalk, encodeTalk, type Talk } from './script-kept.ts';

const KEY = storageKey('quoted');
const LONGEST = 60; // characters of a figure as older builds kept it

/** A line that names a figure outright, so that its number is taken for nothing else. */
const lineOf = (name: QuotableName, said: string) => `${quotableFigures[name].label}: ${said}`;

/** What older builds kept: a text for each figure. */
function fromOlder(kept: string | null): string {
  try {
    const data: unknown = JSON.parse(kept ?? '{}');
    if (typeof data !== 'object' || data === null) return '';
    return quotableNames
      .flatMap((name) => {
        const said: unknown = Object.hasOwn(data, name) ? (data as Record<string, unknown>)[name] : undefined;
        const isSaid = typeof said === 'string' && said.length <= LONGEST && said.trim() !== '';
        return isSaid ? [lineOf(name, said)] : [];
      })
      .join('\n');
  } catch {
    return '';
  }
}

/** The figures as they were kept, in words. */
export function keptQuoted(): Talk {
  const kept = keptText(KEY);
  return decodeTalk(kept) ?? { name: '', text: fromOlder(kept), corrections: [] };
}

/** Keeps them; false when the browser does not let it. */
export const keepQuoted = (talk: Talk): boolean => keepText(KEY, encodeTalk(talk));

/** A text with a line behind it. */
export const withLine = (text: string, line: string): string =>
  text.trim() === '' ? line : `${text.trimEnd()}\n${line}`;

/** A text with the figures of a house that it does not tell yet, a line each. */
export function filledIn(text: string, told: readonly QuotableName[], line: Line): string {
  const rest = quotableNames.filter((name) => !told.includes(name));
  return rest.reduce((all, name) => withLine(all, lineOf(name, plain(name, ofHouse(name, line)!))), text);
}
