// A talk told to an audience in its own units: each quantity that is taken for a figure, said anew for the same house.
import { isRefusal } from '../core/refusal.ts';
import { talkFigures, type TalkKind } from '../talk/figures.ts';
import { CERTAIN } from '../talk/match.ts';
import type { SaidIn } from './audience-kinds.ts';
import { withArticle, type Change } from './changes.ts';
import { sayAnew, type Audience } from './say-anew.ts';
import { sentencesOf } from './sentences.ts';
import { wholeOf, type Kept } from './stale.ts';

export type AudienceName = SaidIn;

/** The units of each audience by what they measure, and its way of writing numbers. */
const audiences: Readonly<Record<AudienceName, Pick<Audience, 'writing'> & { readonly units: Partial<Readonly<Record<TalkKind, string>>> }>> = {
  metric: { writing: 'British', units: { mass: 'kg', volume: 'L', alcohol: 'L pure alcohol', temperature: '°C', strength: '% vol' } },
  American: { writing: 'American', units: { mass: 'lb', volume: 'US gal', alcohol: 'US proof gal', temperature: '°F', strength: '° US proof' } },
  imperial: { units: { mass: 'lb', volume: 'UK gal', temperature: '°F' } },
  European: { writing: 'European', units: { mass: 'kg', volume: 'L', temperature: '°C', strength: '% vol' } },
  Japanese: { writing: 'Japanese', units: { mass: 'kg', volume: 'L', temperature: '°C', strength: '% vol' } },
}; // prettier-ignore

/** What of a talk is said otherwise to an audience, in order; what has no unit of theirs stays. `accept` in accept.ts puts it in place. */
export function toldTo(text: string, kept: readonly Kept[], name: AudienceName): Change[] {
  const { units, writing } = audiences[name];
  const sure = kept.filter(({ chance }) => chance >= CERTAIN).toSorted((a, b) => a.at - b.at);
  const sentences = sentencesOf(text);
  /** Whether the same figure is told in the same sentence in the unit that is wanted already, as in “27,500 litres, or 7,265 US gallons”. */
  const isToldTwice = ({ at, figure }: Kept, unit: string) => {
    const { at: from, end } = sentences.find((each) => at >= each.at && at < each.end) ?? { at, end: at };
    const others = sure.filter(
      (other) => other.figure === figure && other.at !== at && other.at >= from && other.at < end,
    );
    return others.some((other) => wholeOf(text, other)?.manner.meant.unit === unit);
  };
  return sure.flatMap((each): Change[] => {
    const whole = wholeOf(text, each);
    const { kind, unit: figureUnit } = talkFigures[each.figure];
    const unit = units[kind];
    const isAsked = unit !== undefined && unit !== whole?.manner.meant.unit && !(isMetric(unit) && isMetric(whole?.manner.meant.unit)); // prettier-ignore
    const audience = { figureUnit, ...(writing ? { writing } : {}), ...(isAsked ? { unit } : {}) };
    const anew = whole && sayAnew(whole.stood, each.value, each.value, audience);
    if (isAsked && isToldTwice(each, unit)) return [];
    if (!whole || !anew || isRefusal(anew) || anew.words === whole.stood) return [];
    return [withArticle(text, { at: whole.at, stood: whole.stood, anew: anew.words })];
  });
}

/** Units that stay with a metric audience: tonnes and hectolitres as well as kilograms and litres, and what has no unit said. */
const isMetric = (unit = '') =>
  ['', 'kg', 't', 'g', 'L', 'hL', 'cL', 'mL', 'm³', '°C', '°', '%', '% vol'].includes(unit);
