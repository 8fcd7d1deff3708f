// Units that a number takes from its neighbours or from the rest of the text.
import type { FoundNumber } from './found.ts';
import type { SaidDimension } from './units.ts';

const inList = /^\s*(?:,|\/|&|;|and|or|then|,\s*(?:and|or|then)(?:\s+then)?)\s*$/i;
const ALIKE = 8; // times: numbers further apart are not of one list
const passedOn = new Set<SaidDimension>([
  'percent',
  'strength',
  'temperature',
  'time',
  'volume',
  'clock',
  'length',
]);

const carried = new Set<SaidDimension>(['percent', 'strength', 'temperature']);
const carrier = /(?:^|\s)(?:at|to|from)\s+$/i;

/** In "on at 73 per cent and off at 62" the second is per cent as well: same sentence, a bare number after "at" or "to". */
export function carryUnits(text: string, found: readonly FoundNumber[]): void {
  for (let i = 1; i < found.length; i++) {
    const [a, b] = [found[i - 1]!, found[i]!];
    if (b.dimension !== 'bare' || b.year || !carried.has(a.dimension) || b.start - a.end > 80 || (a.dimension === 'percent' && b.value > 100)) continue;
    const between = text.slice(a.end, b.start);
    if (!/[.;!?]\s|\n/.test(between) && carrier.test(between) && !/^\s+[a-z]+s\b/i.test(text.slice(b.end, b.end + 20)))
      Object.assign(b, { unit: a.unit, dimension: a.dimension });
  }
} // prettier-ignore

const inRow = new Set<SaidDimension>(['percent', 'strength', 'temperature']);
const isGravity = (value: number) => value > 0.98 && value < 1.13 && value !== 1;

/** In "64, 75 and 85 degrees" all three are degrees. */
export function shareUnits(text: string, found: readonly FoundNumber[]): void {
  for (let i = found.length - 2; i >= 0; i--) {
    const [a, b] = [found[i]!, found[i + 1]!];
    if (a.dimension !== 'bare' || a.year || !passedOn.has(b.dimension) || b.start - a.end > 12) continue;
    const between = text.slice(a.end, b.start);
    const apart = Math.max(a.value, b.value) / Math.min(a.value, b.value);
    const isLoose = /^\s*[,;]\s*$/.test(between) && !inRow.has(b.dimension); // “at forty-six, twelve years old”
    if (inList.test(between) && apart < ALIKE && !isLoose && !isGravity(a.value))
      Object.assign(a, { unit: b.unit, dimension: b.dimension });
  }
}

const ofCasks =
  /^\s+(?:(?:are|is|in|be|old|ex-?)\s+){0,2}(?:\w+\s+)?(?:casks|barrels|hogsheads|butts|hoggies)\b/i;
/** “Sixty per cent barrels, thirty-seven hogsheads”: the second is per cent as well. */
export function shareCasks(text: string, found: readonly FoundNumber[]): void {
  for (let i = 1; i < found.length; i++) {
    const [a, b] = [found[i - 1]!, found[i]!];
    if (a.dimension !== 'percent' || b.dimension !== 'casks' || a.low !== undefined || b.low !== undefined || b.start - a.end > 50) continue;
    if (a.value + b.value <= 100 && ofCasks.test(text.slice(a.end, b.start)) && !/[.;!?]\s|\n/.test(text.slice(a.end, b.start)))
      Object.assign(b, { unit: '%', dimension: 'percent', end: b.numberEnd ?? b.end });
  }
} // prettier-ignore

/** Words about pounds that are paid. */
const priced =
  /\b(?:wage|tax|taxman|gin|saleroom|enclose|ticket|cakes?|costs?|paid|pays?|dearer|cheaper|treasury|went for|price|sell|sold|shop|penalty|worth|charged?|duty|fine|pair|retired|legion|bottle|buy)\b/i;

/** Proof beyond what the former British scale is spoken of for new spirit, or twice a strength told beside it; a cask of 53 gallons; American spelling. */
function isAmerican(text: string, found: readonly FoundNumber[]): boolean {
  const signs = found.filter(({ unit, value }, i) =>
    unit === '° proof'
      ? (value > 128 && !/\bover\b/i.test(text.slice(found[i]!.start, found[i]!.end + 8))) ||
        found.slice(Math.max(0, i - 2), i + 3).some((other) => other.value * 2 === value)
      : unit === 'gal' && value === 53,
  ).length;
  if (/\bpercent\b/i.test(text) && found.some(({ unit }) => unit === '° proof' || unit === 'proof gal') && found.some(({ unit }) => unit === 'gal') && !/\b(?:over|under) proof\b/i.test(text)) return true; // prettier-ignore
  return signs + (/\b(?:liters?|gray|color|gallon jug)\b/i.test(text) ? 1 : 0) > 0;
}

