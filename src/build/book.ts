// The chapters as the pages of the book: a stage in four short pages, any other chapter in as many as it needs.
import { getCollection, type CollectionEntry } from 'astro:content';
import type { Stage } from '../house/figures.ts';

/** The four pages of a stage, in order, and what each is called on its tab. */
export const stagePages = {
  explain: 'Explain',
  work: 'Work it',
  safe: 'Stay safe',
  check: 'Say and check',
} as const;

export interface ChapterPage {
  readonly entry: CollectionEntry<'chapters'>;
  /** The file's name: a stage's part, “index”, or a name of its own. */
  readonly part: string;
  /** On its tab. */
  readonly name: string;
  /** Under the chapter's address: nothing for its first page. */
  readonly path: string;
  /** From the root of the site, as “distilling/work/”. */
  readonly at: string;
  /** At its head. */
  readonly title: string;
}
export interface Chapter {
  readonly id: string;
  readonly title: string;
  readonly summary: string;
  readonly stage: Stage | undefined;
  readonly pages: readonly ChapterPage[];
  /** The text of all its pages, as it was written. */
  readonly body: string;
}

const isFirst = (part: string) => part === 'explain' || part === 'index';
const order = Object.keys(stagePages);

/** Every chapter of the book, in order. */
export async function chaptersOfBook(): Promise<readonly Chapter[]> {
  const entries = await getCollection('chapters');
  return entries
    .filter(({ id }) => isFirst(id.split('/')[1]!))
    .sort((a, b) => a.data.order! - b.data.order!)
    .map(({ id, data }) => {
      const chapter = id.split('/')[0]!;
      const pages = entries
        .filter((entry) => entry.id.startsWith(`${chapter}/`))
        .map((entry): ChapterPage => pageOf(chapter, data.title!, entry))
        .sort((a, b) => place(a) - place(b));
      return {
        id: chapter,
        title: data.title!,
        summary: data.summary!,
        stage: data.stage,
        pages,
        body: pages.map(({ entry }) => entry.body ?? '').join('\n'),
      };
    });
}

const place = ({ part, entry }: ChapterPage) =>
  isFirst(part) ? -1 : (entry.data.place ?? order.indexOf(part));

function pageOf(chapter: string, title: string, entry: CollectionEntry<'chapters'>): ChapterPage {
  const part = entry.id.split('/')[1]!;
  const name = entry.data.name ?? stagePages[part as keyof typeof stagePages];
  const path = isFirst(part) ? '' : `${part}/`;
  return {
    entry,
    part,
    name,
    path,
    at: `${chapter}/${path}`,
    title: isFirst(part) ? title : `${title}: ${name[0]!.toLowerCase()}${name.slice(1)}`,
  };
}
