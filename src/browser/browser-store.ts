// Texts kept in this browser, which may forbid it or be full; each copy of the handbook on a server keeps its own.

const HANDBOOK = 'malt-spirit-handbook';
const TAKEN_OVER = 'taken-over'; // name of the text that says that this copy has looked for what older builds kept
/** Names of what older builds kept for all copies on a server alike; news between tabs is not among them. */
const OLD =
  /^(?:house|shelf|(?:practice-)?kept-aside(?:-\d+)?|practice|practice-name|units|quoted|result-codes|sheet\/\w+\/\d+(?:-kept-aside(?:-\d+)?)?)$/;

/** The folder of the server that holds this copy, as `/` or `/some/folder/`: where its manifest is. */
function folderOfCopy(): string {
  const manifest = globalThis.document?.querySelector<HTMLLinkElement>('link[rel=manifest]');
  return manifest ? new URL('.', manifest.href).pathname : '/';
}
const folder = folderOfCopy();

/** The key of a text of this copy. At the root of a server it is the one that older builds used everywhere. */
export const storageKey = (name: string): string => `${HANDBOOK}${folder}${name}`;
const oldKeyOf = (key: string) => `${HANDBOOK}/${key.slice(storageKey('').length)}`;

export const HOUSE_KEY = storageKey('house');
export const VISIT_KEY = storageKey('visit'); // in the tab's own storage: a shared house while it is looked at

/** Takes a copy of what older builds kept, once, and leaves it in its place for other copies; false when there is no room, or reading is forbidden. */
function takeOver(): boolean {
  if (folder === '/') return true;
  try {
    if (localStorage.getItem(storageKey(TAKEN_OVER)) !== null) return true;
    for (const old of Object.keys(localStorage)) {
      const name = old.slice(HANDBOOK.length + 1);
      if (old !== `${HANDBOOK}/${name}` || !OLD.test(name) || localStorage.getItem(storageKey(name)) !== null)
        continue;
      localStorage.setItem(storageKey(name), localStorage.getItem(old)!);
    }
    localStorage.setItem(storageKey(TAKEN_OVER), '');
    return true;
  } catch {
    return false;
  }
}
const isTakenOver = takeOver();

/** Where a tab keeps what is its own until it is shut. */
export const tabStorage = () => sessionStorage;

/** Reads a text; nothing when there is none or reading is forbidden. What could not be taken over is read where it is. */
export function keptText(key: string, storage = () => localStorage): string | null {
  try {
    return storage().getItem(key) ?? (isTakenOver ? null : storage().getItem(oldKeyOf(key)));
  } catch {
    return null;
  }
}

/** Keeps a text; false when the browser does not let it be kept. */
export function keepText(key: string, text: string, storage = () => localStorage): boolean {
  try {
    storage().setItem(key, text);
    return true;
  } catch {
    return false;
  }
}

/** Keeps a text no longer; false when the browser does not let it be taken out. */
export function dropText(key: string, storage = () => localStorage): boolean {
  try {
    storage().removeItem(key);
    return true;
  } catch {
    return false;
  }
}

/** Whether the browser lets anything be read here. */
export function mayRead(): boolean {
  try {
    localStorage.getItem(HOUSE_KEY);
    return true;
  } catch {
    return false;
  }
}

/** The keys that begin with some letters, without these. */
export function keysUnder(beginning: string): readonly string[] {
  try {
    const all = Object.keys(localStorage).filter((key) => key.startsWith(beginning));
    return all.map((key) => key.slice(beginning.length));
  } catch {
    return [];
  }
}

const place = (key: string, n: number) => (n === 0 ? key : `${key}-${n + 1}`);

/** Every text that was kept aside under a key, the oldest first. */
export function textsKeptAside(key: string): readonly string[] {
  const texts: string[] = [];
  for (;;) {
    const text = keptText(place(key, texts.length));
    if (text === null) return texts;
    texts.push(text);
  }
}

/** Keeps a text aside, beside those that are there already and once only; false when the browser does not let it. */
export function keepAside(key: string, text: string): boolean {
  const there = textsKeptAside(key);
  return there.includes(text) || keepText(place(key, there.length), text);
}
