// “20 t of malt makes how many casks?”, “litres of water per bottle”, “how many 25 kg sacks in a mash?”: so much of one thing of the line in another.
import { format, formatNumber } from '../core/format.ts';
import { figureText } from '../house/prose.ts';
import { isRelative } from './relative.ts';
import { GOES_TO_AIR } from './to-the-air.ts';
import { flowIn, flowsNamed, isOfHouse, timesNamed, timeOfUnit, type AskedFlow } from './flows.ts';
import type { AskedQuantity } from './quantities.ts';
import {
  asGiven,
  inCore,
  resultInWords,
  unitOfName,
  type Numbered,
  type Reckoned,
  type Reckoner,
} from './reckoned.ts';

/** What is said of the gas with every amount of it, and where. */
export const GAS_CARE =
  ' It lies low and can kill in a breath: the site’s rules and gas meters decide who goes near.';
export const GAS_SAFE = { at: 'safety/limits/#carbon-dioxide', place: 'Safety: carbon dioxide' };

/** So much of a thing, as it was said. */
export interface FlowAmount {
  readonly flow: AskedFlow;
  readonly amount: number;
  readonly said: string;
  readonly start: number;
  /** True where no number was said: “per bottle”. */
  readonly isOne: boolean;
}
/** A vessel of a size that the question tells: what is counted in it. */
interface Vessel {
  readonly called: string;
  readonly size: number;
  readonly given: AskedQuantity;
}

