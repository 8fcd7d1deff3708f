// Keeps every figure, conditional sentence and name of the house in the text right, for the whole page, from one line.
import { createEffect, createRoot } from 'solid-js';
import { paces, type Pace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { withoutUnit } from './bare.ts';
import { conditions, isCondition } from './conditions.ts';
import { builtInHouse, builtInName, figureNames } from './figures.ts';
import { figureText } from './prose.ts';
import { liveLine, liveName } from './store.ts';

const isPace = (text: string | undefined): text is Pace => text !== undefined && Object.hasOwn(paces, text);

function setFigure(element: HTMLElement | SVGElement, line: Line): void {
  const { figure, per, digits, bare } = element.dataset;
  const whole = figureText(
    line,
    figure!,
    isPace(per) ? per : 'mash',
    digits === undefined ? undefined : Number(digits),
  );
  const text = bare === undefined ? whole : withoutUnit(whole);
  if (element.textContent !== text) element.textContent = text;
}

const isOwn = (name: string, { house }: Line) =>
  name !== builtInName || figureNames.some((figure) => house[figure] !== builtInHouse[figure]);

createRoot(() => {
  const figures = document.querySelectorAll<HTMLElement | SVGElement>('[data-figure]');
  const sentences = document.querySelectorAll<HTMLElement>('[data-when]');
  const names = document.querySelectorAll<HTMLElement>('[data-house-name]');
  const ownOnly = document.querySelectorAll<HTMLElement>('[data-own-house]');
  createEffect(() => {
    const isHidden = !isOwn(liveName(), liveLine());
    for (const element of ownOnly) element.hidden = isHidden;
  });
  // Islands that are not needed yet come now: what was built speaks of another house.
  createEffect(() => {
    if (!figureNames.some((figure) => liveLine().house[figure] !== builtInHouse[figure])) return;
    document.documentElement.dataset['figures'] = 'own';
    dispatchEvent(new Event('figures-changed'));
  });
  createEffect(() => names.forEach((element) => (element.textContent = liveName())));
  createEffect(() => {
    const line = liveLine();
    for (const element of figures) setFigure(element, line);
    for (const sentence of sentences) {
      const { when } = sentence.dataset;
      if (isCondition(when)) sentence.hidden = !conditions[when](line);
    }
  });
});
