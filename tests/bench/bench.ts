// How long the arithmetic takes, on this machine: `node tests/bench/bench.ts`. Times are printed, never judged.
import { calculators } from '../../src/calculators/index.ts';
import { settleRound } from '../../src/core/distilling/round.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { drawRounds } from '../../src/core/line/monte-carlo.ts';
import { line, type Line } from '../../src/core/line/line.ts';
import type { House } from '../../src/core/line/house.ts';
import { ageCask } from '../../src/core/maturing/cask.ts';
import {
  celsius,
  gravity,
  kilopascals,
  litres,
  litres20,
  massPercent,
  moleFraction,
  percent,
  share,
  strength,
  years,
  type Quantity,
} from '../../src/core/quantity.ts';
import { amountsOf } from '../../src/core/spirit/amounts.ts';
import { densityOfSpirit } from '../../src/core/spirit/density.ts';
import { blend, reduce } from '../../src/core/spirit/mixing.ts';
import { massPercentFromStrength, strengthFromDensity } from '../../src/core/spirit/strength.ts';
import { vapourOver } from '../../src/core/vapour/equilibrium.ts';
import { attenuate } from '../../src/core/wort/attenuation.ts';
import { gravityFromPlato } from '../../src/core/wort/extract.ts';
import { builtInHouse } from '../../src/house/figures.ts';
import { plainRound } from './plain-round.ts';

/** Median milliseconds of a call, over `times` calls after a tenth as many to warm up. */
function median(call: (i: number) => unknown, times = 200): number {
  const taken: number[] = [];
  for (let i = -times / 10; i < times; i++) {
    const start = performance.now();
    call(i);
    if (i >= 0) taken.push(performance.now() - start);
  }
  return taken.sort((a, b) => a - b)[Math.floor(times / 2)]!;
}
function say(what: string, ms: number, note = ''): void {
  const time = ms < 0.1 ? `${(1000 * ms).toFixed(2)} µs` : `${ms.toFixed(3)} ms`;
  console.log(`${what.padEnd(44)} ${time.padStart(12)}${note}`);
}
/** A figure a little different on every call, so that nothing remembered answers it. */
const nudge = (i: number) => 1e-6 * (i + 100);

const built = line(builtInHouse) as Line;
const house = (change: Partial<House>) => line({ ...builtInHouse, ...change });
const budget = ' (budget 5 ms)';
say(
  'line median',
  median((i) => house({ wortVolume: litres20(7500 + nudge(i)) })),
  budget,
);
say(
  'line, spirit still drawn anew',
  median((i) => house({ spiritReflux: share(0.1 + nudge(i)) })),
  budget,
);
say(
  'line, both stills drawn anew',
  median((i) => house({ airPressure: kilopascals(101 + nudge(i)) })),
  budget,
);

const unsure = {
  wortVolume: 50,
  originalGravity: 0.0005,
  spiritReflux: 0.03,
  foreshotsShare: 0.3,
  heartEnd: 0.2,
};
drawRounds(builtInHouse, unsure, 500, 1);
say(
  '10,000 rounds drawn at random',
  median((i) => drawRounds(builtInHouse, unsure, 1000, i), 10) * 10,
  ' (budget 2 s)',
);