const ASKS =
  /^(?=(?:\w+ )?(?:litres?|liters?|kilos?|kg|grams?|tonnes?|gallons?|pints?|kwh|bottles|casks|drams) (?:of )?\w+[^?]*\b(?:for|to|in|from|makes?)\b)|\b(?:how (?:many|much|big|large)|what(?=\s+(?:volume|weight|mass|amount|quantity|area|is|s|['’]s)\b)|number of)\b|,(?=\s*\w+\?)|\b(?:in|to|into)(?=\s+(?:casks|bottles|spirit|alcohol|wash|barley|malt))/i;
const MEASURE = /\b(?:drams?|measures?|glass(?:es)?|tots?|nips?|shots?|singles?|doubles?|sips?|pours?)\b/i;
const MOST_MEASURE = 0.2; // L
const LONGEST_ASKED = 70; // characters in which the vessel of a question is named
const ALSO_IN = /\b(?:and|or)\s+(?:in(?:to)?\s+|how many\s+)?(\w+(?: \w+)?)[\s?.!]*$/i;
const UP_TO_VESSEL = 18; // characters behind “how many”, in which a vessel is what is asked for
const INTO = /\b(?:in|into|as|makes?|gives?|for)\s+(?=\w)/i;
const VESSELS =
  /\b(?:sacks?|bags?|bath(?:tub|room)?s?|tubs?|tankers?|lorr(?:y|ies)|trucks?|(?:lorry|truck|tanker)\s?loads?|loads?|buckets?|(?:olympic |swimming |paddling )*pools?|trailers?|pallets?|glass(?:es)?|cups?|mugs?|kegs?|drums?|ibcs?|totes?|skips?|barrows?|wheelbarrows?|jerry ?cans?|cans?|jugs?|tanks?|trips?|wagons?|silos?|bins?)\b/i;
const ONE =
  /\b(?:per|each|every|an?|one|single|for the|to the|in the)\s+(?:(?:single|full|whole|one|finished|working|average|typical)\s+)?/gi;
/** What the list tells figures for by itself. */
const PLAIN = /^(?:one (?:bottle|cask|mash|year|working week)$|1\u00a0(?:t|ha|L pure alcohol)\b)/;
const UNITS: readonly (readonly [RegExp, KindUnit])[] = [
  [/^(?:tonnes?|tons?|t)\b/i, { kind: 'mass', size: 1000, unit: 't' }],
  [/^(?:kilos?|kilogram(?:me)?s?|kg)\b/i, { kind: 'mass', size: 1, unit: 'kg' }],
  [/^(?:litres?|liters?|l)\b(?! of pure)/i, { kind: 'volume20', size: 1, unit: 'L' }],
  [/^(?:litres? of pure alcohol|lpa|laa)\b/i, { kind: 'alcohol', size: 1, unit: 'L pure alcohol' }],
  [/^(?:hectares?|ha)\b/i, { kind: 'land', size: 1, unit: 'ha' }],
];
interface KindUnit {
  readonly kind: AskedFlow['kind'];
  readonly size: number;
  readonly unit: string;
}

const DIMENSION: Readonly<Partial<Record<AskedFlow['kind'], string>>> = { mass: 'mass', volume20: 'volume', volume: 'volume', alcohol: 'alcohol', land: 'area', energy: 'energy' }; // prettier-ignore
const fits = (flow: AskedFlow, dimension: string | undefined) => (flow.kind === 'count' ? dimension === undefined : dimension === DIMENSION[flow.kind]); // prettier-ignore
const byDimension = (dimension: string | undefined): AskedFlow | undefined =>
  flowsNamed.find(({ path, called }) =>
    dimension === 'mass' ? path === 'malt.mass' : dimension === 'alcohol' ? path === 'heart.alcohol' : dimension === 'area' && called === 'of land',
  ); // prettier-ignore

/** So much that a number says of a thing or a time. */
export function amountOf(
  { text, line }: Numbered,
  given: AskedQuantity,
  until: number,
): FlowAmount | undefined {
  const time = timeOfUnit(given.unit);
  if (time)
    return { flow: time, amount: given.number, said: asGiven(given), start: given.start, isOne: false };
  // “In my dram, 35 ml”: of the bottle, of which that is so much.
  if (given.dimension === 'volume' && MEASURE.test(text)) {
    const litres = inCore(given, 'volume20')!;
    const bottles = flowsNamed.find(({ path }) => path === 'bottling.bottles')!;
    if (litres > 0 && litres <= MOST_MEASURE)
      return {
        flow: { ...bottles, called: 'of what is bottled' },
        amount: (100 * litres) / line.house.bottleSize,
        said: `${asGiven(given)} of what is bottled`,
        start: given.start,
        isOne: false,
      };
  }
  const isLand = given.dimension === 'area' || given.unit === 'ha';
  const flow = isLand ? byDimension('area') : (flowIn(text, given.end, Math.max(until, given.end))?.flow ?? byDimension(given.dimension)); // prettier-ignore
  if (!flow || !(isLand || fits(flow, given.dimension))) return undefined;
  const amount = isLand ? (inCore(given, 'area') ?? NaN) / 10_000 : flow.kind === 'count' ? given.number : inCore(given, flow.kind); // prettier-ignore
  if (amount === undefined || !Number.isFinite(amount)) return undefined;
  const called = given.number === 1 && flow.one ? flow.one : flow.called;
  return { flow, amount, said: `${asGiven(given)} ${called}`, start: given.start, isOne: false };
}

/** One of a thing, a time or a unit of a thing: “per bottle”, “in a day”, “per litre of spirit”. */
export function oneIn(text: string): FlowAmount | undefined {
  let found: FlowAmount | undefined;
  for (const { 0: before, index } of text.matchAll(ONE)) {
    const rest = text.slice(index + before.length);
    const unit = UNITS.find(([says]) => says.test(rest));
    if (unit) {
      const [says, { kind, size, unit: called }] = unit;
      const length = says.exec(rest)![0].length;
      const own = flowIn(rest, length, length + 24)?.flow;
      const flow = own && own.kind === kind ? own : (flowsNamed.find((each) => each.kind === kind && /malt\.mass|heart\.alcohol/.test(each.path ?? '')) ?? (kind === 'land' ? byDimension('area') : undefined)); // prettier-ignore
      if (flow) found = { flow, amount: size, said: `1\u00a0${called} ${flow.called}`, start: index, isOne: true }; // prettier-ignore
      continue;
    }
    const flow = [...flowsNamed, ...timesNamed].find(({ says, kind }) => kind === 'count' && says.exec(rest)?.index === 0); // prettier-ignore
    if (flow && !/^(?:per|each|every)/i.test(found ? text.slice(found.start) : '')) found = { flow, amount: 1, said: `one ${flow.one!}`, start: index, isOne: true }; // prettier-ignore
  }
  return found;
}

/** A vessel of a size that everybody knows, where none is told. */
const usualSize = (named: string | undefined): AskedQuantity | undefined => {
  const litres = /bath/i.test(named ?? '') ? 150 : /olympic/i.test(named ?? '') ? 2_500_000 : undefined; // L; a bath filled as it is used, and a pool of 50 × 25 × 2 m, both from memory
  return litres === undefined
    ? undefined
    : { number: litres, unit: 'L', dimension: 'volume', start: -1, end: -1 };
};

/** “25 kg sacks”: a vessel that is asked for, and its size. */
function vesselIn({ text, quantities }: Numbered, asked: number): Vessel | undefined {
  const named = VESSELS.exec(text.slice(asked, asked + LONGEST_ASKED))?.[0];
  // “Bags of 25”: kilograms, where nothing else is said.
  const bare = quantities.find(
    ({ unit, start, number }) =>
      unit === undefined && number > 0 && /\b(?:sacks?|bags?) of\s+$/i.test(text.slice(0, start)),
  );
  const given =
    quantities.find(
      ({ dimension, number }) => (dimension === 'mass' || dimension === 'volume') && number > 0,
    ) ??
    (bare && { ...bare, unit: 'kg', dimension: 'mass' as const }) ??
    usualSize(named);
  if (!named || !given) return undefined;
  const size = inCore(given, given.dimension === 'mass' ? 'mass' : 'volume20');
  return size === undefined || !(size > 0) ? undefined : { called: named.toLowerCase(), size, given };
}

export const flowText = (
  flow: AskedFlow,
  { line }: Numbered,
  unit?: Parameters<typeof resultInWords>[2],
): string => {
  if (isOfHouse(flow)) return figureText(line, flow.path!);
  const value = flow.perMash(line);
  if (flow.kind === 'count') return format(value, 'count', value < 100 ? 2 : 0);
  return flow.kind === 'land' ? format(value, 'land', 2) : resultInWords(value, flow.kind, unit);
};
export const valueText = (
  value: number,
  { kind }: AskedFlow,
  unit?: Parameters<typeof resultInWords>[2],
): string =>
  kind === 'count'
    ? format(value >= 10 ? Math.round(value) : value, 'count')
    : kind === 'land'
      ? format(value, 'land', value < 1 ? 2 : 1)
      : resultInWords(
          value,
          kind,
          unit ?? (kind === 'mass' && value < 1 ? unitOfName('mass', 'g') : undefined),
        );

/** So much of one thing in another. */
export const scaled: Reckoner = (asked): Reckoned | undefined => {
  const { text, wanted, line } = asked;
  const ask = ASKS.exec(text) ?? /^(?=[^?]*\bper\b)/i.exec(text);
  if (!ask || /\bproof\b(?! gal)/i.test(text) || GOES_TO_AIR.test(text)) return undefined;
  const from = ask.index + ask[0].length;
  const vessel = vesselIn(asked, from);
  // A vessel that is asked for and whose size nobody told.
  if (!vessel && VESSELS.test(text.slice(from, from + UP_TO_VESSEL))) return undefined;
  const quantities = asked.quantities.filter(({ start }) => start !== vessel?.given.start);
  if (quantities.some((each) => isRelative(text, each))) return undefined;
  const [given] = quantities;
  if (quantities.length > 1 || (given && !(given.number > 0))) return undefined;
  const before = given !== undefined && given.start < ask.index;
  const source = given ? amountOf(asked, given, before ? ask.index : text.length) : oneIn(text);
  if (!source) return undefined;
  const isAged = source.flow.isTime && source.flow.one === 'year' && !source.isOne;
  if (isAged && /cask|barrel|hogshead|butt|wood|store|age|old|matur|left|lose|lost|keep|kept/i.test(text)) return undefined;
  const rest = given && !before ? given.start : source.isOne && source.start > from ? source.start : text.length;
  const target = (flowIn(text, from, Math.max(from, before ? text.length : rest)) ?? (given ? flowAfter(text, given.end) : undefined))?.flow;
  const sought = target ?? (vessel?.given.dimension === 'mass' && source.flow.one === 'mash' ? byDimension('mass') : undefined);
  if (!sought || source.flow === sought || sought.isTime) return undefined;
  if (vessel && (sought.kind === 'mass') !== (vessel.given.dimension === 'mass')) return undefined;
  // What goes into a mash is malt, whatever it is called.
  const meant = source.flow.one === 'mash' && sought.path === 'barley.mass' ? byDimension('mass')! : sought;
  const [one, to] = [source.flow.perMash(line), meant.perMash(line)];
  const value = (to * source.amount) / one;
  const unit = meant.kind === 'count' || meant.kind === 'land' ? undefined : ((wanted && unitOfName(meant.kind, wanted.unit)) ?? (meant.kind === 'energy' ? unitOfName('energy', 'kWh') : undefined));
  const shown = valueText(value, meant, unit);
  const isGas = [source.flow, meant].some((flow) => flow.isGas);
  const rests = source.flow.rests ?? meant.rests;
  const inVessels = vessel && `${formatNumber(value / vessel.size, value / vessel.size < 10 ? 1 : 0)} ${vessel.called} of ${asGiven(vessel.given)}`;
  const says = vessel
    ? `About ${inVessels}: ${shown} ${meant.called} for ${source.said} in this house.`
    : source.flow.one === 'mash' && source.amount === 1
      ? `One mash makes about ${shown} ${meant.called}.`
      : before && !source.isOne
        ? `${source.said} come to about ${shown} ${meant.called} in this house.`
        : `About ${shown} ${meant.called} for ${source.said} in this house.`;
  // “In bottles and in casks”: the second too.
  const second = given && !vessel ? ALSO_IN.exec(text.slice(Math.max(given.end, from)))?.[1] : undefined;
  const also = second === undefined ? undefined : flowIn(second)?.flow;
  const besides = also && also !== meant && also !== source.flow && !also.isGas ? ` That is ${valueText((also.perMash(line) * source.amount) / one, also)} ${also.called}.` : '';
  return {
    says: says + besides + (isGas ? GAS_CARE : ''),
    sum: `${flowText(meant, asked, unit)} in one mash${source.flow.one === 'mash' ? '' : source.flow.isTime ? ` × ${formatNumber(1 / one, 1 / one < 10 ? 2 : 0)} mashes in one ${source.flow.one!}` : ` ÷ ${flowText(source.flow, asked)}`}${source.amount === 1 ? '' : ` × ${formatNumber(source.amount, source.amount % 1 === 0 ? 0 : 2)}`}${vessel ? ` ÷ ${asGiven(vessel.given)}` : ''}`,
    ...(isGas ? GAS_SAFE : { at: 'maturing/check/#figures-to-know', place: 'Maturing: figures to know' }),
    ...(rests && { rests }),
    paths: [source.flow, meant].flatMap((flow) => (isOfHouse(flow) ? [flow.path!] : [])),
    ...(source.isOne && !vessel && PLAIN.test(source.said) && { plainly: [source.flow.says, sought.says] }),
  };
}; // prettier-ignore

/** The thing that an amount is wanted in: “what’s 3 tonnes of malt in bottles?” */
function flowAfter(text: string, from: number) {
  const wanted = INTO.exec(text.slice(from));
  return wanted ? flowIn(text, from + wanted.index + wanted[0].length) : undefined;
}
