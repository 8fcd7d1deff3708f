// “20 t of malt makes how many casks?”: so much of one thing of the line, by the house’s own line, in another.
import { format } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { figureText, figureValue, kindOfFigure } from '../house/prose.ts';
import { isMade, madeFigure } from './made.ts';
import { asGiven, inCore, told, unitNamed, type Numbered, type Reckoned, type Reckoner } from './reckoned.ts';
import { CASK_SIZES } from '../core/maturing/filling.ts';
import type { Quantity } from './quantities.ts';

/** A thing that grows with the mashes: what it is called, and how much of it one mash has. */
interface Flow {
  readonly says: RegExp;
  readonly path: string;
  readonly called: string;
  readonly kind: KindName;
  /** For what is counted: it needs no unit. */
  readonly counted?: boolean;
}

/** What is said of the gas with every amount of it, and where. */
export const GAS_CARE =
  ' It lies low and can kill in a breath: the site’s rules and gas meters decide who goes near.';
export const GAS_SAFE = { at: 'safety/limits/#carbon-dioxide', place: 'Safety: carbon dioxide' };

/** The longer names before the shorter. */
const flows: readonly Flow[] = [
  { says: /carbon dioxide|\bco2\b|\bgas\b/i, path: 'wash.carbonDioxide', called: 'of carbon dioxide', kind: 'mass' },
  { says: /draff|spent grains?|leftover grains?/i, path: 'mash.draff', called: 'of wet draff', kind: 'mass' },
  { says: /pot ale/i, path: 'potAle.volume', called: 'of pot ale', kind: 'volume20' },
  { says: /low wines/i, path: 'lowWines.volume', called: 'of low wines', kind: 'volume20' },
  { says: /pure alcohol|\blpas?\b|\blaas?\b|proof gal|\balcohol\b/i, path: 'heart.alcohol', called: 'in the heart', kind: 'alcohol' },
  { says: /malt(?:ed barley)?\b(?! (?:whisk|spirit))/i, path: 'malt.mass', called: 'of malt', kind: 'mass' },
  { says: /barley|grain/i, path: 'barley.mass', called: 'of barley', kind: 'mass' },
  { says: /\b(?:mash(?:ing)? )?water\b/i, path: 'mash.firstWater', called: 'of first water', kind: 'volume20' },
  { says: /\bworts?\b/i, path: 'wort.volume', called: 'of wort', kind: 'volume20' },
  { says: /\bwash\b|\bbeer\b/i, path: 'wash.volume', called: 'of wash', kind: 'volume20' },
  { says: /new (?:make|spirit)|heart|spirit|whisk(?:e)?y/i, path: 'heart.volume', called: 'of new spirit', kind: 'volume20' },
  { says: /\bmash(?:es)?\b/i, path: 'made.one', called: 'mashes', kind: 'count', counted: true },
  { says: /hogsheads?/i, path: 'made.hogsheads', called: 'hogsheads', kind: 'count', counted: true },
  { says: /butts?/i, path: 'made.butts', called: 'butts', kind: 'count', counted: true },
  { says: /barrels?/i, path: 'made.barrels', called: 'barrels', kind: 'count', counted: true },
  { says: /casks?/i, path: 'casks.perMash', called: 'casks', kind: 'count', counted: true },
  { says: /bottles?/i, path: 'bottling.bottles', called: 'bottles', kind: 'count', counted: true },
  { says: /\b(?:field|land|hectares?|acres?|\bha\b)/i, path: 'made.hectaresPerMash', called: 'of land', kind: 'land' },
]; // prettier-ignore

function perMash({ path }: Flow, { line }: Numbered): number {
  if (path === 'made.one') return 1;
  if (path === 'made.barrels') return line.filling.volume / CASK_SIZES.barrel;
  if (path === 'made.hogsheads') return line.filling.volume / CASK_SIZES.hogshead;
  if (path === 'made.butts') return line.filling.volume / CASK_SIZES.butt;
  const name = path.replace('made.', '');
  return isMade(name) && path.startsWith('made.') ? madeFigure(name).of(line) : figureValue(line, path);
}

/** The thing named nearest behind a place in the text, with no other number between; or just before it. */
function flowAt(text: string, from: number, until: number): Flow | undefined {
  const part = text.slice(from, until);
  let best: { flow: Flow; at: number } | undefined;
  for (const flow of flows) {
    const at = flow.says.exec(part)?.index;
    if (at !== undefined && (!best || at < best.at)) best = { flow, at };
  }
  return best?.flow;
}

const fits = (flow: Flow, dimension: string | undefined) =>
  flow.counted ? dimension === undefined : dimension === { mass: 'mass', volume20: 'volume', alcohol: 'alcohol', land: 'area' }[flow.kind as 'mass']; // prettier-ignore