/** “Eleven over”, in a talk of proof: so many degrees over proof. */
const besideProof = /^\s+(over|under)\b(?!\s+(?:\d|an?\b|the\b|two\b|and\b))/i;
const ofAlcohol = /\b(?:lpa|alcohol)\b/i;

const isTon = /(?<!metric )\btons?$/i; // of 2,000 or 2,240 lb where pounds or hundredweights are told; a tonne elsewhere

/** Plain degrees of a mash that can only be Fahrenheit: two or more between 135 and 212, and none told in Celsius. */
const isHotter = (found: readonly FoundNumber[]) =>
  !found.some(({ unit }) => unit === '°C') &&
  found.filter(({ unit, value }) => unit === '°' && value > 135 && value < 213).length > 1;

/**
 * Units that a text leaves open, settled by what it says elsewhere: plain degrees are Fahrenheit in a text that names
 * only Fahrenheit, or where they are too many for Celsius; gallons and proof are American in a text that names
 * American ones, otherwise imperial.
 */
export function settleUnits(text: string, found: readonly FoundNumber[]): void {
  const says = (...units: readonly string[]) => found.some(({ unit }) => units.includes(unit));
  const fahrenheit = (says('°F') && !says('°C')) || isHotter(found);
  const american = !says('UK gal') && (says('US gal', '° US proof') || isAmerican(text, found));
  const imperial = american || fahrenheit || says('gal', 'UK gal', 'cwt', '°F');
  const speaksOfProof = says('° proof', '° former UK proof');
  const isOfPounds = american && says('lb');
  const isOfHundredweights =
    (says('cwt') || (says('gal', 'UK gal') && speaksOfProof)) && !/\btonnes?\b/i.test(text);
  const isOfMoney = !imperial && says('£', '€');
  const isMetric = !imperial && says('kg', 't') && !/\bpounds?\s+of\b/i.test(text); // and twelve thousand pounds are still of malt
  for (const each of found) {
    if (
      each.unit === 'm' &&
      each.value < 100 &&
      ofAlcohol.test(text.slice(Math.max(0, each.start - 60), each.start))
    )
      Object.assign(each, { value: 1e6 * each.value, unit: 'L pure alcohol', dimension: 'alcohol' });
    const side = each.dimension === 'bare' && speaksOfProof ? besideProof.exec(text.slice(each.end)) : null;
    if (side)
      Object.assign(each, {
        value: side[1]!.toLowerCase() === 'over' ? 100 + each.value : 100 - each.value,
        end: each.end + side[0].length,
        unit: '° proof',
        dimension: 'strength',
      });
    each.degrees = each.unit === '°';
    if (
      each.unit === 'lb' &&
      /pounds?$/i.test(text.slice(each.start, each.end)) &&
      !/^\s+of\b/.test(text.slice(each.end)) &&
      (isOfMoney ||
        (isMetric && each.value < 1000) ||
        priced.test(text.slice(Math.max(0, each.start - 50), each.end + 25)))
    )
      Object.assign(each, { unit: '£', dimension: 'money' });
    if (
      each.unit === '£' &&
      (american || fahrenheit) &&
      /pounds?$/i.test(text.slice(each.start, each.end)) &&
      (says('$') || fahrenheit || /^\s+of\s+malt/.test(text.slice(each.end)))
    )
      Object.assign(each, { unit: 'lb', dimension: 'mass' });
    if (
      each.unit === 't' &&
      isTon.test(text.slice(each.start, each.end)) &&
      (isOfPounds || isOfHundredweights)
    )
      each.unit = isOfPounds ? 'US tons' : 'UK tons';
    if (each.unit === '°') each.unit = fahrenheit || (each.value > 120 && says('°F')) ? '°F' : '°C';
    if (each.unit === 'gal') each.unit = american ? 'US gal' : 'UK gal';
    if (each.unit === '° proof' && american) each.unit = '° US proof';
    if (each.unit === 'proof gal' && american) each.unit = 'US proof gal';
  }
}
