// Keeps every figure, conditional sentence and name of the house in the text right, for the whole page, from one line.
import { createEffect, createMemo, createRoot } from 'solid-js';
import { paces, type LedgerPace } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { withoutUnit } from '../house/without-unit.ts';
import { conditions, isCondition } from '../house/conditions.ts';
import { builtInHouse, builtInName, figureNames } from '../house/figures.ts';
import { whenIdle } from './defer.ts';
import { liveCountedAt, liveDoubtAt, liveHanging, liveUnknown, liveUnknownFigures } from './known-store.ts';
import { figureText, secondFigureText } from '../house/prose.ts';
import { isLineReady, liveHouse, liveLine, liveName, liveParts } from './house-store.ts';

const isPace = (text: string | undefined): text is LedgerPace =>
  text !== undefined && Object.hasOwn(paces, text);

function setFigure(element: HTMLElement | SVGElement, line: Line): void {
  const { figure, per, digits, bare } = element.dataset;
  const whole = figureText(
    line,
    figure!,
    isPace(per) ? per : 'mash',
    digits === undefined ? undefined : Number(digits),
  );
  const isPlain = bare === undefined && (per ?? 'mash') === 'mash' && element instanceof HTMLElement;
  const counted = isPlain ? liveCountedAt(figure!) : undefined;
  const text =
    bare === undefined
      ? counted === undefined
        ? whole + (isPlain ? secondFigureText(line, figure!) : '')
        : `${counted}, as counted (computed ${whole})`
      : withoutUnit(whole);
  if (element.textContent !== text) element.textContent = text;
  element.classList.toggle('doubt', liveDoubtAt(figure!) !== undefined);
}

function setSentence(element: HTMLElement, line: Line): void {
  const { when } = element.dataset;
  if (isCondition(when)) element.hidden = !conditions[when](line, liveUnknownFigures());
}

function hasOwnFigures(): boolean {
  const house = liveHouse();
  return figureNames.some((figure) => house[figure] !== builtInHouse[figure]);
}

createRoot(() => {
  const figures = document.querySelectorAll<HTMLElement | SVGElement>('[data-figure]');
  const sentences = document.querySelectorAll<HTMLElement>('[data-when]');
  const names = document.querySelectorAll<HTMLElement>('[data-house-name]');
  const ownOnly = document.querySelectorAll<HTMLElement>('[data-own-house]');
  const changedOnly = document.querySelectorAll<HTMLElement>('[data-changed-house]');
  const isChanged = createMemo(() => liveName() === builtInName && hasOwnFigures());
  const isAsBuilt = createMemo(() => liveName() === builtInName && !isChanged());
  createEffect(() => {
    for (const element of ownOnly) element.hidden = isAsBuilt();
    for (const element of changedOnly) element.hidden = !isChanged();
  });
  const known = createMemo(liveUnknown, undefined, {
    equals: (was, is) => was.unknown === is.unknown && was.of === is.of,
  });
  createEffect(() => {
    const { unknown, of } = known();
    for (const element of document.querySelectorAll<HTMLElement>('[data-unknown]')) {
      element.hidden = unknown === 0;
      element.textContent = `${of - unknown} of its ${of} figures are known; the other ${unknown} are ${builtInName}’s. What is one of those, or hangs on them, is underlined with dots: it is an estimate.`;
    }
  });
  createEffect(() => names.forEach((element) => (element.textContent = liveName())));
  // What the house says of itself is fetched only where the text tells it, and it says otherwise than the book was built.
  if (document.querySelector('[data-fact]'))
    createEffect(() => {
      if (liveName() !== builtInName || liveParts().facts !== undefined)
        void import('./facts-store.ts').catch(() => undefined); // without it, the text stays
    });
  const setAll = () => {
    const line = liveLine();
    for (const element of figures) setFigure(element, line);
    for (const sentence of sentences) setSentence(sentence, line);
  };
  let isOpen = false;
  let isUntouched = true;
  createEffect(() => {
    liveHanging();
    if (!isLineReady()) return; // what is built stands until this house’s line is there
    const opens = !isOpen; // with a house of its own it is set at once
    isOpen = true;
    const isAsGiven = liveHouse() === builtInHouse && liveUnknown().unknown === 0; // followed also once it was touched
    isUntouched &&= isAsGiven;
    if (isUntouched) return; // nothing to set, so nothing to compute
    if (opens) setAll();
    else whenIdle(setAll);
  });
});
