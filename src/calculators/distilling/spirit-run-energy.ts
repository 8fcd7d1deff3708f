// Heat, water and time of the spirit still, and of both stills for a litre of pure alcohol in the heart.
import {
  coolingWater,
  heatOfRun,
  heatSupplied,
  heatToCondense,
  hoursOfHeat,
  steamFor,
} from '../../core/distilling/run-heat.ts';
import { runStill } from '../../core/distilling/run.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { quantity } from '../../core/quantity.ts';
import { amountsOf } from '../../core/spirit/amounts.ts';
import { LATENT_HEAT, massesOf } from '../../core/vapour/latent-heat.ts';
import { defineCalculator } from '../define.ts';
import { cooling, heating } from './heating.ts';
import { airPressure, feintsEnd, houseWash, spiritCharge, spiritReflux } from './house-cuts.ts';
import { isRefusal } from '../../core/refusal.ts';

const MEGAJOULES_IN_KWH = 3.6; // MJ; by definition

export default defineCalculator({
  id: 'spirit-run-energy',
  stage: 'distilling',
  title: 'Heat of the spirit still, and of both',
  purpose: 'Heat, steam, water and hours of one charge, and of both stills for a litre of pure alcohol.',
  sources: ['de-nevers', 'perry-heat', 'oiml-r22', 'memory'],
  cautions: ['licence', 'ethanol-vapour', 'hot-liquor'],
  inputs: {
    ...spiritCharge,
    heart: {
      kind: 'alcohol',
      label: 'Alcohol in the heart',
      range: [0.1, 60_000],
      step: 1,
      from: 'heart.alcohol',
    },
    feintsEnd,
    spiritReflux,
    filledAt: { kind: 'temperature', label: 'Charge goes in at', range: [5, 80], step: 1, value: 25 },
    power: {
      kind: 'power',
      label: 'Heat into the still',
      range: [0.5, 20_000],
      step: 10,
      value: 200,
      sized: { by: 'wortVolume' },
    },
    ...houseWash,
    washFilledAt: { kind: 'temperature', label: 'Wash goes in at', range: [5, 95], step: 1, value: 30 },
    airPressure,
    ...heating,
    leavesAt: {
      kind: 'temperature',
      label: 'Spirit and low wines leave at',
      range: [5, 60],
      step: 1,
      value: 20,
    },
    ...cooling,
  },
  main: ['volume', 'strength', 'feintsEnd', 'power'],
  outputs: {
    heatUp: { kind: 'energy', label: 'Heat to warm the charge', digits: 0 },
    boilOff: { kind: 'energy', label: 'Heat to boil off foreshots, heart and feints', digits: 0 },
    energy: { kind: 'energy', label: 'Heat into the spirit still', digits: 0 },
    steam: { kind: 'mass', label: 'As steam at 5 bar' },
    water: { kind: 'volume', label: 'Its cooling water' },
    hours: { kind: 'hours', label: 'Whole run' },
    washEnergy: { kind: 'energy', label: 'Heat into the wash still', digits: 0 },
    perAlcohol: { kind: 'energyPerAlcohol', label: 'Both stills, for a litre in the heart', digits: 1 },
    waterPerAlcohol: {
      kind: 'perAlcohol',
      label: 'Cooling water of both, for a litre in the heart',
      digits: 0,
    },
  },
  refuse: ({ heart, volume, strength }) =>
    heart > (volume * strength) / 100
      ? `The heart cannot hold ${n(heart, 1)} L of pure alcohol: the whole charge has ${n((volume * strength) / 100, 1)}.`
      : undefined,
  compute: ({ volume, strength, heart, spiritReflux, airPressure, efficiency, leavesAt, rise, ...given }) => {
    const common = { pressure: airPressure };
    const spiritRun = runStill({
      charge: { volume, strength },
      reflux: spiritReflux,
      until: given.feintsEnd,
      ...common,
    });
    if (isRefusal(spiritRun)) return spiritRun;
    const wash = { volume: given.washVolume, strength: given.washStrength };
    const washRun = runStill({
      charge: wash,
      reflux: given.washReflux,
      until: given.washEnd,
      ...common,
    });
    if (isRefusal(washRun)) return washRun;
    const [spiritHeat, washHeat] = [
      heatOfRun(spiritRun, given.filledAt),
      heatOfRun(washRun, given.washFilledAt),
    ];
    if (isRefusal(spiritHeat)) return spiritHeat;
    if (isRefusal(washHeat)) return washHeat;
    const [energy, washEnergy] = [heatSupplied(spiritHeat, efficiency), heatSupplied(washHeat, efficiency)];
    const [water, washWater] = [spiritRun, washRun].map(({ distillate }) =>
      coolingWater(heatToCondense(distillate, { ...common, leavesAt }), rise),
    );
    return {
      heatUp: spiritHeat.heatUp,
      boilOff: spiritHeat.boilOff,
      energy,
      steam: steamFor(energy),
      water: water!,
      hours: hoursOfHeat(energy, given.power),
      washEnergy,
      perAlcohol: quantity('energyPerAlcohol', (energy + washEnergy) / heart),
      waterPerAlcohol: quantity('perAlcohol', (water! + washWater!) / heart),
    };
  },
  steps: (given, result) => {
    const charge = massesOf(amountsOf(given));
    return [
      `The charge is ${n(charge.ethanol, 0)} kg of alcohol and ${n(charge.water, 0)} kg of water; all but the spent lees comes over, by Rayleigh’s law`,
      `Boiling off = kg of alcohol that come over × ${LATENT_HEAT.ethanol} + kg of water × ${LATENT_HEAT.water}, without heat of mixing: ${w(result.boilOff)} MJ`,
      `Heat into the still = (${w(result.heatUp)} + ${w(result.boilOff)}) × 100 ÷ ${n(given.efficiency, 0)} = ${n(result.energy, 0)} MJ; what head and neck send back must be boiled again, and counts as not reaching the liquid`,
      `Hours = ${w(result.energy)} × 1000 ÷ ${n(given.power, 0)} ÷ 3600 = ${n(result.hours, 1)} h`,
      'Both stills = (heat of the wash still + heat of the spirit still) ÷ alcohol in the heart',
      `(${w(result.washEnergy)} + ${w(result.energy)}) ÷ ${w(given.heart)} = ${n(result.perAlcohol, 1)} MJ, or ${n(result.perAlcohol / MEGAJOULES_IN_KWH, 2)} kWh, for a litre`,
    ];
  },
  remark: (_, result) =>
    `Both stills take ${n(result.perAlcohol / MEGAJOULES_IN_KWH, 1)} kWh for a litre of pure alcohol; 6.66 kWh is an older figure for a whole trade (common practice), with all else that a house heats and all that it saves. All its water came to some 190 L by totals of 2013 that may include other distilleries (derived). Heat already in hot spent lees and condenser water is the first to look for.`,
  examples: [
    {
      given: {
        volume: 4251.4,
        strength: 24.2,
        heart: 591.3,
        feintsEnd: 1,
        spiritReflux: 0.1,
        filledAt: 25,
        power: 200,
        washVolume: 7447.4,
        washStrength: 8,
        washReflux: 0.05,
        washEnd: 1,
        washFilledAt: 30,
        airPressure: 101.3,
        efficiency: 90,
        leavesAt: 20,
        rise: 40,
      },
      gives: { perAlcohol: 23.976 },
      within: 0.25,
      source: 'common-practice',
      note: '6.66 kWh for a litre is a whole trade’s mean, with other uses of heat and other stills: only the size of it can be compared',
    },
  ],
});
