// A talk told to an audience in its own units: each quantity that is taken for a figure, said anew for the same house.
import { isRefusal } from '../core/refusal.ts';
import { talkFigures, type TalkKind } from '../talk/figures.ts';
import { CERTAIN } from '../talk/match.ts';
import { quantitiesIn, type SpokenQuantity } from '../talk/quantities.ts';
import { inUnit } from '../talk/units.ts';
import type { SaidIn } from './audience-kinds.ts';
import { withArticle, type TextChange } from './changes.ts';
import { hedgeAround } from './hedges.ts';
import { sayAnew, type Audience } from './say-anew.ts';
import { sentencesOf } from './sentences.ts';
import { withItsHedge, type HouseNow, type KeptQuantity } from './stale.ts';

export type AudienceName = SaidIn;

/** The units of each audience by what they measure, and its way of writing numbers. */
const audiences: Readonly<Record<AudienceName, Pick<Audience, 'writing'> & { readonly units: Partial<Readonly<Record<TalkKind, string>>> }>> = {
  metric: { writing: 'British', units: { mass: 'kg', volume: 'L', alcohol: 'L pure alcohol', temperature: '°C', strength: '% vol' } },
  American: { writing: 'American', units: { mass: 'lb', volume: 'US gal', alcohol: 'US proof gal', temperature: '°F', strength: '° US proof' } },
  imperial: { units: { mass: 'lb', volume: 'UK gal', temperature: '°F' } },
  European: { writing: 'European', units: { mass: 'kg', volume: 'L', temperature: '°C', strength: '% vol' } },
  Japanese: { writing: 'Japanese', units: { mass: 'kg', volume: 'L', temperature: '°C', strength: '% vol' } },
}; // prettier-ignore

const ALIKE = 0.05; // part by which a second telling in their unit may differ
type ToldTwice = (place: number, core: number, unit: string, figureUnit: string) => boolean;

const determined = /(?<![a-z])(?:an?|the|our|its|their|this|that|these|those|each|every|another)\s+$/i;
/** Whether no hedge can be put before a place: “the fourteen thousand pounds”. */
const isBound = (text: string, at: number) => determined.test(text.slice(Math.max(0, at - 10), at));

/** What of a talk is said otherwise to an audience, in order; what has no unit of theirs stays. With a house, what is new is true of it. `acceptStale` in accept.ts puts it in place. */
export function toldTo(text: string, kept: readonly KeptQuantity[], name: AudienceName, house: HouseNow = () => undefined): TextChange[] {
  const { units, writing } = audiences[name];
  const sure = kept.filter(({ chance }) => chance >= CERTAIN).toSorted((a, b) => a.at - b.at);
  const sentences = sentencesOf(text);
  const sentenceAt = (place: number) => sentences.find(({ at, end }) => place >= at && place < end);
  const all = quantitiesIn(text);
  /** Whether a sentence tells the same in the unit that is wanted already, as in “27,500 litres, or 7,265 US gallons”. */
  const isToldTwice: ToldTwice = (place, core, unit, figureUnit) => {
    const { at, end } = sentenceAt(place) ?? { at: place, end: place };
    return all.some(({ start, value, unit: said }) => start >= at && start < end && said === unit && value !== undefined && Math.abs(inUnit(value, unit, figureUnit) - core) <= ALIKE * Math.abs(core));
  };
  const ofFigures = sure.flatMap((each): TextChange[] => {
    const whole = withItsHedge(text, each);
    const { kind, unit: figureUnit } = talkFigures[each.figure];
    const unit = units[kind];
    const isAsked = unit !== undefined && unit !== whole?.manner.meant.unit && !(isMetric(unit) && isMetric(whole?.manner.meant.unit)); // prettier-ignore
    if (!whole || (isAsked && isToldTwice(each.at, each.value, unit, figureUnit))) return [];
    const audience = { figureUnit, isBound: isBound(text, whole.at), ...(writing ? { writing } : {}), ...(isAsked ? { unit } : {}) };
    const now = house(each.figure);
    const anew = sayAnew(whole.stood, each.value, isAsked && now?.isKnown ? now.value : each.value, audience);
    if (isRefusal(anew) || anew.words === whole.stood) return [];
    return [withArticle(text, { at: whole.at, stood: whole.stood, anew: anew.words })];
  });
  const others = isMetric(units.volume) ? [] : otherwiseIn(text, all, kept, name, isToldTwice);
  return [...ofFigures, ...others].toSorted((a, b) => a.at - b.at);
} // prettier-ignore

/** What a quantity that is no figure of the house is said in, by its unit as said: a unit that can be nothing else. */
const plainUnits: Readonly<Record<string, readonly [TalkKind, string]>> = {
  L: ['volume', 'L'],
  hL: ['volume', 'L'],
  'L pure alcohol': ['alcohol', 'L pure alcohol'],
  kg: ['mass', 'kg'],
  t: ['mass', 'kg'],
  '°C': ['temperature', '°C'],
};

/** Litres, kilograms and degrees Celsius of anything, said in the units of those who come: for that it need be no figure of the house. */
function otherwiseIn(text: string, all: readonly SpokenQuantity[], kept: readonly KeptQuantity[], name: AudienceName, isToldTwice: ToldTwice): TextChange[] {
  const { units, writing } = audiences[name];
  return all.flatMap(({ start, end, value, unit: said, dimension, degrees }): TextChange[] => {
    const [kind, figureUnit] = plainUnits[said === 'L' && dimension === 'alcohol' ? 'L pure alcohol' : said] ?? [];
    const unit = kind && dimension === kind ? units[kind] : undefined;
    const isKept = kept.some(({ at, words }) => at < end && start < at + words.length);
    if (!unit || !figureUnit || isKept || degrees || value === undefined) return [];
    const hedge = hedgeAround(text, start, end, kind === 'temperature');
    const at = start - hedge.before;
    const stood = text.slice(at, end + hedge.after);
    const core = inUnit(value, said, figureUnit);
    const anew = sayAnew(stood, core, core, { figureUnit, unit, isBound: isBound(text, at), ...(writing ? { writing } : {}) });
    return isRefusal(anew) || isToldTwice(start, core, unit, figureUnit) ? [] : [withArticle(text, { at, stood, anew: anew.words })];
  });
} // prettier-ignore

/** Units that stay with a metric audience: tonnes and hectolitres as well as kilograms and litres, and what has no unit said. */
const isMetric = (unit = '') =>
  ['', 'kg', 't', 'g', 'L', 'hL', 'cL', 'mL', 'm³', '°C', '°', '%', '% vol'].includes(unit);
