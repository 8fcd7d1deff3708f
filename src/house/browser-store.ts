// Texts kept in this browser, which may forbid it or be full.

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
