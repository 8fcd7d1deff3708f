// The strength of one wash by density, by Balling and by the excise table, side by side.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { litresOfAlcohol, massPercent, quantity, type Quantity } from '../../core/quantity.ts';
import { densityOfSpirit } from '../../core/spirit/density.ts';
import { strengthFromDensity } from '../../core/spirit/strength.ts';
import { exciseFactor, strengthByExciseFactor, strengthFromGravities } from '../../core/wort/attenuation.ts';
import { defineCalculator } from '../define.ts';

const MUCH = 5; // per cent of the strength; a wider gap is a reason to look for a wrong reading; common practice
const waterAt = (temperature: Quantity<'temperature'>) => densityOfSpirit(massPercent(0), temperature);
const signed = (difference: number) => `${difference > 0 ? '+' : ''}${n(difference, 2)}`;

export default defineCalculator({
  id: 'strength-three-ways',
  stage: 'fermenting',
  title: 'One wash, three strengths',
  purpose: 'Sets the strength measured by distilling a sample beside the two worked out from its gravities.',
  sources: ['oiml-r22', 'balling', 'excise-226', 'sugar-tables'],
  cautions: ['ethanol-vapour'],
  readings: ['density'],
  inputs: {
    original: { house: 'originalGravity' },
    final: { house: 'finalGravity' },
    density: {
      kind: 'density',
      label: 'Distilled sample, made up to its volume',
      range: [960, 1000],
      step: 0.1,
      value: 987.3,
    },
    temperature: {
      kind: 'temperature',
      label: 'Made up and read at',
      range: [10, 30],
      step: 0.5,
      value: 20,
    },
    volume: {
      kind: 'volume20',
      label: 'Wash in the washback',
      range: [10, 350_000],
      step: 50,
      from: 'wash.volume',
    },
  },
  outputs: {
    byDensity: { kind: 'strength', label: 'By density', digits: 2 },
    byBalling: { kind: 'strength', label: 'By Balling', digits: 2 },
    byExcise: { kind: 'strength', label: 'By the excise table', digits: 2 },
    ballingAbove: { kind: 'strengthDifference', label: 'Balling above density' },
    exciseAbove: { kind: 'strengthDifference', label: 'Excise table above density' },
    apart: { kind: 'alcohol', label: 'Highest minus lowest, in this wash' },
  },
  refuse: ({ original, final, density, temperature }) => {
    if (final >= original) {
      return `The final gravity ${final} is not below the original ${original}; it must be lower, for wort that ferments grows lighter.`;
    }
    const factor = exciseFactor(1000 * (original - final));
    if (typeof factor !== 'number') return factor.refused;
    const water = waterAt(temperature);
    return density > water
      ? `The density ${n(density, 2)} kg/m³ is above that of water, ${n(water, 2)} at ${temperature} °C; a distilled sample can be no heavier.`
      : undefined;
  },
  compute: ({ original, final, density, temperature, volume }) => {
    const byDensity = strengthFromDensity(density, temperature);
    const byBalling = strengthFromGravities({ original, final });
    const byExcise = strengthByExciseFactor({ original, present: final });
    const three = [byDensity, byBalling, byExcise];
    return {
      byDensity,
      byBalling,
      byExcise,
      ballingAbove: quantity('strengthDifference', byBalling - byDensity),
      exciseAbove: quantity('strengthDifference', byExcise - byDensity),
      apart: litresOfAlcohol(((Math.max(...three) - Math.min(...three)) * volume) / 100),
    };
  },
  steps: (given, result) => {
    const fall = 1000 * (given.original - given.final);
    return [
      `Density: spirit of ${n(given.density, 2)} kg/m³ at ${given.temperature} °C has ${n(result.byDensity, 3)} % vol; made up to the sample’s own volume, it is as strong as the wash`,
      `Balling: from ${given.original} to ${given.final} the extract used gives ${n(result.byBalling, 3)} % vol`,
      `Excise table: ${w(fall)} degrees × ${n(result.byExcise / fall, 3)} = ${n(result.byExcise, 3)} % vol`,
      `Against density: ${n(result.byBalling, 3)} − ${n(result.byDensity, 3)} = ${signed(result.ballingAbove)}, and ${n(result.byExcise, 3)} − ${n(result.byDensity, 3)} = ${signed(result.exciseAbove)} % vol`,
    ];
  },
  remark: ({ density, temperature }, { byDensity, byBalling, byExcise }) => {
    if (density === waterAt(temperature))
      return 'A sample as heavy as water holds no alcohol: look at the still and the receiver before the wash.';
    const widest = Math.max(Math.abs(byBalling - byDensity), Math.abs(byExcise - byDensity));
    const part = (100 * widest) / byDensity;
    return part > MUCH
      ? 'That gap is wider than the rules themselves differ: look for a wrong reading, gas in the sample or spirit lost in distilling before you blame the yeast.'
      : 'Balling’s ratio takes all the extract that is used for sugar and the growth of the yeast for fixed, and the excise factors were made for beer wort. The density is of the alcohol itself, and misses only what was lost in distilling.';
  },
  examples: [
    {
      given: { original: 1.0571, final: 1, density: 987.16, temperature: 20, volume: 1000 },
      gives: { byExcise: 7.5 },
      within: 0.005,
      source: 'excise-226',
      note: 'the notice’s own column of strengths: a fall of 57.1 degrees is 7.5 % vol, to one decimal',
    },
    {
      given: { original: 1.05914, final: 1.01129, density: 984.71, temperature: 20, volume: 1000 },
      gives: { byDensity: 10, byBalling: 6.395, byExcise: 6.268 },
      within: 0.001,
      source: 'memory',
      note: 'a printed 10 % vol is 984.71 kg/m³ at 20 °C, as recalled; 5 % alcohol by mass in wash of 1.01129 by Balling; 47.85 degrees at 0.131 by the excise table; three washes in one row',
    },
    {
      given: { original: 1.06, final: 0.998, density: 987.16, temperature: 20, volume: 1000 },
      gives: { byDensity: 8, byExcise: 8.184 },
      within: 0.001,
      source: 'memory',
      note: 'a printed 8 % vol is 987.16 kg/m³ at 20 °C, as recalled; 62 degrees at 0.132',
    },
  ],
});
