// At what heat spirit or wash boils, and how strong the vapour over it is: of a strength that is told, or of a liquid of the house.
import { format } from '../core/format.ts';
import { strength } from '../core/quantity.ts';
import { massPercentFromMoleFraction, moleFractionFromMassPercent } from '../core/spirit/amounts.ts';
import { massPercentFromStrength, strengthFromMassPercent } from '../core/spirit/strength.ts';
import { vapourOver } from '../core/vapour/equilibrium.ts';
import { resultInWords, type Reckoner } from './reckoned.ts';
import { spiritSaid } from './spirit-said.ts';

const BOILS = /\bboil(?:s|ing)?(?:\s+(?:point|at|temperature|temp))?\b/i;
const ASKS =
  /boiling (?:point|temp)|\b(?:what|which) (?:temp(?:erature)?|heat|degrees?)\b|\bhow hot\b|\bwhen does\b|\bat what\b/i;
const VAPOUR = /vapour|vapor|steam/i;
const SUM =
  /\bheat (?:to|for|needed)|how much (?:heat|energy|gas|steam)|\bkwh\b|altitude|mountain|vacuum|pressure/i;

/** The boiling point of a liquid, and of what comes off it. */
export const boils: Reckoner = (asked) => {
  const { text } = asked;
  const { volumes, strengths, named } = spiritSaid(asked);
  const isBoiling = BOILS.test(text) && ASKS.test(text);
  const isVapour = VAPOUR.test(text) && /how strong|what strength|abv/i.test(text) && strengths.length === 1;
  if (!(isBoiling || isVapour) || SUM.test(text) || volumes.length > 0 || strengths.length > 2) return undefined;
  const isPure = /\bpure (?:ethanol|alcohol)\b|\bethanol\b/i.test(text);
  const all = [...strengths.filter((each) => each < 97), ...(strengths.length === 0 && named ? [named.at] : [])];
  const [at] = all;
  if (at === undefined || asked.quantities.some(({ dimension }) => dimension === 'temperature')) return undefined;
  const { temperature, vapour } = vapourOver(moleFractionFromMassPercent(massPercentFromStrength(strength(at))));
  const over = strengthFromMassPercent(massPercentFromMoleFraction(vapour));
  return {
    says: `At ${resultInWords(at, 'strength')} it begins to boil at about ${format(temperature, 'temperature')}, rising towards 100 as the alcohol leaves; the first vapour over it is at about ${format(over, 'strength', 0)}.${isPure ? ' Pure alcohol boils at 78.3 °C.' : ''}`,
    sum: 'By the vapour pressures of ethanol and water at 101.3 kPa',
    at: 'distilling/#vapour-is-stronger-than-liquid',
    place: 'Vapour is stronger than liquid',
    paths: strengths.length === 0 && named ? [named.path] : [],
  };
}; // prettier-ignore
