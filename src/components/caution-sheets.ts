// Where a link to a caution leads: the sheet of safety on which it stands whole, and highest.
import { getCollection } from 'astro:content';
import { cautionsIn } from '../build/chapter-text.ts';

/** The path under /safety/ for each caution, by its id; of sheets on which it stands alike, the first. */
export async function cautionSheets(): Promise<ReadonlyMap<string, string>> {
  const sheets = (await getCollection('chapters'))
    .filter(({ id, data }) => id.startsWith('safety/') && data.place !== undefined)
    .sort((a, b) => a.data.place! - b.data.place!);
  const whole = sheets.flatMap(({ id: sheet, body }) =>
    cautionsIn(body ?? '', 'whole').map((id, place) => ({
      id,
      path: `${sheet.split('/')[1]!}/`,
      place,
    })),
  );
  const highestLast = whole.toReversed().sort((a, b) => b.place - a.place);
  return new Map(highestLast.map(({ id, path }) => [id, path]));
}
