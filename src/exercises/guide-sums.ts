// The ten sums that a guide should be able to redo, each a question with the house's own numbers, and the calculator that does it.
import { formatNumber } from '../core/format.ts';
import { exciseFactor } from '../core/wort/attenuation.ts';
import type { Line } from '../core/line/line.ts';
import { SPIRIT_YIELD_FACTOR } from '../core/malting/spirit-yield.ts';
import { handSum, workedSum, type HandSum } from '../house/hand-sum.ts';
import type { Stage } from '../house/figures.ts';
import { wholeCountOf as wholeOfCount } from '../house/prose.ts';
import { whereFrom } from '../house/where-from.ts';
import type { Family } from './families.ts';
import { toleranceOf, wholeNumberOf, type NumberQuestion, type WholeRounding } from './question.ts';

type Numbers = Readonly<Record<string, number>>;
interface GuideSum {
  readonly id: string;
  readonly title: string;
  readonly stage: Stage;
  readonly calculator: string;
  readonly sum: HandSum;
  /** Decimals asked for. */
  readonly to: number;
  readonly whole?: WholeRounding;
  readonly ask: (t: Readonly<Record<string, string>>) => string;
  readonly slips: readonly { readonly family: Family; readonly gives: (v: Numbers, answer: number) => number; readonly say: string }[];
} // prettier-ignore

const fallen = ({ house }: Line) => 1000 * (house.originalGravity - house.finalGravity);
const factor = (line: Line) => {
  const found = exciseFactor(fallen(line));
  return typeof found === 'number' ? found : NaN;
};
const NOT_DIVIDED = 'The per cent was not divided by 100.';
const NO_MALTING = 'Malting makes less of the barley: its loss of dry matter was left out.';

