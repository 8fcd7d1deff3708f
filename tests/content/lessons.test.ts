// Lesson plans: each adds up, begins with safety, and leads only to what is there.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { calculators } from '../../src/calculators/index.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { drawFault } from '../../src/fault/draw.ts';
import { builtInHouse, stages } from '../../src/house/figures.ts';
import { predicts } from '../../src/predict/index.ts';
import { chapterText, namedIn } from '../../src/build/chapter-text.ts';
import { chapters } from './read.ts';

const root = join(import.meta.dirname, '..', '..');
const content = join(root, 'content');
const yaml = (path: string) => parse(readFileSync(join(content, path), 'utf8'));
interface Step {
  readonly minutes: number;
  readonly way: string;
  readonly says: string;
  readonly at: string;
}
interface Lesson {
  readonly steps: readonly Step[];
  readonly cautions: readonly string[];
  readonly task: string;
  readonly refreshers: readonly { readonly at: string }[];
}
const lessons = new Map<string, Lesson>(stages.map((stage) => [stage, yaml(`lessons/${stage}.yaml`)]));
const weeks = yaml('lesson-weeks.yaml') as readonly { readonly week: number; readonly stages?: readonly string[]; readonly at: string }[]; // prettier-ignore
const here = line(builtInHouse) as Line;
const benchOf = { mashing: 'mash', fermenting: 'washback', distilling: 'still', maturing: 'casks' } as Record<string, string>; // prettier-ignore

/** What is wrong with an address of the book, or nothing. */
function wrongWith(at: string): string | undefined {
  const [path, hash = ''] = at.split('#');
  const [first, second] = path!.split('/').filter(Boolean);
  const chapter = chapters.find(({ id }) => id === first);
  const page = chapter?.pages.find(({ part }) => part === (second ?? (chapter.front['stage'] ? 'explain' : 'index'))); // prettier-ignore
  if (chapter && !page) return `${at}: no such page`;
  const isFile = ['.astro', '/index.astro'].some((end) => existsSync(join(root, 'src/pages', path!.replace(/\/$/, '') + end))); // prettier-ignore
  const ofStage = path!.replace(
    /(malting|milling|mashing|fermenting|distilling|maturing)\/$/,
    '[stage].astro',
  );
  const isSum = first === 'sums' && calculators.some(({ id }) => id === second);
  if (!chapter && !isFile && !existsSync(join(root, 'src/pages', ofStage)) && !isSum) return `${at}: no such page`; // prettier-ignore
  if (hash.startsWith('kinds=')) {
    const none = hash.slice(6).split(',').filter((id) => !questionKinds.some((kind) => kind.id === id)); // prettier-ignore
    return none.length > 0 ? `${at}: no kind ${none.join()}` : undefined;
  }
  if (hash.startsWith('fault=')) return undefined; // below
  if (hash.startsWith('guess-')) {
    const id = hash.slice(6);
    if (!predicts.some((each) => each.id === id)) return `${at}: no such guess`;
    return page && namedIn(page.body, 'Predict').includes(id)
      ? undefined
      : `${at}: that guess is on another page`;
  }
  const headings = page ? chapterText(page.body).headings.map(({ slug }) => slug) : [];
  return hash === '' || headings.includes(hash) ? undefined : `${at}: no such heading`;
}

describe.each(stages)('the lesson of %s', (stage) => {
  const { steps, cautions, task, refreshers } = lessons.get(stage)!;
  test('is three quarters of an hour to an hour, begins with safety and ends with what is set', () => {
    const all = steps.reduce((sum, { minutes }) => sum + minutes, 0);
    expect(all).toBeGreaterThanOrEqual(45);
    expect(all).toBeLessThanOrEqual(60);
    expect(steps[0]).toMatchObject({ way: 'told', at: `/${stage}/safe/` });
    expect(steps.at(-1)!.way).toBe('set');
    for (const way of ['told', 'shown', 'asked', 'done', 'set']) expect(steps.some((step) => step.way === way)).toBe(true); // prettier-ignore
    expect(steps.filter(({ way }) => way === 'done').reduce((sum, { minutes }) => sum + minutes, 0)).toBeGreaterThanOrEqual(all * 0.4); // prettier-ignore
  });
  test('leads only to what is there', () => {
    expect([...steps, ...refreshers].map(({ at }) => wrongWith(at)).filter(Boolean)).toEqual([]);
    const known = yaml('cautions.yaml');
    expect(cautions.filter((of) => known[of] === undefined)).toEqual([]);
    const { tasks, oral } = yaml(`tasks/${stage}.yaml`);
    expect([...tasks, ...oral].map(({ id }: { id: string }) => id)).toContain(task);
  });
  test('a case of the fault desk is of this stage, and something is wrong in it', () => {
    for (const { at } of steps.filter((step) => step.at.includes('#fault='))) {
      const { bench, cause } = drawFault(Number(at.split('=')[1]), here)!;
      expect(bench.id).toBe(benchOf[stage]);
      expect(cause.id).not.toBe('nothing');
    }
  });
  test('no figure of the house is typed into it', () => {
    for (const { says } of steps) expect(says).not.toMatch(/\d+(\.\d+)? ?(°C|% vol|L|kg)\b/);
  });
});

test('the programme goes week by week and holds each stage once', () => {
  expect(weeks.map(({ week }) => week)).toEqual(weeks.map((_, i) => i + 1));
  expect(weeks.flatMap((each) => each.stages ?? [])).toEqual(stages);
  expect(weeks.map(({ at }) => wrongWith(at)).filter(Boolean)).toEqual([]);
  expect(readdirSync(join(content, 'lessons')).sort()).toEqual(stages.map((stage) => `${stage}.yaml`).sort());
});
test('an address that is not there is found', () => {
  for (const at of ['/mashing/#no-such-heading', '/nowhere/', '/practice/#kinds=no-kind', '/mashing/work/#guess-hot-mash', '/mashing/nothing/']) expect(wrongWith(at)).toBeDefined(); // prettier-ignore
});
