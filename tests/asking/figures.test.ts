// Every figure of the table can be asked for by each of its names: how much, what is, at a pace, in a unit; generated, with the answer reckoned beside.
import { expect, test } from 'vitest';
import { isAnswer } from '../../src/asking/answer-given.ts';
import { answerer } from '../../src/asking/answer.ts';
import { figuresNamed, type NamedOfTable } from '../../src/asking/figure-names.ts';
import { figureTable } from '../../src/core/figures/index.ts';
import { unitsRead } from '../../src/core/units.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { builtInLine } from '../../src/house/line-of.ts';
import { figureText, figureValue, kindOfFigure } from '../../src/house/prose.ts';
import { list } from './list.ts';

const answer = answerer(list);
const line = builtInLine();
const AMOUNTS = /^(?:volume|volume20|mass|alcohol|count|energy)$/;
const lowered = (name: string) => `${name[0]!.toLowerCase()}${name.slice(1)}`;
/** The numbers of a text, without their commas. */
const numbersIn = (text: string) =>
  [...text.matchAll(/\d[\d,]*(?:\.\d+)?/g)].map(([each]) => Number(each.replaceAll(',', '')));

interface Told {
  readonly says: string;
  readonly isSure: boolean;
}
function told(question: string): Told {
  const found = answer({ question, house: builtInHouse });
  if (!isAnswer(found)) return { says: '', isSure: false };
  const all = [found, ...(found.also ?? [])].map(({ says, sum = '' }) => `${says} ${sum}`).join(' ');
  return { says: all, isSure: found.meant === undefined && !found.isQuoted && !found.isLoose };
}
/** Whether a number is told, rounded as an answer rounds it. */
const isTold = ({ says, isSure }: Told, value: number) =>
  isSure && numbersIn(says).some((each) => Math.abs(each - value) <= 0.006 * Math.abs(value) + 1e-9);

/** The questions of one name, each with the number that a right answer tells. */
function questionsOf({ path, pace }: NamedOfTable, name: string): readonly (readonly [string, number])[] {
  const { kind, amount } = kindOfFigure(path)!;
  const value = figureValue(line, path);
  const shown = numbersIn(figureText(line, path))[0]!;
  const said = lowered(name);
  const { mashesPerWeek, weeksPerYear } = builtInHouse;
  const all = pace ? ` a ${pace}` : '';
  if (!AMOUNTS.test(kind)) return [[`what is our ${said}${all}`, shown], [`${said}${all}, please?`, shown]];
  const rows: (readonly [string, number])[] = [[`how much ${said}${all || ' per mash'}`, shown], [`what is the amount of ${said}${all || ' from one mash'}?`, shown]];
  if (!amount) return rows;
  rows.push([`how much ${said} a week`, value * mashesPerWeek], [`${said} per year?`, value * mashesPerWeek * weeksPerYear]);
  rows.push([`how much ${said} for each cask`, value / line.casks.perMash], [`${said} a day?`, (value * mashesPerWeek) / 7]);
  const other = unitsRead(kind).find(({ unit }) => /^(?:UK gal|lb|UK proof gal)$/.test(unit));
  if (other && kind !== 'alcohol') rows.push([`how much ${said} per mash in ${other.unit === 'lb' ? 'pounds' : 'imperial gallons'}`, other.fromCore(value)]);
  return rows;
} // prettier-ignore

const cases = figuresNamed.flatMap((figure) =>
  figure.names.flatMap((name) => questionsOf(figure, name).map(([question, value]) => ({ id: figure.id, question, value }))),
); // prettier-ignore

test('nearly every question for a figure by one of its names is told that figure, and is sure of it', () => {
  const lost = cases.filter(({ question, value }) => !isTold(told(question), value));
  console.log(
    `figures by name: ${cases.length} questions, ${(100 * (1 - lost.length / cases.length)).toFixed(1)} % right`,
  );
  expect(figuresNamed.length).toBeGreaterThan(90);
  const texts = lost.map(({ id, question, value }) => `${id}: ${question} (${value.toPrecision(5)}): ${told(question).says.slice(0, 90)}`); // prettier-ignore
  expect(lost.length / cases.length, texts.join('\n')).toBeLessThan(0.06);
}, 120_000);

test('every figure is told by at least one of its names', () => {
  const found = new Set(
    cases.flatMap(({ id, question, value }) => (isTold(told(question), value) ? [id] : [])),
  );
  // Barrels and hogsheads are read as casks, so that one share stands for the other; the list tells both at once.
  expect(figuresNamed.filter(({ id }) => !found.has(id) && id !== 'hogsheads').map(({ id }) => id)).toEqual(
    [],
  );
}, 120_000);

test('the gas is told with its care', () => {
  for (const { question } of cases.filter(({ id }) => id === 'carbonDioxide'))
    expect(told(question).says, question).toMatch(/rules/);
});

test('a table of names holds no figure that is only said', () => {
  for (const { id } of figuresNamed) expect(figureTable[id].is, id).not.toBe('said');
});
