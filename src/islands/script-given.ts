// Gives a house the figures of a talk, through the house's own way of changing; says what stood before, and puts all back.
import { batch } from 'solid-js';
import { builtInHouse, builtInName, numberFigures, type NumberName } from '../house/figures.ts';
import { knownOf } from '../house/parts/known.ts';
import { freeName } from '../house/shelf.ts';
import { figureInWords } from '../house/trial.ts';
import { labelOf } from '../talk/labels.ts';
import { changeFigure, keepFigures } from '../browser/change-figure.ts';
import {
  liveHouse,
  liveName,
  liveShelf,
  saveHouse,
  takeHouse,
  wholeHouseNow,
} from '../browser/house-store.ts';
import { removeHouse } from '../browser/removed-houses.ts';
import { copyHouse, renameHouse } from '../browser/shelf-store.ts';
import type { FigureToGive } from './script-to-give.ts';

const OWN_NAME = 'My house'; // until the reader names it

export interface GivenToHouse {
  readonly house: string;
  readonly set: readonly { readonly label: string; readonly now: string; readonly before: string }[];
  /** What the house does not run with, and the house’s sentence on it. */
  readonly refused: readonly (FigureToGive & { readonly problem: string })[];
  /** Figures that nobody has given and that gave way, by name. */
  readonly moved: readonly string[];
  /** False once the house has changed otherwise. */
  readonly stands: () => boolean;
  readonly putBack: () => void;
}

/** Takes each figure that runs, and those that do not once more after the others, until none is taken. */
function takeAll(figures: readonly FigureToGive[]): GivenToHouse['refused'] {
  const refused = figures.flatMap((each) => {
    const problem = changeFigure(each.name, each.value);
    return problem === undefined ? [] : [{ ...each, problem }];
  });
  return refused.length > 0 && refused.length < figures.length ? takeAll(refused) : refused;
}

/** The built-in house is nobody's: a copy of it is given the figures, under a name of its own. Returns what goes back. */
function beginOwn(): () => void {
  const before = wholeHouseNow();
  copyHouse();
  renameHouse(freeName(OWN_NAME, liveShelf()));
  const name = liveName();
  return () => {
    takeHouse(before);
    saveHouse();
    removeHouse(name);
  };
}

/** Gives figures to the house of the page; to a house of the reader's own that it begins, where that is the built-in one. */
export function giveToHouse(figures: readonly FigureToGive[]): GivenToHouse {
  return batch(() => {
    const before = liveHouse();
    const putBack = liveName() === builtInName ? beginOwn() : keepFigures();
    const refused = takeAll(figures);
    const set = figures.filter((each) => !refused.some(({ name }) => name === each.name));
    if (set.length === 0) putBack();
    const after = wholeHouseNow();
    const { given } = knownOf(after);
    const stood = (name: NumberName) =>
      `${figureInWords(name, before[name])}, ${before[name] === builtInHouse[name] ? `${builtInName}’s` : 'an estimate'}`;
    return {
      house: after.name,
      set: set.map(({ figure, name }) => ({
        label: labelOf(figure),
        now: figureInWords(name, after.house[name]),
        before: stood(name),
      })),
      refused,
      moved: (Object.keys(numberFigures) as NumberName[])
        .filter((name) => !(name in given) && before[name] !== after.house[name])
        .map((name) => numberFigures[name].label),
      stands: () => liveHouse() === after.house && liveName() === after.name,
      putBack,
    };
  });
}
