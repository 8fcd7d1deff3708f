// What a text says of one quantity, as written: a figure, a figure ± so much, or a range.
import type { KindName } from '../kinds.ts';
import { lifted } from './ends.ts';
import { single, type Single } from './single.ts';
import type { UnitCountry } from './country.ts';

export interface Written extends Single {
  /** The other end of a range, the higher as a rule. */
  readonly to?: Single;
  /** What stands behind ±. */
  readonly within?: Single;
}

const LONGEST = 200; // characters of a text that are read
const plusMinus = /\s*(?:±|\+\s*\/?\s*[-−–]|\bplus\s+or\s+minus\b|\bgive\s+or\s+take\b)\s*(?=\S)/i;
const joiner = /\s*(?:–|—|\s-\s|\bdown\s+to\b|\bup\s+to\b|\bto\b|\bor\b|\band\b)\s*/gi;
const opening = /^(?:(?:anything|anywhere|somewhere)\s+)?(?:from|between)\s+/i;

/** Figures as they are cut and glued: a hyphen between two is a dash, a nought is put before a lone decimal sign. */
const mended = (text: string) =>
  text
    .trim()
    .replace(/(?<=[\d%])-(?=\d)/g, '–')
    .replace(/(?<![\d.,])[.,](?=\d)/g, '0.');

function rangeIn(text: string, kind: KindName, country?: UnitCountry): Written | undefined {
  const body = text.replace(opening, '');
  for (const found of body.matchAll(joiner)) {
    const word = found[0].trim().toLowerCase();
    if (word === 'and' && !/^.*\bbetween\s/i.test(text)) continue;
    const [first, second] = [body.slice(0, found.index), body.slice(found.index + found[0].length)].map((end) => single(end, kind, country)); // prettier-ignore
    if (!first || !second || first.unit === 'other' || second.unit === 'other') continue;
    const up = first.unit === 'none' ? lifted({ value: first.number, scale: first.scale }, { value: second.number, scale: second.scale }) : first.number; // prettier-ignore
    if (up === second.number || (word === 'or' && up > second.number)) continue;
    const unit = second.unit === 'none' ? first : second;
    const named = { unit: unit.unit, unitText: unit.unitText };
    const from = first.unit === 'none' ? { ...first, ...named, number: up } : first;
    return { ...from, to: second.unit === 'none' ? { ...second, ...named } : second };
  }
  return undefined;
}

/**
 * What a text says; undefined when it says no quantity.
 * @example readWritten('5 to 6 t', 'mass').to.number // 6 (the other end)
 */
export function readWritten(text: string, kind: KindName, country?: UnitCountry): Written | undefined {
  if (text.length > LONGEST) return undefined;
  const body = mended(text);
  const around = plusMinus.exec(body);
  if (around) {
    const main = single(body.slice(0, around.index), kind, country);
    const within = single(body.slice(around.index + around[0].length), kind, country);
    if (main && within && within.number >= 0)
      return main.unit === 'none' && typeof within.unit !== 'string'
        ? { ...main, unit: within.unit, unitText: within.unitText, within }
        : { ...main, within };
  }
  return rangeIn(body, kind, country) ?? single(body, kind, country);
}
