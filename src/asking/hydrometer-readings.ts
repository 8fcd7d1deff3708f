// A strength read on a hydrometer at a temperature that is not its own, corrected as the calculator does.
import { formatNumber } from '../core/format.ts';
import { celsius, strength } from '../core/quantity.ts';
import { densityAtMark } from '../core/spirit/hydrometer.ts';
import { densityFromStrength, strengthFromDensity } from '../core/spirit/strength.ts';
import { inCore, resultInWords, type Reckoner } from './reckoned.ts';

const TWENTY = celsius(20);
const READINGS = [20, 95] as const; // % vol on the glass that are corrected here
const COLDEST = -10;
const WARMEST = 40; // °C; the calculator’s own range

/** The true strength of a reading and a temperature. */
export const onTheGlass: Reckoner = ({ text, quantities: all }) => {
  // “… true strength at 20?” names the temperature of the book.
  const quantities = all.filter(({ number, start }) => !(number === TWENTY && /(?:true|strength|real|abv)[^,.?]{0,16}\bat\s*$/i.test(text.slice(0, start))));
  if (!/hydrometer|\bfloat|\bglass\b|\bread(?:s|ing)?\b|alcoholmeter/i.test(text) || !/true|real|correct|actual|strength|strenght|mean|abv/i.test(text)) return undefined;
  const warm = quantities.find((each) => each.dimension === 'temperature' || (each.unit === undefined && /^\s*(?:cel[cs]iu?s|centigrade|c\b|degrees)/i.test(text.slice(each.end))) || (each.unit === undefined && /\b(?:thermometer|temperature|temp)\s+(?:(?:is|at|says?|shows?|reads?|of|on)\s+)*$/i.test(text.slice(0, each.start))));
  const read = quantities.find((each) => each !== warm && (each.unit === undefined || each.unit === '% vol' || each.dimension === 'percent') && each.number >= READINGS[0] && each.number <= READINGS[1]);
  if (!warm || !read || quantities.length !== 2) return undefined;
  const at = warm.unit === '°F' ? inCore(warm, 'temperature')! : warm.number;
  if (at < COLDEST || at > WARMEST) return undefined;
  const mark = densityFromStrength(strength(read.number), TWENTY);
  const real = strengthFromDensity(densityAtMark(mark, celsius(at)), celsius(at));
  return {
    says: `A glass marked for 20 °C that reads ${resultInWords(read.number, 'strength')} at ${formatNumber(at, 1)} °C floats in spirit of ${formatNumber(real, 1)} % vol: ${at < TWENTY ? 'cold spirit is denser and reads weak' : 'warm spirit is lighter and reads strong'}.`,
    sum: `${formatNumber(Math.abs(real - read.number), 1)} % vol for ${formatNumber(Math.abs(at - TWENTY), 1)} °C, by the tables of OIML R 22`,
    at: 'sums/hydrometer-in-the-safe/',
    place: 'Hydrometer and thermometer',
    paths: [],
  };
}; // prettier-ignore
