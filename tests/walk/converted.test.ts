// A quantity said in another unit still holds of the same house, by the book's own rule and once it is heard afresh. Expectations by hand: 1 lb = 0.45359237 kg, 1 US gal = 3.785411784 L (NIST Handbook 44), US proof twice the strength (27 CFR 5.1).
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { isRefusal } from '../../src/core/refusal.ts';
import { talkFigures, type TalkFigureId } from '../../src/talk/figures.ts';
import { toldSentences } from '../../src/walk/audience-talk.ts';
import { whyMissed } from '../../src/walk/holds.ts';
import { mannerOfSaid } from '../../src/walk/manner.ts';
import { sayAnew, type Audience } from '../../src/walk/say-anew.ts';
import type { HouseNow, KeptQuantity } from '../../src/walk/stale.ts';

const kept = (text: string, words: string, figure: TalkFigureId, value: number): KeptQuantity[] => [{ at: text.indexOf(words), words, figure, value, chance: 1 }]; // prettier-ignore
const told = (text: string, all: readonly KeptQuantity[], house?: HouseNow) =>
  toldSentences(text, all, 'American', house).map(({ anew }) => anew);

test.each<[string, string, TalkFigureId, number, string | undefined]>([
  ['The first half hour goes back.', 'half hour', 'foreshotsMinutes', 30, undefined],
  ['It is milled in three quarters of an hour.', 'three quarters of an hour', 'millingTime', 0.75, undefined],
  ['It runs for an hour and a half.', 'an hour and a half', 'millingTime', 1.5, undefined],
  ['It is a bit more than twenty per cent.', 'twenty per cent', 'lowWinesStrength', 20, 'It is a bit more than forty US proof.'],
  ['We mash six and a half tonnes.', 'six and a half tonnes', 'maltPerMash', 6500, 'We mash just over fourteen thousand pounds.'], // 14,330
  ['The six and a half tonnes go in.', 'six and a half tonnes', 'maltPerMash', 6500, 'The fourteen thousand two hundred fifty pounds go in.'], // 0.6 % below, and no hedge can stand there
  ['A 1,500-litre still.', '1,500-litre', 'washStillCharge', 1500, 'A 400-US gallon still.'], // 396.26, 0.9 % below
])('%s', (text, words, figure, value, wanted) => {
  expect(told(text, kept(text, words, figure, value))).toEqual(wanted === undefined ? [] : [wanted]);
}); // prettier-ignore

test('of a house that has another figure the new words are true', () => {
  const text = 'It is a bit more than twenty per cent.';
  const house: HouseNow = () => ({ value: 23.5, isKnown: true });
  expect(told(text, kept(text, 'twenty per cent', 'lowWinesStrength', 20), house)).toEqual(['It is forty-seven US proof.']); // prettier-ignore
});

test('what is no figure of the house is said in their units, if its unit can be nothing else', () => {
  expect(told('We use four hundred thousand litres in a week.', [])).toEqual(['We use one hundred six thousand US gallons in a week.']); // 105,669
  expect(told('A 25 kg sack, 8 °C; 40 degrees, 500 litres an hour, 20 %.', [])).toEqual(['A 55 lb sack, 46 °F; 40 degrees, 500 litres an hour, 20 %.']); // 55.1 lb, 46.4 °F
  expect(told('It is 8,500 litres, 2,245 US gallons.', [])).toEqual([]);
}); // prettier-ignore

interface Row {
  readonly say: string;
  readonly was: number;
  readonly now: number;
}
const rowsOf = (file: string) => JSON.parse(readFileSync(join(import.meta.dirname, file), 'utf8')) as Row[];
/** The units of each audience, with its way of writing. */
const asked: readonly (readonly [writing: Audience['writing'], ...units: string[]])[] = [
  ['American', 'lb', 'US gal', 'US proof gal', '°F', '° US proof'],
  [undefined, 'lb', 'UK gal', '°F'],
  ['British', 'kg', 'L', 'L pure alcohol', '°C', '% vol'],
  ['European', 'kg', 'L', '°C', '% vol'],
  ['Japanese', 'kg', 'L', '°C', '% vol'],
];

test('what is proposed in any unit and writing is not called untrue of the same house', () => {
  const untrue: string[] = [];
  let proposed = 0;
  for (const { say, was, now } of [...rowsOf('manner.json'), ...rowsOf('manner-held.json')]) {
    const meant = mannerOfSaid(say, was)?.meant;
    for (const [writing, ...units] of asked)
      for (const unit of units.filter((each) => meant && each !== meant.unit))
        for (const house of writing === 'American' ? [was, now] : [was]) {
          const said = sayAnew(say, was, house, { figureUnit: meant!.figureUnit, unit, ...(writing ? { writing } : {}) });
          if (isRefusal(said)) continue;
          proposed++;
          const heard = mannerOfSaid(said.words, said.value, meant!.figureUnit); // as the talk is read again: what it stood for is gone
          if (!heard || whyMissed(heard, house)) untrue.push(`${say} for ${house} in ${unit} ${writing}: ${said.words}`);
        }
  }
  expect(untrue).toEqual([]);
  expect(proposed).toBeGreaterThan(250);
}); // prettier-ignore

test('the same of every figure’s sentences, as their visitors hear them', () => {
  const says = ['nearly', 'a bit more than', 'just under', 'just over', 'about', ''];
  const untrue: string[] = [];
  for (const [words, figure] of [['2,600 litres of pure alcohol', 'heartAlcohol'], ['two thousand six hundred litres', 'heartVolume'], ['six and a half tonnes', 'maltPerMash'], ['twenty per cent', 'lowWinesStrength']] as const)
    for (const hedge of says)
      for (const part of [0.97, 0.98, 0.99, 1, 1.01, 1.02, 1.03]) {
        const { unit } = talkFigures[figure];
        const said = { heartAlcohol: 2600, heartVolume: 2600, maltPerMash: 6500, lowWinesStrength: 20 }[figure];
        const text = `We have ${hedge} ${words}.`;
        const [anew = text] = told(text, kept(text, words, figure, said), () => ({ value: said * part, isKnown: true }));
        const heard = mannerOfSaid(anew.slice('We have '.length, -1).trim(), said * part, unit);
        const afresh = heard && mannerOfSaid(anew.slice('We have '.length, -1).trim(), heard.meant.toFigure(heard.value), unit);
        if (!afresh || whyMissed(afresh, said * part)) untrue.push(`${text} ${said * part}: ${anew}`);
      }
  expect(untrue).toEqual([]);
}); // prettier-ignore
