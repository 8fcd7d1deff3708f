// The schemas of the parts of a house, made from the tables that their readers go by.
import { extractBases } from '../core/malting/grist.ts';
import { holdingField, holdings, holdingNames, MOST_VESSEL_GROUPS as MOST_VESSELS, plantFields, stillFields, tunFields, washbackFields, type VesselField } from '../core/plant/fields.ts'; // prettier-ignore
import { condensers, heatings, schemes, washbackMaterials } from '../core/plant/plant.ts';
import { groupFields, type GroupField } from '../core/stock/group.ts';
import { LONGEST_GROUP_NAME as LONGEST_OF_GROUP } from '../core/stock/read-group.ts';
import { liquids } from '../core/week/period.ts';
import { weekFigures } from '../core/week/settings.ts';
import { factIds, factKind } from './facts.ts';
import { bottleColumns, MOST_BOTTLES } from './parts/bottles.ts';
import { LONGEST_VERSION_NAME as LONGEST_OF_VERSION, MOST_HOUSE_VERSIONS } from './parts/dates.ts';
import { MOST_WORDS } from './parts/facts.ts';
import { finalGravityField, LONGEST_CAMPAIGN_NAME as LONGEST_OF_GRIST, maltColumns, MOST_CAMPAIGNS, MOST_MALTS, WEEKS } from './parts/malts.ts'; // prettier-ignore
import type { PartId } from './parts/part.ts';
import { LONGEST_PERIOD_NAME as LONGEST_OF_PERIOD, MOST_PERIODS, periodNumbers, periodSpirits, MOST_LITRES } from './parts/periods.ts'; // prettier-ignore
import { besideGroups, MOST_CASK_GROUPS } from './parts/stock.ts';
import {
  eachSchema,
  listSchema,
  numberSchema,
  objectSchema,
  oneOfSchema,
  textSchema,
  WHOLE,
  wholeSchema,
  type Schema,
} from './schema-kit.ts';

/** Each entry of a table as a schema. */
const mapped = <T>(table: Readonly<Record<string, T>>, schema: (entry: T) => Schema): Schema =>
  Object.fromEntries(Object.entries(table).map(([name, entry]) => [name, schema(entry)]));

const ofVessel = ({ label, kind, limits }: VesselField) => numberSchema(label, kind, limits, kind === 'count' ? WHOLE : {}); // prettier-ignore
const vessels = (table: Readonly<Record<string, VesselField>>, choices: Schema = {}) =>
  listSchema(wholeSchema({ ...mapped(table, ofVessel), ...choices }), MOST_VESSELS);
const stills = vessels(stillFields, { condenser: oneOfSchema('Condenser', condensers), heating: oneOfSchema('Heating', heatings) }); // prettier-ignore
const plant = objectSchema({
  mashTuns: vessels(tunFields),
  washbacks: vessels(washbackFields, { material: oneOfSchema('Made of', washbackMaterials) }),
  washStills: stills,
  intermediateStills: stills,
  spiritStills: stills,
  ...eachSchema(holdings, (name) => ({
    title: holdingNames[name],
    ...wholeSchema({ holds: ofVessel(holdingField) }),
  })),
  ...mapped(plantFields, ofVessel),
  scheme: oneOfSchema('How it is distilled', schemes),
});

const DAY = { type: 'string', pattern: String.raw`^\d{4}-\d{2}-\d{2}$` };
const ofField = (field: GroupField): Schema => {
  if (field.is === 'number')
    return numberSchema(field.label, field.kind, field.range, field.whole ? WHOLE : {});
  if (field.is === 'choice') return oneOfSchema(field.label, field.options);
  if (field.is === 'text') return textSchema(field.label, LONGEST_OF_GROUP);
  return { title: field.label, type: 'string', pattern: String.raw`^\d{4}(-\d{2}(-\d{2})?)?$` };
};
const stock = objectSchema({
  ...mapped(besideGroups, ({ label, kind, range, whole }) => numberSchema(label, kind, range, whole ? WHOLE : {})), // prettier-ignore
  groups: listSchema(
    objectSchema(mapped(groupFields, ofField), {
      required: Object.keys(groupFields).filter(
        (name) => groupFields[name as keyof typeof groupFields].needed,
      ),
    }),
    MOST_CASK_GROUPS,
  ),
});

const malts = wholeSchema({
  basis: oneOfSchema('Extract and phenols are parts of', extractBases),
  campaigns: listSchema(
    objectSchema(
      {
        name: textSchema('Name', LONGEST_OF_GRIST),
        weeks: numberSchema('Weeks of the year', 'count', WEEKS),
        finalGravity: numberSchema('Final gravity', 'gravity', finalGravityField.range),
        malts: listSchema(wholeSchema(mapped(maltColumns, ({ label, kind, range }) => numberSchema(label, kind, range))), MOST_MALTS, 1), // prettier-ignore
      },
      { required: ['name', 'weeks', 'malts'] },
    ),
    MOST_CAMPAIGNS,
  ),
});

const spirit = wholeSchema({
  volume: numberSchema('Volume', 'volume20', [0, MOST_LITRES]),
  strength: numberSchema('Strength', 'strength', [0, 100]),
});
const standing = wholeSchema(mapped(liquids, () => spirit));
const periods = objectSchema({
  week: objectSchema(mapped(weekFigures, ({ label, kind, limits }) => numberSchema(label, kind, limits, kind === 'count' ? WHOLE : {}))), // prettier-ignore
  periods: listSchema(
    wholeSchema({
      name: textSchema('Name', LONGEST_OF_PERIOD),
      opening: standing,
      closing: standing,
      ...mapped(periodNumbers, ([title, minimum, maximum]) => ({ title, type: 'number', minimum, maximum })),
      ...mapped(periodSpirits, (title) => ({ title, ...spirit })),
    }),
    MOST_PERIODS,
  ),
});

const facts = objectSchema(
  eachSchema(factIds, (id) => {
    const { label, choices, ppm } = factKind(id);
    const is = choices ? oneOfSchema(label, choices) : ppm && numberSchema(label, 'ppm', ppm.range);
    return objectSchema({ ...(is && { is }), words: textSchema(`${label}, in words`, MOST_WORDS) });
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
  bottles: listSchema(wholeSchema(mapped(bottleColumns, ({ label, kind, range }) => numberSchema(label, kind, range))), MOST_BOTTLES), // prettier-ignore
  dates: listSchema(
    objectSchema(
      { day: DAY, name: textSchema('Name', LONGEST_OF_VERSION), figures, known },
      { required: ['day', 'name', 'figures'] },
    ),
    MOST_HOUSE_VERSIONS,
  ),
});
