// Keeps every figure, conditional sentence and name of the house in the text right, for the whole page, from one line.
import { createEffect, createRoot } from 'solid-js';
import { paces, type Pace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { withoutUnit } from './bare.ts';
import { conditions, isCondition } from './conditions.ts';
import { builtInHouse, builtInName, figureNames } from './figures.ts';
import { whenIdle } from './idle.ts';
import { figureText } from './prose.ts';
import { liveHouse, liveLine, liveName } from './store.ts';

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

function setSentence(element: HTMLElement, line: Line): void {
  const { when } = element.dataset;
  if (isCondition(when)) element.hidden = !conditions[when](line);
}

const hasOwnFigures = () => figureNames.some((figure) => liveHouse()[figure] !== builtInHouse[figure]);

createRoot(() => {
  const figures = document.querySelectorAll<HTMLElement | SVGElement>('[data-figure]');
  const sentences = document.querySelectorAll<HTMLElement>('[data-when]');
  const names = document.querySelectorAll<HTMLElement>('[data-house-name]');
  const ownOnly = document.querySelectorAll<HTMLElement>('[data-own-house]');
  createEffect(() => {
    const isHidden = liveName() === builtInName && !hasOwnFigures();
    for (const element of ownOnly) element.hidden = isHidden;
  });
  // Islands that are not needed yet come now: what was built speaks of another house.
  createEffect(() => {
    if (!hasOwnFigures()) return;
    document.documentElement.dataset['figures'] = 'own';
    dispatchEvent(new Event('figures-changed'));
  });
  createEffect(() => names.forEach((element) => (element.textContent = liveName())));
  const setAll = () => {
    const line = liveLine();
    for (const element of figures) setFigure(element, line);
    for (const sentence of sentences) setSentence(sentence, line);
  };
  const inSight = new Set<Element>();
  const watcher = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) inSight[isIntersecting ? 'add' : 'delete'](target);
  });
  let isAsBuilt = true;
  createEffect(() => {
    isAsBuilt &&= liveHouse() === builtInHouse;
    if (isAsBuilt) return; // nothing to set, so nothing to compute
    if (inSight.size === 0) return setAll(); // nobody has looked yet where they stand
    const line = liveLine();
    for (const element of figures) if (inSight.has(element)) setFigure(element, line);
    for (const sentence of sentences) if (inSight.has(sentence)) setSentence(sentence, line);
    whenIdle(setAll);
  });
  for (const element of [...figures, ...sentences]) watcher.observe(element);
});
