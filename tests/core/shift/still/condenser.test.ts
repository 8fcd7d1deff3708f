// The condenser of a shift: heat given is heat taken, and the surface agrees with logarithmic mean differences.
import { expect, test } from 'vitest';
import { condense, condenserFor, waterComes, waterFlow } from '../../../../src/core/shift/still/condenser.ts';
import { always, apart, between } from '../../draw.ts';
import fc from 'fast-check';

const [FLOW, Y, BOILS] = [0.004, 0.45, 87] as const; // kmol/s, mole fraction, °C
const condenser = condenserFor(FLOW, Y, BOILS, 5);
// Perry, tables 3-178 and 3-183: latent heats in kJ/kg, heat capacities in kJ/(kg K).
const latent = (y: number) => y * 46.069 * 855 + (1 - y) * 18.0153 * 2260;
const capacity = (y: number) => y * 46.069 * 2.845 + (1 - y) * 18.0153 * 4.184;

test('in a usual run the spirit comes at 20 °C, the water leaves at 50, and nothing goes by', () => {
  const { safe, leaves, goesBy } = condense(condenser, FLOW, Y, BOILS, waterComes(0), 5);
  expect(safe).toBeCloseTo(20, 1);
  expect(leaves).toBeCloseTo(50, 1);
  expect(goesBy).toBe(0);
});

test('the water takes what the spirit gives', () => {
  always(fc.tuple(between(0.001, 0.005), between(0.1, 0.6), between(4, 10), between(0, 12)), ([flow, y, marks, rise]) => {
    const { safe, leaves, goesBy } = condense(condenser, flow, y, BOILS, waterComes(rise), marks);
    const given = flow * ((1 - goesBy) * latent(y) + capacity(y) * (BOILS - safe));
    const taken = (waterFlow(condenser, marks) / 3600) * 4.184 * (leaves - waterComes(rise));
    expect(apart(given, taken)).toBeLessThan(0.002);
  });
}); // prettier-ignore

test('its surface is that of the logarithmic mean differences of its two parts', () => {
  const water = (FLOW * (latent(Y) + capacity(Y) * (BOILS - 20))) / 40; // kW/K, warmed by 40 K
  const first = 10 + (FLOW * capacity(Y) * (BOILS - 20)) / water;
  const mean = (a: number, b: number) => (a - b) / Math.log(a / b);
  const condensing = (FLOW * latent(Y)) / mean(BOILS - first, BOILS - 50);
  const cooling = (FLOW * capacity(Y) * (BOILS - 20)) / mean(BOILS - first, 20 - 10);
  // The cooling part is reckoned as if its water stayed at 10 °C, where it truly warms by some 5 K: a little less surface.
  expect(apart(condenser.passes, condensing + cooling)).toBeLessThan(0.03);
});

test('more water cools, warmer water warms, and too little lets vapour by', () => {
  const at = (rise: number, marks: number) => condense(condenser, FLOW, Y, BOILS, waterComes(rise), marks);
  expect(at(0, 7).safe).toBeLessThan(at(0, 5).safe);
  expect(at(10, 5).safe).toBeGreaterThan(28);
  expect(at(0, 1).goesBy).toBeGreaterThan(0.3);
  expect(at(0, 0)).toMatchObject({ goesBy: 1 });
});
