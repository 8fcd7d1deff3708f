// Units that a number takes from its neighbours or from the rest of the text.
import type { Found } from './found.ts';
import type { Dimension } from './units.ts';

const inList = /^\s*(?:,|\/|&|;|and|or|then|,\s*(?:and|or|then)(?:\s+then)?)\s*$/i;
const passedOn = new Set<Dimension>([
  'percent',
  'strength',
  'temperature',
  'time',
  'volume',
  'clock',
  'length',
]);

const carried = new Set<Dimension>(['percent', 'strength', 'temperature']);
const carrier = /(?:^|\s)(?:at|to|from)\s+$/i;

/** In "on at 73 per cent and off at 62" the second is per cent as well: same sentence, a bare number after "at" or "to". */
export function carryUnits(text: string, found: readonly Found[]): void {
  for (let i = 1; i < found.length; i++) {
    const [a, b] = [found[i - 1]!, found[i]!];
    if (b.dimension !== 'bare' || b.year || !carried.has(a.dimension) || b.start - a.end > 80 || (a.dimension === 'percent' && b.value > 100)) continue;
    const between = text.slice(a.end, b.start);
    if (!/[.;!?]\s|\n/.test(between) && carrier.test(between) && !/^\s+[a-z]+s\b/i.test(text.slice(b.end, b.end + 20)))
      Object.assign(b, { unit: a.unit, dimension: a.dimension });
  }
} // prettier-ignore

/** In "64, 75 and 85 degrees" all three are degrees. */
export function shareUnits(text: string, found: readonly Found[]): void {
  for (let i = found.length - 2; i >= 0; i--) {
    const [a, b] = [found[i]!, found[i + 1]!];
    if (a.dimension !== 'bare' || a.year || !passedOn.has(b.dimension) || b.start - a.end > 12) continue;
    const between = text.slice(a.end, b.start);
    if (inList.test(between)) Object.assign(a, { unit: b.unit, dimension: b.dimension });
  }
}

/**
 * Units that a text leaves open, settled by what it says elsewhere: plain degrees are Fahrenheit in a text that names
 * only Fahrenheit, or where they are too many for Celsius; gallons and proof are American in a text that names
 * American ones, otherwise imperial.
 */
export function settleUnits(found: readonly Found[]): void {
  const says = (...units: readonly string[]) => found.some(({ unit }) => units.includes(unit));
  const fahrenheit = says('°F') && !says('°C');
  const american = says('US gal', '° US proof') && !says('UK gal');
  for (const each of found) {
    if (each.unit === '°') each.unit = fahrenheit || (each.value > 120 && says('°F')) ? '°F' : '°C';
    if (each.unit === 'gal') each.unit = american ? 'US gal' : 'UK gal';
    if (each.unit === '° proof' && american) each.unit = '° US proof';
  }
}
