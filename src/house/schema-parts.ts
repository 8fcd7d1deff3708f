// The schemas of the parts of a house, made from the tables that their readers go by.
import { bases } from '../core/malting/grist.ts';
import { holdingField, holdings, holdingNames, MOST_GROUPS as MOST_VESSELS, plantFields, stillFields, tunFields, washbackFields, type VesselField } from '../core/plant/fields.ts'; // prettier-ignore
import { condensers, heatings, schemes, washbackMaterials } from '../core/plant/plant.ts';
import { fields, type GroupField } from '../core/stock/group.ts';
import { LONGEST as LONGEST_OF_GROUP } from '../core/stock/read-group.ts';
import { liquids } from '../core/week/period.ts';
import { weekFigures } from '../core/week/settings.ts';
import { factIds, factKind } from './facts.ts';
import { bottleColumns, MOST_BOTTLES } from './parts/bottles.ts';
import { LONGEST_NAME as LONGEST_OF_VERSION, MOST_VERSIONS } from './parts/dates.ts';
import { MOST_WORDS } from './parts/facts.ts';
import { finalGravityField, LONGEST_NAME as LONGEST_OF_GRIST, maltColumns, MOST_CAMPAIGNS, MOST_MALTS, WEEKS } from './parts/malts.ts'; // prettier-ignore
import type { PartId } from './parts/part.ts';
import { LONGEST_NAME as LONGEST_OF_PERIOD, MOST_PERIODS, numbers, spirits, MOST_LITRES } from './parts/periods.ts'; // prettier-ignore
import { besideGroups, MOST_GROUPS } from './parts/stock.ts';
import {
  each,
  listOf,
  numberIn,
  objectOf,
  oneOf,
  textOf,
  WHOLE,
  wholeOf,
  type Schema,
} from './schema-kit.ts';

/** Each entry of a table as a schema. */
const mapped = <T>(table: Readonly<Record<string, T>>, schema: (entry: T) => Schema): Schema =>
  Object.fromEntries(Object.entries(table).map(([name, entry]) => [name, schema(entry)]));

const ofVessel = ({ label, kind, limits }: VesselField) => numberIn(label, kind, limits, kind === 'count' ? WHOLE : {}); // prettier-ignore
const vessels = (table: Readonly<Record<string, VesselField>>, choices: Schema = {}) =>
  listOf(wholeOf({ ...mapped(table, ofVessel), ...choices }), MOST_VESSELS);
const stills = vessels(stillFields, { condenser: oneOf('Condenser', condensers), heating: oneOf('Heating', heatings) }); // prettier-ignore
const plant = objectOf({
  mashTuns: vessels(tunFields),
  washbacks: vessels(washbackFields, { material: oneOf('Made of', washbackMaterials) }),
  washStills: stills,
  intermediateStills: stills,
  spiritStills: stills,
  ...each(holdings, (name) => ({ title: holdingNames[name], ...wholeOf({ holds: ofVessel(holdingField) }) })),
  ...mapped(plantFields, ofVessel),
  scheme: oneOf('How it is distilled', schemes),
});

const DAY = { type: 'string', pattern: String.raw`^\d{4}-\d{2}-\d{2}$` };
const ofField = (field: GroupField): Schema => {
  if (field.is === 'number') return numberIn(field.label, field.kind, field.range, field.whole ? WHOLE : {});
  if (field.is === 'choice') return oneOf(field.label, field.options);
  if (field.is === 'text') return textOf(field.label, LONGEST_OF_GROUP);
  return { title: field.label, type: 'string', pattern: String.raw`^\d{4}(-\d{2}(-\d{2})?)?$` };
};
const stock = objectOf({
  ...mapped(besideGroups, ({ label, kind, range, whole }) => numberIn(label, kind, range, whole ? WHOLE : {})), // prettier-ignore
  groups: listOf(
    objectOf(mapped(fields, ofField), {
      required: Object.keys(fields).filter((name) => fields[name as keyof typeof fields].needed),
    }),
    MOST_GROUPS,
  ),
});

const malts = wholeOf({
  basis: oneOf('Extract and phenols are parts of', bases),
  campaigns: listOf(
    objectOf(
      {
        name: textOf('Name', LONGEST_OF_GRIST),
        weeks: numberIn('Weeks of the year', 'count', WEEKS),
        finalGravity: numberIn('Final gravity', 'gravity', finalGravityField.range),
        malts: listOf(wholeOf(mapped(maltColumns, ({ label, kind, range }) => numberIn(label, kind, range))), MOST_MALTS, 1), // prettier-ignore
      },
      { required: ['name', 'weeks', 'malts'] },
    ),
    MOST_CAMPAIGNS,
  ),
});

const spirit = wholeOf({
  volume: numberIn('Volume', 'volume20', [0, MOST_LITRES]),
  strength: numberIn('Strength', 'strength', [0, 100]),
});
const standing = wholeOf(mapped(liquids, () => spirit));
const periods = objectOf({
  week: objectOf(mapped(weekFigures, ({ label, kind, limits }) => numberIn(label, kind, limits, kind === 'count' ? WHOLE : {}))), // prettier-ignore
  periods: listOf(
    wholeOf({
      name: textOf('Name', LONGEST_OF_PERIOD),
      opening: standing,
      closing: standing,
      ...mapped(numbers, ([title, minimum, maximum]) => ({ title, type: 'number', minimum, maximum })),
      ...mapped(spirits, (title) => ({ title, ...spirit })),
    }),
    MOST_PERIODS,
  ),
});

const facts = objectOf(
  each(factIds, (id) => {
    const { label, choices, ppm } = factKind(id);
    const is = choices ? oneOf(label, choices) : ppm && numberIn(label, 'ppm', ppm.range);
    return objectOf({ ...(is && { is }), words: textOf(`${label}, in words`, MOST_WORDS) });
  }),
);

/** The schema of every part, from that of the figures and of what is known, which versions of the house hold as well. */
export const schemasOfParts = (figures: Schema, known: Schema): Readonly<Record<PartId, Schema>> => ({
  known,
  plant,
  periods,
  stock,
  malts,
  facts,
  bottles: listOf(wholeOf(mapped(bottleColumns, ({ label, kind, range }) => numberIn(label, kind, range))), MOST_BOTTLES), // prettier-ignore
  dates: listOf(
    objectOf(
      { day: DAY, name: textOf('Name', LONGEST_OF_VERSION), figures, known },
      { required: ['day', 'name', 'figures'] },
    ),
    MOST_VERSIONS,
  ),
});
