// Uses that must not compile. Each expects its error; one that compiles fails the type check.
import type { Line } from '../../src/core/line/line.ts';
import { cutRun, type Cuts } from '../../src/core/distilling/cuts.ts';
import { runStill } from '../../src/core/distilling/run.ts';
import { settleRound } from '../../src/core/distilling/round.ts';
import { ageCask } from '../../src/core/maturing/cask.ts';
import * as q from '../../src/core/quantity.ts';
import { densityOfSpirit } from '../../src/core/spirit/density.ts';
import { blend, reduce } from '../../src/core/spirit/mixing.ts';
import { massPercentFromStrength, strengthFromDensity } from '../../src/core/spirit/strength.ts';
import { vapourOver } from '../../src/core/vapour/equilibrium.ts';
import { strengthByExciseFactor, strengthFromGravities } from '../../src/core/wort/attenuation.ts';
import { platoFromGravity } from '../../src/core/wort/extract.ts';

// The same uses, made as they should be, compile.
massPercentFromStrength(q.strength(40));
reduce({ volume: q.litres20(500), strength: q.strength(70) }, q.strength(63.5));
vapourOver(q.moleFraction(0.1), q.kilopascals(100));

// @ts-expect-error a plain number has no kind
massPercentFromStrength(40);
// @ts-expect-error a share by mass is not a strength by volume
massPercentFromStrength(q.massPercent(40));
// @ts-expect-error a strength by volume is not a share by mass
densityOfSpirit(q.strength(40), q.celsius(20));
// @ts-expect-error mass first, then temperature
densityOfSpirit(q.celsius(20), q.massPercent(40));
// @ts-expect-error a difference of temperatures is not a temperature
densityOfSpirit(q.massPercent(40), q.kelvins(5));
// @ts-expect-error a gravity is not a density
strengthFromDensity(q.gravity(0.948), q.celsius(20));
// @ts-expect-error degrees of proof are not % vol
massPercentFromStrength(q.degreesProof(80));
// @ts-expect-error a mole fraction is not a share by mass
vapourOver(q.massPercent(10));
// @ts-expect-error °P is not a gravity
platoFromGravity(q.plato(14));
// @ts-expect-error litres as measured are not litres at 20 °C
reduce({ volume: q.litres(500), strength: q.strength(70) }, q.strength(63.5));
// @ts-expect-error litres of pure alcohol are not litres of spirit
reduce({ volume: q.litresOfAlcohol(500), strength: q.strength(70) }, q.strength(63.5));
// @ts-expect-error kilograms are not litres
blend([{ volume: q.kilograms(500), strength: q.strength(70) }]);
// @ts-expect-error a spirit without its strength
blend([{ volume: q.litres20(500) }]);
// @ts-expect-error gravities are named, not in order
strengthFromGravities(q.gravity(1.058), q.gravity(0.998));
// @ts-expect-error the excise rule asks for the present gravity, not the final one
strengthByExciseFactor({ original: q.gravity(1.058), final: q.gravity(0.998) });
// @ts-expect-error hours in the washback are not years in wood
ageCask({ volume: q.litres20(200), strength: q.strength(63.5), cask: { size: q.litres(200) }, store: { alcoholLoss: q.percent(2), humidity: q.percent(80), steadyHumidity: q.percent(65) }, years: q.hours(10) }); // prettier-ignore
// @ts-expect-error the loss is a percentage, 2, and not a share, 0.02
ageCask({ volume: q.litres20(200), strength: q.strength(63.5), cask: { size: q.litres(200) }, store: { alcoholLoss: q.share(0.02), humidity: q.percent(80), steadyHumidity: q.percent(65) }, years: q.years(10) }); // prettier-ignore

const charge = { volume: q.litres20(1000), strength: q.strength(25) };
const run = runStill({ charge, until: q.strength(1) });
// @ts-expect-error a run may be a refusal; ask before reading it
void run.distillate;
// @ts-expect-error a refused run cannot be cut
cutRun(run, { foreshots: q.strength(74), heart: q.strength(62), feints: q.strength(1) });
// @ts-expect-error foreshots by share are a share, not a percentage
({ foreshots: { share: q.percent(3) }, heart: q.strength(62), feints: q.strength(1) }) satisfies Cuts;
// @ts-expect-error an optional limit is left out, not undefined
settleRound({ wash: charge, washStill: { until: q.strength(1) }, spiritStill: { foreshots: q.strength(74), heart: q.strength(62), feints: q.strength(1) }, diluteTo: undefined }); // prettier-ignore

declare const found: Line;
// @ts-expect-error figures of a line are read, never written
found.heart.alcohol = q.litresOfAlcohol(0);
// @ts-expect-error a sum of quantities is a plain number until it is named again
const sum: q.Quantity<'alcohol'> = found.heart.alcohol + found.feints.alcohol;
export { sum };
