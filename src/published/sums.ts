// Worked sums and cask sizes.
import { ETHANOL_MOLAR_MASS, STANDARD_ATMOSPHERE, WATER_MOLAR_MASS } from '../core/constants.ts';
import { maltFromBarley } from '../core/malting/malt-balance.ts';
import { predictedSpiritYield } from '../core/malting/spirit-yield.ts';
import { draffMass } from '../core/mashing/wort.ts';
import { bottlesFrom, CASK_SIZES } from '../core/maturing/filling.ts';
import { millingTime } from '../core/milling/grist.ts';
import { kilograms, litres20, percent, quantity, strength } from '../core/quantity.ts';
import { amountsOf, portionOf } from '../core/spirit/amounts.ts';
import { reduce } from '../core/spirit/mixing.ts';
import atoms from './reference/atomic-weights.json' with { type: 'json' };
import casks from './reference/casks.json' with { type: 'json' };
import sums from './reference/exercises.json' with { type: 'json' };
import { publishedEntry, publishedRow, standingOfRow, type Group } from './row.ts';

const barley = { barleyMoisture: percent(12), maltMoisture: percent(5), dryLoss: percent(10.4) };
const worked: Readonly<Record<string, number>> = {
  M1: maltFromBarley(kilograms(1000), barley),
  M7: predictedSpiritYield({ extract: percent(77.5), fermentability: percent(87) }),
  L2: millingTime(kilograms(9000), quantity('milling', 3.5)),
  D1: portionOf(amountsOf({ volume: litres20(4000), strength: strength(23) })).alcohol,
  D5: reduce({ volume: litres20(1000), strength: strength(70) }, strength(63.5)).waterVolume,
  U3: draffMass(
    { mass: kilograms(1000), moisture: percent(4.5), extract: percent(77) },
    kilograms(770),
    percent(78),
  ),
  T6: bottlesFrom(litres20(103.8 / 0.46), 70),
};
const told: Readonly<Record<string, string>> = {
  M1: 'malt of 5 % from 1,000 kg of barley of 12 %, dry loss 10.4 %, kg',
  M7: 'yield of malt with 77.5 % extract, 87 % of it fermentable, L pure alcohol/t',
  L2: 'milling 9,000 kg at 3.5 t/h, h',
  D1: 'pure alcohol in 4,000 L at 23 % vol, L',
  D5: 'water to bring 1,000 L from 70 to 63.5 % vol, L',
  U3: 'draff of 78 % from 1,000 kg of malt of 4.5 % and 770 kg of extract, kg',
  T6: 'bottles of 70 cL from 103.8 L of pure alcohol at 46 % vol',
};
const loose: Readonly<Record<string, [number, string]>> = {
  D5: [0.02, 'the sum takes densities to 0.01 kg/m³'],
};
const exercises = sums.rows.map(({ id, answer }) => {
  const computed = worked[id];
  if (computed === undefined) throw new Error(`Nothing is worked for ${id}.`);
  const [tolerance, reason] = loose[id] ?? [6e-6 * answer, 'the answer has six figures'];
  return publishedRow({
    id,
    source: sums.source,
    standing: standingOfRow(sums.provenance),
    what: told[id]!,
    printed: answer,
    computed,
    tolerance,
    reason,
  });
});

const sizes = { barrel: 'American standard barrel', hogshead: 'hogshead', butt: 'butt' } as const;
const held = (Object.keys(sizes) as (keyof typeof sizes)[]).map((cask) => {
  const { nominal_L, prov, src } = publishedEntry(casks, sizes[cask]);
  return publishedRow({
    id: cask,
    source: src,
    standing: standingOfRow(prov),
    what: cask,
    printed: nominal_L,
    computed: CASK_SIZES[cask],
    tolerance: 0,
    reason: 'a table is copied exactly',
  });
});

const [H, C, O] = atoms.rows.map(({ weight }) => weight) as [number, number, number];
const of = { source: atoms.source, standing: standingOfRow(atoms.provenance) };
const rounded = 'the abridged weights add up to the third decimal';
const constants = [
  publishedRow({ ...of, id: 'ethanol', what: 'molar mass of C₂H₆O, g/mol', printed: 2 * C + 6 * H + O, computed: ETHANOL_MOLAR_MASS, tolerance: 1e-3, reason: rounded }),
  publishedRow({ ...of, id: 'water', what: 'molar mass of H₂O, g/mol', printed: 2 * H + O, computed: WATER_MOLAR_MASS, tolerance: 1e-3, reason: rounded }),
  publishedRow({ ...of, id: 'atmosphere', source: 'standard atmosphere, by definition', what: 'standard atmosphere, kPa', printed: atoms.atmosphere_kPa, computed: STANDARD_ATMOSPHERE, tolerance: 0, reason: 'a definition is copied exactly' }),
]; // prettier-ignore

export const sumGroups: readonly Group[] = [
  { title: 'Worked sums', unit: '', rows: exercises },
  { title: 'Cask sizes', unit: 'L', rows: held },
  { title: 'Constants', unit: '', rows: constants },
];
