// Proof, gauging and reduction against printed tables and statutes.
import { bracketedRoot } from '../core/numerics/root.ts';
import { celsius, litres20, massPercent, strength } from '../core/quantity.ts';
import { amountsOf, portionOf } from '../core/spirit/amounts.ts';
import { densityOfSpirit } from '../core/spirit/density.ts';
import { reduce } from '../core/spirit/mixing.ts';
import { alcoholFromUsProofGallons, sikesProof, usProof } from '../core/spirit/proof.ts';
import { massPercentFromStrength } from '../core/spirit/strength.ts';
import dilution from './reference/dilution-table.json' with { type: 'json' };
import proof60 from './reference/us-proof-60F-computed.json' with { type: 'json' };
import uk from './reference/uk-eu.json' with { type: 'json' };
import us from './reference/us-gauging.json' with { type: 'json' };
import { publishedEntry, publishedRow, standingOfRow, type Group, type Row } from './row.ts';

const F60 = celsius(15.5556);
const F51 = celsius(10.5556);
const POUND = 0.45359237; // kg, by definition
const GALLON = 3.785411784e-3; // m³, 231 cubic inches
const AIR = 1.2; // kg/m³, customary
const WEIGHTS = 8000; // kg/m³, customary density of weights

const strengthOf = (scale: (s: ReturnType<typeof strength>) => number, degrees: number) =>
  strength(bracketedRoot((s) => scale(strength(s)) - degrees, 0, 100));
const over = (mass: number, t: typeof F60) =>
  densityOfSpirit(massPercent(mass), t) / densityOfSpirit(massPercent(0), t);
const proofSpirit = strengthOf(sikesProof, 100);
const proofSpiritMass = massPercentFromStrength(proofSpirit);
const gallonsPerPound = (rho: number) => (POUND * (1 - AIR / WEIGHTS)) / (1 - AIR / rho) / rho / GALLON;
const spirit190 = densityOfSpirit(massPercentFromStrength(strengthOf(usProof, 190)), F60);

/** A row of one of the two lists of items; `printed` where the value is not a plain number. */
function item(
  list: readonly { item: string; value: unknown; source: string; provenance: string }[],
  name: string,
  computed: number,
  tolerance: number,
  reason: string,
  printed?: number,
  what = name,
): Row {
  const { value, source, provenance } = publishedEntry(list, name);
  const figure = printed ?? Number(value);
  return publishedRow({
    id: `${name}, ${figure}`,
    source,
    standing: standingOfRow(provenance),
    what,
    printed: figure,
    computed,
    tolerance,
    reason,
  });
}

const reductions = dilution.rows.map(({ from_abv: from, to_abv: to, water_per_100_published: printed }) =>
  publishedRow({
    id: `dilution-${from}-${to}`,
    source: dilution.source,
    standing: standingOfRow(dilution.provenance),
    what: `water for 100 volumes from ${from} to ${to} % vol`,
    printed,
    computed: reduce({ volume: litres20(100), strength: strength(from) }, strength(to)).waterVolume,
    tolerance: 0.005 * printed,
    reason: 'half a hundredth: printed to three figures, and for 60 °F instead of 20 °C',
  }),
);

const gallon = alcoholFromUsProofGallons(1);
/** Volume at 20 °C of one volume of pure alcohol at 60 °F. */
const warmed = densityOfSpirit(massPercent(100), F60) / densityOfSpirit(massPercent(100), celsius(20));
const american = [
  item(us, 'proof gallon', over(100, F60), 1.5e-4, 'printed to four figures from densities of 1913, 0.012 % from R 22', 0.7939, 'specific gravity of pure alcohol at 60 °F'),
  item(us, 'Table 4, 190 proof, proof gal/lb', 1.9 * gallonsPerPound(spirit190), 4e-5, 'weighed in air of 1.2 kg/m³ against weights of 8,000 kg/m³; the table rests on densities of 1913', undefined, 'proof gallons in a pound of 190 proof, Table 4'),
  item(us, 'wine gal per lb of water at 60 F', gallonsPerPound(densityOfSpirit(massPercent(0), F60)), 3e-6, 'weighed in air; the air of the table is not stated, and 2 % of its buoyancy is this much', undefined, 'wine gallons in a pound of water at 60 °F'),
  item(us, '1 US proof gallon', gallon / warmed, 1e-9, 'by definition, at 60 °F; only rounding', 1.892705892, 'pure alcohol of a proof gallon, L at 60 °F'),
  item(us, '1 US proof gallon', gallon, 6e-5, 'computed to four decimals', 1.9018, 'pure alcohol of a proof gallon, L at 20 °C'),
  ...proof60.rows.flatMap(({ proof, mass_pct, abv_20C }) => {
    const [source, standing] = [proof60.source, standingOfRow(proof60.provenance)];
    const reason = 'the same formula worked elsewhere, strength to three decimals';
    return [
      publishedRow({ id: `us-proof-${proof}`, source, standing, what: `${abv_20C} % vol, degrees US proof`, printed: proof, computed: usProof(strength(abv_20C)), tolerance: 0.0015, reason }),
      publishedRow({ id: `us-mass-${proof}`, source, standing, what: `${abv_20C} % vol, % mass`, printed: mass_pct, computed: massPercentFromStrength(strength(abv_20C)), tolerance: 0.0015, reason }),
    ];
  }),
]; // prettier-ignore

const drawn = portionOf(amountsOf({ volume: litres20(100 * 12 * 0.7), strength: strength(40) }));
const british = [
  item(uk, 'proof spirit (until 31 Dec 1979)', over(proofSpiritMass, F51), 1e-9, 'the definition itself', 12 / 13, 'proof spirit at 51 °F over water at 51 °F'),
  item(uk, 'proof spirit SG 60/60 F', over(proofSpiritMass, F60), 5e-5, 'older densities; five figures', undefined, 'specific gravity of proof spirit at 60 °F'),
  item(uk, 'proof spirit mass %', proofSpiritMass, 0.015, 'older densities; two decimals', undefined, 'proof spirit, % mass'),
  item(uk, 'proof spirit %vol at 60 F', usProof(proofSpirit) / 2, 0.05, 'printed to one decimal', undefined, 'proof spirit, % vol at 60 °F'),
  item(uk, 'proof spirit %vol at 20 C', proofSpirit, 0.006, 'printed to two decimals', undefined, 'proof spirit, % vol at 20 °C'),
  item(uk, 'absolute alcohol, degrees UK proof (computed at 50 F)', sikesProof(strength(100)), 0.006, 'computed to two decimals', undefined, 'pure alcohol, degrees UK proof'),
  item(uk, 'statutory equivalences', strengthOf(sikesProof, 166.4), 0.1, 'the statute cuts to one decimal', 94.8, '166.4 degrees UK proof, % vol'),
  item(uk, 'statutory equivalences', strengthOf(sikesProof, 2), 0.06, 'the statute prints one decimal and rounds up here: 1.15', 1.2, '2 degrees UK proof, % vol'),
  item(uk, 'duty example, spirits (current text)', drawn.alcohol, 1e-9, 'volume × strength by definition; only rounding', 336, 'pure alcohol of 100 cases of 12 bottles of 70 cL at 40 % vol, L'),
]; // prettier-ignore

export const gaugingGroups: readonly Group[] = [
  { title: 'Water for reduction', unit: 'volumes', rows: reductions },
  { title: 'Proof and gauging, United States', unit: '', rows: american },
  { title: 'Proof and duty, United Kingdom', unit: '', rows: british },
];
