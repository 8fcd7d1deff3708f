// Questions about a house that distils three times are drawn by its own stills; what is true of two only is not asked it; a sheet's link carries the stills.
import { afterEach, expect, test } from 'vitest';
import type { House } from '../../src/core/line/house.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import { lineWithPlant } from '../../src/core/plant/line.ts';
import { draw } from '../../src/exercises/draw.ts';
import { questionKinds } from '../../src/exercises/kinds/index.ts';
import { lineReady, partsOfLine } from '../../src/exercises/own-line.ts';
import { readSheetLink, sheetLink } from '../../src/exercises/sheet-link.ts';
import { forms, levels, topics } from '../../src/exercises/topics.ts';
import { fixedSheet, houseOfVersion, questionsAlone, type Worksheet } from '../../src/exercises/worksheet.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { asInBook, reckonBy, lineIfAny } from '../../src/house/line-of.ts';
import { wayWith } from '../../src/house/line-with.ts';
import { plainPlant } from '../core/plants.ts';

const plant = { ...plainPlant, scheme: 'thrice' as const, usual: ['weekendFermentation'] };
const house = { ...builtInHouse, heartEnd: 72, dilution: 'never' } as House;
const own = lineWithPlant(house, plant) as Line;
const plain = line(house) as Line;
afterEach(() => reckonBy(line));

const kindOf = (id: string) => questionKinds.find((each) => each.id === id)!;

test('practice in a house of three distillations quotes its own spirit, and not that of two', () => {
  reckonBy(wayWith({ plant }));
  expect(lineIfAny(asInBook(house))).toEqual(own);
  expect(lineIfAny({ ...house })).toEqual(plain); // a house by its figures alone stays so
  const [three, two] = [own, plain].map(({ heart }) => `${Math.round(heart.alcohol)} L of pure alcohol`);
  expect(three).not.toBe(two);
  expect(
    draw(kindOf('mashes-for-an-order'), 'a', asInBook(house))!.question.prompt.replace(/\s/g, ' '),
  ).toContain(three);
});

test('a house whose cuts two distillations cannot give is asked about all the same', () => {
  const strong = { ...builtInHouse, heartEnd: 78 } as House;
  expect(draw(kindOf('mashes-for-an-order'), 'a', strong)).toBeUndefined();
  reckonBy(wayWith({ plant }));
  expect(draw(kindOf('mashes-for-an-order'), 'a', asInBook(strong))).toBeDefined();
});

test.each(['season', 'spirit-run-energy', 'impossible-in-the-spirit-still', 'impossible-along-the-line'])(
  '“%s” speaks of two distillations, and is left out',
  (id) => {
    const kind = kindOf(id);
    expect(draw(kind, 'a', { ...builtInHouse })).toBeDefined();
    reckonBy(wayWith({ plant: { ...plant, strongFeintsEnd: 30 } }));
    expect(draw(kind, 'a', asInBook({ ...builtInHouse }))).toBeUndefined();
  },
);

const settings: Worksheet = {
  generator: 2,
  topics,
  forms,
  levels,
  count: 40,
  seed: 'spring-7',
  versions: 2,
  house: { name: 'Threefold', house, ...partsOfLine({ plant, facts: { maltings: 'own' } }) },
};

test('a sheet’s link carries the stills, and nothing else beside the figures; whoever opens it has the same questions', async () => {
  await lineReady(settings.house);
  const sheet = fixedSheet(settings, questionKinds);
  const read = readSheetLink(sheetLink(sheet));
  expect(read).toEqual({ sheet });
  expect(sheetLink(sheet)).not.toContain('maltings');
  const opened = (read as { sheet: Worksheet }).sheet;
  expect(opened.house).toHaveProperty('parts', { plant });
  await lineReady(opened.house);
  expect(lineIfAny(houseOfVersion(opened, 1))).toEqual(own);
  for (const version of [1, 2]) expect(questionsAlone(opened, version, questionKinds)).toEqual(questionsAlone(sheet, version, questionKinds));
}); // prettier-ignore

test('a sheet about a house without such parts has the link that it always had', () => {
  const bare: Worksheet = { ...settings, house: { name: 'Threefold', house } };
  expect(partsOfLine({ facts: { maltings: 'own' } })).toEqual({});
  expect(sheetLink({ ...bare, house: { name: 'Threefold', house, ...partsOfLine({}) } })).toBe(
    sheetLink(bare),
  );
});
