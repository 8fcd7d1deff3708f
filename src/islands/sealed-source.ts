// Which sheet is to be sealed: one kept in this browser, one by its link, or one from a file; and what it says of itself.
import { createEffect, createSignal, on, onMount } from 'solid-js';
import type { OwnSheet } from '../exercises/own/own-sheet.ts';
import { pinnedWarning } from '../exercises/own/pinned.ts';
import type { SealedRules } from '../exercises/sealed/sealed-sheet.ts';
import { isSheetToSeal } from './sealed-address.ts';
import type { Sealable } from './sealed-draw.ts';

export function useSheetToSeal() {
  const [address, setAddress] = createSignal('');
  const [chosen, setChosen] = createSignal('');
  const [fromFile, setFromFile] = createSignal<OwnSheet>();
  const [titles, setTitles] = createSignal<readonly string[]>([]);
  const [about, setAbout] = createSignal<SealedRules & { readonly warning: string }>();
  let asked = 0;
  onMount(async () => {
    if (isSheetToSeal(location.hash)) {
      setAddress(
        location.href.replace(
          /sheets\/sealed\//,
          location.hash.startsWith('#own=') ? 'sheet/own/' : 'sheet/',
        ),
      );
      history.replaceState(null, '', location.pathname); // that address is not sealed, so it stays in nobody’s bar
    }
    const { keptSheets } = await import('./own-kept.ts');
    setTitles(keptSheets().all.flatMap(({ title, notes }) => (notes ? [title] : [])));
  });

  const isChosen = () => chosen() !== '' || address().trim() !== '' || fromFile() !== undefined;
  /** The sheet that is chosen, or a sentence. */
  const wanted = async (): Promise<Sealable | string> => {
    if (fromFile()) return { own: fromFile()! };
    if (chosen() !== '') {
      const { keptSheets } = await import('./own-kept.ts');
      const own = keptSheets().all.find(({ title }) => title === chosen());
      return own ? { own } : 'This sheet is no longer kept in this browser.';
    }
    const hash = address()
      .slice(Math.max(0, address().indexOf('#')))
      .trim();
    const [{ readOwnLink }, { readSheetLink }] = await Promise.all([import('./own-address.ts'), import('../exercises/sheet-link.ts')]); // prettier-ignore
    const own = await readOwnLink(hash);
    if (own) return typeof own === 'string' ? own : { own: own.sheet };
    const read = readSheetLink(hash);
    if (!read) return 'Choose a sheet, or paste the whole link to one.';
    return 'problem' in read ? read.problem : { sheet: read.sheet };
  };
  createEffect(
    on([chosen, address, fromFile], async () => {
      setAbout(undefined);
      const mine = ++asked;
      const from = isChosen() ? await wanted().catch(() => '') : '';
      if (mine !== asked || typeof from === 'string') return;
      setAbout('own' in from ? { ...from.own, warning: pinnedWarning(from.own) } : { minutes: 0, passMark: 0, warning: '' }); // prettier-ignore
    }),
  );
  return {
    /** The titles of the sheets that are kept in this browser with their draws, and the one that is chosen. */
    titles,
    chosen,
    address,
    isChosen,
    /** The rules of the sheet that is chosen, and what is to be thought of before it is sealed. */
    about,
    wanted,
    /** Takes a sheet from one place: what the others held is let go. */
    choose(from: { title?: string; address?: string; own?: OwnSheet }) {
      setChosen(from.title ?? '');
      setAddress(from.address ?? '');
      setFromFile(from.own);
    },
  };
}
export type SheetToSeal = ReturnType<typeof useSheetToSeal>;
