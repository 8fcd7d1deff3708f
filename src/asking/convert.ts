// One quantity in another unit: gallons, pounds, proof, Plato, Fahrenheit.
import { formatWorking } from '../core/format.ts';
import { unitsRead } from '../core/units.ts';
import {
  asGiven,
  inCore,
  kindOfDimension,
  resultInWords,
  unitOfName,
  type Reckoned,
  type Reckoner,
} from './reckoned.ts';
import type { AskedQuantity } from './quantities.ts';
import { namedCask } from './spirit-said.ts';

const UNITS = { at: 'using/marks/#units', place: 'Using this book: units' };
const PROOF = { at: 'strength-and-volume/proof/#two-kinds-of-proof', place: 'Two kinds of proof' };
const PLATO = { at: 'mashing/#how-much-extract-the-wort-holds', place: 'How much extract the wort holds' };
const GRAVITIES = [0.98, 1.15] as const; // that the sugar table can be followed between; NBS Circular C440

/** A bare number, or one in thousandths, that can only be a gravity. */
function asGravity({ number, unit }: AskedQuantity): number | undefined {
  if (unit !== undefined && unit !== '° gravity') return undefined;
  const value =
    unit === '° gravity' ? 1 + number / 1000 : number > 900 && number < 1200 ? number / 1000 : number;
  return value >= GRAVITIES[0] && value <= GRAVITIES[1] && value !== 1 ? value : undefined;
}

const isBothProofs = (unit: string) => unit.includes('proof') && !unit.includes('gal');

/** A strength in both kinds of proof, or a proof in % vol. */
function proofs(strength: number, given: string): Reckoned {
  const [us, uk] = ['° US proof', '° former UK proof'].map((name) => resultInWords(strength, 'strength', unitOfName('strength', name)));
  return {
    says: `${given} is ${us}, or ${uk}.`,
    sum: 'US proof is twice the % vol at 60 °F; former British proof is about seven quarters of it.',
    ...PROOF,
    paths: [],
  };
} // prettier-ignore

const OLD_PROOF = 1.7535; // ° former British proof to a % vol at proof strength of 57.06 %, tables of 1952, from memory

/** “42.8 % and 75 degrees”: one strength on two scales. */
export const twoScales: Reckoner = ({ text, quantities }) => {
  const [percent, degrees] = [quantities.find(({ dimension }) => dimension === 'percent' || dimension === 'strength'), quantities.find((each) => each.unit === '°' || each.unit?.includes('proof') || /^\s*(?:degrees?|°|proof)/i.test(text.slice(each.end)))];
  if (!percent || !degrees || percent === degrees || quantities.length !== 2 || !(percent.number > 0)) return undefined;
  const ratio = degrees.number / percent.number;
  const [isBritish, isAmerican] = [Math.abs(ratio / OLD_PROOF - 1) < 0.015, Math.abs(ratio / 2 - 1) < 0.01];
  if (!isBritish && !isAmerican) return undefined;
  return {
    says: `One strength on two scales: ${resultInWords(percent.number, 'strength')} is ${formatWorking(degrees.number)}° of ${isBritish ? 'the former British proof, still written in some countries, where proof was about 57.1 % vol' : 'American proof, which is twice the per cent'}.`,
    sum: isBritish ? `${formatWorking(degrees.number)} × 0.571 = ${formatWorking(Number((degrees.number * 0.571).toPrecision(3)))}` : `${formatWorking(degrees.number)} ÷ 2`,
    ...PROOF,
    paths: [],
  };
}; // prettier-ignore

