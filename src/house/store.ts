// The one house of the page: every island reads and writes this, and it is kept in the browser.
import { batch, createEffect, createRoot, createSignal, on, onMount, untrack } from 'solid-js';
import { isServer } from 'solid-js/web';
import {
  HOUSE_KEY as KEY,
  VISIT_KEY as VISIT,
  keepAside,
  keepText,
  keptAside as asides,
  keptText,
  keyOf,
} from './browser-store.ts';
import { keepLine, lineOf } from './line-of.ts';
import { decode, encode, propose, type WholeHouse } from './codec.ts';
import { enter, type Entered } from './entering.ts';
import { builtInHouse, builtInName, isNumberName, type FigureName, type NumberName } from './figures.ts';
import type { Way } from '../core/figures/standing.ts';
import type { FigureId } from '../core/figures/index.ts';
import type { Giving } from '../core/line/change.ts';
import { isShort, MARK, textOfLink, textOfShortLink } from './link.ts';
import type { Trial } from './trial.ts';
import { nameProblem } from './name.ts';
import { afterTyping, countedProblem, knownOf, knownPart, withCounted, withGiven } from './parts/known.ts';
import { withPart, type HousePart, type PartId, type Parts } from './parts/part.ts';
import type { Heard } from './join.ts';
import { beginWith, joinMissed, onOtherTabs, tellOtherTabs } from './other-tabs.ts';
import { freeName, readShelf, withHouse, withoutHouse, type Shelf } from './shelf.ts';

const SHELF = keyOf('shelf');
const KEPT_ASIDE = keyOf('kept-aside');
const SAVE_AFTER = 150; // ms of quiet before a change is written
const NOT_KEPT =
  'This browser does not let the handbook keep your figures; they last until the page is closed.';
const KEPT = 'The rest is in use; the text is set aside and can be downloaded.';
const NOT_TAKEN = 'It changed nothing here; the text is set aside and can be downloaded.';
const NEWS_UNREAD =
  'Another tab sent a change of the house that cannot be read here; nothing was changed. If another version of the handbook is open, reload this page.';
const LINK_NOT_READ =
  'A part of the book did not come, and without it this link cannot be read; load the page again.';
const NOT_ASIDE =
  'There is no room to set the text aside, so it stays where it is; what you change now lasts until the page is closed.';

/** Where something may go wrong; each tells its own, and what one tells does not silence another. */
type Door = 'kept' | 'shelf' | 'link' | 'browser' | 'tab' | 'news' | `part:${PartId}`;

const [house, setHouse] = createSignal(builtInHouse);
const [name, setName] = createSignal(builtInName);
const [parts, setParts] = createSignal<Parts>({});
const [shelf, setShelf] = createSignal<Shelf>({});
const [visiting, setVisiting] = createSignal(false);
const [troubles, setTroubles] = createSignal<Readonly<Partial<Record<Door, readonly string[]>>>>({});

const tell = (door: Door, sentences: readonly string[]) => setTroubles({ ...troubles(), [door]: sentences });

/** Keys whose text could neither be read in full nor kept aside: nothing is written over it. */
const held = new Set<string>();

/** Tells what a kept text could not give, and keeps it aside, word for word, before anything is written over it. */
function tellOf(door: Door, key: string, text: string, problems: readonly string[], kept = KEPT): void {
  held.delete(key);
  if (problems.length > 0 && !keepAside(KEPT_ASIDE, text)) held.add(key);
  tell(door, problems.length === 0 ? [] : [...problems, held.has(key) ? NOT_ASIDE : kept]);
}

/** Writes to storage, or tells the reader that it cannot be. */
function store(key: string, text: string): boolean {
  if (held.has(key)) return false;
  const isKept = keepText(key, text);
  tell('browser', isKept ? [] : [NOT_KEPT]);
  return isKept;
}

let written: string | null = null; // the text under the key, as this tab last wrote or read it

const now = (): WholeHouse => ({ name: name(), house: house(), parts: parts() });

function take({ house, name, parts }: WholeHouse): void {
  batch(() => {
    setHouse(house);
    setName(name);
    setParts(parts);
  });
}

/** Takes the house that is kept in this browser. One whose name, or all of it, cannot be read takes no name from the shelf. */
function takeKept(text: string): void {
  written = text;
  const reading = decode(text);
  take(reading.isNamed ? reading : { ...reading, name: freeName(reading.name, shelf()) });
  tellOf('kept', KEY, text, reading.problems);
}

