// Texts kept in this browser, which may forbid it or be full.

export const HOUSE_KEY = 'malt-spirit-handbook/house';
export const VISIT_KEY = 'malt-spirit-handbook/visit'; // in the tab's own storage: a shared house while it is looked at

/** Reads a text; nothing when there is none or reading is forbidden. */
export function keptText(key: string, storage = () => localStorage): string | null {
  try {
    return storage().getItem(key);
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

const place = (key: string, n: number) => (n === 0 ? key : `${key}-${n + 1}`);

/** Every text that was kept aside under a key, the oldest first. */
export function keptAside(key: string): readonly string[] {
  const texts: string[] = [];
  for (;;) {
    const text = keptText(place(key, texts.length));
    if (text === null) return texts;
    texts.push(text);
  }
}

/** Keeps a text aside, beside those that are there already and once only; false when the browser does not let it. */
export function keepAside(key: string, text: string): boolean {
  const there = keptAside(key);
  return there.includes(text) || keepText(place(key, there.length), text);
}
