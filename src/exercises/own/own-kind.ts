// A question of one's own as a kind of question: it draws and is marked as the book's kinds are.
import { format, formatNumber } from '../../core/format.ts';
import { kinds } from '../../core/kinds.ts';
import { isRefusal, refuse, type Refusal } from '../../core/refusal.ts';
import { decimalsOfStep } from '../exercise.ts';
import { toleranceOf, wholeNumberOf, type Question, type QuestionKind } from '../question.ts';
import { dimensionInWords, dimensionOfSigns, isSameDimension, scaleOfUnit } from './dimension.ts';
import { whyImpossible, whyPassedOver } from './fit.ts';
import { formulaText, namesIn, readFormula, type Formula } from './formula.ts';
import {
  NAME_IN_BRACES,
  holesIn,
  numbersTaken,
  type OwnNumber,
  type OwnQuestion,
  type Value,
} from './own-question.ts';
import { measuredBy, reckoner, unitIn } from './reckon.ts';

type Numbers = ReadonlyMap<string, number>;
/** A question of one's own whose formulas have been read: the question for any numbers, and the grid that they come from. */
export interface Ready {
  readonly grid: readonly (readonly number[])[];
  /** The question for one number of each value. */
  readonly with: (numbers: readonly number[]) => Question;
}

/** A number of a value as a prompt says it. */
export function shownValue({ kind, unit }: Value, number: number): string {
  const digits = Math.max(kind === 'gravity' && unit === '' ? 3 : 0, decimalsOfStep(number));
  if (unit === kinds[kind].unit) return format(number, kind, digits);
  return `${formatNumber(number, digits)}\u00a0${unit.replaceAll(' ', '\u00a0')}`;
}

const whose = (place: number) => (place === 0 ? 'Answer' : `Mistake ${place}`);

/** The formulas of a number question, the answer's first; a sentence for the first that cannot be used. */
function formulasOf(question: OwnNumber): readonly Formula[] | Refusal {
  const read: Formula[] = [];
  for (const [place, text] of [question.formula, ...question.slips.map(({ formula }) => formula)].entries()) {
    const formula = readFormula(text);
    if (isRefusal(formula)) return refuse(`${whose(place)}: ${formula.refused}`);
    const found = measuredBy(formula, question.values);
    if (isRefusal(found)) return refuse(`${whose(place)}: ${found.refused}`);
    const wanted = dimensionOfSigns(kinds[question.of].unit);
    // A mistake may well come to something else than what is asked for.
    if (place === 0 && (isRefusal(wanted) || !isSameDimension(found, wanted)))
      return refuse(
        `The formula gives ${dimensionInWords(found)}, and the answer is asked for in ${kinds[question.of].unit || 'a plain number'}${isRefusal(wanted) ? '' : `, ${dimensionInWords(wanted)}`}. Where a number has a unit, say so behind it, as in 0.789[kg/L].`,
      );
    read.push(formula);
  }
  return read;
}

/** A sentence where the numbers alone give something else than the numbers with their units: 7 t × 4.3 L/kg are not 30.1 L. */
function lostBetweenUnits({ values, of }: OwnNumber, formula: Formula, numbers: Numbers): string | undefined {
  const alone = reckoner(formula, values)(numbers);
  const whole = reckoner(formula, values, true)(numbers) / scaleOfUnit(kinds[of].unit);
  if (!Number.isFinite(alone) || Math.abs(alone - whole) <= 1e-6 * Math.abs(whole)) return undefined;
  const [a, b] = [alone, whole].map((value) => formatNumber(value, Math.abs(value) < 10 ? 3 : 0));
  const given = values.map((value) => shownValue(value, numbers.get(value.name)!)).join(' and ');
  return `With ${given} the numbers alone give ${a}, and with their units ${b} ${kinds[of].unit}. Say behind each name in which unit it goes into the sum, as in malt[kg] or malt[t], and leave out what turns one unit into another.`;
}

/** The formula, the formula with its numbers, and what it comes to. */
function workingOf(
  question: OwnNumber,
  formula: Formula,
  numbers: Numbers,
  answer: number,
): readonly string[] {
  const number = (value: number) => formatNumber(value, decimalsOfStep(value));
  const byName = new Map(question.values.map((value) => [value.name, value]));
  const told = (name: string, unit: string | undefined) => {
    const { kind, unit: own } = byName.get(name)!;
    const given = numbers.get(name)!;
    if (unit === undefined || unit === own) return number(given);
    const other = unitIn(kind, unit)!.fromCore(unitIn(kind, own)!.toCore(given));
    return number(Number(other.toPrecision(6)));
  };
  const sum = formulaText(
    formula,
    ({ name, unit }) => told(name, unit),
    ({ value }) => number(value),
  );
  return [formulaText(formula), `${sum} = ${format(answer, question.of, question.digits)}`];
}

