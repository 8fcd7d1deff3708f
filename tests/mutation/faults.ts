// Faults that no unit test sees, each with the browser test that must: the text that is replaced stands once in its file.

export interface StatedFault {
  /** Faults of one number are planted in one build: none touches what another's test goes through. */
  readonly build: number;
  readonly what: string;
  readonly file: string;
  readonly text: string;
  readonly by: string;
  /** The file of tests under tests/site, and words of the test's name. */
  readonly spec: string;
  readonly test: string;
}

const f = (build: number, what: string, file: string, text: string, by: string, spec: string, test: string): StatedFault => ({ build, what, file, text, by, spec, test }); // prettier-ignore

export const faults: readonly StatedFault[] = [
  // Two tabs
  f(1, 'a change is not told to other tabs', 'src/browser/house-store.ts', '  tellOtherTabs(wholeHouseNow());\n', '', 'kept-in-browser', 'two tabs stay together'),
  f(2, 'the house that gave way is lost', 'src/browser/house-store.ts', 'if (gaveWay) setAside(gaveWay);', 'void gaveWay;', 'kept-in-browser', 'two tabs change what cannot be together'),
  f(3, 'a number of any size is taken from another tab', 'src/browser/other-tabs.ts', 'stamp > 0 && stamp <= Math.max(Date.now(), latestStamp(stamps)) + AHEAD', 'stamp > 0 && AHEAD > 0', 'hostile', 'told between tabs, changes nothing'),
  f(4, 'an answer in another tab is not counted', 'src/browser/progress-store.ts', 'setProgress(practised(progress(), ...news.answer));', 'practised(progress(), ...news.answer);', 'faults', 'an answer in one is not lost'),
  f(3, 'what other tabs did while the page lay in memory is missed', 'src/browser/house-store.ts', "addEventListener('pageshow', ({ persisted }) => persisted && catchUp());", 'void catchUp;', 'faults', 'shown again by the Back button'),
  f(1, 'a unit is not kept', 'src/browser/units-store.ts', 'keepText(KEY, JSON.stringify(liked()));', 'JSON.stringify(liked());', 'sums', 'a unit once chosen'),
  // Links, storage
  f(3, 'a visit is written over the reader’s own house', 'src/browser/house-store.ts', 'if (visiting() || text === written', 'if (text === written', 'house-page', 'a shared link is a visit'),
  f(3, 'two copies share one store', 'src/browser/browser-store.ts', "return manifest ? new URL('.', manifest.href).pathname : '/';", "return manifest ? '/' : '/';", 'under-a-folder', 'two copies on one server'),
  f(4, 'what cannot be read is written over', 'src/browser/house-store.ts', 'if (problems.length > 0 && !keepAside(KEPT_ASIDE, text)) held.add(key);', 'void keepAside;', 'kept-in-browser', 'kept aside word for word'),
  f(3, 'a full store is not told', 'src/browser/house-store.ts', "tellTrouble('browser', isKept ? [] : [NOT_KEPT]);\n  return", 'return', 'faults', 'the page says so, works on'),
  f(5, 'islands read the store while they hydrate', 'src/browser/house-store.ts', 'const mounted = () => isMounted() && isReady();', 'const mounted = () => (isMounted() || true) && isReady();', 'kept-in-browser', 'in every island and sentence'),
  // Live prose
  f(1, 'a figure a year is printed a mash', 'src/browser/live-prose.ts', "isPace(per) ? per : 'mash'", "isPace(per) ? 'mash' : 'mash'", 'figures-follow', 'a figure a year, a tonne'),
  f(2, 'a sentence of some houses stays as built', 'src/browser/live-prose.ts', 'if (isCondition(when)) element.hidden = !conditions[when](line, liveUnknownFigures());', 'if (isCondition(when)) conditions[when](line, liveUnknownFigures());', 'figures-follow', 'a figure a year, a tonne'),
  f(2, 'the name of the house stays as built', 'src/browser/live-prose.ts', 'names.forEach((element) => (element.textContent = liveName()))', 'names.forEach(() => liveName())', 'kept-in-browser', 'in every island and sentence'),
  f(3, 'an estimate is not marked', 'src/browser/live-prose.ts', 'liveDoubtAt(figure!) !== undefined', 'liveDoubtAt(figure!) === null', 'known', 'the book marks what is not known'),
  f(2, 'drawings stay as built', 'src/browser/live-drawings.ts', 'if (!isUntouched) whenIdle(set, true);', 'if (isUntouched) whenIdle(set, true);', 'figures-follow', 'gravity changed in fermenting'),
  // Cautions
  f(1, 'a caution ends before whom it defers to', 'src/components/Caution.astro', '    <p>{defers}</p>\n', '', 'safety-sheets', 'prints on one side'),
  f(2, 'a caution leads to no sheet', 'src/components/Caution.astro', 'id={`caution-${Astro.props.of}`}', 'id={`of-${Astro.props.of}`}', 'safety-sheets', 'a link to a caution'),
  // Offline
  f(1, 'the worker answers from the network alone', 'src/build/offline.ts', '.then((kept) => kept ?? fetch(request))', '.then(() => fetch(request))', 'offline', 'after one visit every page'),
  f(2, 'a page without its last slash is not found offline', 'src/build/offline.ts', 'return page && (await', 'return false && (await', 'offline', 'without the last slash'),
  // Paper, keys, focus
  f(1, 'controls print', 'src/styles/print.css', "  .pace,\n", '', 'print', '/distilling/work/ is whole on paper'),
  f(2, 'the focus has no ring', 'src/styles/base.css', 'outline: 3px solid var(--copper);\n  outline-offset', 'outline: none;\n  outline-offset', 'keyboard', 'the ring of the focus'),
  f(3, 'the focus is lost with its button', 'src/islands/focus-after.ts', 'queueMicrotask(() => find()?.focus());', 'queueMicrotask(() => void find());', 'keyboard', 'rows come and go'),
  f(1, 'Escape leaves a term open', 'src/components/term-dismiss.ts', "term.classList.add('dismissed');", "term.classList.remove('dismissed');", 'keyboard', 'a term says its meaning'),
  f(1, 'the arrows of a cut go the other way', 'src/islands/key-steps.ts', 'ArrowRight: 1,', 'ArrowRight: -1,', 'figures-follow', 'cuts move by keyboard'),
  f(2, 'what changed is not said aloud', 'src/islands/announce.ts', "document.getElementById('announcer')!.textContent =", "document.getElementById('announcer')!.title =", 'accessible', 'a result is said once, politely'),
]; // prettier-ignore
