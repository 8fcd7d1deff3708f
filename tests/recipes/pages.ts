// A page, a page of a chapter, and a caution.
import { behind, type Recipe } from './recipe.ts';

const pages = 'tests/content/pages.test.ts';
const chapters = 'tests/content/chapters.test.ts';
const safety = 'tests/content/safety.test.ts';

const rota = 'src/pages/rota.astro';
export const page: Recipe = {
  adds: 'a page',
  heading: 'To add a page',
  steps: [
    {
      item: 1,
      edits: [{ file: rota }],
      leftOut: [
        { forgets: 'its heading', by: [{ file: rota, find: '  <h1>A rota to print</h1>\n', put: '' }], test: pages, says: /src\/pages\/rota\.astro has no h1/ },
        { forgets: 'its description', by: [{ file: rota, find: ' description="A week of shifts, with room for names."', put: '' }], test: pages, says: /src\/pages\/rota\.astro.*description/ },
      ],
    },
    {
      item: 2,
      edits: [
        behind('src/layouts/doors.ts', "          { href: '/class/', text: 'Class book', says: 'results, competence' },\n", "          { href: '/rota/', text: 'A rota to print' },\n"),
      ],
      leftOut: [{ forgets: 'its door', test: pages, says: /nothing leads to \/rota\/.*src\/layouts\/doors\.ts/ }],
    },
  ],
  without: { 3: 'it is no tool', 4: 'it has no island', 5: 'it brings no library', 6: 'the browser tests weigh it' },
  tests: ['tests/layers.test.ts'],
}; // prettier-ignore

const pallets = 'content/chapters/running/pallets.mdx';
export const chapterPage: Recipe = {
  adds: 'a page of a chapter',
  heading: 'To add a chapter, or a page to one',
  steps: [
    {
      item: 1,
      edits: [{ file: pallets }],
      leftOut: [
        { forgets: 'the name for its tab', by: [{ file: pallets, find: 'name: Pallets\n', put: '' }], test: chapters, says: /running\/pallets.*name for its tab/ },
        { forgets: 'its place', by: [{ file: pallets, find: 'place: 3\n', put: '' }], test: chapters, says: /running\/pallets.*place/ },
      ],
    },
    {
      item: 2,
      edits: [],
      leftOut: [
        { forgets: 'what a figure is called', by: [{ file: pallets, find: '<Figure of="malt.mass" />', put: '<Figure of="malt.weight" />' }], test: chapters, says: /malt\.weight/ },
      ],
    },
    {
      item: 3,
      edits: [],
      leftOut: [
        { forgets: 'that a figure is never typed', by: [{ file: pallets, find: '<Figure of="malt.mass" />', put: '1,500 kg' }], test: chapters, says: /<Figure>.*1,500.kg/s },
        { forgets: 'that a bold word is a term', by: [{ file: pallets, find: 'on pallets.', put: 'on **pallets**.' }], test: chapters, says: /content\/glossary\.yaml.*pallets/s },
      ],
    },
  ],
  without: { 4: 'the tests that it names' },
  tests: ['tests/content/whole-trade.test.ts', 'tests/content/search.test.ts'],
}; // prettier-ignore

const sheet = 'content/chapters/safety/mill.mdx';
const safe = 'content/chapters/milling/safe.mdx';
const list = 'tests/content/safety.test.ts';
export const caution: Recipe = {
  adds: 'a caution',
  heading: 'To add a caution',
  steps: [
    {
      item: 1,
      edits: [
        behind(
          'content/cautions.yaml',
          '  source: [scald-times, burn-first-aid, memory]\n',
          '\npallets:\n  title: Stacked pallets\n  hazard: >-\n    A pallet of sacks weighs a tonne, and a stack that leans comes down without warning.\n  does:\n    - Stack on level ground, no higher than the site allows, and keep people out from below.\n    - Take a broken pallet out of use at once.\n  defers: >-\n    Heights and trucks follow your local code, your site’s procedures and the licences that drivers must hold.\n  source: [common-practice]\n',
        ),
      ],
      leftOut: [
        { forgets: 'to defer to the local code', by: [{ file: 'content/cautions.yaml', find: 'Heights and trucks follow your local code, your', put: 'Heights and trucks follow your' }], test: safety, says: /pallets.*local code/s },
      ],
    },
    {
      item: 2,
      edits: [behind(sheet, '<Caution of="machinery" />\n', '\n<Caution of="pallets" />\n')],
      leftOut: [{ forgets: 'the sheet of its room', test: safety, says: /pallets stands whole on no sheet of content\/chapters\/safety/ }],
    },
    {
      item: 3,
      edits: [
        behind(safe, '<Caution of="machinery" />\n', '\n<Caution of="pallets" />\n'),
        { file: list, find: "milling: ['dust', ", put: "milling: ['pallets', 'dust', " },
      ],
      leftOut: [
        { forgets: 'the safe page', by: [{ file: safe, find: '\n<Caution of="pallets" />\n', put: '' }], test: safety, says: /milling.*pallets/s },
        { forgets: 'the list ofStage', by: [{ file: list, find: "milling: ['pallets', ", put: 'milling: [' }], test: safety, says: /ofStage.*pallets/s },
      ],
    },
    {
      item: 4,
      edits: [behind(list, '] = [\n', "  ['a stack that comes down', 'pallets', [/comes down without warning/]],\n")],
      leftOut: [{ forgets: 'its hazard and words', test: safety, says: /pallets has no line in `hazards`/ }],
    },
    {
      item: 5,
      edits: [{ file: 'content/tasks/milling.yaml', find: 'cautions: [dust,', put: 'cautions: [pallets, dust,' }],
      leftOut: [],
    },
  ],
  without: {},
  tests: ['tests/exercises/observed.test.ts'],
}; // prettier-ignore
