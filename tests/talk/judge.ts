// A talk read and held against its key: the comparison that both the gates and the meter use.
import { talkFigures, type TalkFigureId } from '../../src/talk/figures.ts';
import type { SpokenQuantity } from '../../src/talk/quantities.ts';
import { readScript, type ReadQuantity, type ReadScript } from '../../src/talk/script.ts';
import { measures } from '../../src/core/measures.ts';
import { inUnit } from '../../src/talk/units.ts';
import { valuesFor } from '../../src/talk/values.ts';
export { scripts } from './scripts.ts';
export type { Answer, Script } from './scripts.ts';
import type { Answer, Script } from './scripts.ts';

/** A proposal with its chance, and whether it was right. */
export interface Chance {
  readonly chance: number;
  readonly right: boolean;
}
export interface Judgement {
  readonly quantities: number;
  /** Read at its place with its value and unit. */
  readonly found: number;
  readonly figures: number;
  /** Found, and proposed as the figure it is, with its value in that figure’s unit. */
  readonly matched: number;
  readonly proposed: number;
  /** Proposed as a figure that it is not, or where there is no quantity. */
  readonly wrong: number;
  /** Read where the key has nothing. */
  readonly extra: number;
  /** The likeliest of each quantity that was read, figure or none, proposed or asked. */
  readonly chances: readonly Chance[];
  readonly misses: readonly string[];
}

const close = (a: number, b: number) => Math.abs(a - b) <= 2e-3 * Math.max(Math.abs(a), Math.abs(b)); // a third said as 0.333

const plain = (unit: string) =>
  unit
    .replace('% vol', '%')
    .replace(' former UK', '')
    .replace('UK gal', 'gal')
    .replace(/^L pure alcohol$/, 'L');

/** A value in one unit of its kind, so that 19 over proof and 119 proof, or proof gallons and litres, are the same. */
function brought(value: number, unit: string): number {
  if (unit === '° over proof') return inUnit(100 + value, '° proof', '% vol');
  if (unit === '° under proof') return inUnit(100 - value, '° proof', '% vol');
  if (unit.includes('proof') && !unit.includes('gal')) return inUnit(value, unit, '% vol');
  if (unit.includes('proof gal')) return inUnit(value, unit, 'L');
  if (unit === 'min' || unit === 'h' || unit === 'days') return inUnit(value, unit, 'h');
  return value;
}

/** Two tenths and twenty per cent are one, and so are 700 kg and 0.7 t. */
const isShare = (unit: string, kind?: string) =>
  unit === '%' ||
  unit === '% vol' ||
  (unit === '' &&
    (kind === undefined || kind === 'number' || kind === 'percentage' || kind === 'grist share'));
const asShare = (value: number, unit: string) => (unit === '' ? 100 * value : value);
const sizes = new Map(
  measures.filter(({ size, local }) => size !== undefined && !local).map((each) => [each.unit, each]),
);

/** A gravity, of the house or not: 1,007 and 1.007 are one. */
const isSaidGravity = ({ figure, value = 0, unit }: Answer) =>
  figure?.endsWith('Gravity') === true || (unit === '' && value > 0.98 && value < 1.2 && value !== 1);

/** Whether a quantity is read as it was said. A number that was said without its unit takes it from what it is proposed as, which the match judges. */
function same(read: ReadQuantity, answer: Answer): boolean {
  const unit = read.isBare || answer.unit === '' || plain(read.unit) === plain(answer.unit);
  const [ends, said] = [read.range ?? [read.value!], answer.range ?? [answer.value!]];
  if (ends.length !== said.length) return false;
  const alike = (a: number, b: number) =>
    close(a, b) ||
    (read.isBare && answer.unit === '%' && close(100 * a, b)) ||
    (isSaidGravity(answer) && close(inUnit(a, '', 'gravity'), inUnit(b, '', 'gravity')));
  if (unit && said.every((end, i) => alike(ends[i]!, end))) return true;
  if (read.kind === 'clock') return close(ends[0]! % 12, said[0]! % 12);
  if (isShare(read.unit, read.kind) && isShare(answer.unit) && said.every((end, i) => close(asShare(ends[i]!, read.unit), asShare(end, answer.unit)))) return true;
  if (sizes.has(read.unit) && sizes.has(answer.unit) && sizes.get(read.unit)!.dimension === sizes.get(answer.unit)!.dimension)
    if (said.every((end, i) => close(ends[i]! * sizes.get(read.unit)!.size!, end * sizes.get(answer.unit)!.size!))) return true;
  const sameKind = /proof|L pure/.test(read.unit + answer.unit) || (read.kind === 'time' && /^(?:min|h|days)$/.test(answer.unit));
  return sameKind && said.every((end, i) => Math.abs(brought(ends[i]!, read.unit) / brought(end, answer.unit) - 1) < 1e-2); // a proof gallon is of 60 °F, and the handbook’s litre of 20 °C
} // prettier-ignore

