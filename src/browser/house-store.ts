// The one house of the page: every island reads and writes this, and it is kept in the browser.
import { batch, createEffect, createRoot, createSignal, on, onMount, untrack } from 'solid-js';
import { isServer } from 'solid-js/web';
import {
  HOUSE_KEY as KEY,
  VISIT_KEY as VISIT,
  dropText,
  keepAside,
  keepText,
  textsKeptAside as asides,
  keptText,
  storageKey,
  mayRead,
  tabStorage,
} from './browser-store.ts';
import { lineOf } from '../house/line-of.ts';
import { decodeHouse, encodeHouse, type WholeHouse } from '../house/codec.ts';
import { builtInHouse, builtInName } from '../house/figures.ts';
import { isShort, HOUSE_LINK_MARK, textOfLink, textOfShortLink } from '../house/link.ts';
import type { Trial } from '../house/trial.ts';
import { laidElsewhere } from '../house/parts/laid-elsewhere.ts';
import { withPart, type HousePart, type PartId, type HouseParts } from '../house/parts/part.ts';
import type { HeardChange } from '../house/join-tabs.ts';
import { beginWith, joinMissed, onOtherTabs, tellOtherTabs } from './other-tabs.ts';
import { freeName, readShelf, withHouse, type Shelf } from '../house/shelf.ts';

const SHELF = storageKey('shelf');
const KEPT_ASIDE = storageKey('kept-aside');
const SAVE_AFTER = 150; // ms of quiet before a change is written
const NOT_KEPT =
  'This browser does not let the handbook keep your figures; they last until the page is closed.';
const KEPT = 'The rest is in use; the text is set aside and can be downloaded.';
const NOT_TAKEN = 'It changed nothing here; the text is set aside and can be downloaded.';
const NEWS_UNREAD =
  'Another tab sent a change of the house that cannot be read here; nothing was changed. If another version of the handbook is open, reload this page.';
const WITHOUT_PARTS =
  'A part of the book did not come, and without it stills and malts do not count; load the page again.';
const LINK_NOT_READ =
  'A part of the book did not come, and without it this link cannot be read; load the page again.';
const NOT_ASIDE =
  'There is no room to set the text aside, so it stays where it is; what you change now lasts until the page is closed.';

/** Where something may go wrong; each tells its own, and what one tells does not silence another. */
type Door = 'kept' | 'shelf' | 'link' | 'browser' | 'tab' | 'news' | 'line' | `part:${PartId}`;

const [house, setHouse] = createSignal(builtInHouse);
const [name, setName] = createSignal(builtInName);
const [parts, setParts] = createSignal<HouseParts>({});
const [shelf, setShelf] = createSignal<Shelf>({});
const [visiting, setVisiting] = createSignal(false);
const [troubles, setTroubles] = createSignal<Readonly<Partial<Record<Door, readonly string[]>>>>({});

const [isReady, setReady] = createSignal(true);
/** False while what this house’s line is reckoned with is still on its way: until then a page stays as it was built. */
export const isLineReady = isReady;
/** What a house keeps that moves its line. */
const moving = () =>
  parts().plant ?? parts().malts ?? parts().bottles ?? (laidElsewhere(parts().stock) || undefined);

/** Fetches what a line is reckoned with, for a house that keeps more than figures. */
function followParts(): void {
  if (moving() !== undefined)
    void import('./line-store.ts')
      .catch(() => tellTrouble('line', [WITHOUT_PARTS]))
      .then(() => setReady(true));
}

/** Tells the reader what went wrong at a door, or that all is well there. */
export const tellTrouble = (door: Door, sentences: readonly string[]) =>
  setTroubles({ ...troubles(), [door]: sentences });

/** Keys whose text could neither be read in full nor kept aside: nothing is written over it. */
const held = new Set<string>();

/** Tells what a kept text could not give, and keeps it aside, word for word, before anything is written over it. */
function tellOf(door: Door, key: string, text: string, problems: readonly string[], kept = KEPT): void {
  held.delete(key);
  if (problems.length > 0 && !keepAside(KEPT_ASIDE, text)) held.add(key);
  tellTrouble(door, problems.length === 0 ? [] : [...problems, held.has(key) ? NOT_ASIDE : kept]);
}

/** Writes to storage, or tells the reader that it cannot be. */
function store(key: string, text: string): boolean {
  if (held.has(key)) return false;
  const isKept = keepText(key, text);
  tellTrouble('browser', isKept ? [] : [NOT_KEPT]);
  return isKept;
}

let written: string | null = null; // the text under the key, as this tab last wrote or read it

