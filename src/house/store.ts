// The one house of the page: every island reads and writes this, and it is kept in the browser.
import { createEffect, createMemo, createRoot, createSignal, on, onMount } from 'solid-js';
import { isServer } from 'solid-js/web';
import type { House } from '../core/line/house.ts';
import { line, type Line } from '../core/line/line.ts';
import { keepText, keptText } from './browser-store.ts';
import { builtInLine } from './built-in.ts';
import { decode, encode, propose } from './codec.ts';
import { builtInHouse, builtInName, figureNames, type FigureName } from './figures.ts';
import { linkOf, textOfLink } from './link.ts';
import { freeName, readShelf, withHouse, withoutHouse, type Shelf } from './shelf.ts';

const KEY = 'malt-spirit-handbook/house';
const SHELF = 'malt-spirit-handbook/shelf';
const KEPT_ASIDE = 'malt-spirit-handbook/kept-aside';
const VISIT = 'malt-spirit-handbook/visit'; // in the tab's own storage: a shared house while it is looked at
const SAVE_AFTER = 150; // ms of quiet before a change is written
const NOT_KEPT =
  'This browser does not let the handbook keep your figures; they last until the page is closed.';
const KEPT = 'The rest is in use; the text is kept aside and can be downloaded.';

/** The line of a house that is known to run. */
function running(house: House): Line {
  const result = line(house);
  if ('refused' in result) throw new Error(`A house that does not run was let in: ${result.refused}`);
  return result;
}

const [house, setHouse] = createSignal(builtInHouse);
const [name, setName] = createSignal(builtInName);
const [shelf, setShelf] = createSignal<Shelf>({});
const [visiting, setVisiting] = createSignal(false);
const [troubles, setTroubles] = createSignal<readonly string[]>([]);
const currentLine = createRoot(() =>
  createMemo(() => (house() === builtInHouse ? builtInLine : running(house()))),
);

/** Writes to storage, or tells the reader that it cannot be. */
function store(key: string, text: string): boolean {
  const isKept = keepText(key, text);
  if (!isKept) setTroubles([NOT_KEPT]);
  return isKept;
}

/** Takes a text as the house; what it could not use is kept aside, word for word. Returns what was wrong. */
function take(text: string): readonly string[] {
  const { house, name, problems } = decode(text);
  setHouse(house);
  setName(name);
  if (problems.length > 0) store(KEPT_ASIDE, text);
  setTroubles(problems.length === 0 ? [] : [...problems, KEPT]);
  return problems;
}

let written: string | null = null; // the text under the key, as this tab last wrote or read it
let timer: ReturnType<typeof setTimeout> | undefined;

/** Writes the house as it stands, under its key and on the shelf; a visit is not written. */
function save(): void {
  clearTimeout(timer);
  timer = undefined;
  const text = encode({ name: name(), house: house() });
  if (visiting() || text === written || !store(KEY, text)) return;
  written = text;
  putOnShelf(withHouse(readShelf(keptText(SHELF)), name(), text));
}

function putOnShelf(next: Shelf): void {
  setShelf(next);
  store(SHELF, JSON.stringify(next));
}

/** Takes what another tab wrote, and keeps on top of it what was changed here and is not yet written. */
function joinOtherTab(text: string): void {
  const before = written === null ? builtInHouse : decode(written).house;
  const here = house();
  const changedHere = figureNames.filter((figure) => here[figure] !== before[figure]);
  written = text;
  take(text);
  for (const figure of changedHere) changeFigure(figure, here[figure]);
}

/** A house shared by link, in the address or still being looked at in this tab. */
function startVisit(): boolean {
  const shared = textOfLink(location.hash);
  const text = shared ?? keptText(VISIT, () => sessionStorage);
  if (text === null) return false;
  setVisiting(true);
  take(text);
  keepText(VISIT, text, () => sessionStorage); // where that is forbidden, the visit lasts for this page
  return true;
}

