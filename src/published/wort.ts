// Extract, attenuation, slaking and small sums against printed rows.
import { mashTemperature, slaking } from '../core/mashing/strike.ts';
import { celsius, gravity, litresPerKilogram, percent, plato } from '../core/quantity.ts';
import { attenuate, exciseFactor, strengthByExciseFactor } from '../core/wort/attenuation.ts';
import { gravityFromPlato, platoFromGravity } from '../core/wort/extract.ts';
import balling from './reference/balling-stoichiometry.json' with { type: 'json' };
import excise from './reference/hmrc-og-pg-factor.json' with { type: 'json' };
import heat from './reference/slaking-heat.json' with { type: 'json' };
import sugar from './reference/sucrose.json' with { type: 'json' };
import { publishedEntry, publishedRow, standingOfRow, type Group } from './row.ts';

const extracts = sugar.rows.map(({ P, SG2020_vac }) =>
  publishedRow({
    id: `sucrose-${P}`,
    source: sugar.source,
    standing: standingOfRow(sugar.provenance),
    what: `°P of gravity ${SG2020_vac}`,
    printed: P,
    computed: platoFromGravity(gravity(SG2020_vac)),
    tolerance: P <= 20 ? 0.005 : 0.01,
    reason: 'five decimals of gravity are 0.001 °P; the cubic is a fit',
  }),
);

const factor = (fall: number) => {
  const found = exciseFactor(fall);
  return typeof found === 'number' ? found : NaN;
};
const known = { source: excise.source, standing: standingOfRow(excise.provenance) };
const bands = excise.rows.flatMap(({ lo, hi, f }) =>
  [lo, hi].map((fall) =>
    publishedRow({
      ...known,
      id: `excise-${fall}`,
      what: `factor for ${fall} degrees`,
      printed: f,
      computed: factor(fall),
      tolerance: 0,
      reason: 'a table is copied exactly',
    }),
  ),
);
const worked = excise.worked.map(({ OG, PG, abv, source }) =>
  publishedRow({
    id: `excise-${OG}-${PG}`,
    source,
    standing: 'computed',
    what: `% vol from ${OG} to ${PG}`,
    printed: abv,
    computed: strengthByExciseFactor({ original: gravity(OG / 1000), present: gravity(PG / 1000) }),
    tolerance: 1e-9,
    reason: 'one product; only rounding',
  }),
);

/** % mass of alcohol for original and real extract, through the gravities that stand for them. */
function alcoholFrom(originalExtract: number, realExtract: number): number {
  const apparent = (realExtract - 0.1808 * originalExtract) / 0.8192;
  const original = gravityFromPlato(plato(originalExtract));
  return attenuate({ original, final: gravityFromPlato(plato(apparent)) }).alcoholByMass;
}
const examples = publishedEntry(balling, 'original extract').examples!.map(({ A_wt, RE, OE }) =>
  publishedRow({
    id: `balling-${A_wt}-${RE}`,
    source: 'Balling’s formula for original extract, worked',
    standing: 'computed',
    what: `% mass of alcohol, original ${OE} and real extract ${RE} °P`,
    printed: A_wt,
    computed: alcoholFrom(OE, RE),
    tolerance: 5e-5,
    reason: 'original extract is given to four decimals',
  }),
);
const { carbonDioxide, yeast, ethanol } = attenuate({ original: gravity(1.058), final: gravity(0.998) });
const ballingSays = {
  source: 'Balling 1865',
  standing: standingOfRow(publishedEntry(balling, 'Balling').provenance),
  tolerance: 1e-9,
  reason: 'his own figure; only rounding',
};
const shares = [
  publishedRow({
    ...ballingSays,
    id: 'balling-gas',
    what: 'carbon dioxide with 1 g of ethanol, g',
    printed: 0.9565,
    computed: carbonDioxide / ethanol,
  }),
  publishedRow({
    ...ballingSays,
    id: 'balling-yeast',
    what: 'yeast with 1 g of ethanol, g',
    printed: 0.11,
    computed: yeast / ethanol,
  }),
  publishedRow({
    id: 'molar-gas',
    source: 'molar masses of carbon dioxide and ethanol',
    standing: 'computed',
    what: 'carbon dioxide with 1 g of ethanol, g',
    printed: publishedEntry(balling, 'CO2/ethanol mass').value as number,
    computed: carbonDioxide / ethanol,
    tolerance: 0.002,
    reason: 'Balling weighed; the ratio of molar masses is exact',
  }),
];

const slaked = {
  source: heat.source,
  standing: standingOfRow(heat.prov),
  tolerance: 0,
  reason: 'a table is copied exactly',
};
const slakings = heat.rows.flatMap(({ moisture, S, Sc_C }) => {
  const found = slaking(percent(moisture));
  return [
    publishedRow({
      ...slaked,
      id: `slaking-${moisture}-heat`,
      what: `heat capacity over water’s at ${moisture} %`,
      printed: S,
      computed: found.heat,
    }),
    publishedRow({
      ...slaked,
      id: `slaking-${moisture}-rise`,
      what: `rise on wetting at ${moisture} %, °C`,
      printed: Sc_C,
      computed: found.rise,
    }),
  ];
});
/** The table's own formula, worked for malt of 2 %, 27 °C, 2.68 L/kg, water of 69 °C. */
const mash = publishedRow({
  id: 'mash-temperature',
  source: 'the table’s own formula, worked',
  standing: 'computed',
  what: 'mash temperature, °C',
  printed: 65.9645,
  computed: mashTemperature(celsius(69), {
    ratio: litresPerKilogram(2.68),
    gristTemperature: celsius(27),
    maltMoisture: percent(2),
  }),
  tolerance: 5e-5,
  reason: 'worked to four decimals',
});

export const wortGroups: readonly Group[] = [
  { title: 'Extract from gravity', unit: '°P', rows: extracts },
  { title: 'Excise factors', unit: '% vol', rows: [...bands, ...worked] },
  { title: 'Balling’s balance', unit: '', rows: [...examples, ...shares] },
  { title: 'Heat of wetting', unit: '', rows: [...slakings, mash] },
];
