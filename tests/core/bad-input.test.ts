// Bad figures stop at the door: a RangeError or a refusal with a sentence, never NaN and never a quiet answer.
import { describe, expect, test } from 'vitest';
import { cutRun } from '../../src/core/distilling/cuts.ts';
import { settleRound } from '../../src/core/distilling/round.ts';
import { runStill, type Run } from '../../src/core/distilling/run.ts';
import { stillCurve } from '../../src/core/distilling/still.ts';
import { fermentWort } from '../../src/core/fermenting/wash.ts';
import { barleyForMalt, maltFromBarley } from '../../src/core/malting/malt-balance.ts';
import { predictedSpiritYield } from '../../src/core/malting/spirit-yield.ts';
import { mashTemperature, slaking, strikeTemperature } from '../../src/core/mashing/strike.ts';
import { draffMass, mashEfficiency, wortExtract, wortMass } from '../../src/core/mashing/wort.ts';
import { ageCask } from '../../src/core/maturing/cask.ts';
import { bottlesFrom, meanCask } from '../../src/core/maturing/filling.ts';
import { millingTime, splitGrist } from '../../src/core/milling/grist.ts';
import { densityOfSpirit } from '../../src/core/spirit/density.ts';
import { blend, reduce } from '../../src/core/spirit/mixing.ts';
import { alcoholFromUsProofGallons, sikesProof, usProof } from '../../src/core/spirit/proof.ts';
import {
  massPercentFromStrength,
  strengthFromDensity,
  strengthFromMassPercent,
} from '../../src/core/spirit/strength.ts';
import { activities, ethanolPressure, vapourOver, waterPressure } from '../../src/core/vapour/equilibrium.ts';
import { attenuate, exciseFactor, strengthByExciseFactor } from '../../src/core/wort/attenuation.ts';
import { gravityFromPlato, platoFromGravity } from '../../src/core/wort/extract.ts';

// Kinds are set aside here: a form or a saved text can hand the core any number at all.
const free = <F extends (...given: never[]) => unknown>(f: F) =>
  f as unknown as (...given: unknown[]) => unknown;
const malting = { barleyMoisture: 12, maltMoisture: 4.5, dryLoss: 10 };
const mash = { ratio: 4, gristTemperature: 15, maltMoisture: 4.5 };
const wort = { volume: 7500, gravity: 1.058 };
const charge = { volume: 1000, strength: 25 };
const filled = {
  volume: 200,
  strength: 63.5,
  cask: { size: 200 },
  years: 10,
  store: { alcoholLoss: 2, humidity: 80, steadyHumidity: 65 },
};
const plan = {
  wash: { volume: 1000, strength: 8 },
  washStill: { until: 1 },
  spiritStill: { reflux: 0.1, foreshots: { share: 0.02 }, heart: 62, feints: 1 },
};
const run = free(runStill)({ charge, until: 1 }) as Run;

