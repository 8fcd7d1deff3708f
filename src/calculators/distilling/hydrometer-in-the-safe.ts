// The strength of the spirit in the safe, from a glass hydrometer and a thermometer.
import { formatNumber as n } from '../../core/format.ts';
import { celsius, density, massPercent, type Quantity } from '../../core/quantity.ts';
import { densityInAir, densityInVacuo } from '../../core/spirit/density-in-air.ts';
import { densityOfSpirit } from '../../core/spirit/density.ts';
import { densityAtMark } from '../../core/spirit/hydrometer.ts';
import {
  densityFromStrength,
  massPercentFromStrength,
  strengthFromDensity,
} from '../../core/spirit/strength.ts';
import { defineCalculator } from '../define.ts';

const TWENTY = celsius(20);

interface Reading {
  readonly marked: 'air' | 'vacuo' | 'strength';
  readonly reading: Quantity<'densityInAir'>;
  readonly strengthReading: Quantity<'strength'>;
  readonly temperature: Quantity<'temperature'>;
}

/** Density in vacuo, at 20 °C, of the liquid for which the mark stands. */
function markOf({ marked, reading, strengthReading }: Reading): Quantity<'density'> {
  if (marked === 'strength') return densityFromStrength(strengthReading, TWENTY);
  return marked === 'air' ? densityInVacuo(reading) : density(reading);
}

/** Densities of pure alcohol and of water: no mixture lies outside them. */
const endsAt = (temperature: Quantity<'temperature'>) => ({
  lightest: densityOfSpirit(massPercent(100), temperature),
  heaviest: densityOfSpirit(massPercent(0), temperature),
});

/** Strength from the mark's density and the temperature, or nothing when no mixture is like that. */
function strengthAt(mark: Quantity<'density'>, temperature: Quantity<'temperature'>) {
  const found = densityAtMark(mark, temperature);
  const { lightest, heaviest } = endsAt(temperature);
  return found < lightest || found > heaviest ? undefined : strengthFromDensity(found, temperature);
}

/** What a reading can be at a temperature, in the marks of the hydrometer. */
function readable({ marked, temperature }: Reading): string {
  const [now, own, glass] = [endsAt(temperature), endsAt(TWENTY), densityAtMark(density(1), temperature)];
  const low = density(Math.max(now.lightest / glass, own.lightest));
  const high = density(Math.min(now.heaviest / glass, own.heaviest));
  if (marked === 'strength') {
    const [most, least] = [low, high].map((mark) => strengthFromDensity(mark, TWENTY));
    return `from ${n(least!, 2)} to ${n(most!, 2)} % vol`;
  }
  const shown = [low, high].map((mark) => n(marked === 'air' ? densityInAir(mark) : mark, 2));
  return `from ${shown[0]} to ${shown[1]} kg/m³`;
}

/** The strength one would read by taking marks in air for marks in vacuo, or the other way round. */
function confused(given: Reading) {
  if (given.marked === 'strength') return undefined;
  return strengthAt(
    markOf({ ...given, marked: given.marked === 'air' ? 'vacuo' : 'air' }),
    given.temperature,
  );
}

