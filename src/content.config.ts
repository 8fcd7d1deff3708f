// What authors write, and what each piece must have.
import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { parse as parseYaml } from 'yaml';
import { sources, type SourceId } from './core/sources.ts';
import { stages } from './house/figures.ts';
import { comings } from './walk/audience-kinds.ts';

const sourceId = z.enum(Object.keys(sources) as [SourceId, ...SourceId[]]);

const chapters = defineCollection({
  loader: glob({
    pattern: '*/*.mdx',
    base: './content/chapters',
    generateId: ({ entry }) => entry.replace(/\.mdx$/, ''),
  }),
  schema: z
    .object({
      stage: z.enum(stages).optional(),
      /** On its tab, where a chapter is more than one page; the four of a stage are named for all. */
      name: z.string().optional(),
      /** Its place among the pages of a chapter that is no stage. */
      place: z.number().int().min(1).optional(),
      /** The chapter's own, on its first page. */
      title: z.string().optional(),
      order: z.number().int().min(0).optional(),
      summary: z.string().optional(),
    })
    .refine(
      ({ title, order, summary }) =>
        (title === undefined && order === undefined && summary === undefined) ||
        (title && order !== undefined && summary),
      'The first page of a chapter has its title, order and summary.',
    ),
});

const cautions = defineCollection({
  loader: file('./content/cautions.yaml'),
  schema: z.object({
    title: z.string(),
    hazard: z.string(),
    does: z.array(z.string()).min(2),
    defers: z.string(),
    source: z.array(sourceId).min(1),
  }),
});

const glossary = defineCollection({
  loader: file('./content/glossary.yaml'),
  schema: z.object({
    term: z.string(),
    says: z.string(),
    forms: z.array(z.string()).default([]),
    stage: z.enum([...stages, 'all']),
  }),
});

const searchWords = defineCollection({
  loader: file('./content/search-words.yaml'),
  schema: z.object({ asked: z.array(z.string()).min(1) }),
});

/** What visitors ask, a file a topic: each entry under its name. */
const asked = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/asked' }),
  schema: z.record(
    z.string(),
    z.object({
      asked: z.array(z.string()).min(2),
      says: z.string(),
      sum: z.string().optional(),
      rests: z.enum(['common practice', 'memory']).optional(),
      unknown: z.boolean().optional(),
      at: z.string(),
    }),
  ),
});

const askedWords = defineCollection({
  loader: file('./content/asked-words.yaml'),
  schema: z.object({ asked: z.array(z.string()).min(1) }),
});

const askedForeign = defineCollection({
  loader: file('./content/asked-foreign.yaml'),
  schema: z.object({ asked: z.array(z.string()).min(1) }),
});

/** Pieces that a guide may add to a walk for those who come. */
const walkPieces = defineCollection({
  loader: file('./content/walk-pieces.yaml'),
  schema: z.object({
    coming: z.enum(comings),
    stage: z.enum(stages),
    says: z.string(),
    rests: z.union([sourceId, z.enum(['common practice', 'memory', 'derived'])]),
  }),
});

/** The trade's words in other languages; `tradeWord` reads a line strictly. */
const wordsAbroad = defineCollection({
  loader: file('./content/words-abroad.yaml', {
    parser: (text) =>
      Object.entries(parseYaml(text) as Record<string, object>).map(([id, word], place) => ({
        id,
        place,
        word,
      })),
  }),
  schema: z.object({ place: z.number(), word: z.record(z.string(), z.unknown()) }),
});

const changesFor = z.array(z.string().endsWith('.'));
/** What each version of the book brought, the newest first. */
const changes = defineCollection({
  loader: file('./content/changes.yaml', {
    parser: (text) =>
      (parseYaml(text) as { version: string }[]).map(({ version, ...rest }, place) => ({
        id: version,
        place,
        ...rest,
      })),
  }),
  schema: z.object({
    place: z.number(),
    date: z.string().regex(/^\d{4}-\d\d-\d\d$/),
    guide: changesFor,
    starter: changesFor,
    trainer: changesFor,
    kept: changesFor,
  }),
});

/** Practical tasks and oral questions, a file a stage. */
const tasks = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/tasks' }),
  schema: z.object({
    cautions: z.array(z.string()).min(2),
    tasks: z
      .array(z.object({ id: z.string(), does: z.string(), see: z.array(z.string()).min(2), rests: sourceId }))
      .min(3),
    oral: z.array(z.object({ id: z.string(), asks: z.string(), model: z.string(), rests: sourceId })).min(3),
  }),
});

/** Lessons for a class, a file a stage; each step with its minutes, its way and where in the book it leads. */
const lessons = defineCollection({
  loader: glob({ pattern: '*.yaml', base: './content/lessons' }),
  schema: z.object({
    aims: z.array(z.string()).min(2),
    fetch: z.array(z.string()).min(2),
    cautions: z.array(z.string()).min(2),
    steps: z
      .array(
        z.strictObject({
          minutes: z.number().int().min(1).max(30),
          way: z.enum(['told', 'shown', 'asked', 'done', 'set']),
          says: z.string(),
          at: z.string().startsWith('/'),
          to: z.string(),
        }),
      )
      .min(5),
    /** The observed task that belongs to it. */
    task: z.string(),
    refreshers: z
      .array(
        z.strictObject({
          after: z.string(),
          says: z.string(),
          at: z.string().startsWith('/'),
          to: z.string(),
        }),
      )
      .min(2),
  }),
});

/** A programme of lessons, a line a week. */
const lessonWeeks = defineCollection({
  loader: file('./content/lesson-weeks.yaml', {
    parser: (text) => (parseYaml(text) as { week: number }[]).map((each) => ({ ...each, id: `week-${each.week}` })), // prettier-ignore
  }),
  schema: z.object({
    week: z.number().int().min(1),
    title: z.string(),
    stages: z.array(z.enum(stages)).default([]),
    gives: z.string(),
    at: z.string().startsWith('/'),
    to: z.string(),
  }),
});

export const collections = {
  lessons,
  lessonWeeks,
  tasks,
  walkPieces,
  wordsAbroad,
  chapters,
  cautions,
  glossary,
  searchWords,
  asked,
  askedWords,
  askedForeign,
  changes,
};