/** Makes a question of one's own ready to draw; a sentence where something in it cannot be read. */
export function readyToDraw(question: OwnQuestion): Ready | Refusal {
  const { values } = question;
  const grid = values.map(({ takes }) => numbersTaken(takes));
  const empty = values.find((_, i) => grid[i]!.length === 0);
  if (empty)
    return refuse(
      `${empty.name} has no number to take: its range ends before it begins, or has too many steps.`,
    );
  const texts = [question.wording, ...(question.asks === 'choice' ? question.options.flatMap(({ text, why }) => [text, why]) : [])]; // prettier-ignore
  const unknown = texts.flatMap(holesIn).find((name) => !values.some((each) => each.name === name));
  if (unknown !== undefined) return refuse(`{${unknown}} stands in the text, and no value is called so.`);
  const filled = (text: string, numbers: Numbers) =>
    text.replace(NAME_IN_BRACES, (_, name: string) =>
      shownValue(
        values.find((each) => each.name === name)!,
        numbers.get(name)!,
      ),
    );
  const about = {
    kind: question.id,
    title: question.title,
    topic: question.topic,
    level: question.level,
    sources: [],
  } as const;
  const rests = question.rests === '' ? [] : [`It rests on: ${question.rests}.`];
  const named = (numbers: readonly number[]): Numbers =>
    new Map(values.map(({ name }, i) => [name, numbers[i]!]));

  if (question.asks === 'choice') {
    const right = question.options.findIndex(({ isRight }) => isRight);
    if (question.options.filter(({ isRight }) => isRight).length !== 1)
      return refuse('Mark one option as right, and one only.');
    return {
      grid,
      with: (given) => {
        const numbers = named(given);
        const options = question.options.map(({ text, why }) => ({
          text: filled(text, numbers),
          why: filled(why, numbers),
        }));
        return {
          ...about,
          form: 'judgement',
          prompt: filled(question.wording, numbers),
          options,
          answer: right,
          working: [`${options[right]!.text} ${options[right]!.why}`.trim(), ...rests],
        };
      },
    };
  }
  const formulas = formulasOf(question);
  if (isRefusal(formulas)) return formulas;
  const untold = namesIn(formulas[0]!).find((name) => !holesIn(question.wording).includes(name));
  if (untold !== undefined)
    return refuse(
      `The sum needs ${untold}, and the wording does not give it: write {${untold}} where its number stands.`,
    );
  for (const place of [0, -1]) {
    const lost = lostBetweenUnits(question, formulas[0]!, named(grid.map((each) => each.at(place)!)));
    if (lost !== undefined) return refuse(lost);
  }
  const [answerOf, ...slipsOf] = formulas.map((each) => reckoner(each, values));
  const { of, digits, whole } = question;
  return {
    grid,
    with: (given) => {
      const numbers = named(given);
      const exact = answerOf!(numbers);
      return {
        ...about,
        form: 'calculation',
        prompt: filled(question.wording, numbers),
        answer: wholeNumberOf(exact, whole),
        of,
        digits,
        tolerance: toleranceOf(exact, question.within / 100, of, digits),
        ...(whole ? { whole } : {}),
        slips: slipsOf.map((slip, i) => ({
          family: 'otherFigure',
          value: slip(numbers),
          say: question.slips[i]!.say,
        })),
        working: [...workingOf(question, formulas[0]!, numbers, wholeNumberOf(exact, whole)), ...rests],
      };
    },
  };
}

/** The generator from which questions of one's own are drawn. */
const SINCE = 4;

/** A question of one's own as a kind; it draws nothing when it cannot be read. Options are shown in an order drawn by chance. */
export function kindOfOwnQuestion(question: OwnQuestion): QuestionKind {
  const made = readyToDraw(question);
  const { id, title, topic, level } = question;
  return {
    id,
    title,
    topic,
    level,
    form: question.asks === 'choice' ? 'judgement' : 'calculation',
    since: SINCE,
    draw: (chance) => {
      if (isRefusal(made)) return undefined;
      const drawn = made.with(made.grid.map((numbers) => chance.pick(numbers)));
      if ((whyImpossible(drawn) ?? whyPassedOver(drawn)) !== undefined) return undefined;
      if (!('options' in drawn)) return drawn;
      const right = drawn.options[drawn.answer]!;
      const options = chance.shuffle(drawn.options);
      return { ...drawn, options, answer: options.indexOf(right) };
    },
  };
}
