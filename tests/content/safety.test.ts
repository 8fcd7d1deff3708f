// What safety must hold: every caution whole on a sheet to hang up, each deferring to those who rule the site.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { cautionsIn, namedIn } from '../../src/build/chapter-text.ts';
import { sources } from '../../src/core/sources.ts';
import { chapters } from './read.ts';

interface Caution {
  readonly title: string;
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
  const hung = sheets.flatMap(({ body }) => cautionsIn(body, 'whole'));
  const missing = Object.keys(cautions).filter((id) => !hung.includes(id));
  expect(missing.map((id) => `${id} stands whole on no sheet of content/chapters/safety`)).toEqual([]);
  expect(new Set(hung)).toEqual(new Set(Object.keys(cautions)));
  for (const { body } of pages.filter((page) => !sheets.includes(page)))
    expect(namedIn(body, 'Caution')).toEqual([]);
});

test.each(Object.entries(cautions))(
  '%s defers to the local code or law and the site, and names what it rests on',
  (id, caution) => {
    expect(caution.defers, `${id} must defer to the local code or law`).toMatch(
      /your local (fire )?code|local law|law of your own country/,
    );
    expect(caution.defers).toMatch(/your site’s/);
    expect(caution.source.every((id) => Object.hasOwn(sources, id))).toBe(true);
    expect(caution.does.length).toBeGreaterThanOrEqual(2);
  },
);

/** The hazards of a house that burn, choke, scald, fall or poison, each with the words by which its caution must speak. */
const hazards: readonly (readonly [hazard: string, caution: string, words: readonly RegExp[]])[] = [
  ['hot caustic', 'caustic', [/Caustic, hot or cold/, /goggles/]],
  [
    'caustic that takes up carbon dioxide',
    'caustic',
    [/takes up carbon dioxide/, /crushes the vessel/, /vent open/],
  ],
  ['acid with hypochlorite', 'caustic', [/hypochlorite gives off chlorine/, /Never let acid meet/]],
  ['a splash in the eye', 'caustic', [/eyewash/, /at least 20 minutes, until medical help/]],
  ['vapour that lies low', 'ethanol-vapour', [/heavy as air/, /low and high/, /rises first/]],
  ['hot work', 'ethanol-vapour', [/hot work permit/]],
  ['phones and cameras', 'ethanol-vapour', [/phones, cameras/]],
  [
    'a fire that is not seen',
    'spirit-fire',
    [/nearly invisible/, /Leave/, /alcohol-resistant foam/, /bunds/],
  ],
  ['a boil-over', 'still', [/froths over/, /cut the heat/]],
  ['the manhole', 'still', [/manhole only when/, /Shut and lock it/]],
  [
    'the vacuum of a closed still',
    'still',
    [/collapses/, /heat off first/, /before discharge, open the air valve/],
  ],
  ['a still fired from below', 'still', [/fired from below/, /bottom covered/]],
  ['burns', 'hot-liquor', [/cool running water for 20 minutes/]],
  ['legionella', 'legionella', [/mist/, /flushing/]],
  ['falls', 'falls', [/falls/, /railed/]],
  ['vehicles', 'falls', [/lorries and fork-lifts/, /walkways/]],
  ['lone work', 'falls', [/Do not work alone/]],
  ['noise', 'falls', [/80 dB\(A\)/, /hearing protection/]],
  ['sulphur dioxide in casks', 'cask-sulphur', [/Sulphur dioxide/, /bung hole/]],
  ['carbon monoxide of a kiln', 'kiln-air', [/carbon monoxide/, /alarm/]],
  ['spores', 'dust', [/spores/, /smells of mould/]],
  ['grain dust', 'dust', [/explode/, /asthma/, /mask/]],
  ['visitors', 'visitors', [/behind the rail/]],
  ['children', 'visitors', [/Hold children/]],
  ['allergens', 'visitors', [/gluten/, /Ask about asthma, allergy/]],
  ['gas of fermentation', 'carbon-dioxide', [/cannot be seen/, /Never lean into/, /oxygen alarm can stay silent/]],
  ['machines that start by themselves', 'machinery', [/without warning/, /lock off before you reach in/]],
  ['a tank entered', 'confined-space', [/permit to work/, /never follow a person in/]],
  ['a cask that rolls', 'lifting', [/does not stop for a hand/, /never stand below a cask/]],
  ['broken glass', 'glass-and-samples', [/Stop the line/, /never bare hands/]],
  ['a driver who tastes', 'drink', [/drivers theirs to take home/, /nobody under age/]],
  ['a still without a licence', 'licence', [/against the law/, /Do not try at home/]],
]; // prettier-ignore
test('every caution has a line there', () => {
  const without = Object.keys(cautions).filter((id) => !hazards.some(([, of]) => of === id));
  expect(without.map((id) => `${id} has no line in \`hazards\``)).toEqual([]);
});
test.each(hazards)('%s has a caution that says what and what to do', (_, id, words) => {
  const { title, hazard, does } = cautions[id]!;
  for (const word of words) expect([title, hazard, ...does].join(' ')).toMatch(word);
});

/** What stands on the safe page of each stage. */
const ofStage: Readonly<Record<string, readonly string[]>> = {
  malting: ['dust', 'carbon-dioxide', 'confined-space', 'kiln-air', 'machinery', 'falls', 'lifting'],
  milling: ['dust', 'machinery', 'confined-space', 'falls'],
  mashing: ['hot-liquor', 'machinery', 'confined-space', 'caustic', 'legionella', 'falls'],
  fermenting: ['carbon-dioxide', 'confined-space', 'caustic', 'falls'],
  distilling: ['licence', 'ethanol-vapour', 'spirit-fire', 'still', 'hot-liquor', 'confined-space', 'drink'],
  maturing: ['lifting', 'ethanol-vapour', 'spirit-fire', 'cask-sulphur', 'falls', 'drink', 'confined-space', 'glass-and-samples'],
}; // prettier-ignore
test.each(Object.entries(ofStage))('%s has its cautions, each whole once at most, on the safe page', (stage, ids) => {
  const own = chapters.find(({ id }) => id === stage)!.pages;
  const safe = own.find(({ part }) => part === 'safe')!.body;
  expect([...namedIn(safe, 'Caution')].sort(), `the cautions of ${stage}/safe.mdx are those in \`ofStage\``).toEqual([...ids].sort());
  for (const { part, body } of own) if (part !== 'safe') expect(cautionsIn(body, 'whole'), part).toEqual([]);
}); // prettier-ignore

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