function keepInBrowser(): void {
  try {
    localStorage.getItem(KEY);
  } catch {
    setTroubles([NOT_KEPT]);
  }
  written = keptText(KEY);
  setShelf(readShelf(keptText(SHELF)));
  if (!startVisit() && written !== null) take(written);
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
  addEventListener('hashchange', () => textOfLink(location.hash) !== undefined && startVisit());
  addEventListener('storage', ({ key, newValue }) => {
    if (key === SHELF) setShelf(readShelf(newValue));
    if (key === KEY && newValue !== null && !visiting()) joinOtherTab(newValue);
  });
}

if (!isServer) keepInBrowser();

/** Changes one figure, or says in a sentence why it cannot be so. Only readers call this; results never do. */
export function changeFigure(figure: FigureName, value: unknown): string | undefined {
  if (house()[figure] === value) return undefined;
  const proposal = propose(house(), figure, value);
  if ('problem' in proposal) return proposal.problem;
  setHouse(proposal.house);
  return undefined;
}

/** Goes back to the built-in figures, all at once; the house keeps its name. */
export function resetHouse(): void {
  setHouse(builtInHouse);
}

/** Gives the house another name; on the shelf it moves. Refuses a name that is empty or taken. */
export function renameHouse(wanted: string): string | undefined {
  const next = wanted.trim().slice(0, 80);
  if (next === '') return 'The name of the house: nothing was given; it needs at least one letter.';
  if (next === name()) return undefined;
  if (Object.hasOwn(shelf(), next))
    return `The name of the house: “${next}” is on the shelf already; choose another.`;
  putOnShelf(withoutHouse(shelf(), name()));
  setName(next);
  return undefined;
}

/** Leaves the house on the shelf as it is, and goes on with a copy of it. */
export function copyHouse(): void {
  save();
  setName(freeName(`${name()}, copy`, shelf()));
}

/** Takes a house from the shelf; the one that was open stays there. */
export function openHouse(wanted: string): void {
  save();
  const text = shelf()[wanted];
  if (text !== undefined) take(text);
}

/** Takes a house off the shelf for good; the open one cannot be. */
export function dropHouse(unwanted: string): void {
  if (unwanted !== name()) putOnShelf(withoutHouse(shelf(), unwanted));
}

/** Opens a house from a file's text under a name of its own. Returns what was wrong; a text that is no house changes nothing. */
export function loadHouse(text: string): readonly string[] {
  const reading = decode(text);
  if (reading.isHouse === false) return reading.problems;
  save();
  const problems = take(text);
  setName(freeName(reading.name, shelf()));
  return problems;
}

/** Keeps the house that is visited, as one of the reader's own. */
export function keepVisit(): void {
  endVisit();
  setName(freeName(name(), shelf()));
  save();
}

/** Leaves the house that is visited, and goes back to the reader's own. */
export function leaveVisit(): void {
  endVisit();
  const own = keptText(KEY);
  if (own !== null) return void take(own);
  setHouse(builtInHouse);
  setName(builtInName);
}

function endVisit(): void {
  setVisiting(false);
  try {
    sessionStorage.removeItem(VISIT);
  } catch {
    // It was never written.
  }
  if (textOfLink(location.hash) !== undefined) history.replaceState(null, '', location.pathname);
}

/** The text that could not be used in full when a house was read, if there is one. */
export function keptAside(): string | null {
  return isServer ? null : keptText(KEPT_ASIDE);
}

/** The live line, and the house's name, for code that runs after the page is built and hydrates nothing. */
export const liveLine = currentLine;
export const liveName = name;

/**
 * The house inside an island. Until the island is mounted it answers with the built-in house, as the page was
 * built; reading the store while hydrating would leave the built, stale text on the page.
 */
export function useHouse() {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  const text = () => encode({ name: name(), house: house() });
  return {
    mounted,
    house: () => (mounted() ? house() : builtInHouse),
    name: () => (mounted() ? name() : builtInName),
    line: () => (mounted() ? currentLine() : builtInLine),
    troubles: () => (mounted() ? troubles() : []),
    shelf: () => (mounted() ? shelf() : {}),
    visiting: () => mounted() && visiting(),
    /** The house as a file's text, and as the end of an address. */
    text,
    link: () => linkOf(text()),
  };
}
