// What stands in a house, for its sheet: vessels, hours of fermentation, and casks, in a row each.
import { format } from '../core/format.ts';
import { holdingNames, holdings, plantFields, stillFields } from '../core/plant/fields.ts';
import {
  condensers,
  heatings,
  schemes,
  stillNames,
  washbackMaterials,
  type Plant,
  type Stills,
} from '../core/plant/plant.ts';
import type { Stage } from './figures.ts';
import { readPart, type HouseParts } from './parts/part.ts';
import { plantPart } from './parts/plant.ts';
import { besideGroups, stockPart } from './parts/stock.ts';

export type StandingSaid = readonly [what: string, says: string];

const litres = (value: number) => format(value, 'volume20', 0);
const hours = (value: number) => format(value, 'hours', value % 1 === 0 ? 0 : 1);
/** A figure with a mark where it is a usual value that nobody has given. */
const own = (usual: readonly string[] | undefined, name: string, text: string) =>
  usual?.includes(name) ? `${text} (usual)` : text;

const stills = ({ number, charge, hours: run, condenser, heating, usual }: Stills) =>
  [
    `${number} of ${own(usual, 'charge', litres(charge))}`,
    own(usual, 'hours', `${stillFields.hours.label.toLowerCase()}: ${hours(run)}`),
    own(usual, 'condenser', condensers[condenser].toLowerCase()),
    own(usual, 'heating', heatings[heating].toLowerCase()),
  ].join(', ');

function vessels(plant: Plant): readonly StandingSaid[] {
  const { mashTuns, washbacks, usual } = plant;
  const kinds = {
    wash: plant.washStills,
    intermediate: plant.intermediateStills,
    spirit: plant.spiritStills,
  } as const;
  return [
    ...mashTuns.map(({ number, hours: each, usual }): StandingSaid => [
      'Mash tuns',
      `${number}, ${own(usual, 'hours', `a mash every ${hours(each)}`)}`,
    ]),
    ...washbacks.map(({ number, full, working, material, usual }): StandingSaid => [
      'Washbacks',
      `${number} of ${litres(full)}, ${own(usual, 'working', `filled to ${litres(working)}`)}, ${washbackMaterials[material].toLowerCase()}`,
    ]),
    ...(['shortFermentation', 'weekendFermentation'] as const)
      .filter((name) => washbacks.length > 0 && !usual?.includes(name))
      .map((name): StandingSaid => [plantFields[name].label, hours(plant[name])]),
    ...Object.entries(kinds).flatMap(([kind, all]) =>
      all.map((group): StandingSaid => [stillNames[kind as keyof typeof kinds], stills(group)]),
    ),
    ...(Object.values(kinds).some((all) => all.length > 0)
      ? [['Distilled', schemes[plant.scheme]] as const]
      : []),
    ...holdings
      .filter((name) => plant[name].holds > 0)
      .map((name): StandingSaid => [holdingNames[name], litres(plant[name].holds)]),
  ];
}

/** The rows, of what was given and can be read; none where nothing was. */
export function standingRows(parts: HouseParts): readonly StandingSaid[] {
  const plant = parts.plant === undefined ? [] : vessels(readPart(plantPart, parts.plant).value);
  if (parts.stock === undefined) return plant;
  const { opened, elsewhereShare, groups } = readPart(stockPart, parts.stock).value;
  const casks = groups.reduce((sum, each) => sum + each.casks, 0);
  return [
    ...plant,
    ...(opened === undefined ? [] : [[besideGroups.opened.label, String(opened)] as const]),
    ...(elsewhereShare === undefined
      ? []
      : [['Laid elsewhere', `${format(elsewhereShare, 'percent', 0)} of each year’s fillings`] as const]),
    ...(casks === 0 ? [] : [['Casks in the register', format(casks, 'count', 0)] as const]),
  ];
}

/** The stage in whose room each row stands; what is of no vessel is of the store. */
const stageOfRow: Readonly<Record<string, Stage>> = {
  'Mash tuns': 'mashing',
  Washbacks: 'fermenting',
  [plantFields.shortFermentation.label]: 'fermenting',
  [plantFields.weekendFermentation.label]: 'fermenting',
  ...Object.fromEntries(
    [...Object.values(stillNames), ...Object.values(holdingNames), 'Distilled'].map((what) => [
      what,
      'distilling' as const,
    ]),
  ),
};

/** Of what stands in a house, the rows of some stages. */
export const standingRowsOf = (parts: HouseParts, of: readonly Stage[]): readonly StandingSaid[] =>
  standingRows(parts).filter(([what]) => of.includes(stageOfRow[what] ?? 'maturing'));