/** The shelf as it is kept now. */
function keptShelf(): Shelf {
  const text = keptText(SHELF);
  const { shelf, isWhole } = readShelf(text);
  if (isWhole) held.delete(SHELF);
  else tellOf('shelf', SHELF, text!, ['Your shelf of houses is damaged and cannot be read in full.']);
  return shelf;
}

let timer: ReturnType<typeof setTimeout> | undefined;

/** Writes the house as it stands, under its key and on the shelf; a visit is not written. */
function save(): void {
  clearTimeout(timer);
  timer = undefined;
  const text = encode(now());
  if (visiting() || text === written || !store(KEY, text)) return;
  written = text;
  tellOtherTabs(now());
  putOnShelf(withHouse(keptShelf(), name(), text));
}

function saveSoon(): void {
  clearTimeout(timer);
  timer = setTimeout(save, SAVE_AFTER);
}

function putOnShelf(next: Shelf): void {
  setShelf(next);
  store(SHELF, JSON.stringify(next));
}

/** Tells of what another program, or a newer handbook, wrote in place of the house, and cannot be read in full; the house of this tab goes on. */
function tellOfStrange(text: string): void {
  const { problems } = decode(text);
  if (problems.length === 0) return;
  written = text;
  tellOf('kept', KEY, text, problems, NOT_TAKEN);
}

/** Takes what another tab wrote, put together with what was changed here in the meantime; what cannot be read changes nothing. */
function takeFromTab(text?: string, join?: (here?: WholeHouse) => Heard): void {
  tell('news', join ? [] : [NEWS_UNREAD]);
  if (text === undefined || !join) return;
  written = text;
  const own = visiting() ? undefined : now();
  const { here, gaveWay } = join(own);
  if (gaveWay) setAside(gaveWay);
  if (!own) return;
  if (timer !== undefined && here.name !== own.name)
    putOnShelf(withHouse(keptShelf(), own.name, encode(own)));
  take(here);
  saveSoon();
}

/** Puts a house on the shelf that another tab's change has no room for, and tells the reader. */
function setAside(house: WholeHouse): void {
  const shelf = keptShelf();
  const name = freeName(`${house.name}, set aside`, shelf);
  putOnShelf(withHouse(shelf, name, encode({ ...house, name })));
  tell('tab', [
    `Another tab changed the house too, and both changes cannot stand. The other tab’s is kept; the house as it stood here is on the shelf as “${name}”.`,
  ]);
}

/** Takes what other tabs changed while this page lay in the browser's memory, to be shown again by its Back button. */
function catchUp(): void {
  const [own, visit] = [keptText(KEY), keptText(VISIT, () => sessionStorage)];
  setShelf(keptShelf());
  if (visiting() && visit === null) leaveVisit();
  if (own !== null) tellOfStrange(own);
  if (own !== null && own !== written) takeFromTab(own, (here) => joinMissed(decode(own), here));
  if (visit !== null) startVisit();
}

/** A house shared by link, in the address or still being looked at in this tab. */
function startVisit(): void {
  const { hash } = location;
  if (!isShort(hash)) return visit(textOfLink(hash) ?? keptText(VISIT, () => sessionStorage));
  void textOfShortLink(hash).then(visit, () => tell('link', [LINK_NOT_READ]));
}

function visit(text: string | null): void {
  if (text === null) return;
  const reading = decode(text);
  tell('link', reading.problems);
  if (!reading.isHouse) return;
  if (timer !== undefined) save();
  setVisiting(true);
  take(reading);
  keepText(VISIT, text, () => sessionStorage); // where that is forbidden, the visit lasts for this page
}

function keepInBrowser(): void {
  try {
    localStorage.getItem(KEY);
  } catch {
    tell('browser', [NOT_KEPT]);
  }
  const own = keptText(KEY);
  setShelf(keptShelf());
  if (own !== null) takeKept(own);
  beginWith(now());
  startVisit();
  createRoot(() => createEffect(on([house, name, parts], saveSoon, { defer: true })));
  addEventListener('pagehide', () => timer !== undefined && save());
  addEventListener('hashchange', () => location.hash.startsWith(MARK) && startVisit());
  addEventListener('storage', ({ key, newValue }) => {
    if (key === SHELF) setShelf(keptShelf());
    if (key === KEY && newValue !== null && !visiting()) tellOfStrange(newValue);
  });
  onOtherTabs(takeFromTab);
  addEventListener('pageshow', ({ persisted }) => persisted && catchUp());
}

