// Where a link to a caution leads: the sheet of safety on which it stands whole, and highest.
import { chaptersOfBook } from './book.ts';

/** The path under /safety/ for each caution, by its id; of sheets on which it stands alike, the first. */
export async function cautionSheets(): Promise<ReadonlyMap<string, string>> {
  const safety = (await chaptersOfBook()).find(({ id }) => id === 'safety')!;
  const whole = safety.pages.flatMap(({ entry, path }) =>
    [...(entry.body ?? '').matchAll(/<Caution of="([^"]+)" \/>/g)].map(([, id], place) => ({
      id: id!,
      path,
      place,
    })),
  );
  const highestLast = whole.toReversed().sort((a, b) => b.place - a.place);
  return new Map(highestLast.map(({ id, path }) => [id, path]));
}
