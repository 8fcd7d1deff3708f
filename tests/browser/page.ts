// A browser's page in little, for what touches one: its storage, its events, and elements that carry a figure.
import { vi } from 'vitest';

export class SmallElement {
  textContent = '';
  hidden = false;
  readonly classes = new Set<string>();
  readonly dataset: Readonly<Record<string, string>>;
  constructor(dataset: Readonly<Record<string, string>>) {
    this.dataset = dataset;
  }
  get classList() {
    return { toggle: (name: string, is: boolean) => this.classes[is ? 'add' : 'delete'](name) };
  }
}

function storage() {
  const texts = new Map<string, string>();
  let room = Infinity;
  return {
    texts,
    /** From now on so many more characters fit, or all. */
    leave: (characters: number) => void (room = characters),
    getItem: (key: string) => texts.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (text.length > room) throw new Error('QuotaExceededError');
      texts.set(key, text);
    },
    removeItem: (key: string) => void texts.delete(key),
  };
}

/** Opens a page with these elements; what is imported after it believes to be in a browser. */
export function openPage(elements: readonly SmallElement[] = []) {
  const listeners: [string, (event: object) => void][] = [];
  const local = storage();
  const found = (selector: string) => {
    const name = /^\[data-([\w-]+)\]$/.exec(selector)?.[1]?.replace(/-(\w)/g, (_, c: string) => c.toUpperCase());
    return elements.filter(({ dataset }) => name !== undefined && Object.hasOwn(dataset, name));
  };
  const globals = {
    localStorage: local,
    sessionStorage: storage(),
    location: { hash: '', pathname: '/' },
    addEventListener: (type: string, listener: (event: object) => void) => listeners.push([type, listener]),
    document: { querySelectorAll: found, querySelector: (selector: string) => found(selector)[0] ?? null },
    HTMLElement: SmallElement,
  };
  for (const [name, value] of Object.entries(globals)) vi.stubGlobal(name, value);
  return {
    local,
    /** What another tab wrote, as the browser tells it. */
    fromOtherTab(key: string, newValue: string): void {
      local.texts.set(key, newValue);
      for (const [type, listener] of listeners) if (type === 'storage') listener({ key, newValue });
    },
    /** Leaves the page. */
    leave: () => listeners.forEach(([type, listener]) => type === 'pagehide' && listener({})),
  };
} // prettier-ignore