/** Whether the value proposed is the one in the key, in the unit of the figure. */
function sameInFigure(read: ReadQuantity, { value, range, unit }: Answer): boolean {
  const dimension = unit === '' && read.unit === '' && value! < 1 && talkFigures[read.figure!].unit === '%' ? 'share' : 'bare';
  const said = { ...(range ? { range } : { value: value! }), unit, dimension } as Pick<SpokenQuantity, 'value' | 'range' | 'unit' | 'dimension'>;
  const wanted = /over|under|proof gal/.test(unit) ? said.range?.map((end) => brought(end, unit)) ?? [brought(value!, unit)] : valuesFor(said, read.figure as TalkFigureId, unit);
  return wanted.every((end, i) => Math.abs(end - read.inFigure![i]!) <= 5e-3 * Math.abs(end));
} // prettier-ignore

/** A talk read and held against its key. */
export function judge({ text, answers }: Script, readIt: (text: string) => ReadScript = readScript): Judgement {
  const { quantities } = readIt(text);
  const misses: string[] = [];
  const chances: Chance[] = [];
  const claimed = new Set<ReadQuantity>();
  let [found, matched, wrong] = [0, 0, 0];
  for (const answer of answers) {
    const read = quantities.find((each) => !claimed.has(each) && each.start < answer.at + answer.text.length && each.end > answer.at);
    const around = `${text.slice(Math.max(0, answer.at - 60), answer.at)}[[${answer.text}]]${text.slice(answer.at + answer.text.length).slice(0, 40)}`.replaceAll('\n', ' ');
    if (read) claimed.add(read);
    const isFound = read !== undefined && same(read, answer);
    if (isFound) found++;
    else misses.push(`NOT FOUND ${answer.range ?? answer.value} ${answer.unit}, read ${read?.range ?? read?.value} ${read?.unit} in “${around}”`);
    if (!read) continue;
    const isRight = isFound && read.figure === answer.figure && (read.figure === undefined || sameInFigure(read, answer));
    if (isRight && answer.figure) matched++;
    if (read.figure && !isRight) wrong++;
    const [likeliest] = read.likely;
    if (likeliest) chances.push({ chance: likeliest.chance, right: isFound && likeliest.figure === answer.figure });
    if (isFound && !isRight) misses.push(`${read.figure ? 'FALSE' : 'ASKED'} ${answer.label}, read ${read.likely.slice(0, 3).map(({ figure, chance }) => `${figure ?? '-'} ${chance.toFixed(2)}`).join(', ')}: “${around}”`);
  }
  const extra = quantities.filter((each) => !claimed.has(each));
  for (const each of extra) misses.push(`EXTRA ${each.text} = ${each.value} ${each.unit} ${each.figure ?? ''} in “${text.slice(Math.max(0, each.start - 30), each.end + 30).replaceAll('\n', ' ')}”`);
  return {
    quantities: answers.length,
    found,
    figures: answers.filter(({ figure }) => figure !== undefined).length,
    matched,
    proposed: quantities.filter(({ figure }) => figure !== undefined).length,
    wrong: wrong + extra.filter(({ figure }) => figure !== undefined).length,
    extra: extra.length,
    chances,
    misses,
  };
} // prettier-ignore
