// A part of the house inside an island: its value as the page was built until the island is mounted, and a way to change it.
import { createEffect, createMemo, createSignal, onMount } from 'solid-js';
import { builtInName } from '../house/figures.ts';
import { builtInParts, partGiven } from '../house/parts/built-in.ts';
import { readPart, type HousePart } from '../house/parts/part.ts';
import { changePart, liveName, liveParts, tellOfPart } from './house-store.ts';

/**
 * The part as it stands in the house of the page, read by its own reader. Under the built-in house’s name a part that the
 * reader has not changed is the built-in house’s; a house of another name has only what was given. `set` takes a new value
 * whole, if its reader reads it without a problem, and gives back the problems otherwise. What cannot be read of a
 * saved part is told of, and the text kept aside.
 */
export function usePart<T>(part: HousePart<T>) {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  const reading = createMemo(() =>
    readPart(part, mounted() ? partGiven(part.id, liveName(), liveParts()) : builtInParts[part.id]),
  );
  createEffect(() => {
    if (mounted()) tellOfPart(part.id, reading().problems);
  });
  return {
    mounted,
    value: (): T => reading().value,
    /** True when the house has given this part itself; under the built-in name, when the reader has changed it. */
    isOwn: () => mounted() && liveParts()[part.id] !== undefined,
    /** True when the house is the built-in one by name, whose parts stand where none is given. */
    isBuiltIn: () => !mounted() || liveName() === builtInName,
    set(next: T): readonly string[] {
      const { problems } = part.read(next);
      if (problems.length === 0) changePart(part, next);
      return problems;
    },
  };
}
