// Which unit the reader likes for each kind, kept in the browser and shared by every field and result.
import { createSignal, onMount } from 'solid-js';
import { isServer } from 'solid-js/web';
import type { KindName } from '../core/kinds.ts';
import { countryOf, type UnitCountry } from '../core/reading/country.ts';
import { unitsOf, type Unit } from '../core/units.ts';
import { keepText, keptText, storageKey } from './browser-store.ts';

const KEY = storageKey('units');
const [liked, setLiked] = createSignal<Readonly<Record<string, string>>>({});

/** Reads the saved choice; anything that is not a unit of its kind counts for nothing. */
function load(): void {
  try {
    const saved: unknown = JSON.parse(keptText(KEY) ?? '{}');
    if (typeof saved === 'object' && saved !== null) {
      setLiked(
        Object.fromEntries(
          Object.entries(saved).filter((entry): entry is [string, string] => typeof entry[1] === 'string'),
        ),
      );
    }
  } catch {
    // Another program's text.
  }
}

if (!isServer) {
  load();
  addEventListener('storage', (event) => event.key === KEY && load());
}

/** Chooses a unit for a kind, on every page. */
export function chooseUnit(kind: KindName, unit: string): void {
  setLiked({ ...liked(), [kind]: unit });
  keepText(KEY, JSON.stringify(liked())); // without storage the choice lasts as long as the page
}

/** The unit of a kind inside an island: the core's own until the island is mounted, then the reader's. */
export function useUnits(): (kind: KindName) => Unit {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  return (kind) => {
    const units = unitsOf(kind);
    return (mounted() && units.find(({ unit }) => unit === liked()[kind])) || units[0]!;
  };
}

/** The country whose units the reader has chosen, inside an island; nothing when none, or some of each. */
export function useCountry(): () => UnitCountry | undefined {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  return () => {
    const countries = new Set(
      mounted() ? Object.values(liked()).flatMap((unit) => countryOf(unit) ?? []) : [],
    );
    return countries.size === 1 ? [...countries][0] : undefined;
  };
}
