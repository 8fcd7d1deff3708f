// Talks put together from ways of saying, of houses of many sizes whose figures are in keeping: to learn from, never to report on.
import { figureIds, talkFigures, type TalkFigureId } from '../../src/talk/figures.ts';
import { givenNames, spreadOf, ties, typicalOf } from '../../src/talk/ties.ts';
import { always } from './learn/first.ts';
import type { Answer, Script } from './judge.ts';
import { TUNED_ON } from './tuned-on.ts';
import { asides, ways } from './ways.ts';

/** About normally spread numbers: twelve even ones, less six. */
const spread = (random: () => number) =>
  Array.from({ length: 12 }, random).reduce((sum, each) => sum + each, 0) - 6;

const rounded = (value: number, digits: number) => Number(value.toPrecision(digits));

/** The figures of one house: what hangs together by its ties, the rest within where it is heard. */
function houseOf(random: () => number): Record<TalkFigureId, number> {
  const givens = givenNames.map((_, i) => typicalOf[i]! + spreadOf[i]! * spread(random));
  const valueOf = (id: TalkFigureId): number => {
    const tie = ties[id];
    const { heard, kind } = talkFigures[id];
    if (!tie) return heard[0] + (heard[1] - heard[0]) * random();
    const value = Math.exp(tie.powers.reduce((sum, [i, power]) => sum + power * givens[i]!, tie.factor));
    return kind === 'gravity' ? 1 + value / 1000 : Math.min(value, id === 'weeksPerYear' ? 52 : Infinity);
  };
  return Object.fromEntries(figureIds.map((id) => [id, valueOf(id)])) as Record<TalkFigureId, number>;
}

/** A value as it may be said: the words, and the value and unit of the key. */
function saidAs(id: TalkFigureId, value: number, random: () => number): Pick<Answer, 'text' | 'value' | 'unit'> {
  const { kind, unit } = talkFigures[id];
  const isBare = random() < 0.25;
  const withUnit = (number: number, name: string, of: string, digits: number) => {
    const said = rounded(number, digits);
    const written = said >= 1000 && random() < 0.7 ? said.toLocaleString('en-GB') : String(said);
    return { text: isBare && !['t', 'kg'].includes(of) ? written : `${written}${name}`, value: said, unit: of };
  };
  if (kind === 'gravity') return random() < 0.5 ? { text: value.toFixed(3), value: Number(value.toFixed(3)), unit: '' } : { text: String(Math.round(1000 * value)), value: Math.round(1000 * value), unit: '' };
  if (kind === 'mass') return value >= 1500 ? withUnit(value / 1000, ' tonnes', 't', 2) : withUnit(value, random() < 0.5 ? ' kilos' : ' kg', 'kg', 2);
  if (kind === 'strength') return withUnit(value, random() < 0.6 ? ' per cent' : '%', '% vol', 3);
  if (unit === '%') return withUnit(value, ' per cent', '%', 2);
  if (kind === 'temperature') return withUnit(value, random() < 0.5 ? ' degrees' : ' °C', '°C', 3);
  if (unit === 'cL') return withUnit(value, ' cl', 'cL', 2);
  if (kind === 'volume') return withUnit(value, ' litres', 'L', 2);
  if (kind === 'alcohol') return withUnit(value, ' litres of pure alcohol', 'L pure alcohol', 2);
  if (kind === 'yield') return { text: `${Math.round(value)} litres of pure alcohol to the tonne`, value: Math.round(value), unit: 'L pure alcohol/t' };
  if (unit === 'min') return withUnit(value, ' minutes', 'min', 2);
  if (id === 'fermentationHours' && random() < 0.2) return { text: random() < 0.5 ? 'a full week' : 'a whole week', value: 1, unit: 'weeks' };
  if (kind === 'time') return withUnit(value, unit === 'h' ? ' hours' : ` ${unit}`, unit, 2);
  if (kind === 'smoke') return withUnit(value, ' ppm', 'ppm', 2);
  if (kind === 'milling') return { text: `${rounded(value, 2)} tonnes an hour`, value: rounded(value, 2), unit: 't/h' };
  if (kind === 'ratio') return { text: `${rounded(value, 2)} litres to the kilo`, value: rounded(value, 2), unit: 'L/kg' };
  return { text: String(Math.max(1, Math.round(value))), value: Math.max(1, Math.round(value)), unit: '' };
} // prettier-ignore

const LONG = 8; // talks are of half the figures, those after of a few

/** A talk of a number; the same number gives the same talk. */
export function recombined(number: number): Script {
  const random = always(1000 + number);
  for (let i = 0; i < 9; i++) random();
  const house = houseOf(random);
  const pick = <T>(some: readonly T[]): T => some[Math.floor(random() * some.length)]!;
  const answers: Answer[] = [];
  let text = '';
  const put = (before: string, answer: Omit<Answer, 'at'>, after: string) => {
    text += before;
    answers.push({ ...answer, at: text.length });
    text += `${answer.text}${after} `;
  };
  const part = number < LONG ? 0.5 : 0.06;
  const told = figureIds.filter((id) => ways[id] && random() < part);
  for (const id of told) {
    const [before, after] = pick(ways[id]!).split('#') as [string, string];
    put(before, { ...saidAs(id, house[id], random), label: id, figure: id }, after);
    if (random() < 0.2) {
      const [lead, words, value, unit, why, end] = pick(asides);
      put(lead, { text: words, value, unit, label: `-${why}` }, end);
    }
  }
  return { name: `recombined ${number}`, author: TUNED_ON, text, answers };
}

/** The talks that are learnt from beside those that people wrote. */
export const recombinedTalks = (): Script[] => Array.from({ length: 20 }, (_, number) => recombined(number));