const sums: readonly GuideSum[] = [
  {
    id: 'wort-to-alcohol',
    title: 'From the wort to its alcohol',
    stage: 'mashing',
    calculator: 'extract-in-wort',
    sum: handSum({
      rule: `Litres × gravity × 0.9982 is the weight of the wort; its °P ÷ 100 of that is extract; what ferments of it gives ${SPIRIT_YIELD_FACTOR} ÷ 10 litres of alcohol a kilogram.`,
      uses: { volume: 'house.wortVolume', gravity: 'house.originalGravity', plato: 'wort.plato', fermentability: 'house.fermentability' },
      gives: (v) => v.volume * v.gravity * 0.9982 * (v.plato / 100) * (v.fermentability / 100) * (SPIRIT_YIELD_FACTOR / 10),
      sum: (t) => `${t.volume} × ${t.gravity} × 0.9982 × ${t.plato} ÷ 100 × ${t.fermentability} ÷ 100 × ${SPIRIT_YIELD_FACTOR} ÷ 10`,
      of: 'alcohol',
      digits: 0,
      source: 'bringhurst-1996',
    }),
    to: 0,
    ask: (t) => `A mash gives ${t.volume} litres of wort of gravity ${t.gravity}, which is ${t.plato} kg of extract in 100 kg of wort; a litre of water weighs 0.9982 kg. If ${t.fermentability} % of the extract ferments, and a kilogram of that gives 0.606 L of pure alcohol, how much alcohol can the yeast make of it?`,
    slips: [
      { family: 'forgotten', gives: (v, answer) => answer / (v['fermentability']! / 100), say: 'All of the extract was counted; only a part of it ferments.' },
      { family: 'massForVolume', gives: (v, answer) => answer / v['gravity']!, say: 'A litre of wort was taken as a litre of water. It weighs more, by its gravity.' },
    ],
  },
  {
    id: 'wash-strength',
    title: 'Strength of the wash',
    stage: 'fermenting',
    calculator: 'strength-from-gravities',
    sum: handSum({
      rule: 'Degrees fallen, 0.001 each, × the factor of the excise table. The book’s own figure follows Balling and lies a little apart.',
      uses: { original: 'house.originalGravity', final: 'house.finalGravity', factor: ['ratio', factor] },
      gives: (v) => 1000 * (v.original - v.final) * v.factor,
      sum: (t) => `1,000 × (${t.original} − ${t.final}) × ${t.factor}`,
      of: 'strength',
      digits: 1,
      source: 'excise-226',
    }),
    to: 1,
    ask: (t) => `The gravity falls from ${t.original} to ${t.final}, and each degree of 0.001 is worth ${t.factor} % vol by the excise table. How strong is the wash?`,
    slips: [
      { family: 'forgotten', gives: (v) => 1000 * (v['original']! - 1) * v['factor']!, say: 'The fall was counted to 1.000 only; it goes to the final gravity.' },
      { family: 'forgotten', gives: (v) => 1000 * (v['original']! - v['final']!), say: 'Those are the degrees fallen; each is worth its factor.' },
    ],
  },
  {
    id: 'carbon-dioxide',
    title: 'Gas of a washback',
    stage: 'fermenting',
    calculator: 'carbon-dioxide',
    sum: whereFrom.carbonDioxide,
    to: 0,
    ask: (t) => `A washback makes ${t.alcohol} litres of pure alcohol. A litre of it weighs 0.789 kg, and 44.01 kg of carbon dioxide come with each 46.07 kg of alcohol. How much gas does it give off?`,
    slips: [
      { family: 'massForVolume', gives: (v) => (v['alcohol']! * 44.01) / 46.07, say: 'A litre of alcohol was taken as a kilogram. It weighs 0.789 kg.' },
      { family: 'otherFigure', gives: (v) => v['alcohol']! * 0.789, say: 'That is the weight of the alcohol; the gas with it is 44.01 kg to 46.07.' },
    ],
  },
  {
    id: 'pure-alcohol',
    title: 'Pure alcohol of a mash',
    stage: 'fermenting',
    calculator: 'strength-from-gravities',
    sum: handSum({
      rule: 'Litres × strength ÷ 100.',
      uses: { volume: 'wash.volume', strength: 'wash.strength' },
      gives: (v) => (v.volume * v.strength) / 100,
      sum: (t) => `${t.volume} × ${t.strength} ÷ 100`,
      of: 'alcohol',
      digits: 0,
      source: 'derived',
    }),
    to: 0,
    ask: (t) => `A mash comes to ${t.volume} litres of wash at ${t.strength} % vol. How much pure alcohol is in it?`,
    slips: [
      { family: 'percent', gives: (v) => v['volume']! * v['strength']!, say: NOT_DIVIDED },
      { family: 'bulkForAlcohol', gives: (v) => (v['volume']! * (100 - v['strength']!)) / 100, say: 'That is all but the alcohol.' },
    ],
  },
  {
    id: 'low-wines',
    title: 'Litres of low wines',
    stage: 'distilling',
    calculator: 'wash-run',
    sum: whereFrom.lowWinesVolume,
    to: 0,
    ask: (t) => `The wash of a mash holds ${t.wash} litres of pure alcohol, and ${t.left} of them stay in the pot ale. The low wines are ${t.strength} % vol. How many litres are they?`,
    slips: [
      { family: 'upsideDown', gives: (v) => ((v['wash']! - v['left']!) * v['strength']!) / 100, say: 'The alcohol was multiplied by the strength. Litres are the alcohol ÷ strength × 100.' },
      { family: 'bulkForAlcohol', gives: (v) => v['wash']! - v['left']!, say: 'That is their pure alcohol; the water with it counts as well.' },
    ],
  },
  {
    id: 'heart',
    title: 'Litres of the heart',
    stage: 'distilling',
    calculator: 'charge-strength',
    sum: whereFrom.heartVolume,
    to: 0,
    ask: (t) => `A spirit charge holds ${t.charge} litres of pure alcohol; ${t.foreshots} go into the foreshots, ${t.feints} into the feints, and ${t.lees} stay in the spent lees. The heart is ${t.strength} % vol. How many litres are collected?`,
    slips: [
      { family: 'forgotten', gives: (v) => (v['charge']! / v['strength']!) * 100, say: 'Foreshots and feints were counted in; they go back to the next charge.' },
      { family: 'bulkForAlcohol', gives: (v) => v['charge']! - v['foreshots']! - v['feints']! - v['lees']!, say: 'That is the pure alcohol of the heart; ÷ strength × 100 it is litres.' },
    ],
  },
  {
    id: 'casks-a-week',
    title: 'Casks a week',
    stage: 'maturing',
    calculator: 'fill-casks',
    sum: whereFrom.casksPerWeek,
    to: 0,
    whole: 'up',
    ask: (t) => `A mash gives ${t.volume} litres of new spirit at filling strength; there are ${t.mashes} mashes a week, and a cask holds ${t.size} litres. How many casks are needed for a week, a part of one as a whole one?`,
    slips: [
      { family: 'forgotten', gives: (v) => Math.ceil(v['volume']! / v['size']!), say: 'Those are the casks of one mash.' },
    ],
  },
  {
    id: 'angels-share',
    title: 'The angels’ share of a cask',
    stage: 'maturing',
    calculator: 'cask-through-years',
    sum: handSum({
      rule: 'Alcohol filled, less what the wood drinks at once; of that each year leaves the same part of what the year before left.',
      uses: { size: 'casks.meanSize', strength: 'filling.strength', indrink: 'house.indrink', loss: 'house.alcoholLoss', years: 'house.yearsInWood' },
      gives: (v) => (v.size * v.strength) / 100 * (1 - v.indrink / 100) * (1 - (1 - v.loss / 100) ** v.years),
      sum: (t) => `${t.size} × ${t.strength} ÷ 100 × (1 − ${t.indrink} ÷ 100) × (1 − (1 − ${t.loss} ÷ 100) to the power ${t.years})`,
      of: 'alcohol',
      digits: 1,
      source: 'derived',
    }),
    to: 1,
    ask: (t) => `A cask is filled with ${t.size} litres at ${t.strength} % vol. The wood drinks ${t.indrink} % at once, and of what is left the air takes ${t.loss} % of the alcohol each year. How much pure alcohol has the air taken after ${t.years} years?`,
    slips: [
      { family: 'compound', gives: (v) => (v['size']! * v['strength']!) / 100 * (1 - v['indrink']! / 100) * (v['loss']! / 100) * v['years']!, say: 'The same litres were taken each year. Each year takes its part of what is left.' },
      { family: 'bulkForAlcohol', gives: (v, answer) => (answer / v['strength']!) * 100, say: 'Bulk litres were counted; × strength ÷ 100 they are pure alcohol.' },
    ],
  },
  {
    id: 'bottles-from-a-cask',
    title: 'Bottles from a cask',
    stage: 'maturing',
    calculator: 'casks-and-bottles',
    sum: handSum({
      rule: 'Litres × strength ÷ bottling strength are litres to bottle; less what filters take, ÷ what a bottle holds; whole ones.',
      uses: {
        volume: ['volume20', ({ matured, casks }) => matured.volume / casks.perMash],
        years: 'house.yearsInWood', strength: 'matured.strength', to: 'bottling.strength', lost: 'house.filterLoss', bottle: 'house.bottleSize',
      },
      gives: (v) => ((v.volume * v.strength) / v.to) * (1 - v.lost / 100) / (v.bottle / 100),
      sum: (t) => `${t.volume} × ${t.strength} ÷ ${t.to} × (1 − ${t.lost} ÷ 100) ÷ (${t.bottle} ÷ 100)`,
      of: 'count',
      digits: 1,
      source: 'derived',
    }),
    to: 0,
    whole: 'down',
    ask: (t) => `After ${t.years} years a cask gives ${t.volume} litres at ${t.strength} % vol. It is let down to ${t.to} % vol, ${t.lost} % is lost in bottling, and a bottle holds ${t.bottle} cL. How many bottles does it fill?`,
    slips: [
      { family: 'forgotten', gives: (v) => Math.floor((v['volume']! * (1 - v['lost']! / 100)) / (v['bottle']! / 100)), say: 'The water that lets it down fills bottles too: × its strength ÷ bottling strength.' },
      { family: 'upsideDown', gives: (v) => Math.floor(((v['volume']! * v['to']!) / v['strength']!) * (1 - v['lost']! / 100) / (v['bottle']! / 100)), say: 'The strengths are the wrong way round: let down, the litres grow.' },
    ],
  },
  {
    id: 'barley-a-bottle',
    title: 'Barley behind a bottle',
    stage: 'malting',
    calculator: 'barley-for-malt',
    sum: handSum({
      rule: whereFrom.barley.rule.replace(/\.$/, ', ÷ the bottles of the mash.'),
      uses: { ...whereFrom.barley.uses, bottles: ['count', ({ bottling }) => wholeOfCount('bottling.bottles', bottling.bottles)] },
      gives: (v) => whereFrom.barley.gives(v) / v['bottles']!,
      sum: (t) => `${whereFrom.barley.sum(t)} ÷ ${t['bottles']}`,
      of: 'mass',
      digits: 2,
      source: 'derived',
    }),
    to: 2,
    ask: (t) => `A mash takes ${t.malt} kg of malt with ${t.maltMoisture} % of water, and fills ${t.bottles} bottles in the end. Malting loses ${t.loss} % of the dry matter, and the barley has ${t.moisture} % of water. How many kilograms of barley stand behind a bottle?`,
    slips: [
      { family: 'forgotten', gives: (v, answer) => answer * (1 - v['loss']! / 100), say: NO_MALTING },
      { family: 'upsideDown', gives: (_, answer) => 1 / answer, say: 'Those are bottles to a kilogram of barley; the other way round is asked.' },
    ],
  },
]; // prettier-ignore