/** The house as it stands. */
export const wholeHouseNow = (): WholeHouse => ({ name: name(), house: house(), parts: parts() });

/** Shows a house, whole. */
export function takeHouse({ house, name, parts }: WholeHouse): void {
  batch(() => {
    setHouse(house);
    setName(name);
    setParts(parts);
  });
}

/** Tells what a house could not give that is the reader's own now. */
export const tellOfKept = (text: string, problems: readonly string[]): void =>
  tellOf('kept', KEY, text, problems);

/** Takes the house that is kept in this browser. One whose name, or all of it, cannot be read takes no name from the shelf. */
function takeKept(text: string): void {
  written = text;
  const reading = decodeHouse(text);
  takeHouse(reading.isNamed ? reading : { ...reading, name: freeName(reading.name, shelf()) });
  tellOfKept(text, reading.problems);
}

/** The shelf as it is kept now. */
export function keptShelf(): Shelf {
  const text = keptText(SHELF);
  const { shelf, isWhole } = readShelf(text);
  if (isWhole) held.delete(SHELF);
  else tellOf('shelf', SHELF, text!, ['Your shelf of houses is damaged and cannot be read in full.']);
  return shelf;
}

let timer: ReturnType<typeof setTimeout> | undefined;

/** Writes the house as it stands, under its key and on the shelf; a visit is not written. */
export function saveHouse(): void {
  clearTimeout(timer);
  timer = undefined;
  const text = encodeHouse(wholeHouseNow());
  if (visiting() || text === written || !store(KEY, text)) return;
  written = text;
  tellOtherTabs(wholeHouseNow());
  keepShelf(withHouse(keptShelf(), name(), text));
}

function saveSoon(): void {
  clearTimeout(timer);
  timer = setTimeout(saveHouse, SAVE_AFTER);
}

/** Takes the shelf as it has become, and keeps it. */
export function keepShelf(next: Shelf): void {
  setShelf(next);
  store(SHELF, JSON.stringify(next));
}

/** Tells of what another program, or a newer handbook, wrote in place of the house, and cannot be read in full; the house of this tab goes on. */
function tellOfStrange(text: string): void {
  const { problems } = decodeHouse(text);
  if (problems.length === 0) return;
  written = text;
  tellOf('kept', KEY, text, problems, NOT_TAKEN);
}

/** Takes what another tab wrote, put together with what was changed here in the meantime; what cannot be read changes nothing. */
function takeFromTab(text?: string, join?: (here?: WholeHouse) => HeardChange): void {
  tellTrouble('news', join ? [] : [NEWS_UNREAD]);
  if (text === undefined || !join) return;
  written = text;
  const own = visiting() ? undefined : wholeHouseNow();
  const { here, gaveWay } = join(own);
  if (gaveWay) setAside(gaveWay);
  if (!own) return;
  if (timer !== undefined && here.name !== own.name)
    keepShelf(withHouse(keptShelf(), own.name, encodeHouse(own)));
  takeHouse(here);
  saveSoon();
}

/** Puts a house on the shelf that another tab's change has no room for, and tells the reader. */
function setAside(house: WholeHouse): void {
  const shelf = keptShelf();
  const name = freeName(`${house.name}, set aside`, shelf);
  keepShelf(withHouse(shelf, name, encodeHouse({ ...house, name })));
  tellTrouble('tab', [
    `Another tab changed the house too, and both changes cannot stand. The other tab’s is kept; the house as it stood here is on the shelf as “${name}”.`,
  ]);
}

/** Takes what other tabs changed while this page lay in the browser's memory, to be shown again by its Back button. */
function catchUp(): void {
  const [own, visit] = [keptText(KEY), keptText(VISIT, tabStorage)];
  setShelf(keptShelf());
  if (visiting() && visit === null) leaveVisit();
  if (own !== null) tellOfStrange(own);
  if (own !== null && own !== written) takeFromTab(own, (here) => joinMissed(decodeHouse(own), here));
  if (visit !== null) startVisit();
}

/** A house shared by link, in the address or still being looked at in this tab. */
function startVisit(): void {
  const { hash } = location;
  if (!isShort(hash)) return visit(textOfLink(hash) ?? keptText(VISIT, tabStorage));
  void textOfShortLink(hash).then(visit, () => tellTrouble('link', [LINK_NOT_READ]));
}

function visit(text: string | null): void {
  if (text === null) return;
  const reading = decodeHouse(text);
  tellTrouble('link', reading.problems);
  if (!reading.isHouse) return;
  if (timer !== undefined) saveHouse();
  setVisiting(true);
  takeHouse(reading);
  keepText(VISIT, text, tabStorage); // where that is forbidden, the visit lasts for this page
}

