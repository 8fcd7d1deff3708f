// Sums of money at a price that the question tells: “duty is £32 a litre, what is that on a bottle?”, “malt at 450 a tonne, how much a dram?”
import { formatNumber } from '../core/format.ts';
import { flowIn, flowsNamed, isOfHouse, timesNamed, type AskedFlow } from './flows.ts';
import { madeFigure } from './made.ts';
import { resultInWords, unitOfName, type Numbered, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

interface Price {
  readonly sign: string;
  readonly each: number;
  /** Where the text behind it begins. */
  readonly end: number;
  readonly start: number;
  readonly number: number;
}
interface Per {
  readonly flow: AskedFlow;
  /** Of the flow’s own unit. */
  readonly size: number;
  readonly called: string;
}

const SPEAKS =
  /\bdut(?:y|ies)\b|\btax\b|excise|\bcosts?\b|\bprice|\bpay|worth|£|€|\$|\bquid\b|\beuros?\b|\bdollars?\b/i;
const DUTY = /\bdut(?:y|ies)\b|\btax|excise/i;
const PARTS: readonly (readonly [RegExp, string, number])[] = [
  [/^\s?(?:p|pence)\b/i, '£', 0.01],
  [/^\s?(?:c|cents?)\b/i, '$', 0.01],
  [/^\s*(?:quid|pounds? (?:sterling )?|£)/i, '£', 1],
  [/^\s*(?:euros?|€)/i, '€', 1],
  [/^\s*(?:dollars?|bucks)\b/i, '$', 1],
];
const PER = /^\s*(?:is\s+)?(?:(?:for\s+)?(?:an?|per|the|each|every)\b|\/)\s*/i;
const FOR_ONE =
  /\b(?:an?|one|per|the|each)\s+(bottle|cask|barrel|hogshead|butt|case|dram)s?\s+(?:of \w+\s+)?(?:costs?|is|was|sells? (?:for|at)|goes for|at|for)\s*(?:about\s*)?$/i;
const EACH = /^\s*(?:each|apiece|a piece)\b(?!\s+(?:bottle|cask|mash|tonne|litre))/i;
const UNITS: readonly (readonly [RegExp, AskedFlow['kind'], number, string, string])[] = [
  [/^(?:litres? of (?:pure )?alcohol|lpas?|laas?|pure litre)\b/i, 'alcohol', 1, 'litre of pure alcohol', 'heart.alcohol'],
  [/^(?:us )?proof gallons?\b/i, 'alcohol', unitOfName('alcohol', 'US proof gal')!.toCore(1), 'US proof gal', 'heart.alcohol'],
  [/^(?:tonnes?|tons?|t)\b/i, 'mass', 1000, 't', 'malt.mass'],
  [/^(?:kilos?|kg|kilogrammes?|kilograms?)\b/i, 'mass', 1, 'kg', 'malt.mass'],
  [/^(?:kwh|unit of (?:power|electricity))\b/i, 'energy', 3.6, 'kWh', ''],
  [/^(?:litres?|liters?|l)\b/i, 'volume20', 1, 'L', 'heart.volume'],
]; // prettier-ignore

/** What is paid, and where it stands. */
function priceIn({ text, quantities }: Numbered): Price | undefined {
  const found = quantities.flatMap(({ number, start, end, dimension, unit }): Price[] => {
    const sign = /[£€$]\s*$/.exec(text.slice(0, start))?.[0].trim();
    const numeral = /^[\d.,]*\d/.exec(text.slice(start))?.[0].length ?? end - start;
    const part = PARTS.find(([says]) => says.test(text.slice(start + numeral)));
    const isBare = (unit === undefined || unit === 'lb') && (PER.test(text.slice(end)) || FOR_ONE.test(text.slice(0, start))) && SPEAKS.test(text);
    if (!(sign || dimension === 'money' || part || isBare) || !(number > 0)) return [];
    const after = part && !sign && dimension !== 'money' ? start + numeral + part[0].exec(text.slice(start + numeral))![0].length : end;
    return [{ sign: sign ?? part?.[1] ?? (unit === 'lb' ? '£' : dimension === 'money' ? unit! : ''), each: number * (sign ? 1 : (part?.[2] ?? 1)), start, end: after, number }];
  });
  return found.find(({ sign }) => sign !== '') ?? found[0];
} // prettier-ignore

/** What a price is for: so much of a thing of the line. */
function perIn({ text }: Numbered, { start, end }: Price): Per | undefined {
  const of = EACH.test(text.slice(end)) ? flowIn(text, Math.max(0, start - 30), start)?.flow : undefined;
  if (of?.one) return { flow: of, size: 1, called: of.one };
  const sold = FOR_ONE.exec(text.slice(0, start).replace(/[£€$]\s*$/, ''))?.[1];
  const one = sold === undefined ? undefined : flowsNamed.find(({ says, one }) => one && says.exec(sold)?.index === 0);
  if (one && !PER.test(text.slice(end))) return { flow: one, size: 1, called: one.one! };
  const per = PER.exec(text.slice(end));
  if (!per) return undefined;
  const rest = text.slice(end + per[0].length);
  const unit = UNITS.find(([says]) => says.test(rest));
  if (!unit) {
    const flow = flowsNamed.find(({ says, kind }) => kind === 'count' && says.exec(rest)?.index === 0);
    return flow && { flow, size: 1, called: flow.one! };
  }
  const [says, kind, size, called, usual] = unit;
  const length = says.exec(rest)![0].length;
  const isDuty = DUTY.test(text) && kind === 'volume20';
  const named = [flowIn(rest, length, length + 20), flowIn(text, Math.max(0, start - 30), start)].map((each) => each?.flow).find((each) => each?.kind === kind || (kind === 'volume20' && each?.kind === 'alcohol'));
  const flow = isDuty ? flowsNamed.find(({ path }) => path === 'heart.alcohol') : (named ?? flowsNamed.find((each) => (usual === '' ? each.kind === 'energy' : each.path === usual)));
  return flow && { flow, size, called: isDuty ? 'litre of pure alcohol' : called };
} // prettier-ignore

/** What it is asked for: one bottle, cask, mash, year, or so much spirit as is told. */
function amountFor(asked: Numbered, price: Price, { flow }: Per): { readonly amount: number; readonly called: string; readonly paths: readonly string[] } | undefined {
  const { text, line } = asked;
  const given = spiritSaid({ ...asked, quantities: asked.quantities.filter(({ start }) => start !== price.start && !PER.test(text.slice(start - 1, start + 3))) });
  const [volume] = given.volumes.filter(({ litres }) => litres !== 1);
  const isAlcohol = flow.path === 'heart.alcohol';
  if (isAlcohol && volume && given.volumes.length <= 2) {
    const at = given.strengths[0] ?? given.named?.at ?? (volume.litres <= 2 ? line.bottling.strength : undefined);
    if (at !== undefined) return { amount: (volume.litres * at) / 100, called: `${volume.said} at ${resultInWords(at, 'strength')}`, paths: [] };
  }
  const rest = text.slice(0, price.start) + text.slice(price.end).replace(PER, ' ').replace(/^\s*\S+(?: of (?:pure )?\w+)?/, '');
  const found = [...rest.matchAll(/\b(?:an?|one|per|each|every|the|your|our|of|in)\s+(?=(bottles?|casks?|barrels?|hogsheads?|mash|batch|year|week|month|drams?|litres? of (?:pure alcohol|spirit))\b)/gi)].at(-1)?.[1] ?? (isAlcohol ? 'bottle' : undefined);
  if (!found) return undefined;
  const target = [...flowsNamed, ...timesNamed].find(({ says }) => says.exec(found)?.index === 0);
  if (!target || target === flow) return undefined;
  // Duty is owed on what is in the glass, not on what was distilled for it.
  if (isAlcohol && target.one === 'bottle') return { amount: madeFigure('alcoholInBottle').of(line), called: 'a bottle of ours', paths: ['bottling.strength'] };
  const amount = flow.perMash(line) / target.perMash(line);
  return { amount, called: target.one ? `one ${target.one}` : found, paths: isOfHouse(flow) ? [flow.path!] : [] };
} // prettier-ignore

const money = (sign: string, value: number): string => `${sign}${formatNumber(value, value < 1000 ? 2 : 0)}`;

/** What something comes to at a price that is told. */
export const atPrice: Reckoner = (asked) => {
  const { text } = asked;
  if (!SPEAKS.test(text) || !/how much|what|cost|come|work|\bdut|tax|\?/i.test(text)) return undefined;
  const price = priceIn(asked);
  const per = price && perIn(asked, price);
  const of = per && amountFor(asked, price, per);
  if (!of || !(of.amount > 0)) return undefined;
  const value = (price.each * of.amount) / per.size;
  const shown = per.flow.kind === 'count' ? formatNumber(of.amount, of.amount < 10 ? 2 : 0) : resultInWords(of.amount, per.flow.kind, per.flow.kind === 'energy' ? unitOfName('energy', 'kWh') : per.called.includes('proof gal') ? unitOfName('alcohol', 'US proof gal') : undefined);
  const isDuty = DUTY.test(text);
  return {
    says: `About ${money(price.sign, value)} for ${of.called}, which ${per.flow.kind === 'alcohol' ? 'holds' : 'takes'} ${shown}${per.flow.kind === 'alcohol' ? '' : ` ${per.flow.called}`}.${isDuty ? ' Rates and rounding are the authority’s own, and change.' : ' The price is yours; the book holds none.'}`,
    sum: `${shown} × ${money(price.sign, price.each)} a ${per.called}`,
    ...(isDuty ? { at: 'law/licence-and-duty/#duty', place: 'Duty' } : { at: 'maturing/check/#figures-to-know', place: 'Maturing: figures to know' }),
    ...(per.flow.rests && { rests: per.flow.rests }),
    paths: of.paths,
  };
}; // prettier-ignore