console.log('\nCore');
const spirit = { volume: litres20(1000), strength: strength(70) };
const still = { reflux: share(0), pressure: kilopascals(101.325) };
const cask = {
  volume: litres20(200),
  strength: strength(63.5),
  cask: { size: litres(200) },
  years: years(20),
};
const store = { alcoholLoss: percent(2), humidity: percent(80), steadyHumidity: percent(65) };
const plan = {
  wash: { volume: litres20(10_000), strength: strength(8) },
  washStill: { until: strength(1) },
  spiritStill: { reflux: still.reflux, foreshots: strength(74), heart: strength(62.5), feints: strength(1) },
  pressure: still.pressure,
};
const curveOf = (run: object) => Reflect.get(run, 'curve') as unknown;
const core: Readonly<Record<string, (i: number) => unknown>> = {
  densityOfSpirit: (i) => densityOfSpirit(massPercent(40 + nudge(i)), celsius(15)),
  massPercentFromStrength: (i) => massPercentFromStrength(strength(40 + nudge(i))),
  strengthFromDensity: (i) => strengthFromDensity(950 as Quantity<'density'>, celsius(15 + nudge(i))),
  reduce: (i) => reduce(spirit, strength(63 + nudge(i))),
  blend: (i) => blend([spirit, { volume: litres20(100), strength: strength(20 + nudge(i)) }]),
  gravityFromPlato: (i) => gravityFromPlato((14 + nudge(i)) as Quantity<'plato'>),
  attenuate: (i) => attenuate({ original: gravity(1.058 + nudge(i) / 10), final: gravity(0.998) }),
  vapourOver: (i) => vapourOver(moleFraction(0.1 + nudge(i))),
  runStill: (i) =>
    runStill({ ...still, charge: { ...spirit, strength: strength(25 + nudge(i)) }, until: strength(1) }),
  'runStill, its curve read': (i) =>
    curveOf(
      runStill({ ...still, charge: { ...spirit, strength: strength(25 + nudge(i)) }, until: strength(1) }),
    ),
  settleRound: (i) => settleRound({ ...plan, wash: { ...plan.wash, strength: strength(8 + nudge(i)) } }),
  'ageCask, 20 years': (i) => ageCask({ ...cask, strength: strength(63 + nudge(i)), store }),
};
for (const [name, call] of Object.entries(core)) say(name, median(call));

console.log('\nCalculators');
const follow = (path: string) =>
  path.split('.').reduce<unknown>((part, name) => Reflect.get(part as object, name), built);
for (const { id, inputs, compute } of calculators) {
  const given = Object.entries(inputs).map(([name, input]) => [
    name,
    'value' in input ? input.value : follow('house' in input ? `house.${input.house}` : input.from),
  ]);
  const values = Object.fromEntries(given) as Parameters<typeof compute>[0];
  say(
    id,
    median(() => compute(values)),
  );
}

console.log('\nThe settled round against plain integration, round after round');
const plain = {
  ...plan.spiritStill,
  wash: plan.wash,
  washEnd: plan.washStill.until,
  washStill: still,
  spiritStill: still,
};
const solved = settleRound(plan);
if ('refused' in solved) throw new Error(solved.refused);
const exact = amountsOf(solved.heart).ethanol;
let steps = 32;
while (Math.abs(plainRound(plain, steps).heart / exact - 1) > 1e-9 && steps < 16_384) steps *= 2;
const { heart, rounds } = plainRound(plain, steps);
console.log(
  `plain: ${steps} steps a potful, ${rounds} rounds, heart differs by ${Math.abs(heart / exact - 1).toExponential(1)}`,
);
const slow = median(() => plainRound(plain, steps), 10);
say('plain integration', slow);
const { spiritStill } = plan;
const DRAWN = 100; // rounds to a call, so that the garbage that they leave is counted
const quick: Readonly<Record<string, () => number>> = {
  'settleRound, stills as they are': () =>
    median((i) => settleRound({ ...plan, wash: { ...plan.wash, strength: strength(8 + nudge(i)) } })),
  '… with a new reflux': () =>
    median((i) => settleRound({ ...plan, spiritStill: { ...spiritStill, reflux: share(0.1 + nudge(i)) } })),
  '… with a new pressure': () =>
    median((i) => settleRound({ ...plan, pressure: kilopascals(101 + nudge(i)) })),
  'a round drawn at random': () => median((i) => drawRounds(builtInHouse, unsure, DRAWN, i)) / DRAWN,
};
for (const [name, time] of Object.entries(quick)) {
  const ms = time();
  say(name, ms, `  ${(slow / ms).toFixed(0)} times faster`);
}