if (!isServer) keepInBrowser();

const [trial, setTrial] = createSignal<Trial>();

/** The last figure that the reader changed, or tried to, and what came of it; nothing once the house has changed otherwise. */
export const lastTrial = (): Trial | undefined => (trial()?.after === house() ? trial() : undefined);

/**
 * Changes one figure, and what gives way to it; or says in a sentence why it cannot be so. Moving one figure on and on
 * is one change, from where it stood first. Only readers call this; results never do.
 */
export function changeFigure(figure: FigureName, value: unknown, gives?: Giving): string | undefined {
  if (house()[figure] === value && gives === undefined)
    return name() === builtInName ? undefined : giveAsItStands(figure);
  const last = lastTrial()?.figure === figure ? lastTrial() : undefined;
  const before = last?.before ?? house();
  const { counted } = knownOf(now());
  const known = last?.known ?? knownOf(now());
  const wasKnown = figure in known.given;
  const chosen = gives ?? (last?.isChosen ? last.gives : undefined);
  const proposal: Entered =
    wasKnown || chosen || name() === builtInName
      ? propose(before, figure, value, chosen)
      : enter(before, figure, value, known);
  const trial = { figure, value, before, known };
  if ('problem' in proposal) {
    setTrial({ ...trial, after: house(), gave: [], problem: proposal.problem });
    return proposal.problem;
  }
  keepLine(proposal.house, proposal.line);
  const taken = chosen ?? proposal.gives;
  batch(() => {
    setHouse(proposal.house);
    if (isNumberName(figure)) {
      const gave = proposal.gave.map((each) => each.figure);
      changePart(knownPart, { ...afterTyping(known, figure, gave), counted });
    }
    setTrial({
      ...trial,
      after: proposal.house,
      gave: proposal.gave,
      ...(taken && { gives: taken, isChosen: chosen !== undefined }),
    });
  });
  return undefined;
}

/** Takes a figure over as it stands: it is the reader's own too. Says how it is known, if that is told. A choice is not put down. */
export function giveAsItStands(figure: FigureName, way?: Way): undefined {
  if (!isNumberName(figure)) return;
  const known = afterTyping(knownOf(now()), figure, []);
  changePart(knownPart, way === undefined ? known : withGiven(known, figure, way));
}

/** Puts a figure back to the built-in house's; it is then not known. */
export function putBack(figure: NumberName): string | undefined {
  const problem =
    house()[figure] === builtInHouse[figure] ? undefined : changeFigure(figure, builtInHouse[figure]);
  if (problem === undefined) changePart(knownPart, withGiven(knownOf(now()), figure, undefined));
  return problem;
}

/** Puts down what was counted of a computed figure, or that it was not. Returns the sentence to show when it cannot be. */
export function count(id: FigureId, value: number | undefined): string | undefined {
  const problem = value === undefined ? undefined : countedProblem(id, value);
  if (problem === undefined) changePart(knownPart, withCounted(knownOf(now()), id, value));
  return problem;
}

/** Changes a part of the house, whole; islands do so through `usePart`. */
export function changePart<T>(part: HousePart<T>, value: T): void {
  setParts(withPart(parts(), part, value));
}

/** Tells what a saved part could not give, and keeps the text aside before anything is written over it. */
export function tellOfPart(id: PartId, problems: readonly string[]): void {
  untrack(() => {
    const door = `part:${id}` as const;
    if (problems.length === 0 && !troubles()[door]?.length) return;
    if (problems.length === 0 || visiting()) tell(door, problems);
    else tellOf(door, KEY, encode(now()), problems);
  });
}

/** Takes the last change back, whole. */
export function takeBack(): void {
  const last = lastTrial();
  if (!last) return;
  const { counted } = knownOf(now());
  batch(() => {
    setHouse(last.before);
    changePart(knownPart, { ...last.known, counted });
  });
}

/** Goes back to the built-in figures, all at once, none of which is then known; the house keeps its name and its other parts. */
export function resetHouse(): void {
  const { counted } = knownOf(now());
  batch(() => {
    setHouse(builtInHouse);
    changePart(knownPart, { given: {}, counted });
  });
}

