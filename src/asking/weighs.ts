// What so much spirit weighs, and how dense it is at a strength.
import { formatNumber } from '../core/format.ts';
import { celsius, strength } from '../core/quantity.ts';
import { densityFromStrength } from '../core/spirit/strength.ts';
import { resultInWords, unitOfName, type Reckoner } from './reckoned.ts';
import { temperaturesIn, isWithinRange } from './sum-kit.ts';
import { spiritSaid } from './spirit-said.ts';

const RANGE = [-10, 40] as const; // °C of the tables

/** Mass and density of spirit, at 20 °C or at a temperature that is told. */
export const weighs: Reckoner = (asked) => {
  const { text, quantities, wanted } = asked;
  if (!/\bweigh|\bweight\b(?! (?:of )?alcohol)|\bheavy\b|\bdensity\b|how dense|\bmass\b/i.test(text) || /\bby (?:weight|mass)\b|mass balance|\bw\/w\b|cask|barrel|hogshead|\bbutt\b|bottle|grams? of alcohol/i.test(text)) return undefined;
  // Wash holds more than alcohol and water.
  if (/\bwash\b|\bwort\b|\bbeer\b/i.test(text)) return undefined;
  const { volumes, strengths, named } = spiritSaid(asked);
  const bare = quantities.find(({ unit, number }) => unit === undefined && number >= 5 && number <= 97)?.number;
  const at = strengths[0] ?? named?.at ?? bare;
  if (at === undefined || strengths.length > 1 || volumes.length > 1) return undefined;
  const warm = temperaturesIn(asked).find((each) => isWithinRange(RANGE, each) && each !== at) ?? 20;
  const density = densityFromStrength(strength(at), celsius(warm));
  const litres = volumes[0]?.litres ?? 1;
  const unit = wanted?.dimension === 'mass' ? unitOfName('mass', wanted.unit) : undefined;
  return {
    says: `${volumes[0]?.said ?? 'A litre'} at ${resultInWords(at, 'strength')} weighs about ${resultInWords((litres * density) / 1000, 'mass', unit)} at ${formatNumber(warm, 0)} °C; its density is ${formatNumber(density, 1)} kg/m³, and water’s 998.2 at 20 °C.`,
    sum: `${formatNumber(litres, litres % 1 === 0 ? 0 : 2)} L × ${formatNumber(density / 1000, 4)} kg, by the tables of OIML R 22`,
    at: 'sums/strength-from-density/',
    place: 'Strength from density',
    paths: strengths.length === 0 && named ? [named.path] : [],
  };
}; // prettier-ignore
