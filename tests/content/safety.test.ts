// What safety must hold: every caution whole on a sheet to hang up, each deferring to those who rule the site.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { sources } from '../../src/core/sources.ts';
import { chapters } from './read.ts';

interface Caution {
  readonly hazard: string;
  readonly does: readonly string[];
  readonly defers: string;
  readonly source: readonly string[];
}
const cautions = parse(
  readFileSync(join(import.meta.dirname, '..', '..', 'content', 'cautions.yaml'), 'utf8'),
) as Readonly<Record<string, Caution>>;
const { pages } = chapters.find(({ id }) => id === 'safety')!;
const sheets = pages.filter(({ body }) => body.includes('class="hang"'));

test('every caution stands whole on a sheet that is hung up, and on no other page of safety', () => {
  const hung = sheets.flatMap(({ body }) =>
    [...body.matchAll(/<Caution of="([^"]+)" \/>/g)].map(([, id]) => id),
  );
  expect(new Set(hung)).toEqual(new Set(Object.keys(cautions)));
  for (const { body } of pages.filter((page) => !sheets.includes(page))) expect(body).not.toMatch(/<Caution/);
});

test.each(Object.entries(cautions))(
  '%s defers to the local code or law and the site, and names what it rests on',
  (_, caution) => {
    expect(caution.defers).toMatch(/your local (fire )?code|local law|law of your own country/);
    expect(caution.defers).toMatch(/your site’s/);
    expect(caution.source.every((id) => Object.hasOwn(sources, id))).toBe(true);
    expect(caution.does.length).toBeGreaterThanOrEqual(2);
  },
);

/* Limits as the authorities print them. OSHA’s record of 1989 (29 CFR 1910, air contaminants) names, for carbon dioxide,
   the American conference’s 5,000 ppm over eight hours and 30,000 ppm over fifteen minutes; ten minutes are the ceiling of
   NIOSH’s criteria of 1976. EH40/2005, as quoted: 5,000 ppm over eight hours and 15,000 ppm over fifteen minutes. */
test('the limits of carbon dioxide stand with their times', () => {
  const limits = pages.find(({ part }) => part === 'limits')!.body;
  expect(limits).toMatch(/\| 5,000 ppm[^\n]*limit over eight hours/);
  expect(limits).toMatch(/\| 15,000 ppm[^\n]*limit over fifteen minutes, United Kingdom/);
  expect(limits).toMatch(/\| 30,000 ppm[^\n]*limit over fifteen minutes, United States/);
  expect(cautions['carbon-dioxide']!.hazard).toMatch(/5,000 ppm over eight hours/);
  expect(cautions['carbon-dioxide']!.hazard).toMatch(
    /over fifteen\s+minutes[^;]*15,000 ppm in Britain[^;]*30,000 ppm/,
  );
});
