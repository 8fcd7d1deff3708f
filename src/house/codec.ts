// A house as text and back. Reading is strict, and says what it could not use instead of dropping it.
import { isData, jsonIn } from '../core/reading/data.ts';
import type { House } from '../core/line/house.ts';
import { quotedGiven } from '../core/quoted-given.ts';
import {
  builtInHouse,
  builtInName,
  figureNames,
  isChoiceName,
  isNumberName,
  numberFigures,
  type NumberName,
} from './figures.ts';
import { fewProblems } from './few-problems.ts';
import { problemOfHouse } from './line-of.ts';
import { nameProblem, plainName } from './name.ts';
import { partsIn, type HouseParts } from './parts/part.ts';
import { problemOf } from './problem-of.ts';

export const HOUSE_FORMAT = 'malt-spirit-handbook/house';
export const HOUSE_VERSION = 2;
const READ = [1, HOUSE_VERSION]; // version 1 had figures alone
const LONGEST = 400_000; // characters of a saved house that are still read; figures need 1,500, a group of casks up to 1,000

export interface NamedHouse {
  readonly name: string;
  readonly house: House;
}

/** A house with all that it keeps. */
export interface WholeHouse extends NamedHouse {
  readonly parts: HouseParts;
}

/** A house read from text, with a sentence for each thing that could not be used. Its parts are read where they are used. */
export interface HouseRead extends WholeHouse {
  readonly problems: readonly string[];
  /** False when the text is no house at all, or of a version that cannot be read. */
  readonly isHouse: boolean;
  /** False when the text gives no name, or one that cannot be used as it is. */
  readonly isNamed: boolean;
}

/** A figure's value as the reader would type it: no unit, no needless zeros. */
export function typedValue(name: NumberName, value: number): string {
  if (numberFigures[name].kind === 'gravity') return value.toFixed(4).replace(/0$/, '');
  return String(Number(value.toFixed(4))).replace('-', '−');
}

/** The text that keeps a house: JSON with its format and version; without parts where it has none. */
export function encodeHouse({ name, house, parts = {} }: NamedHouse & Partial<WholeHouse>): string {
  const kept = Object.keys(parts).length > 0 ? { parts } : {};
  return JSON.stringify({ format: HOUSE_FORMAT, version: HOUSE_VERSION, name, figures: house, ...kept });
}

const noParts = (given: unknown) => ({ parts: {}, unusable: given === undefined ? [] : [given] });

const unusable = (problem: string): HouseRead => ({
  name: builtInName,
  house: builtInHouse,
  parts: {},
  problems: [problem],
  isHouse: false,
  isNamed: false,
});

/**
 * Reads a house from its text. Figures that are missing take the built-in value; a figure that is unknown,
 * out of range or in contradiction with the others is left out and told of.
 */
export function decodeHouse(text: string): HouseRead {
  if (text.length > LONGEST)
    return unusable(`The text is ${text.length} characters long; a house has at most ${LONGEST}.`);
  const data = jsonIn(text);
  if (data === undefined) return unusable('The saved house is damaged and cannot be read.');
  if (!isData(data) || data['format'] !== HOUSE_FORMAT || !isData(data['figures'])) {
    return unusable('The saved text is not a house of this handbook.');
  }
  if (!READ.some((version) => version === data['version'])) {
    return unusable(
      `The saved house is of version ${quotedGiven(data['version'])}; this handbook reads versions ${READ.join(' and ')}.`,
    );
  }
  const given = data['figures'];
  const known = figureNames.filter((name) => Object.hasOwn(given, name));
  const problems: string[] = [];
  const sound = known.filter((name) => {
    const problem = problemOf(name, given[name]);
    if (problem !== undefined) problems.push(problem);
    return problem === undefined;
  });
  const givenName = data['name'];
  if (givenName !== undefined)
    problems.push(...[nameProblem(givenName)].filter((each) => each !== undefined));
  problems.push(
    ...Object.keys(given)
      .filter((name) => !isNumberName(name) && !isChoiceName(name))
      .map((name) => `“${quotedGiven(name)}” is not a figure of this handbook.`),
  );
  const { parts, unusable: notParts } = isData(data['parts'])
    ? partsIn(data['parts'])
    : noParts(data['parts']);
  problems.push(
    ...notParts.map((id) => `“${quotedGiven(id)}” is not a part of a house that this handbook can read.`),
  );
  const house: House = { ...builtInHouse, ...Object.fromEntries(sound.map((name) => [name, given[name]])) };
  const wrong = problemOfHouse(house, parts);
  const name = (typeof givenName === 'string' && plainName(givenName)) || builtInName;
  const isNamed = name === givenName;
  if (wrong !== undefined)
    return {
      name,
      house: builtInHouse,
      parts,
      problems: fewProblems([wrong, ...problems]),
      isHouse: true,
      isNamed,
    };
  return { name, house, parts, problems: fewProblems(problems), isHouse: true, isNamed };
}