function keepInBrowser(): void {
  if (!mayRead()) tellTrouble('browser', [NOT_KEPT]);
  const own = keptText(KEY);
  setShelf(keptShelf());
  if (own !== null) takeKept(own);
  beginWith(wholeHouseNow());
  startVisit();
  setReady(moving() === undefined);
  createRoot(() => {
    createEffect(on([house, name, parts], saveSoon, { defer: true }));
    createEffect(followParts);
  });
  addEventListener('pagehide', () => timer !== undefined && saveHouse());
  addEventListener('hashchange', () => location.hash.startsWith(HOUSE_LINK_MARK) && startVisit());
  addEventListener('storage', ({ key, newValue }) => {
    if (key === SHELF) setShelf(keptShelf());
    if (key === KEY && newValue !== null && !visiting()) tellOfStrange(newValue);
  });
  onOtherTabs(takeFromTab);
  addEventListener('pageshow', ({ persisted }) => persisted && catchUp());
}

if (!isServer) keepInBrowser();

const [trial, setTrial] = createSignal<Trial>();
/** Keeps the last change, as change-figure.ts makes it. */
export { setHouse as putHouse, setName, setTrial };

/** The last figure that the reader changed, or tried to, and what came of it; nothing once the house has changed otherwise. */
export const lastTrial = (): Trial | undefined => (trial()?.after === house() ? trial() : undefined);

/** Changes a part of the house, whole; islands do so through `usePart`. */
export function changePart<T>(part: HousePart<T>, value: T): void {
  setParts(withPart(parts(), part, value));
}

/** Tells what a saved part could not give, and keeps the text aside before anything is written over it. */
export function tellOfPart(id: PartId, problems: readonly string[]): void {
  untrack(() => {
    const door = `part:${id}` as const;
    if (problems.length === 0 && !troubles()[door]?.length) return;
    if (problems.length === 0 || visiting()) tellTrouble(door, problems);
    else tellOf(door, KEY, encodeHouse(wholeHouseNow()), problems);
  });
}

/** Sees to it that the reader's own house is on the shelf, before another takes its place. */
export function shelveOwn(): void {
  saveHouse();
  const own = keptText(KEY);
  if (own === null) return;
  const { name, isHouse } = decodeHouse(own);
  const now = keptShelf();
  if (isHouse && !Object.hasOwn(now, name)) keepShelf(withHouse(now, name, own));
}

/** Keeps the house that is visited, as one of the reader's own. */
export function keepVisit(): void {
  shelveOwn();
  endVisit();
  setName(freeName(name(), shelf()));
  saveHouse();
}

/** Leaves the house that is visited, and goes back to the reader's own. */
export function leaveVisit(): void {
  endVisit();
  tellTrouble('link', []);
  const own = keptText(KEY);
  if (own !== null) return takeKept(own);
  takeHouse({ house: builtInHouse, name: builtInName, parts: {} });
}

/** Ends the visit of a house from a link. */
export function endVisit(): void {
  setVisiting(false);
  dropText(VISIT, tabStorage);
  if (location.hash.startsWith(HOUSE_LINK_MARK)) history.replaceState(null, '', location.pathname);
}

/** The texts that could not be used in full when they were read, the oldest first. */
export function housesKeptAside(): readonly string[] {
  return isServer || Object.keys(troubles()).length === 0 ? [] : asides(KEPT_ASIDE);
}

/** The live house, its line and its name, for code that runs after the page is built and hydrates nothing. */
export const liveHouse = house;
export const liveLine = () => lineOf(house());
export const liveName = name;
/** True while a house from a link is looked at. */
export const isVisit = visiting;
export const liveParts = parts;
export const liveShelf = shelf;

/**
 * The house inside an island. Until the island is mounted it answers with the built-in house, as the page was
 * built; reading the store while hydrating would leave the built, stale text on the page.
 */
export function useHouse() {
  const [isMounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  const mounted = () => isMounted() && isReady();
  const text = () => encodeHouse(wholeHouseNow());
  return {
    mounted,
    house: () => (mounted() ? house() : builtInHouse),
    name: () => (mounted() ? name() : builtInName),
    line: () => lineOf(mounted() ? house() : builtInHouse),
    troubles: () => (mounted() ? [...new Set(Object.values(troubles()).flat())] : []),
    shelf: () => (mounted() ? shelf() : {}),
    visiting: () => mounted() && visiting(),
    /** The house as a file's text. */
    text,
  };
}
