// A kind of question whose sum is a line or two of the core's and belongs to no calculator.
import type { KindName } from '../core/kinds.ts';
import { format } from '../core/format.ts';
import type { House } from '../core/line/house.ts';
import type { Line } from '../core/line/line.ts';
import type { SourceId } from '../core/sources.ts';
import type { Chart } from '../calculators/define.ts';
import { decimalsOfStep } from './exercise.ts';
import type { Family } from './families.ts';
import { builtInHouse } from '../house/figures.ts';
import { builtInLine, lineIfAny } from '../house/line-of.ts';
import { figureValue } from '../house/prose.ts';
import { ABOUT_HOUSE_SINCE, aboutHouse } from './about-house.ts';
import { asGeneratorDraws, withoutRounding } from './renewed.ts';
import {
  toleranceOf,
  wholeNumberOf,
  type NumberQuestion,
  type QuestionKind,
  type WholeRounding,
} from './question.ts';
import type { Level, Topic } from './topics.ts';

export interface Sum<N extends string, Q extends string = never, V = Readonly<Record<N | Q, number>>> {
  readonly id: string;
  readonly title: string;
  readonly topic: Topic;
  readonly form?: NumberQuestion['form'];
  readonly level: Level;
  readonly sources: readonly SourceId[];
  readonly of: KindName;
  readonly to: number;
  /** As in `Exercise`. */
  readonly within?: number;
  readonly whole?: WholeRounding;
  /** Clean values to draw from, each with its kind, and the figure of the house about which they lie, if they do. */
  readonly vary: Readonly<Record<N, readonly [kind: KindName, values: readonly number[], about?: string]>>;
  /** Figures that the prompt quotes and that are computed, of the line or otherwise, each with its decimals: a sheet's link carries them. */
  readonly quotes?: {
    readonly [M in Q]: readonly [digits: number, of: (v: Readonly<Record<N, number>>, line: Line) => number];
  };
  readonly answer: (v: V, line: Line) => number;
  /** As in `Exercise`. */
  readonly fits?: (v: V, answer: number) => boolean;
  readonly before?: Partial<Pick<Sum<N, Q, V>, 'vary' | 'prompt'>>;
  /** As in `Exercise`. */
  readonly renewed?: number;
  readonly prompt: (show: Readonly<Record<N, string>>, line: Line, v: V) => string;
  readonly working: (v: V, answer: number, line: Line) => readonly string[];
  readonly slips: readonly {
    readonly family: Family;
    readonly gives: (v: V, answer: number, line: Line) => number;
    readonly say: string;
  }[];
  readonly curve?: (v: V, line: Line) => Chart;
}

/** The values to draw from, about the figure of the reader's house that they follow. */
function listFor(
  [kind, values, about]: readonly [KindName, readonly number[], string?],
  house: House,
  line: Line,
  generator: number,
): readonly number[] {
  if (about === undefined || generator < ABOUT_HOUSE_SINCE || house === builtInHouse) return values;
  return aboutHouse(values, kind, [figureValue(builtInLine(), about), figureValue(line, about)]);
}

/** Declares a kind of question by its own sum. The line is that of the house; what the prompt quotes from it is named in `quotes`. */
export function sum<const N extends string, const Q extends string = never>(of: Sum<N, Q>): QuestionKind {
  const { id, title, topic, level, sources } = of;
  const form = of.form ?? 'calculation';
  const names = Object.keys(of.vary) as N[];
  const quotes = Object.entries(of.quotes ?? {}) as [
    Q,
    readonly [number, (v: Readonly<Record<N, number>>, line: Line) => number],
  ][];
  const within = of.within ?? (form === 'estimate' ? 0.3 : 0.01);
  const draw: QuestionKind['draw'] = (chance, house: House) => {
    const now = lineIfAny(house);
    if (!now) return undefined;
    const { vary, prompt, fits } = asGeneratorDraws(of, chance.generator);
    const picked = Object.fromEntries(
      names.map((name) => [name, chance.pick(listFor(vary[name], house, now, chance.generator))]),
    ) as Readonly<Record<N, number>>;
    const quoted = quotes.map(([name, [digits, figure]]) => [
      name,
      chance.quotes.quote(figure(picked, now), digits),
    ]);
    const v = { ...picked, ...Object.fromEntries(quoted) } as Readonly<Record<N | Q, number>>;
    const show = Object.fromEntries(
      names.map((name) => [
        name,
        format(
          v[name]!,
          vary[name][0],
          Math.max(vary[name][0] === 'gravity' ? 3 : 0, decimalsOfStep(v[name]!)),
        ),
      ]),
    ) as Readonly<Record<N, string>>;
    const exact = of.answer(v, now);
    const answer = wholeNumberOf(exact, of.whole);
    if (fits && !fits(v, answer)) return undefined;
    return {
      kind: id,
      title,
      topic,
      form,
      level,
      sources,
      prompt: withoutRounding(prompt(show, now, v), chance.generator),
      answer,
      of: of.of,
      digits: of.to,
      tolerance: toleranceOf(exact, within, of.of, of.to),
      ...(of.whole ? { whole: of.whole } : {}),
      slips: of.slips.map(({ family, gives, say }) => ({ family, value: gives(v, exact, now), say })),
      working: of.working(v, exact, now),
      ...(of.curve ? { curve: of.curve(v, now) } : {}),
    };
  };
  return { id, title, topic, form, level, since: 1, draw };
}
