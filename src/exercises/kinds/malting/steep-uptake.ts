// The hour at which the grain in the steep comes to a moisture, read off its curve.
import steepUptake from '../../../calculators/malting/steep-uptake.ts';
import { formatNumber as n } from '../../../core/format.ts';
import type { Chart } from '../../../calculators/define.ts';
import { exercise } from '../../exercise.ts';
import { isNumberQuestion, type QuestionKind } from '../../question.ts';

const CLEAR = 0.7; // hours from a rest; nearer, the curve is too flat to read

const kind = exercise(steepUptake, {
  title: 'When the grain is wet enough',
  form: 'curve',
  level: 1,
  ask: 'clock',
  vary: {
    barley: [1000],
    startMoisture: [11, 12, 13, 14],
    target: [38, 39, 40, 41, 42, 43, 44, 45],
    water: [13, 14, 15, 16, 17],
    programme: [
      [
        { wet: 8, rest: 10 },
        { wet: 8, rest: 10 },
        { wet: 6, rest: 0 },
      ],
      [
        { wet: 8, rest: 12 },
        { wet: 8, rest: 12 },
        { wet: 5, rest: 0 },
      ],
      [
        { wet: 6, rest: 10 },
        { wet: 8, rest: 12 },
        { wet: 6, rest: 0 },
      ],
    ],
    k1: [0.1],
    k2: [0.009],
    fitted: [15],
  },
  within: 0.04,
  prompt: (show, { programme }) =>
    `Barley at ${show.startMoisture} moisture is steeped in water of ${show.water}: ${programme.map(({ wet, rest }) => `${wet} h wet${rest ? `, ${rest} h of rest` : ''}`).join(', ')}. The curve shows a likely lot. At which hour does the grain come to ${show.target}?`,
  slips: [
    {
      family: 'otherFigure',
      gives: (_, { needed }) => needed,
      say: 'Those are the hours in water alone; the clock runs on through the rests.',
    },
    {
      family: 'compound',
      gives: ({ startMoisture, target, programme }, { reached }) =>
        (programme.reduce((hours, { wet, rest }) => hours + wet + rest, 0) * (target - startMoisture)) /
        (reached - startMoisture),
      say: 'A straight line was drawn from the first hour to the last; the curve is steep at first, and flat in the rests.',
    },
  ],
  working: ({ target }, { clock, needed }) => [
    `Go across from ${target} % to the curve and down to the hours: about hour ${n(clock, 1)}`,
    `By then the grain has lain in water for ${n(needed, 1)} h; in the rests the curve is level`,
  ],
});

/** True when the curve reaches the answer, and steeply enough to be read. */
function isClear(answer: number, { columns: [hours, moistures] }: Chart): boolean {
  const [times, levels] = [hours!.values, moistures!.values];
  const isNearRest = times.some(
    (hour, i) => levels[i] === levels[i + 1] && answer > hour - CLEAR && answer < times[i + 1]! + CLEAR,
  );
  return !isNearRest && answer < times.at(-1)! - CLEAR;
}

const clear: QuestionKind = {
  ...kind,
  draw: (chance, house) => {
    const question = kind.draw(chance, house);
    return question && isNumberQuestion(question) && isClear(question.answer, question.curve!)
      ? question
      : undefined;
  },
};
export default clear;
