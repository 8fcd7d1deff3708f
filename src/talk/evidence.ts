// What a talk shows of each quantity before any is taken for a figure: what it is said in, how large it is, and which words stand where about it.
import { stages } from '../core/figures/index.ts';
import { wordsAround } from './around.ts';
import { surroundings } from './nearby.ts';
import type { SpokenQuantity } from './quantities.ts';
import { manners, sumsAloudIn } from './sums-aloud.ts';
import { signNamed, type Show } from './signs.ts';
import { hats, knotsOf } from './sizes.ts';
import { topics } from './stages.ts';
import { unitsBefore, type UnitsBefore } from './units-before.ts';
import { inUnit } from './units.ts';
import { whose } from './whose.ts';
import { mentionsIn } from './words.ts';

/** Signs, by number, each with how strongly it shows; one that shows more than once counts as often. */
export interface Evidence {
  readonly signs: readonly number[];
  readonly strengths: readonly number[];
}

/** What takes a figure back at once. */
const takenBack =
  /^[^a-z]{0,4}\s*(?:no\b|wait|sorry|I (?:lie|mean|tell)|well\b|it doesn['’]t|is it|what am)/i;

/** How large a quantity is, by what it may be a measure of. */
function sizesOf({ dimension, unit, value, range, degrees }: SpokenQuantity, before: UnitsBefore, show: Show): void {
  const said = value ?? (range![0] + range![1]) / 2;
  const put = (what: keyof typeof knotsOf, at: number) =>
    hats(knotsOf[what], at, (knot, part) => show(signNamed(`${what} ${knot}`), part));
  const bare = dimension === 'bare';
  if (dimension === 'percent' || dimension === 'strength') put('strength', inUnit(said, unit, '% vol'));
  if (dimension === 'share') put('strength', 100 * said);
  if (bare && said > 0 && said <= 200) put('bareStrength', inUnit(said, before.strength, '% vol'));
  if (bare && said > 0 && said <= 215) put('bareHeat', inUnit(said, before.temperature, '°C'));
  if (dimension === 'temperature' && !degrees) put('heat', inUnit(said, unit, '°C'));
  if (degrees) put('degrees', inUnit(said, unit, '°C'));
  if (dimension === 'gravity') put('gravity', inUnit(said, unit, 'gravity'));
  if (bare) put('bareGravity', inUnit(said, '', 'gravity'));
  if (bare && before.extract && said > 0 && said < 30) put('bareExtract', inUnit(said, before.extract, 'gravity'));
  if (dimension === 'time') put('hours', Math.log10(Math.max(1e-3, inUnit(said, unit, 'h'))));
  if (dimension === 'mass') put('mass', Math.log10(Math.max(1e-3, inUnit(said, unit, 'kg'))));
  if (dimension === 'volume' || dimension === 'alcohol') put('volume', Math.log10(Math.max(1e-3, inUnit(said, unit, 'L'))));
  if (bare || ['casks', 'bottles', 'mashes', 'times', 'stills', 'washbacks'].includes(dimension)) put('count', Math.log10(Math.max(1e-3, said)));
} // prettier-ignore

/** Whether two tell the same, as it is said. */
const isSame = (a: SpokenQuantity, b: SpokenQuantity): boolean =>
  a.value !== undefined && a.value === b.value && (a.unit === b.unit || a.dimension === 'bare' || b.dimension === 'bare') && a.value > 12; // prettier-ignore

const FEW_WEEKS = 2; // up to which something lasts so long, like so many days: a wash stands a full week

/** The evidence of every quantity of a text, in order. */
export function evidenceIn(text: string, quantities: readonly SpokenQuantity[]): Evidence[] {
  const mentions = mentionsIn(text);
  const topicAt = topics(mentions);
  const nearTo = surroundings(text, mentions, quantities);
  const around = wordsAround(text, quantities);
  const ofWhom = whose(text);
  const before = unitsBefore(text, quantities);
  const aloud = sumsAloudIn(quantities);
  return quantities.map((quantity, i) => {
    const { start, end, dimension, unit, value, fall, approximate, range, degrees } = quantity;
    const [signs, strengths]: [number[], number[]] = [[], []];
    const put: Show = (sign, strength) => {
      signs.push(sign);
      strengths.push(strength);
    };
    const show = (name: string, strength = 1) => put(signNamed(name), strength);
    show('any');
    show(`is ${dimension}`);
    if (unit !== '') show(`in ${unit === 'weeks' && value !== undefined && value <= FEW_WEEKS ? 'days' : unit}`); // prettier-ignore
    if (degrees) show('degrees');
    if (fall) show(`fall ${fall}`);
    if (approximate) show('about');
    if (range) show('range');
    if (/^[01][.,]\d{3}$/.test(text.slice(start, end))) show('written as a gravity');
    if (dimension === 'bare') {
      show(`${before[i]!.last} before`);
      show(Number.isInteger(quantity.value) ? 'whole' : 'broken');
    }
    const [last, next] = [quantities[i - 1], quantities[i + 1]];
    if (last && start - last.end < 30) show(`behind ${last.dimension}`);
    if (next && next.start - end < 30) show(`ahead of ${next.dimension}`);
    show(`place ${Math.min(3, Math.floor((4 * start) / (text.length + 1)))}`);
    const topic = topicAt(start);
    for (const stage of stages) if (topic[stage] > 0.1) show(`topic ${stage}`, topic[stage]);
    if (takenBack.test(text.slice(end, end + 24))) show('taken back');
    if (/\?/.test(text.slice(end, end + 3))) show('asked');
    for (const manner of manners) {
      const { result, part } = aloud[i]!;
      if (result[manner]) show(`comes of ${manner}`, result[manner]);
      if (part[manner]) show(`goes into ${manner}`, part[manner]);
    }
    nearTo(i, put);
    around(i, put);
    ofWhom(start, put);
    if (quantities.some((other, k) => k < i && isSame(other, quantity))) show('said before');
    if (quantities.some((other, k) => k > i && isSame(other, quantity))) show('said later');
    sizesOf(quantity, before[i]!, put);
    return { signs, strengths };
  });
}
