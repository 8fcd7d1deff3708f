// Two figures: one that the reader gives, one that is computed and stands on a card.
import { behind, type Recipe } from './recipe.ts';

const heading = 'To add a figure';
const table = 'tests/figures/table.test.ts';

const entry = (instead: string) =>
  behind(
    'src/core/figures/mashing.ts',
    'export const mashingFigures = {\n',
    `  thirdWater: { is: 'set', kind: 'temperature', label: 'Third water', limits: [55, 99], step: 1,${instead} meaning: 'Temperature of the third water.' },\n`,
  );

export const givenFigure: Recipe = {
  adds: 'a figure that the reader gives',
  heading,
  steps: [
    {
      item: 1,
      edits: [entry(" instead: 'it moves the last heat of the bed',")],
      leftOut: [{ forgets: 'its entry', test: table, says: /src\/core\/figures.*thirdWater/s }],
    },
    {
      item: 2,
      edits: [
        { file: 'content/houses/harrowmere.json', find: '"bottleSize": 70', put: '"bottleSize": 70,\n    "thirdWater": 82' },
      ],
      leftOut: [{ forgets: 'its value', test: table, says: /content\/houses\/harrowmere\.json.*thirdWater/s }],
    },
    {
      item: 2,
      edits: [{ file: 'src/house/short-list.ts', find: '\n];', put: "\n  ['thirdWater', 82],\n];" }],
      leftOut: [
        { forgets: 'its row for short links', test: 'tests/handing/pictures.test.ts', says: /src\/house\/short-list\.ts.*thirdWater/s },
      ],
    },
    {
      item: 2,
      edits: [],
      leftOut: [
        {
          forgets: 'what it moves instead of alcohol',
          by: [{ file: 'src/core/figures/mashing.ts', find: " instead: 'it moves the last heat of the bed',", put: '' }],
          test: 'tests/house/moves.test.ts',
          says: /thirdWater moves no alcohol: say what it moves `instead`/,
        },
      ],
    },
  ],
  without: { 3: 'it is not computed', 4: 'it is not computed', 5: 'no guide quotes it', 6: 'it is new' },
  tests: ['tests/house/schema.test.ts'],
}; // prettier-ignore

export const computedFigure: Recipe = {
  adds: 'a computed figure on a card',
  heading,
  steps: [
    {
      item: 1,
      edits: [
        behind(
          'src/core/figures/milling.ts',
          'export const millingFigures = {\n',
          "  maltPerDay: { is: 'computed', kind: 'mass', label: 'Malt a day', limits: [0.1, 2e6], at: 'pace.maltPerDay', card: true },\n",
        ),
      ],
      leftOut: [],
    },
    {
      item: 3,
      edits: [
        behind('src/core/line/line.ts', "    readonly maltPerWeek: Quantity<'mass'>;\n", "    readonly maltPerDay: Quantity<'mass'>;\n"),
        behind(
          'src/core/line/line.ts',
          '      maltPerWeek: kilograms(house.maltPerMash * house.mashesPerWeek),\n',
          '      maltPerDay: kilograms((house.maltPerMash * house.mashesPerWeek) / 7),\n',
        ),
      ],
      leftOut: [{ forgets: 'its place in the line', test: table, says: /no number at pace\.maltPerDay.*src\/core\/line\/line\.ts/s }],
    },
    {
      item: 4,
      edits: [
        {
          file: 'src/house/where-from.ts',
          find: '  maltPerWeek: handSum({',
          put: "  maltPerDay: handSum({\n    rule: 'Malt in a mash × mashes a week ÷ 7.',\n    uses: { malt: 'house.maltPerMash', mashes: 'house.mashesPerWeek' },\n    gives: (v) => (v.malt * v.mashes) / 7,\n    sum: (t) => `${t.malt} × ${t.mashes} ÷ 7`,\n    of: 'mass',\n    source: 'derived',\n  }),\n  maltPerWeek: handSum({",
        },
      ],
      leftOut: [
        { forgets: 'its sum', test: 'tests/exercises/guide-sums.test.ts', says: /maltPerDay.*src\/house\/where-from\.ts/s },
      ],
    },
  ],
  without: { 2: 'it is not given', 5: 'no guide quotes it', 6: 'it is new' },
  tests: [],
}; // prettier-ignore
