// A calculator with its question, and a kind of question that belongs to none.
import type { Recipe } from './recipe.ts';

const gather = 'tests/build/gather.test.ts';
const kinds = 'tests/exercises/kinds.test.ts';
const core = 'src/core/milling/sacks.ts';
const declaration = 'src/calculators/milling/sacks-of-malt.ts';
const question = 'src/exercises/kinds/milling/sacks-of-malt.ts';
const pallet = 'src/exercises/kinds/running/a-pallet-of-sacks.ts';
const since = 'export default { ...kind, since: 8 };';

export const calculator: Recipe = {
  adds: 'a calculator with its question',
  heading: 'To add a calculator with its question',
  steps: [
    {
      item: 1,
      edits: [{ file: core }],
      leftOut: [{ forgets: 'the arithmetic', test: gather, says: /core\/milling\/sacks\.ts/ }],
    },
    {
      item: 2,
      gathers: true,
      edits: [{ file: declaration }],
      leftOut: [
        { forgets: 'npm run gather', by: 'not gathering', test: gather, says: /src\/calculators\/index\.ts is not what its folder holds: npm run gather/ },
      ],
    },
    {
      item: 3,
      edits: [],
      leftOut: [
        {
          forgets: 'to print numbers of the working with formatWorking',
          by: [{ file: declaration, find: '${w(sacks)} × ', put: '${n(sacks, 0)} × ' }],
          test: 'tests/calculators/workings.test.ts',
          says: /33 × 4 ÷ 60 = 2\.22.*formatWorking/s,
        },
      ],
    },
    {
      item: 4,
      edits: [],
      leftOut: [
        {
          forgets: 'an example',
          by: [{ file: declaration, find: '  examples: [\n', put: '  examples: [],\n  forgotten: [\n' }],
          test: 'tests/calculators/calculators.test.ts',
          says: /sacks-of-malt has no example/,
        },
      ],
    },
    {
      item: 6,
      gathers: true,
      edits: [{ file: question }],
      leftOut: [{ forgets: 'its question', test: kinds, says: /sacks-of-malt.*has no kind of question/s }],
    },
  ],
  without: { 5: 'no chapter speaks of sacks' },
  tests: [],
  only: 'sacks-of-malt|every calculator has|is as the files',
}; // prettier-ignore

export const kind: Recipe = {
  adds: 'a kind of question',
  heading: 'To add a kind of question',
  steps: [
    {
      item: 1,
      gathers: true,
      edits: [{ file: pallet }],
      leftOut: [
        { forgets: 'npm run gather', by: 'not gathering', test: gather, says: /src\/exercises\/kinds\/index\.ts is not what its folder holds: npm run gather/ },
      ],
    },
    {
      item: 2,
      edits: [],
      leftOut: [
        {
          forgets: 'that a known mistake must not be the answer',
          by: [{ file: pallet, find: 'gives: ({ sacks, sack }) => sacks * sack,', put: 'gives: ({ sacks, sack, pallet }) => sacks * sack + pallet,' }],
          test: kinds,
          says: /draws nothing/,
        },
      ],
    },
    {
      item: 3,
      edits: [],
      leftOut: [
        {
          forgets: 'since when it is drawn',
          by: [{ file: pallet, find: since, put: 'export default kind;' }],
          test: 'tests/exercises/promised.test.ts',
          says: /since: GENERATOR \+ 1.*a-pallet-of-sacks/s,
        },
      ],
    },
    {
      item: 4,
      edits: [
        {
          file: 'src/exercises/passages.ts',
          find: "'running/counting/#dip-to-litres-to-alcohol': [",
          put: "'running/counting/#dip-to-litres-to-alcohol': ['a-pallet-of-sacks', ",
        },
      ],
      leftOut: [],
    },
  ],
  without: { 5: 'it has no options', 6: 'prints some' },
  tests: ['tests/exercises/mended.test.ts', 'tests/path/path.test.ts'],
  only: 'a-pallet-of-sacks|is as the files|drawn since|there',
}; // prettier-ignore
