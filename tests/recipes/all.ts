// Every recipe.
import { computedFigure, givenFigure } from './figures.ts';
import { caution, chapterPage, page } from './pages.ts';
import { calculator, kind } from './questions.ts';
import type { Recipe } from './recipe.ts';

export const recipes: readonly Recipe[] = [
  givenFigure,
  computedFigure,
  calculator,
  kind,
  page,
  chapterPage,
  caution,
];
