// Air, heat and hours of a kiln load.
import { formatNumber as n } from '../../core/format.ts';
import { passAir, type AirPass } from '../../core/malting/kiln-air.ts';
import { BREAK_MOISTURE, dryingCurve, dryLoad, type Drying } from '../../core/malting/kiln-drying.ts';
import { hours, kilograms, quantity, type Quantity } from '../../core/quantity.ts';
import { isRefusal, type Refusal } from '../../core/refusal.ts';
import { defineCalculator } from '../define.ts';

interface Given {
  readonly basis: 'finished' | 'green';
  readonly load: Quantity<'mass'>;
  readonly green: Quantity<'percent'>;
  readonly breakAt: Quantity<'percent'>;
  readonly finished: Quantity<'percent'>;
  readonly end: Quantity<'percent'>;
  readonly outside: Quantity<'temperature'>;
  readonly humidity: Quantity<'percent'>;
  readonly pressure: Quantity<'pressure'>;
  readonly airOn: Quantity<'temperature'>;
  readonly airOff: Quantity<'percent'>;
  readonly curing: Quantity<'temperature'>;
  readonly flow: Quantity<'flow'>;
}
interface Kilning {
  readonly dry: Quantity<'mass'>;
  readonly air: AirPass;
  /** What the air on after the break does, where the malt is still wet. */
  readonly late: AirPass;
  readonly drying: Drying;
  /** Dry air in an hour, kg. */
  readonly dryAir: number;
}

const KWH = 3.6; // MJ; by definition
const USUAL_GAS = 750; // kWh to a tonne of malt; common practice, no source

function kilning(given: Given): Kilning | Refusal {
  const air = passAir(given);
  if (isRefusal(air)) return air;
  const late = passAir({ ...given, airOn: given.curing });
  if (isRefusal(late)) return late;
  const moisture = given.basis === 'finished' ? given.finished : given.green;
  const dry = kilograms(given.load * (1 - moisture / 100));
  const dryAir = given.flow / air.volume;
  const rate = ({ water }: AirPass) => quantity('massFlow', dryAir * water);
  const drying = dryLoad(dry, given, rate(air), rate(late));
  return isRefusal(drying) ? drying : { dry, air, late, drying, dryAir };
}

