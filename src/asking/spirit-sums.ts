// Sums of spirit with numbers of the asker’s own: pure alcohol, letting down, blending, strength from two gravities.
import { format, formatNumber, formatWorking } from '../core/format.ts';
import { gravity, litres20, strength } from '../core/quantity.ts';
import { blend, reduce } from '../core/spirit/mixing.ts';
import { strengthFromGravities } from '../core/wort/attenuation.ts';
import { asGiven, inCore, strengthsIn, told, unitNamed, type Reckoner } from './reckoned.ts';

const PURE = { at: 'strength-and-volume/#the-litre-of-pure-alcohol', place: 'The litre of pure alcohol' };
const LET_DOWN = { at: 'sums/reduce-to-strength/', place: 'Let spirit down to a strength' };
const BRITISH_UNIT = 0.01; // L of pure alcohol; UK Chief Medical Officers’ guidelines 2016

/** Litres of pure alcohol in so much at such a strength; in British units of drink where those are asked for. */
export const pureAlcohol: Reckoner = ({ text, quantities, wanted }) => {
  const volumes = quantities.filter(({ dimension }) => dimension === 'volume');
  const strengths = strengthsIn(quantities);
  const bottle = /\b(?:bottle|cask|barrel|hogshead|butt)s?\b/i.test(text);
  if (volumes.length !== 1 || strengths.length !== 1 || quantities.length > 3 || (bottle && quantities.length < 2)) return undefined; // prettier-ignore
  const [given] = volumes;
  const isUnits = /\bunits?\b/i.test(text);
  const isAlcohol =
    /alcohol|lpa|laa|proof gal|units?\b|ethanol|booze/i.test(text) || wanted?.dimension === 'alcohol';
  if (!isAlcohol) return undefined;
  const volume = inCore(given!, 'volume20');
  if (volume === undefined || !(volume > 0)) return undefined;
  const [at] = strengths as readonly [number];
  const alcohol = (volume * at) / 100;
  const sum = `${told(volume, 'volume20')} × ${formatWorking(at)} ÷ 100 = ${told(alcohol, 'alcohol')}`;
  if (isUnits)
    return { says: `${asGiven(given!)} at ${told(at, 'strength')} is ${formatNumber(alcohol / BRITISH_UNIT, 1)} British units; what is wise to drink is for medical advice, and what is lawful for local law.`, sum: `${sum}; a unit is 10 mL`, at: 'safety/visitors/', place: 'Safety: with visitors', paths: [] }; // prettier-ignore
  const unit = wanted?.dimension === 'alcohol' ? unitNamed('alcohol', wanted.unit) : undefined;
  return { says: `${asGiven(given!)} at ${told(at, 'strength')} hold ${told(alcohol, 'alcohol', unit)}.`, sum, ...PURE, paths: [] }; // prettier-ignore
};

/** The water that brings so much spirit from one strength to another. */
export const letDown: Reckoner = ({ text, quantities, wanted }) => {
  const named = strengthsIn(quantities);
  const bare = quantities.flatMap(({ unit, number }) =>
    unit === undefined && number > 0 && number < 100 ? [number] : [],
  );
  const strengths = named.length === 0 ? [] : [...named, ...bare];
  const [given] = quantities.filter(({ dimension }) => dimension === 'volume');
  if (!given || strengths.length !== 2 || !/water|dilut|reduc|let(?:ting)? (?:it )?down|bring|cut|proof down|down to/i.test(text)) return undefined; // prettier-ignore
  const volume = inCore(given, 'volume20');
  const [high, low] = [Math.max(...strengths), Math.min(...strengths)];
  if (volume === undefined || !(volume > 0) || high === low) return undefined;
  const made = reduce({ volume: litres20(volume), strength: strength(high) }, strength(low));
  const unit = wanted?.dimension === 'volume' ? unitNamed('volume20', wanted.unit) : undefined;
  return {
    says: `${told(made.waterVolume, 'volume20', unit)} of water bring ${asGiven(given)} from ${told(high, 'strength')} to ${told(low, 'strength')}, and make ${told(made.volume, 'volume20', unit)}.`,
    sum: `${told(volume, 'volume20')} and ${told(made.waterVolume, 'volume20')} shrink by ${told(made.contraction, 'volume20')} as they mix`,
    ...LET_DOWN,
    paths: [],
  };
};

/** Two spirits put together. */
export const together: Reckoner = ({ text, quantities }) => {
  const volumes = quantities.filter(({ dimension }) => dimension === 'volume');
  const strengths = strengthsIn(quantities);
  if (volumes.length !== 2 || strengths.length !== 2 || !/mix|blend|together|add|combine|vat|put|plus|and/i.test(text)) return undefined; // prettier-ignore
  const parts = volumes.map((each, i) => ({
    volume: litres20(inCore(each, 'volume20') ?? 0),
    strength: strength(strengths[i]!),
  }));
  if (parts.some(({ volume }) => !(volume > 0))) return undefined;
  const made = blend(parts);
  return {
    says: `Together they make ${told(made.volume, 'volume20')} at ${told(made.strength, 'strength')}, with ${told(made.alcohol, 'alcohol')}.`,
    sum: `${parts.map(({ volume, strength }) => `${formatWorking(volume)} × ${formatWorking(strength)} ÷ 100`).join(' + ')} = ${told(made.alcohol, 'alcohol')}`,
    at: 'sums/blend-two-spirits/',
    place: 'Two spirits together',
    paths: [],
  };
};

/** Strength of a wash from the gravities before and after. */
export const fromGravities: Reckoner = ({ text, quantities }) => {
  const gravities = quantities.flatMap(({ number, unit }) => {
    if (unit !== undefined && unit !== '° gravity') return [];
    const value = number > 900 && number < 1200 ? number / 1000 : number;
    return value >= 0.98 && value <= 1.15 ? [value] : [];
  });
  if (gravities.length !== 2 || !/strength|strong|abv|alcohol|per ?cent|%|wash|ferment|gravit|\bog\b|\bfg\b/i.test(text)) return undefined; // prettier-ignore
  const [from, to] = [Math.max(...gravities), Math.min(...gravities)];
  if (from === to) return undefined;
  const strong = strengthFromGravities({ original: gravity(from), final: gravity(to) });
  return {
    says: `A wash that falls from ${from.toFixed(3)} to ${to.toFixed(3)} is at about ${format(strong, 'strength')}.`,
    sum: 'By Balling: 2.0665 g of extract make 1 g of alcohol, 0.9565 g of carbon dioxide and 0.11 g of yeast.',
    at: 'sums/strength-from-gravities/',
    place: 'Strength of the wash from its gravities',
    paths: [],
  };
};
