// One run of the wash still: what comes over, what stays, and what it costs in heat, water and time.
import {
  heatOfRun,
  heatSupplied,
  heatToCondense,
  hoursOfHeat,
  coolingWater,
  steamFor,
  STEAM_HEAT,
} from '../../core/distilling/run-heat.ts';
import { runStill } from '../../core/distilling/run.ts';
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { percent, quantity } from '../../core/quantity.ts';
import { amountsOf } from '../../core/spirit/amounts.ts';
import { HEAT_CAPACITY, LATENT_HEAT, massesOf } from '../../core/vapour/latent-heat.ts';
import { defineCalculator } from '../define.ts';
import { airPressure, houseWash } from './house-cuts.ts';
import { cooling, heating } from './heating.ts';
import { isRefusal } from '../../core/refusal.ts';

export default defineCalculator({
  id: 'wash-run',
  stage: 'distilling',
  title: 'One run of the wash still',
  purpose: 'From wash to low wines and pot ale: heat, steam, cooling water and hours.',
  sources: ['de-nevers', 'perry-heat', 'oiml-r22', 'memory'],
  cautions: ['licence', 'ethanol-vapour', 'hot-liquor'],
  inputs: {
    ...houseWash,
    airPressure,
    filledAt: { kind: 'temperature', label: 'Wash goes in at', range: [5, 95], step: 1, value: 30 },
    ...heating,
    power: {
      kind: 'power',
      label: 'Heat into the still',
      range: [0.5, 20_000],
      step: 10,
      value: 350,
      sized: { by: 'wortVolume' },
    },
    leavesAt: { kind: 'temperature', label: 'Low wines leave at', range: [5, 60], step: 1, value: 20 },
    ...cooling,
  },
  main: ['washVolume', 'washStrength', 'washEnd', 'power'],
  outputs: {
    volume: { kind: 'volume20', label: 'Low wines' },
    strength: { kind: 'strength', label: 'Their strength' },
    potAle: { kind: 'volume20', label: 'Pot ale' },
    ratio: { kind: 'percent', label: 'Pot ale, share of the wash' },
    heatUp: { kind: 'energy', label: 'Heat to warm the charge', digits: 0 },
    boilOff: { kind: 'energy', label: 'Heat to boil off the low wines', digits: 0 },
    energy: { kind: 'energy', label: 'Heat into the still', digits: 0 },
    boilPerAlcohol: { kind: 'energyPerAlcohol', label: 'Boiling off, for a litre of alcohol' },
    perAlcohol: { kind: 'energyPerAlcohol', label: 'All heat, for a litre of alcohol' },
    steam: { kind: 'mass', label: 'As steam at 5 bar' },
    water: { kind: 'volume', label: 'Cooling water' },
    waterPerAlcohol: { kind: 'perAlcohol', label: 'Cooling water for a litre of alcohol' },
    hours: { kind: 'hours', label: 'Whole run' },
    boilHours: { kind: 'hours', label: 'Of that, boiling' },
  },
  compute: ({ washVolume, washStrength, washReflux, washEnd, airPressure, ...given }) => {
    const wash = { volume: washVolume, strength: washStrength };
    const run = runStill({ charge: wash, reflux: washReflux, pressure: airPressure, until: washEnd });
    if (isRefusal(run)) return run;
    const heat = heatOfRun(run, given.filledAt);
    if (isRefusal(heat)) return heat;
    const energy = heatSupplied(heat, given.efficiency);
    const hours = hoursOfHeat(energy, given.power);
    const { alcohol, volume, strength } = run.distillate;
    const taken = heatToCondense(run.distillate, { pressure: airPressure, leavesAt: given.leavesAt });
    const water = coolingWater(taken, given.rise);
    return {
      volume,
      strength,
      potAle: run.residue.volume,
      ratio: percent((100 * run.residue.volume) / washVolume),
      heatUp: heat.heatUp,
      boilOff: heat.boilOff,
      energy,
      boilPerAlcohol: quantity('energyPerAlcohol', heat.boilOff / alcohol),
      perAlcohol: quantity('energyPerAlcohol', energy / alcohol),
      steam: steamFor(energy),
      water,
      waterPerAlcohol: quantity('perAlcohol', water / alcohol),
      hours,
      boilHours: quantity('hours', (hours * heat.boilOff) / (heat.heatUp + heat.boilOff)),
    };
  },
  steps: (given, result) => {
    const over = massesOf(amountsOf(result));
    const taken = (result.water * HEAT_CAPACITY.water * given.rise) / 1000;
    return [
      'Low wines come over by Rayleigh’s law until they are down to the strength at which the run ends; the rest is pot ale',
      `${n(result.volume, 0)} L at ${n(result.strength, 1)} % vol are ${n(over.ethanol, 0)} kg of alcohol and ${n(over.water, 0)} kg of water`,
      'Boiling off = kg of alcohol × its latent heat + kg of water × its own; heat of mixing is left out',
      `${w(over.ethanol)} × ${LATENT_HEAT.ethanol} + ${w(over.water)} × ${LATENT_HEAT.water} = ${n(result.boilOff, 0)} MJ`,
      `Warming = mass × heat capacity × rise, for the charge from ${given.filledAt} °C to its boil, and for the pot ale from there to its own: ${w(result.heatUp)} MJ, with ${HEAT_CAPACITY.ethanol} kJ/(kg K) for alcohol and ${HEAT_CAPACITY.water} for water`,
      `Heat into the still = (${w(result.heatUp)} + ${w(result.boilOff)}) × 100 ÷ ${n(given.efficiency, 0)} = ${n(result.energy, 0)} MJ; as steam, ${w(result.energy)} ÷ ${STEAM_HEAT} = ${n(result.steam, 0)} kg`,
      `Hours = MJ × 1000 ÷ kW ÷ 3600 = ${w(result.energy)} × 1000 ÷ ${n(given.power, 0)} ÷ 3600 = ${n(result.hours, 1)} h`,
      `Cooling water takes the latent heat and what the low wines give up on the way to ${given.leavesAt} °C: ${w(taken, 7)} MJ × 1000 ÷ (${HEAT_CAPACITY.water} × ${n(given.rise, 1)}) = ${n(result.water, 0)} L`,
    ];
  },
  remark: (_, result) =>
    `It boils for ${n(result.boilHours, 1)} h; 5–6 h are common practice for a wash charge. ${
      result.boilHours < 4
        ? 'So much heat brings froth into the neck: give the still less.'
        : result.boilHours > 8
          ? 'With so little heat the run is long: see whether it fits the day.'
          : 'Warming the next charge with hot pot ale is where heat is saved: see how the heat falls when the wash goes in warmer.'
    }`,
  examples: [
    {
      given: {
        washVolume: 12_000,
        washStrength: 8.5,
        washReflux: 0,
        washEnd: 2.13,
        airPressure: 101.325,
        filledAt: 30,
        efficiency: 90,
        power: 600,
        leavesAt: 20,
        rise: 40,
      },
      gives: { strength: 23, boilPerAlcohol: 8.4 },
      within: 0.01,
      source: 'derived',
      note: 'a litre of pure alcohol as low wines of 23 % vol takes 8.4 MJ; summed with other latent heats, up to 2 % apart for alcohol',
    },
    {
      given: {
        washVolume: 12_000,
        washStrength: 8.5,
        washReflux: 0,
        washEnd: 2.13,
        airPressure: 101.325,
        filledAt: 30,
        efficiency: 90,
        power: 600,
        leavesAt: 60,
        rise: 40,
      },
      gives: { waterPerAlcohol: 50 },
      within: 0.1,
      source: 'derived',
      note: 'about 50 L for low wines of 23 % vol; that sum leaves out cooling after they have condensed, here from 90 to 60 °C',
    },
    {
      given: {
        washVolume: 12_000,
        washStrength: 7.8,
        washReflux: 0,
        washEnd: 3.03,
        airPressure: 101.325,
        filledAt: 30,
        efficiency: 90,
        power: 600,
        leavesAt: 20,
        rise: 40,
      },
      gives: { ratio: 66.7, potAle: 8000, volume: 4000 },
      within: 0.01,
      source: 'common-practice',
      note: '12,000 L of wash leave 4,000 L of low wines and 8,000 of pot ale; a wash and an end that make the low wines 23 % vol, the middle of what is quoted',
    },
  ],
});