export default defineCalculator({
  id: 'kiln',
  stage: 'malting',
  title: 'Air, heat and hours in the kiln',
  purpose: 'Water to drive off, and the air, heat and hours.',
  sources: ['ashrae-2017', 'britannica-beer', 'memory', 'common-practice'],
  cautions: ['dust', 'confined-space'],
  inputs: {
    basis: {
      label: 'Load weighed as',
      options: { finished: 'finished malt', green: 'green malt' },
      value: 'finished',
    },
    load: { kind: 'mass', label: 'Load', range: [10, 500_000], step: 100, from: 'malt.mass' },
    green: { kind: 'percent', label: 'Moisture of the green malt', range: [30, 50], step: 0.5, value: 45 },
    breakAt: {
      kind: 'percent',
      label: 'Moisture at the break',
      range: [8, 30],
      step: 0.5,
      value: BREAK_MOISTURE,
    },
    finished: { house: 'maltMoisture' },
    end: {
      kind: 'percent',
      label: 'Moisture the curing air would leave',
      range: [0, 6],
      step: 0.1,
      value: 1.5,
    },
    outside: { kind: 'temperature', label: 'Air outside', range: [-15, 40], step: 1, value: 10 },
    humidity: { kind: 'percent', label: 'Humidity outside', range: [5, 100], step: 1, value: 80 },
    pressure: { house: 'airPressure' },
    airOn: { kind: 'temperature', label: 'Air on to the malt', range: [35, 90], step: 1, value: 60 },
    airOff: { kind: 'percent', label: 'Humidity of the air off', range: [50, 100], step: 1, value: 95 },
    curing: { kind: 'temperature', label: 'Air on after the break', range: [50, 110], step: 1, value: 72 },
    flow: {
      kind: 'flow',
      label: 'Fresh air',
      range: [10, 2_000_000],
      step: 100,
      value: 4000,
      sized: { by: 'maltPerMash' },
    },
  },
  main: ['load', 'green', 'breakAt', 'airOn', 'flow'],
  outputs: {
    water: { kind: 'mass', label: 'Water to drive off' },
    taken: { kind: 'ratio', label: 'Water to a kilogram of dry air, kg', digits: 4 },
    air: { kind: 'space', label: 'Fresh air used to the break' },
    offAt: { kind: 'temperature', label: 'Air off, until the break' },
    grain: { kind: 'temperature', label: 'Grain temperature to the break, about' },
    hours: { kind: 'hours', label: 'Hours in all' },
    untilBreak: { kind: 'hours', label: 'Hours to the break' },
    heat: { kind: 'energy', label: 'Heat to warm the air', digits: 0 },
    perTonne: { kind: 'energyPerTonne', label: 'Heat for a tonne of malt' },
  },
  compute: (given) => {
    const kiln = kilning(given);
    if (isRefusal(kiln)) return kiln;
    const { dry, air, late, drying, dryAir } = kiln;
    const heat = dryAir * (drying.freeHours * air.heat + drying.lateHours * late.heat);
    const malt = dry / (1 - given.finished / 100);
    return {
      water: kilograms(drying.freeWater + drying.lateWater),
      taken: air.water,
      air: quantity('space', given.flow * drying.freeHours),
      offAt: air.off.temperature,
      grain: air.grain,
      hours: hours(drying.freeHours + drying.lateHours),
      untilBreak: drying.freeHours,
      heat: quantity('energy', heat),
      perTonne: quantity('energyPerTonne', heat / KWH / (malt / 1000)),
    };
  },
  steps: (given, result) => {
    const kiln = kilning(given);
    if (isRefusal(kiln)) return [kiln.refused];
    const { dry, air, late, drying, dryAir } = kiln;
    const steady = [
      `Dry matter of the load = ${n(given.load, 0)} × (100 − ${n(given.basis === 'finished' ? given.finished : given.green, 1)}) ÷ 100 = ${n(dry, 1)} kg`,
      'Water beside the dry matter = dry matter × moisture ÷ (100 − moisture); the water to drive off is the difference of two such figures',
      `${n(drying.freeWater, 1)} kg go while the malt dries freely and ${n(drying.lateWater, 1)} kg after the break, ${n(result.water, 1)} kg in all`,
      `Outside air holds ${n(air.on.ratio, 5)} kg of water to a kilogram of dry air. Warmed to ${n(given.airOn, 0)} °C and blown through the malt it cools at constant enthalpy to ${n(result.offAt, 1)} °C, where ${n(given.airOff, 0)} % humidity is ${n(air.off.ratio, 5)} kg`,
      `So a kilogram of dry air takes ${n(result.taken, 5)} kg: ${n(drying.freeWater, 1)} ÷ ${n(result.taken, 5)} × ${n(air.volume, 3)} m³ of outside air = ${n(result.air, 0)} m³`,
      `At ${n(given.flow, 0)} m³/h that is ${n(result.untilBreak, 2)} h; warming takes ${n(1000 * air.heat, 1)} kJ to a kilogram of dry air, for ${n(dryAir, 0)} kg an hour`,
    ];
    return drying.lateHours === 0
      ? [...steady, 'The malt is finished before the break, so it dries freely all the way']
      : [
          ...steady,
          'After the break the water above what the curing air would leave falls off exponentially, at first as fast as the air now on would dry wet malt: hours = that water at the break ÷ that rate × ln(water above at the break ÷ water above when finished)',
          `A kilogram of that air would take ${n(late.water, 5)} kg, or ${n(dryAir * late.water, 1)} kg in an hour. This takes ${n(drying.lateHours, 2)} h, at ${n(1000 * late.heat, 1)} kJ to a kilogram of dry air; ${n(result.heat, 0)} MJ in all`,
        ];
  },
  remark: (given, { perTonne, grain }) =>
    `The wet grain sits near ${n(grain, 0)} °C though the air on is at ${n(given.airOn, 0)} °C; that spares the enzymes. ${
      perTonne > USUAL_GAS
        ? `By common practice a tonne of malt takes about ${USUAL_GAS} kWh of gas. The other ${n(perTonne - USUAL_GAS, 0)} kWh would have to be recovered heat, or air recirculated after the break; neither is counted here.`
        : `The heat is within the ${USUAL_GAS} kWh of gas a tonne of common practice; losses from burner and walls, and the fans, come on top.`
    }`,
  chart: (given, result) => {
    const kiln = kilning(given);
    const curve = isRefusal(kiln)
      ? [{ hour: result.hours, moisture: given.finished }]
      : dryingCurve(given, kiln.drying);
    return {
      caption: 'Moisture of the malt, hour by hour',
      columns: [
        { kind: 'hours', label: 'Hour', values: curve.map(({ hour }) => hour) },
        { kind: 'percent', label: 'Moisture', values: curve.map(({ moisture }) => moisture) },
      ],
    };
  },
  examples: [
    {
      given: {
        basis: 'finished',
        load: 830,
        green: 45,
        breakAt: 25,
        finished: 5,
        end: 1.5,
        outside: 10,
        humidity: 80,
        pressure: 101.325,
        airOn: 60,
        airOff: 95,
        curing: 72,
        flow: 4000,
      },
      gives: { water: 603.636 },
      within: 1e-5,
      source: 'derived',
      note: 'a worked sum: 830 × 0.95 ÷ 0.55 − 830; the answer has six figures',
    },
    {
      given: {
        basis: 'finished',
        load: 1000,
        green: 45,
        breakAt: 25,
        finished: 5,
        end: 1.5,
        outside: 10,
        humidity: 80,
        pressure: 101.325,
        airOn: 60,
        airOff: 95,
        curing: 72,
        flow: 4000,
      },
      gives: { water: 727.3, perTonne: 1160 },
      within: 0.08,
      source: 'common-practice',
      note: 'about 750 kWh of gas a tonne is quoted; where that is with 30 to 40 % won back (recalled), a kiln without takes 1,071 to 1,250',
    },
  ],
});
