// The one house of the page: every island reads and writes this, and it is kept in the browser.
import { createEffect, createMemo, createRoot, createSignal, on, onMount } from 'solid-js';
import { isServer } from 'solid-js/web';
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { builtInLine } from './built-in.ts';
import { decode, encode, propose } from './codec.ts';
import { builtInHouse, builtInName, type FigureName } from './figures.ts';

const KEY = 'malt-spirit-handbook/house';
const KEPT_ASIDE = 'malt-spirit-handbook/kept-aside';
const SAVE_AFTER = 150; // ms of quiet before a change is written

/** The line of a house that is known to run. */
function running(house: House): Line {
  const result = line(house);
  if ('refused' in result) throw new Error(`A house that does not run was let in: ${result.refused}`);
  return result;
}

const [house, setHouse] = createSignal(builtInHouse);
const [name, setName] = createSignal(builtInName);
const [troubles, setTroubles] = createSignal<readonly string[]>([]);
const currentLine = createRoot(() =>
  createMemo(() => (house() === builtInHouse ? builtInLine : running(house()))),
);

/** Takes a saved text as the house; what it could not use is kept aside, word for word. */
function take(text: string): void {
  const reading = decode(text);
  setHouse(reading.house);
  setName(reading.name);
  if (reading.problems.length > 0) localStorage.setItem(KEPT_ASIDE, text);
  setTroubles(
    reading.problems.length === 0
      ? []
      : [...reading.problems, 'The rest is in use; the saved text is kept aside and can be downloaded.'],
  );
}

function keepInBrowser(): void {
  let saved: string | null = null;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const save = () => {
    clearTimeout(timer);
    timer = undefined;
    const text = encode({ name: name(), house: house() });
    if (text === saved) return;
    try {
      localStorage.setItem(KEY, text);
      saved = text;
    } catch {
      setTroubles([
        'This browser does not let the handbook keep your figures; they last until the page is closed.',
      ]);
    }
  };
  try {
    saved = localStorage.getItem(KEY);
    if (saved !== null) take(saved);
  } catch {
    setTroubles([
      'This browser does not let the handbook keep your figures; they last until the page is closed.',
    ]);
  }
  createRoot(() =>
    createEffect(
      on(
        [house, name],
        () => {
          clearTimeout(timer);
          timer = setTimeout(save, SAVE_AFTER);
        },
        { defer: true },
      ),
    ),
  );
  addEventListener('pagehide', () => timer !== undefined && save());
  addEventListener('storage', (event) => {
    if (event.key !== KEY || event.newValue === null) return;
    saved = event.newValue;
    take(event.newValue);
  });
}

if (!isServer) keepInBrowser();

/** Changes one figure, or says in a sentence why it cannot be so. Only readers call this; results never do. */
export function changeFigure(figure: FigureName, value: unknown): string | undefined {
  const proposal = propose(house(), figure, value);
  if ('problem' in proposal) return proposal.problem;
  setHouse(proposal.house);
  return undefined;
}

/** What `changeFigure` would say, without changing anything. */
export function objectionTo(figure: FigureName, value: unknown): string | undefined {
  const proposal = propose(house(), figure, value);
  return 'problem' in proposal ? proposal.problem : undefined;
}

/** Goes back to the built-in house, all figures at once. */
export function resetHouse(): void {
  setHouse(builtInHouse);
}

/** The text that could not be used in full when the house was read, if there is one. */
export function keptAside(): string | null {
  return isServer ? null : localStorage.getItem(KEPT_ASIDE);
}

/** The live line for code that runs after the page is built and hydrates nothing. */
export const liveLine = currentLine;

/**
 * The house inside an island. Until the island is mounted it answers with the built-in house, as the page was
 * built; reading the store while hydrating would leave the built, stale text on the page.
 */
export function useHouse() {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  return {
    mounted,
    house: () => (mounted() ? house() : builtInHouse),
    name: () => (mounted() ? name() : builtInName),
    line: () => (mounted() ? currentLine() : builtInLine),
    troubles: () => (mounted() ? troubles() : []),
  };
}
