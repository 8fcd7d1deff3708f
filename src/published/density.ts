// Density of spirit and of water against printed tables.
import { celsius, massPercent, strength } from '../core/quantity.ts';
import { densityOfSpirit } from '../core/spirit/density.ts';
import { densityFromStrength } from '../core/spirit/strength.ts';
import densities from './reference/density-published.json' with { type: 'json' };
import r22 from './reference/oiml-r22-coefficients.json' with { type: 'json' };
import water from './reference/water-density.json' with { type: 'json' };
import { publishedRow, standingOfRow, type Group, type Row } from './row.ts';

const at = (mass: number, t: number) => densityOfSpirit(massPercent(mass), celsius(t));

const tables = densities.map((printed, i): Row => {
  const { source, provenance, rho_published } = printed;
  const t = printed.t_C ?? 20;
  const byVolume = printed.abv_pct !== undefined;
  return publishedRow({
    id: `density-${i + 1}`,
    source,
    standing: standingOfRow(provenance),
    what: byVolume ? `${printed.abv_pct} % vol at ${t} °C` : `${printed.mass_pct} % mass at ${t} °C`,
    printed: rho_published,
    computed: byVolume
      ? densityFromStrength(strength(printed.abv_pct!), celsius(t))
      : at(printed.mass_pct!, t),
    tolerance: byVolume ? 0.006 : 0.15,
    reason: byVolume
      ? 'the table of the formula itself, printed to 0.01 kg/m³'
      : 'older measurements, up to 0.12 kg/m³ from R 22 and mostly to one side',
  });
});

/** The general formula written out term by term from the printed coefficients. */
function formula(p: number, dt: number): number {
  return r22.coefficients.reduce((sum, { name, value }) => {
    const [letter, index] = name.split('_');
    const [i, k = 0] = index!.split(',').map(Number);
    if (letter === 'A') return sum + value * p ** (i! - 1);
    return sum + value * (letter === 'B' ? dt ** i! : p ** k * dt ** i!);
  }, 0);
}
const grid = [-20, -10, 0, 10, 20, 30, 40].flatMap((t) =>
  [0, 10, 25, 40, 55, 70, 85, 95, 100].map((mass) => ({ t, mass })),
);
const copied = grid.map(({ t, mass }) =>
  publishedRow({
    id: `r22-${mass}-${t}`,
    source: r22.source,
    standing: 'memory',
    what: `${mass} % mass at ${t} °C`,
    printed: formula(mass / 100, t - 20),
    computed: at(mass, t),
    tolerance: 1e-8,
    reason: 'the same 54 coefficients summed in another order; only rounding differs',
  }),
);

const waters = water.rows.flatMap(({ t, IAPWS95, BettinSpieweck90 }) => [
  publishedRow({
    id: `water-bs-${t}`,
    source: 'Bettin and Spieweck 1990, evaluated',
    standing: 'computed',
    what: `water at ${t} °C, Bettin and Spieweck`,
    printed: BettinSpieweck90,
    computed: at(0, t),
    tolerance: 0.006,
    reason: 'R 22 is on the 1968 temperature scale, worth 0.004 kg/m³',
  }),
  publishedRow({
    id: `water-iapws-${t}`,
    source: 'IAPWS-95 at 101.325 kPa, by CoolProp 8.0.0',
    standing: 'computed',
    what: `water at ${t} °C, IAPWS-95`,
    printed: IAPWS95,
    computed: at(0, t),
    tolerance: 0.008,
    reason: 'a newer standard of water than R 22, 0.004 kg/m³ heavier, and the 1968 temperature scale',
  }),
]);

export const densityGroups: readonly Group[] = [
  { title: 'Density of spirit, tables', unit: 'kg/m³', rows: tables },
  {
    title: 'Density of spirit, R 22 term by term',
    unit: 'kg/m³',
    inBrief: 'the formula summed a second time, term by term, from a list of its 54 coefficients',
    rows: copied,
  },
  { title: 'Density of water', unit: 'kg/m³', rows: waters },
];