/** The thing that an amount is wanted in: “what’s 3 tonnes of malt in bottles?” */
function flowAfter(text: string, from: number): Flow | undefined {
  const wanted = /\b(?:in|into|as|makes?|gives?|for)\s+(?=\w)/i.exec(text.slice(from));
  return wanted ? flowAt(text, from + wanted.index + wanted[0].length, text.length) : undefined;
}

const ASKS =
  /\b(?:how (?:many|much|big|large)|what|number of)\b|,(?=\s*\w+\?)|\bin(?=\s+(?:casks|bottles|spirit|alcohol|wash|barley|malt))/i;

/** One cask or mash, where that is said and no number is. */
function oneIn(text: string): readonly Quantity[] {
  const one = /\b(?:an?|one|each|every|per|single)\s+(?=(?:hogshead|cask|barrel|butt)\b)/i.exec(text);
  return one ? [{ number: 1, start: one.index, end: one.index + one[0].length }] : [];
}

/** So much of one thing in another. */
export const scaled: Reckoner = (asked): Reckoned | undefined => {
  const { text, wanted, line } = asked;
  const quantities = asked.quantities.length > 0 ? asked.quantities : oneIn(asked.text);
  const [given] = quantities;
  const ask = ASKS.exec(text);
  if (!given || quantities.length !== 1 || !ask || given.number <= 0 || /\byears?|\bproof\b(?! gal)/i.test(given.unit ?? '')) return undefined; // prettier-ignore
  const before = given.start < ask.index;
  const area = given.dimension === 'area' || given.unit === 'ha';
  const source = area
    ? flows.find(({ kind }) => kind === 'land')
    : (flowAt(text, given.end, before ? ask.index : text.length) ??
      (given.dimension === 'mass' ? flows.find(({ path }) => path === 'malt.mass') : given.dimension === 'alcohol' ? flows.find(({ path }) => path === 'heart.alcohol') : undefined));
  const target = flowAt(text.slice(0, before ? text.length : given.start), ask.index + ask[0].length, text.length) ?? flowAfter(text, given.end);
  if (asked.quantities.length === 0 && target?.path === 'bottling.bottles') return undefined; // the list has it
  if (!source || !target || source === target || !(area || fits(source, given.dimension))) return undefined;
  const amount = area
    ? (inCore(given, 'area') ?? NaN) / 10_000
    : source.counted
      ? given.number
      : inCore(given, source.kind);
  if (amount === undefined || !Number.isFinite(amount)) return undefined;
  const [from, to] = [perMash(source, asked), perMash(target, asked)];
  const value = (to * amount) / from;
  const unit = wanted && !target.counted && target.kind !== 'land' ? unitNamed(target.kind, wanted.unit) : undefined;
  const shownValue = target.counted ? format(value >= 10 ? Math.round(value) : value, 'count') : target.kind === 'land' ? format(value, 'land', value < 1 ? 2 : 1) : told(value, target.kind, unit); // prettier-ignore
  const shownTo = kindOfFigure(target.path) ? figureText(line, target.path) : target.counted ? format(to, 'count', to < 100 ? 2 : 0) : target.kind === 'land' ? format(to, 'land', 2) : told(to, target.kind, unit); // prettier-ignore
  const shownFrom = kindOfFigure(source.path) ? figureText(line, source.path) : source.counted ? format(from, 'count', from < 100 ? 2 : 0) : source.kind === 'land' ? format(from, 'land', 2) : told(from, source.kind); // prettier-ignore
  const giving = `${asGiven(given)} ${area ? 'of land' : source.counted && given.number === 1 ? source.called.replace(/e?s$/, (end) => (end === 'es' && /mash/.test(source.called) ? '' : end === 'es' ? 'e' : '')) : source.called}`; // prettier-ignore
  const isGas = [source, target].some(({ path }) => path === 'wash.carbonDioxide');
  return {
    says: (source.path === 'made.one' && given.number === 1 ? `One mash makes about ${shownValue} ${target.called}.` : before ? `${giving} come to about ${shownValue} ${target.called} in this house.` : `About ${shownValue} ${target.called} for ${giving} in this house.`) + (isGas ? GAS_CARE : ''),
    sum: source.path === 'made.one' ? `${shownTo} a mash × ${asGiven(given)}` : `${shownTo} ÷ ${shownFrom} in one mash, × ${asGiven(given)}`,
    ...(isGas ? GAS_SAFE : { at: 'maturing/check/#figures-to-know', place: 'Maturing: figures to know' }),
    paths: [source.path, target.path].filter((path) => kindOfFigure(path) !== undefined),
  };
}; // prettier-ignore