const WITHIN = 0.01; // part of the answer that still counts as right, as in every sheet
const APART = 2; // tolerances that a known mistake lies from the answer, as in sound-question.ts

export interface GuideQuestion {
  readonly question: NumberQuestion;
  /** The calculator that does the sum, by its id. */
  readonly calculator: string;
}

/** The ten sums as questions, with the numbers of a line, in its order; one that these numbers do not make is left out. */
export function guideQuestions(line: Line): readonly GuideQuestion[] {
  return sums.flatMap(({ id, title, stage, calculator, sum, to, whole, ask, slips }) => {
    const done = workedSum(sum, line);
    if (!done || done.value === 0) return [];
    const answer = wholeNumberOf(done.value, whole);
    const tolerance = toleranceOf(done.value, WITHIN, sum.of, to);
    const question: NumberQuestion = {
      kind: id,
      title,
      topic: stage,
      level: 2,
      form: 'calculation',
      prompt: ask(done.texts),
      answer,
      of: sum.of,
      digits: to,
      tolerance,
      ...(whole ? { whole } : {}),
      slips: slips
        .map(({ family, gives, say }) => ({ family, value: gives(done.values, done.value), say }))
        .filter(({ value }) => Math.abs(value - answer) > APART * tolerance),
      working: [sum.rule, done.says + (whole ? `, so ${formatNumber(answer, 0)}` : '')],
      sources: [sum.source],
    };
    return [{ question, calculator }];
  });
}