/** A function of one figure, and figures it must not take besides NaN. */
type Door = readonly [name: string, call: (n: number) => unknown, outside: readonly number[]];
const doors: readonly Door[] = [
  ['density, share by mass', (n) => free(densityOfSpirit)(n, 20), [-0.001, 100.001, Infinity]],
  ['density, temperature', (n) => free(densityOfSpirit)(40, n), [-20.001, 40.001, -Infinity]],
  ['strength from mass', (n) => free(strengthFromMassPercent)(n), [-1, 101]],
  ['mass from strength', (n) => free(massPercentFromStrength)(n), [-1, 101]],
  ['strength from density', (n) => free(strengthFromDensity)(n, 20), [789, 999, 0.95]],
  ['strength from density, temperature', (n) => free(strengthFromDensity)(950, n), [-21, 41]],
  ['reduce, volume', (n) => free(reduce)({ volume: n, strength: 70 }, 40), [-1]],
  ['reduce, strength', (n) => free(reduce)({ volume: 1, strength: n }, 40), [39, 101, -1]],
  ['reduce, wanted', (n) => free(reduce)({ volume: 1, strength: 70 }, n), [0, 70.1, -1]],
  ['blend, volume', (n) => free(blend)([{ volume: n, strength: 40 }]), [-1]],
  ['blend, strength', (n) => free(blend)([{ volume: 1, strength: n }]), [-1, 101]],
  ['American proof', (n) => free(usProof)(n), [-1, 101]],
  ['British proof', (n) => free(sikesProof)(n), [-1, 101]],
  ['proof gallons', (n) => free(alcoholFromUsProofGallons)(n), [-1]],
  ['extract from gravity', (n) => free(platoFromGravity)(n), [0.97, 1.151, 1058]],
  ['gravity from extract', (n) => free(gravityFromPlato)(n), [-6, 35]],
  ['attenuation, original', (n) => free(attenuate)({ original: n, final: 1 }), [0.99, 1.2, 1058]],
  ['attenuation, final', (n) => free(attenuate)({ original: 1.05, final: n }), [0.97, 1.051]],
  ['excise factor', (n) => free(exciseFactor)(n), [-0.1, 101, Infinity]],
  ['excise rule', (n) => free(strengthByExciseFactor)({ original: 1.05, present: n }), [0.9, 1.051]],
  ['vapour, mole fraction', (n) => free(vapourOver)(n), [-0.001, 1.001]],
  ['vapour, pressure', (n) => free(vapourOver)(0.1, n), [0, 19, 151, Infinity]],
  ['activities', (n) => free(activities)(n), [-0.1, 1.1]],
  ['pressure of ethanol', (n) => free(ethanolPressure)(n), [-21, 131]],
  ['pressure of water', (n) => free(waterPressure)(n), [-21, 131]],
  ['malt, barley', (n) => free(maltFromBarley)(n, malting), [-1]],
  ['malt, moisture', (n) => free(maltFromBarley)(1, { ...malting, maltMoisture: n }), [-1, 51, 100]],
  ['barley, loss', (n) => free(barleyForMalt)(1, { ...malting, dryLoss: n }), [-1, 51]],
  ['spirit yield', (n) => free(predictedSpiritYield)({ extract: n, fermentability: 87 }), [-1, 101]],
  ['grist, malt', (n) => free(splitGrist)(n, { husk: 20, flour: 10 }), [-1]],
  ['grist, husk', (n) => free(splitGrist)(1, { husk: n, flour: 10 }), [-1, 91, 101]],
  ['milling, malt', (n) => free(millingTime)(n, 1), [-1]],
  ['milling, rate', (n) => free(millingTime)(1, n), [0, -1]],
  ['wetting', (n) => free(slaking)(n), [-0.1, 8.1]],
  ['mash, water', (n) => free(mashTemperature)(n, mash), [-300]],
  ['mash, ratio', (n) => free(mashTemperature)(68, { ...mash, ratio: n }), [0, -1]],
  ['strike, wanted', (n) => free(strikeTemperature)(n, mash), [-300]],
  ['strike, ratio', (n) => free(strikeTemperature)(64, { ...mash, ratio: n }), [0, -1, 21]],
  ['strike, grist', (n) => free(strikeTemperature)(64, { ...mash, gristTemperature: n }), [-300]],
  ['wort, volume', (n) => free(wortMass)({ ...wort, volume: n }), [-1]],
  ['wort, gravity', (n) => free(wortExtract)({ ...wort, gravity: n }), [0.97, 1.16]],
  ['efficiency, malt', (n) => free(mashEfficiency)(wort, { mass: n, extract: 77 }), [0, -1]],
  ['draff, malt', (n) => free(draffMass)({ mass: n, moisture: 4.5, extract: 77 }, 100, 78), [-1]],
  ['draff, moisture', (n) => free(draffMass)({ mass: 200, moisture: 4.5, extract: 77 }, 100, n), [-1, 100]],
  ['fermentation, volume', (n) => free(fermentWort)({ ...wort, volume: n }, 0.998), [-1]],
  ['fermentation, final', (n) => free(fermentWort)(wort, n), [0.97, 1.06]],
  ['still, reflux', (n) => free(stillCurve)({ reflux: n, pressure: 101 }), [-0.1, 1.1]],
  ['still, pressure', (n) => free(stillCurve)({ reflux: 0, pressure: n }), [0, 151]],
  ['run, volume', (n) => free(runStill)({ charge: { ...charge, volume: n }, until: 1 }), [0, -1]],
  ['run, strength', (n) => free(runStill)({ charge: { ...charge, strength: n }, until: 1 }), [0, 93, 101]],
  ['run, end', (n) => free(runStill)({ charge, until: n }), [0, 90, 101]],
  ['cuts, foreshots by strength', (n) => free(cutRun)(run, { foreshots: n, heart: 62, feints: 1 }), [0, 0.01, 61, 101]],
  ['cuts, foreshots by share', (n) => free(cutRun)(run, { foreshots: { share: n }, heart: 62, feints: 1 }), [-0.1, 1, 1.1]],
  ['cuts, heart', (n) => free(cutRun)(run, { foreshots: { share: 0.02 }, heart: n, feints: 1 }), [0.5, 90, 101]],
  ['cuts, feints', (n) => free(cutRun)(run, { foreshots: { share: 0.02 }, heart: 62, feints: n }), [0, 63, 101]],
  ['round, wash', (n) => free(settleRound)({ ...plan, wash: { volume: n, strength: 8 } }), [0, -1]],
  ['round, limit', (n) => free(settleRound)({ ...plan, diluteTo: n }), [0, -1, 101]],
  ['cask, volume', (n) => free(ageCask)({ ...filled, volume: n }), [0, 201]],
  ['cask, strength', (n) => free(ageCask)({ ...filled, strength: n }), [-1, 101]],
  ['cask, years', (n) => free(ageCask)({ ...filled, years: n }), [-1, 81]],
  ['cask, loss', (n) => free(ageCask)({ ...filled, store: { ...filled.store, alcoholLoss: n } }), [-1, 31, 100]],
  ['cask, humidity', (n) => free(ageCask)({ ...filled, store: { ...filled.store, humidity: n } }), [-1, 101]],
  ['cask, steady humidity', (n) => free(ageCask)({ ...filled, store: { ...filled.store, steadyHumidity: n } }), [-1, 81]],
  ['mix of casks', (n) => free(meanCask)({ barrels: n, hogsheads: 20 }), [-1, 81]],
  ['bottles, volume', (n) => free(bottlesFrom)(n, 70), [-1]],
  ['bottles, size', (n) => free(bottlesFrom)(100, n), [0, -1, 1001]],
]; // prettier-ignore

/** What a call says when it does not answer; undefined when it answers. */
function objection(call: () => unknown): string | undefined {
  try {
    const result = call();
    return typeof result === 'object' && result !== null
      ? (Reflect.get(result, 'refused') as string | undefined)
      : undefined;
  } catch (error) {
    if (error instanceof RangeError) return error.message;
    throw error;
  }
}

describe.each(doors)('%s', (_, call, outside) => {
  test.each([NaN, ...outside])('%d', (n) => {
    expect(objection(() => call(n))).toMatch(/^[A-Z0-9-][^]{10,}[.]$/);
  });
});