/** A quantity in the unit that is wanted. */
export const convert: Reckoner = ({ text, quantities, wanted, country }) => {
  const found = quantities.find(({ unit }) => unit?.includes('proof')) ?? quantities[0];
  // Degrees that are not named are those of the other scale.
  const isBare = found && (found.unit === '°' || (found.unit === undefined && found.number > -50 && found.number < 300)); // prettier-ignore
  const given = found && isBare && wanted?.dimension === 'temperature' && !/\d\s*or (?:more|less)\b/i.test(text) ? { ...found, dimension: 'temperature' as const, unit: wanted.unit === '°F' ? '°C' : '°F' } : found; // prettier-ignore
  const isPair = quantities.length === 2 && quantities.some(({ unit }) => unit === '%') && quantities.some(({ unit }) => unit?.includes('proof')); // prettier-ignore
  if (!given || (quantities.length !== 1 && !isPair) || /\bmeans?\b|\bstands? for\b/i.test(text))
    return undefined;
  const gravity = asGravity(given);
  if (
    gravity !== undefined &&
    (wanted?.unit === '°P' || wanted?.unit === '° Brix' || /plato|brix/i.test(text))
  ) {
    const units = [/plato/i.test(text) ? '°P' : [], /brix/i.test(text) ? '° Brix' : []].flat();
    const results = (units.length === 0 ? ['°P'] : units).map((name) =>
      resultInWords(gravity, 'gravity', unitOfName('gravity', name)),
    );
    return { says: `A gravity of ${gravity.toFixed(3)} is ${results.join(', or ')}.`, sum: 'From the sugar tables: grams of extract in 100 g of wort.', ...PLATO, paths: [] }; // prettier-ignore
  }
  const isBareProof = given.unit === undefined && quantities.length === 1 && /\bin(?:to)? .{0,12}proof\b/i.test(text) && given.number <= 100; // prettier-ignore
  if ((given.dimension === 'percent' || isBareProof) && (/\bproof\b/i.test(text) || wanted?.dimension === 'strength'))
    return given.number >= 0 && given.number <= 100 ? proofs(given.number, `${resultInWords(given.number, 'strength')}`) : undefined; // prettier-ignore
  const kind = given.dimension && kindOfDimension[given.dimension];
  if (!kind || !given.unit) return undefined;
  const value = inCore(given, kind);
  if (value === undefined || !Number.isFinite(value)) return undefined;
  if (kind === 'strength' && wanted === undefined && !isBothProofs(given.unit) && !/\bproof\b/i.test(text))
    return undefined;
  if (kind === 'strength') {
    if (value < 0 || value > 100) return undefined;
    if (!isBothProofs(given.unit)) return proofs(value, asGiven(given));
    return { says: `${asGiven(given)} is ${resultInWords(value, 'strength')}.${country ? '' : otherProof(given)}`, sum: 'US proof is twice the % vol at 60 °F; former British proof is about seven quarters of it.', ...PROOF, paths: [] }; // prettier-ignore
  }
  // A ton that is not said to be of a country is either.
  if (
    given.unit === 't' &&
    wanted?.dimension === 'mass' &&
    /\btons?\s*$/i.test(text.slice(given.start, given.end))
  ) {
    const unit = unitOfName('mass', wanted.unit)!;
    const [uk, us] = ['UK tons', 'US tons'].map((name) =>
      resultInWords(unitOfName('mass', name)!.toCore(given.number), 'mass', unit),
    );
    return {
      says: `${formatWorking(given.number)} British tons are ${uk!}, and American ones ${us!}; where nobody says which, a tonne is mostly meant today.`,
      sum: 'A British ton is 2,240 lb, an American one 2,000 lb.',
      ...UNITS,
      paths: [],
    };
  }
  if (!wanted || wanted.dimension !== given.dimension || wanted.unit === given.unit) return undefined;
  const unit = unitOfName(kind, wanted.unit);
  if (!unit) return undefined;
  const place = kind === 'gravity' ? PLATO : UNITS;
  const other = given.or && unitOfName(kind, given.or);
  if (other) {
    const also = { ...given, unit: given.or! };
    return { says: `${asGiven(given)} is ${resultInWords(value, kind, unit)}; ${asGiven(also)} is ${resultInWords(other.toCore(given.number), kind, unit)}.`, ...sumOf(given, kind, unit), ...place, paths: [] }; // prettier-ignore
  }
  const isBoth = wanted.unit.endsWith(' gal') && country === undefined && kind === 'volume20';
  const result = isBoth
    ? `${resultInWords(value, kind, unitOfName(kind, 'UK gal'))}, or ${resultInWords(value, kind, unitOfName(kind, 'US gal'))}`
    : resultInWords(value, kind, unit);
  return { says: `${asGiven(given)} is ${result}.`, ...sumOf(given, kind, unit), ...place, paths: [] };
};

/** What a proof would be on the other scale, where no country was named. */
function otherProof({ number, unit }: AskedQuantity): string {
  if (unit !== '° US proof') return '';
  const other = unitOfName('strength', '° former UK proof')!.toCore(number);
  return other >= 0 && other <= 100 && number <= 175 ? ` On the former British scale it would be ${resultInWords(other, 'strength')}.` : ''; // prettier-ignore
}

/** The factor between two units that are mere multiples. */
function sumOf(
  given: AskedQuantity,
  kind: Parameters<typeof unitsRead>[0],
  to: NonNullable<ReturnType<typeof unitOfName>>,
) {
  const from = unitOfName(kind, given.unit!)!;
  if (from.toCore(0) !== 0 || to.fromCore(0) !== 0 || kind === 'gravity') return {};
  const factor = to.fromCore(from.toCore(1));
  const one = factor >= 1 ? `1 ${given.unit} is ${formatWorking(Number(factor.toPrecision(6)))} ${to.unit}` : `1 ${to.unit} is ${formatWorking(Number((1 / factor).toPrecision(6)))} ${given.unit}`; // prettier-ignore
  return { sum: `${one}.` };
}

/** A cask that is named, in a unit: “hogshead in US gallons”. */
export const ofCask: Reckoner = (asked) => {
  const { wanted, country, text } = asked;
  const cask = namedCask(asked);
  if (!cask || wanted?.dimension !== 'volume' || asked.quantities.length > 1 || /\byears?\b|left|lose|lost|wash|malt|barley/i.test(text)) return undefined; // prettier-ignore
  const unit = unitOfName('volume20', wanted.unit);
  if (!unit) return undefined;
  const isBoth = wanted.unit.endsWith(' gal') && country === undefined;
  const result = isBoth
    ? `${resultInWords(cask.litres, 'volume20', unitOfName('volume20', 'UK gal'))}, or ${resultInWords(cask.litres, 'volume20', unitOfName('volume20', 'US gal'))}`
    : resultInWords(cask.litres, 'volume20', unit);
  return {
    says: /^\d/.test(cask.said) ? `${cask.said} hold about ${result}.` : wanted.unit === 'L' ? `${cask.said} holds about ${result}.` : `${cask.said} of ${resultInWords(cask.litres, 'volume20')} is about ${result}.`, // prettier-ignore
    at: 'maturing/#what-the-wood-gives-and-takes',
    place: 'What the wood gives and takes',
    paths: [],
  };
};

/** So many per cent of a quantity. */
export const shareOf: Reckoner = ({ text, quantities }) => {
  const [share, whole] = quantities;
  if (!share || !whole || quantities.length !== 2 || share.dimension !== 'percent') return undefined;
  if (!/^\s*of\s+(?:a |the |about )?$/i.test(text.slice(share.end, whole.start))) return undefined;
  const part = { ...whole, number: Number(((whole.number * share.number) / 100).toPrecision(6)) };
  return { says: `${asGiven(share)} of ${asGiven(whole)} is ${asGiven(part)}.`, sum: `${formatWorking(whole.number)} × ${formatWorking(share.number)} ÷ 100`, ...UNITS, paths: [] }; // prettier-ignore
};
