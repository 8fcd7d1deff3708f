// Whom a quantity is said to: the unit that is wanted, and how numbers are written.
import { japaneseUnits } from './japanese.ts';
import type { SaidPhrase } from './phrase.ts';
import { nameOfUnit, type Conversion } from './said-units.ts';
import { britishStyle } from './spoken.ts';
import { britishMarks, europeanMarks } from './written.ts';

export interface Audience {
  /** A unit of the handbook that is wanted instead: US gal, UK gal, lb, °F, ° US proof, kg, L, hL, t, °C, % vol, … */
  readonly unit?: string;
  /** How numbers are to be written. Left out, as the guide writes them. */
  readonly writing?: 'British' | 'American' | 'European' | 'Japanese';
  /** The figure's own unit, where it is known. */
  readonly figureUnit?: string;
  /** True where no hedge can be put before it, as behind an article. */
  readonly isBound?: boolean;
}
const marksOf = {
  British: britishMarks,
  American: britishMarks,
  European: europeanMarks,
  Japanese: britishMarks,
};

/** How a number and its unit are said to an audience. */
export function toAudience({ number, unit }: SaidPhrase, to: Conversion | undefined, { writing }: Audience): SaidPhrase {
  const isWords = 'spoken' in number;
  const gap = unit.startsWith('-') ? '' : /^\s*/.exec(unit)![0] || ' ';
  const stop = /[a-z]{4}\.$/i.test(unit) ? '.' : ''; // behind a unit that is written out it ends the sentence
  let name = to ? gap + nameOfUnit(to.unit, unit, isWords) + stop : unit;
  let said = number;
  if (to && (number.as === 'behind' || number.as === 'part' || number.as === 'clocked'))
    said = { as: 'words', spoken: { ...britishStyle, style: 'halves' } };
  if (writing && said.as === 'figures') {
    const { group } = said.written.marks; // a gravity of 1058 stays without
    said = { ...said, written: { ...said.written, marks: { ...marksOf[writing], ...(group === '' ? { group } : {}) } } };
  }
  if (writing === 'Japanese' && said.as === 'figures') said = { as: 'man' };
  if (writing === 'Japanese' && /[^\x20-\x7e°]/.test(unit) && to) name = japaneseUnits[to.unit] ?? name;
  if ((writing === 'American' || writing === 'British') && 'spoken' in said)
    said = { ...said, spoken: { ...said.spoken, and: writing === 'British', ...(writing === 'American' && said.as === 'words' ? { article: false } : {}) } };
  if (writing === 'American') name = name.replace(/litre/g, 'liter');
  return { number: said, unit: name };
} // prettier-ignore
