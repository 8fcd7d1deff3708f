// What authors write, and what each piece must have.
import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { sources, type SourceId } from './core/sources.ts';
import { stages } from './house/figures.ts';

const sourceId = z.enum(Object.keys(sources) as [SourceId, ...SourceId[]]);

const chapters = defineCollection({
  loader: glob({
    pattern: '*/index.mdx',
    base: './content/chapters',
    generateId: ({ entry }) => entry.split('/')[0]!,
  }),
  schema: z.object({
    title: z.string(),
    order: z.number().int().min(0),
    /** The stage of the line that the chapter is about; left out in the chapters beyond the six. */
    stage: z.enum(stages).optional(),
    summary: z.string(),
  }),
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

export const collections = { chapters, cautions, glossary };
