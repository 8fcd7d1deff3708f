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
    order: z.number().int().min(1),
    stage: z.enum(stages),
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

export const collections = { chapters, cautions };