export default defineCalculator({
  id: 'hydrometer-in-the-safe',
  stage: 'distilling',
  title: 'Hydrometer and thermometer',
  purpose: 'From a reading and its temperature to the strength at 20 °C, whether marked in air or in vacuo.',
  sources: ['oiml-r22', 'oiml-r44', 'si-2023-806', 'memory'],
  cautions: ['ethanol-vapour'],
  inputs: {
    marked: {
      label: 'Marked in',
      options: {
        air: 'kg/m³ in air, at 20 °C',
        vacuo: 'kg/m³ in vacuo, at 20 °C',
        strength: '% vol, at 20 °C',
      },
      value: 'air',
    },
    reading: {
      kind: 'densityInAir',
      label: 'Reading, if in kg/m³',
      range: [760, 1010],
      step: 0.1,
      value: 900.1,
      usedWhen: { choice: 'marked', is: ['air', 'vacuo'] },
    },
    strengthReading: {
      kind: 'strength',
      label: 'Reading, if in % vol',
      range: [0, 100],
      step: 0.1,
      value: 63.5,
      usedWhen: { choice: 'marked', is: ['strength'] },
    },
    temperature: { kind: 'temperature', label: 'Temperature', range: [-10, 40], step: 0.1, value: 14 },
  },
  outputs: {
    strength: { kind: 'strength', label: 'Strength at 20 °C', digits: 2 },
    uncorrected: { kind: 'strength', label: 'What the mark says, not corrected', digits: 2 },
    density: { kind: 'density', label: 'Density now, in vacuo' },
    at20: { kind: 'density', label: 'Density at 20 °C, in vacuo' },
    inAir: { kind: 'densityInAir', label: 'Density at 20 °C, in air' },
    mass: { kind: 'massPercent', label: 'Alcohol by mass' },
  },
  refuse: (given) => {
    const mark = markOf(given);
    if ([given.temperature, TWENTY].every((at) => strengthAt(mark, at) !== undefined)) return undefined;
    const shown =
      given.marked === 'strength' ? `${n(given.strengthReading, 2)} % vol` : `${n(given.reading, 2)} kg/m³`;
    return `No mixture of alcohol and water reads ${shown} at ${n(given.temperature, 1)} °C; it can be ${readable(given)}.`;
  },
  compute: (given) => {
    const mark = markOf(given);
    const found = densityAtMark(mark, given.temperature);
    const strength = strengthFromDensity(found, given.temperature);
    const at20 = densityFromStrength(strength, TWENTY);
    return {
      strength,
      uncorrected: strengthFromDensity(mark, TWENTY),
      density: found,
      at20,
      inAir: densityInAir(at20),
      mass: massPercentFromStrength(strength),
    };
  },
  steps: (given, result) => {
    const mark = markOf(given);
    return [
      given.marked === 'air'
        ? `In vacuo = in air × (1 − 1.2 ÷ 8000) + 1.2: ${n(given.reading, 2)} × 0.99985 + 1.2 = ${n(mark, 2)} kg/m³`
        : given.marked === 'vacuo'
          ? `The marks are in vacuo already: ${n(mark, 2)} kg/m³`
          : `The mark of ${n(given.strengthReading, 2)} % vol stands for its density at 20 °C, ${n(mark, 2)} kg/m³ in vacuo`,
      'Warm glass is larger, so density now = density of the mark ÷ (1 + 0.000025 × (t − 20))',
      `${n(mark, 2)} ÷ (1 + 0.000025 × (${n(given.temperature, 1)} − 20)) = ${n(result.density, 2)} kg/m³`,
      `At ${n(given.temperature, 1)} °C a mixture with ${n(result.mass, 2)} % of alcohol by mass has that density`,
      `At 20 °C it has ${n(result.at20, 2)} kg/m³ and ${n(result.strength, 2)} % vol; in air, (${n(result.at20, 2)} − 1.2) ÷ 0.99985 = ${n(result.inAir, 2)} kg/m³`,
    ];
  },
  remark: (given, { strength, uncorrected }) => {
    const [wrong, other] = [confused(given), given.marked === 'air' ? 'in vacuo' : 'in air'];
    const off = strength - uncorrected;
    const warmth = `Without the thermometer it would be ${n(Math.abs(off), 2)} % vol too ${off > 0 ? 'low' : 'high'}.`;
    return wrong === undefined
      ? warmth
      : `If the marks were ${other}, this reading would be ${n(wrong, 2)} % vol, ${n(Math.abs(wrong - strength), 2)} too ${wrong > strength ? 'high' : 'low'}: the stem says which. ${warmth}`;
  },
  examples: [
    {
      given: { marked: 'strength', reading: 900, strengthReading: 63.5, temperature: 14 },
      gives: { strength: 65.6 },
      within: 0.002,
      source: 'derived',
      note: 'a worked sum with 0.35 % vol for each degree, a slope rounded to two figures',
    },
    {
      given: { marked: 'vacuo', reading: 948.05, strengthReading: 40, temperature: 20 },
      gives: { strength: 40, inAir: 947 },
      within: 0.0002,
      source: 'memory',
      note: '40 % vol has 948.05 kg/m³ in vacuo at 20 °C, from memory of the printed table; in air it is 1.05 kg/m³ less',
    },
    {
      given: { marked: 'vacuo', reading: 891.13, strengthReading: 60, temperature: 20 },
      gives: { mass: 60, strength: 67.746 },
      within: 0.0005,
      source: 'nbs-1913',
      note: '60 % by mass weighs 891.13 kg/m³ at 20 °C in the table of 1913; 60 × 891.13 ÷ 789.24 is its strength',
    },
    {
      given: { marked: 'air', reading: 948.05, strengthReading: 40, temperature: 20 },
      gives: { strength: 39.35 },
      within: 0.0005,
      source: 'derived',
      note: 'marks in air taken for marks in vacuo are 0.65 % vol out at 40 % vol',
    },
  ],
});
