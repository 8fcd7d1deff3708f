// Keeps every figure in the text right: one effect for the whole page, from one line.
import { createEffect, createRoot } from 'solid-js';
import { paces, type Pace } from '../core/line/ledger.ts';
import { figureText } from './prose.ts';
import { liveLine } from './store.ts';

const isPace = (text: string | undefined): text is Pace => text !== undefined && Object.hasOwn(paces, text);

createRoot(() => {
  const figures = document.querySelectorAll<HTMLElement | SVGElement>('[data-figure]');
  createEffect(() => {
    const line = liveLine();
    for (const element of figures) {
      const { figure, per, digits } = element.dataset;
      const text = figureText(
        line,
        figure!,
        isPace(per) ? per : 'mash',
        digits === undefined ? undefined : Number(digits),
      );
      if (element.textContent !== text) element.textContent = text;
    }
  });
});