/** Gives the house another name; on the shelf it moves. Refuses a name that is empty or taken. */
export function renameHouse(wanted: string): string | undefined {
  const next = wanted.trim();
  const problem = nameProblem(next);
  if (problem !== undefined) return problem;
  if (next === name()) return undefined;
  if (Object.hasOwn(shelf(), next))
    return `The name of the house: “${next}” is on the shelf already; choose another.`;
  if (!visiting()) putOnShelf(withoutHouse(keptShelf(), name())); // the reader's own may have the name of one that is visited
  setName(next);
  return undefined;
}

/** Sees to it that the reader's own house is on the shelf, before another takes its place. */
function shelveOwn(): void {
  save();
  const own = keptText(KEY);
  if (own === null) return;
  const { name, isHouse } = decode(own);
  const now = keptShelf();
  if (isHouse && !Object.hasOwn(now, name)) putOnShelf(withHouse(now, name, own));
}

/** Leaves the house on the shelf as it is, and goes on with a copy of it. */
export function copyHouse(): void {
  shelveOwn();
  setName(freeName(`${name()}, copy`, shelf()));
}

/** Takes a house from the shelf; the one that was open stays there. */
export function openHouse(wanted: string): void {
  shelveOwn();
  if (!Object.hasOwn(shelf(), wanted)) return;
  const text = shelf()[wanted]!;
  const reading = decode(text);
  if (!reading.isHouse)
    return void tell('shelf', [`${wanted} cannot be opened. ${reading.problems.join(' ')}`]);
  endVisit();
  tell('link', []);
  tell('tab', []);
  take(reading.name === wanted ? reading : { ...reading, name: freeName(reading.name, shelf()) });
  tellOf('kept', KEY, text, reading.problems);
}

/** Takes a house off the shelf for good; the open one cannot be. */
export function dropHouse(unwanted: string): void {
  if (unwanted !== name()) putOnShelf(withoutHouse(keptShelf(), unwanted));
}

/**
 * Opens a house from a file's text under a name of its own. Returns what was wrong, in its parts as well if `ofParts`
 * says so; a text that is no house changes nothing.
 */
export function loadHouse(text: string, ofParts?: (parts: Parts) => readonly string[]): readonly string[] {
  const reading = decode(text);
  if (!reading.isHouse) return reading.problems;
  shelveOwn();
  endVisit();
  tell('link', []);
  take({ ...reading, name: freeName(reading.name, shelf()) });
  return [...reading.problems, ...(ofParts?.(reading.parts) ?? [])];
}

/** The reader's own house of a name as it stands now; undefined when there is none that can be read. */
export function ownHouse(wanted: string): WholeHouse | undefined {
  if (!visiting() && wanted === name()) return now();
  if (!Object.hasOwn(keptShelf(), wanted)) return undefined;
  const reading = decode(keptShelf()[wanted]!);
  return reading.isHouse ? { ...reading, name: wanted } : undefined;
}

/** Opens one of the reader's houses as it has become, under its name. */
export function changeHouseWhole(next: WholeHouse): void {
  shelveOwn();
  endVisit();
  tell('link', []);
  take(next);
  save();
}

/** Keeps the house that is visited, as one of the reader's own. */
export function keepVisit(): void {
  shelveOwn();
  endVisit();
  setName(freeName(name(), shelf()));
  save();
}

/** Leaves the house that is visited, and goes back to the reader's own. */
export function leaveVisit(): void {
  endVisit();
  tell('link', []);
  const own = keptText(KEY);
  if (own !== null) return takeKept(own);
  take({ house: builtInHouse, name: builtInName, parts: {} });
}

function endVisit(): void {
  setVisiting(false);
  try {
    sessionStorage.removeItem(VISIT);
  } catch {
    // It was never written.
  }
  if (location.hash.startsWith(MARK)) history.replaceState(null, '', location.pathname);
}

/** The texts that could not be used in full when they were read, the oldest first. */
export function keptAside(): readonly string[] {
  return isServer || Object.keys(troubles()).length === 0 ? [] : asides(KEPT_ASIDE);
}

/** The live house, its line and its name, for code that runs after the page is built and hydrates nothing. */
export const liveHouse = house;
export const liveLine = () => lineOf(house());
export const liveName = name;
/** True while a house from a link is looked at. */
export const isVisit = visiting;
export const liveParts = parts;

/**
 * The house inside an island. Until the island is mounted it answers with the built-in house, as the page was
 * built; reading the store while hydrating would leave the built, stale text on the page.
 */
export function useHouse() {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  const text = () => encode(now());
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
