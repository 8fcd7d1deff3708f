// Sums of mixing with the asker’s own numbers: spirit let down, water added, spirits put together.
import { formatWorking } from '../core/format.ts';
import { litres20, strength } from '../core/quantity.ts';
import { blend, reduce } from '../core/spirit/mixing.ts';
import { inCore, resultInWords, unitOfName, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const LET_DOWN = { at: 'sums/reduce-to-strength/', place: 'Let spirit down to a strength' };
const BLEND = { at: 'sums/blend-two-spirits/', place: 'Two spirits together' };
const LOT = 100; // L, of spirit whose volume is not told
const WATER = /water|\bhow (?:do|can|would|could|should) (?:i|we|you) get\b|dilut|reduc|let(?:ting)?(?: it)? down|bring|\bcut\b|proof(?:ing)? down|\bdown to\b|weaken|knock|\btake\b/i; // prettier-ignore

/** Water of a mash is told by its heat, and lets nothing down. */
const MASHING =
  /\b(?:mash(?:ed|es|ing)?|tuns?|first water|second water|liquor|strike|sparg\w+|wort|degrees|hot|celsius|fahrenheit)\b/i;

const PINT = unitOfName('volume20', 'pints')!;
/** A quart, which is two pints in either country: the sum comes to the same in both. */
const QUART = {
  unit: 'quarts',
  digits: 2,
  fromCore: (value: number) => PINT.fromCore(value) / 2,
  toCore: (value: number) => PINT.toCore(2 * value),
};
/** The unit in which a sum of volumes is told: the one wanted, or the gallons, pints or quarts that it was asked in. */
function unitSaid({ text, quantities, wanted }: Parameters<Reckoner>[0]) {
  if (/\bquarts?\b/i.test(text)) return QUART;
  const asked = wanted?.dimension === 'volume' ? wanted.unit : quantities.find(({ unit }) => unit === 'pints' || (unit?.endsWith(' gal') && !unit.includes('proof')))?.unit; // prettier-ignore
  return asked === undefined ? undefined : unitOfName('volume20', asked);
}

/** The water that brings so much spirit, or a hundred litres of it, from one strength to another. */
export const waterToLetDown: Reckoner = (asked) => {
  const { text } = asked;
  const said = spiritSaid(asked);
  const { volumes, named } = said;
  const isNamed =
    said.strengths.length === 1 &&
    named !== undefined &&
    volumes.length === 1 &&
    named.at > said.strengths[0]!;
  const strengths = isNamed ? [named.at, ...said.strengths] : said.strengths;
  if (strengths.length !== 2 || volumes.length > 1 || !WATER.test(text)) return undefined;
  if (volumes.length === 0 && MASHING.test(text)) return undefined;
  const [given] = volumes;
  if (!given && !/water|dilut|reduc|let(?:ting)?(?: it)? down|proof(?:ing)? down/i.test(text))
    return undefined;
  const { litres, said: lotSaid } = given ?? { litres: LOT, said: `${LOT}\u00a0L` };
  const [high, low] = [Math.max(...strengths), Math.min(...strengths)];
  if (high === low) return undefined;
  const made = reduce({ volume: litres20(litres), strength: strength(high) }, strength(low));
  const unit = unitSaid(asked);
  const lot =
    unit === QUART
      ? resultInWords(litres, 'volume20', QUART).replace(/^1\u00a0quarts$/, 'a\u00a0quart')
      : lotSaid.replace(/^A/, 'a');
  return {
    says: `${resultInWords(made.waterVolume, 'volume20', unit)} of water bring ${lot} from ${resultInWords(high, 'strength')} to ${resultInWords(low, 'strength')}, and make ${resultInWords(made.volume, 'volume20', unit)}.`,
    sum: `${resultInWords(litres, 'volume20', unit)} and ${resultInWords(made.waterVolume, 'volume20', unit)} shrink by ${resultInWords(made.contraction, 'volume20', unit)} as they mix`,
    ...LET_DOWN,
    paths: isNamed ? [named.path] : [],
  };
};

/** Spirit and so much water put together. */
export const watered: Reckoner = (asked) => {
  const { text, quantities } = asked;
  const { volumes, strengths } = spiritSaid(asked);
  const water = quantities.find(({ unit, dimension, end }) => (unit === undefined || dimension === 'volume') && /^\s*(?:of\s+)?water\b/i.test(text.slice(end)));
  const given = quantities.find((each) => each !== water && each.dimension === 'volume');
  if (!water || !given || strengths.length !== 1 || volumes.length > 2) return undefined;
  const litres = inCore(given, 'volume20');
  const added = inCore({ ...water, unit: water.unit ?? given.unit!, dimension: 'volume' }, 'volume20');
  if (litres === undefined || added === undefined || !(litres > 0) || !(added > 0)) return undefined;
  const made = blend([
    { volume: litres20(litres), strength: strength(strengths[0]!) },
    { volume: litres20(added), strength: strength(0) },
  ]);
  return {
    says: `They make ${resultInWords(made.volume, 'volume20')} at ${resultInWords(made.strength, 'strength')}.`,
    sum: `${formatWorking(litres)} × ${formatWorking(strengths[0]!)} ÷ 100 = ${resultInWords(made.alcohol, 'alcohol')}, with ${formatWorking(added)} L of water, and the mixture shrinks a little`,
    ...BLEND,
    paths: [],
  };
}; // prettier-ignore

/** A question without its numbers: the “and” of a hundred and sixty puts nothing together. */
const besides = ({ text, quantities }: Parameters<Reckoner>[0]): string =>
  quantities.reduceRight((rest, { start, end }) => `${rest.slice(0, start)}#${rest.slice(end)}`, text);

/** Spirits put together; equal parts where the volumes are not told. */
export const spiritsTogether: Reckoner = (asked) => {
  const text = besides(asked);
  const said = spiritSaid(asked);
  const { volumes } = said;
  const isEqual = volumes.length === 0 && /equal (?:parts|volumes|amounts)/i.test(text);
  const strengths = isEqual ? asked.quantities.flatMap(({ number, dimension }) => ((dimension ?? 'percent') === 'percent' || dimension === 'strength') && number >= 1 && number <= 100 ? [number] : []) : said.strengths;
  const isHalves = volumes.length === 0 && /half and half|equal (?:parts|volumes|amounts)|fifty[\s-]fifty/i.test(text);
  if (strengths.length < 2 || (volumes.length !== strengths.length && !isHalves)) return undefined;
  if (!isHalves && (/\bbottle[sd]?\b|\bnow\b|\blater\b|\blost\b|\blose\b|\bgone\b|(?:comes?|came|went) out\b/i.test(text) || !/mix|blend|together|add|combine|vat|marr(?:y|ied)|put|plus|and|with/i.test(text))) return undefined;
  const parts = strengths.map((at, i) => ({
    volume: litres20(isHalves ? LOT / strengths.length : volumes[i]!.litres),
    strength: strength(at),
  }));
  const made = blend(parts);
  return {
    says: `${isHalves ? 'In equal parts' : volumes.length > 2 ? `Together the ${volumes.length}` : 'Together'}${isHalves || volumes.length <= 2 ? ' they' : ''} make ${resultInWords(made.volume, 'volume20', unitSaid(asked))} at ${resultInWords(made.strength, 'strength')}, with ${resultInWords(made.alcohol, 'alcohol')}.`,
    sum: `${parts.map(({ volume, strength: at }) => `${formatWorking(volume)} × ${formatWorking(at)} ÷ 100`).join(' + ')} = ${resultInWords(made.alcohol, 'alcohol')}`,
    ...BLEND,
    paths: [],
  };
}; // prettier-ignore
