// A cask measured again with a rod through its bung.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { caskCapacity, dippedVolume, type CaskShape } from '../../core/maturing/shape.ts';
import { volumeAt20 } from '../../core/maturing/weighing.ts';
import { litresOfAlcohol, quantity } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';
import { against, expectedSteps, filledInputs, meaning } from './regauge-inputs.ts';

const shape = ({ bung, head, length }: CaskShape): CaskShape => ({ bung, head, length });

export default defineCalculator({
  id: 'regauge-by-dip',
  stage: 'maturing',
  title: 'Regauge by dip',
  purpose: 'Litres from a dip rod, against what should be there.',
  sources: ['derived', 'oiml-r22', 'conner-2003'],
  cautions: ['ethanol-vapour'],
  readings: ['dip', 'strength'],
  inputs: {
    dip: { kind: 'length', label: 'Wet length of the rod', range: [0, 1200], step: 1, value: 461 },
    bung: { kind: 'length', label: 'Inside diameter at the bung', range: [100, 1200], step: 1, value: 605 },
    head: { kind: 'length', label: 'Inside diameter of a head', range: [80, 1200], step: 1, value: 500 },
    length: { kind: 'length', label: 'Inside length', range: [100, 1600], step: 1, value: 790 },
    strength: { kind: 'strength', label: 'Strength found', range: [20, 95], step: 0.1, value: 59.3 },
    temperature: {
      kind: 'temperature',
      label: 'Temperature of the spirit',
      range: [-5, 35],
      step: 0.5,
      value: 10,
    },
    ...filledInputs,
  },
  main: ['dip', 'bung', 'head', 'length', 'strength'],
  outputs: {
    found: { kind: 'volume20', label: 'Found, at 20 °C', digits: 1 },
    alcohol: { kind: 'alcohol', label: 'Pure alcohol found' },
    expected: { kind: 'alcohol', label: 'Pure alcohol expected' },
    missing: { kind: 'alcohol', label: 'Expected minus found' },
    part: { kind: 'percent', label: 'As a share of what was expected' },
    expectedStrength: { kind: 'strength', label: 'Strength expected', digits: 1 },
    full: { kind: 'volume', label: 'The cask holds, full', digits: 1 },
  },
  refuse: ({ dip, bung, head, length, filled }) => {
    if (head > bung)
      return `A head of ${n(head, 0)} mm is wider than the ${n(bung, 0)} mm at the bung; a cask is widest at its bung.`;
    if (dip > bung) return `A dip of ${n(dip, 0)} mm is more than the ${n(bung, 0)} mm at the bung.`;
    const full = caskCapacity({ bung, head, length });
    return filled > full * 1.02
      ? `These measures hold ${n(full, 1)} L, and ${n(filled, 1)} L cannot have been filled in. Check the measures.`
      : undefined;
  },
  compute: (given) => {
    const found = volumeAt20(dippedVolume(shape(given), given.dip), given.strength, given.temperature);
    const alcohol = litresOfAlcohol((found * given.strength) / 100);
    const { expected, difference } = against(given, alcohol);
    return {
      found,
      alcohol,
      expected: expected.alcohol,
      missing: difference.missing,
      part: difference.part,
      expectedStrength: expected.strength,
      full: caskCapacity(shape(given)),
    };
  },
  steps: (given, result) => [
    'The cask is taken as a parabola turned about its axis. Full, it holds π × length × (8 D² + 4 D d + 3 d²) ÷ 60, D at the bung and d at a head, all in decimetres',
    `π × ${w(given.length / 100)} × (8 × ${w(given.bung / 100)}² + 4 × ${w(given.bung / 100)} × ${w(given.head / 100)} + 3 × ${w(given.head / 100)}²) ÷ 60 = ${n(result.full, 1)} L`,
    `Wet for ${n(given.dip, 0)} mm of ${n(given.bung, 0)}, the round slices below the level add up to ${n(dippedVolume(shape(given), given.dip), 1)} L at ${n(given.temperature, 1)} °C`,
    `Brought to 20 °C by the densities of ${n(given.strength, 1)} % vol: ${n(result.found, 1)} L, with ${n(result.alcohol, 2)} L of pure alcohol`,
    ...expectedSteps(given, result.expected, result.missing),
  ],
  remark: (given, { missing, part, full }) => {
    const off = (100 * (full - given.filled)) / given.filled;
    const size =
      Math.abs(off) > 5
        ? ` By its measures the cask holds ${n(full, 0)} L, and ${n(given.filled, 0)} were filled: if it was filled to the bung, measure the cask again.`
        : '';
    return meaning(given, missing, part) + size;
  },
  chart: (given) => {
    const dips = Array.from({ length: 41 }, (_, i) => quantity('length', given.bung * (i / 40)));
    return {
      caption: 'What the cask holds at each dip',
      columns: [
        { kind: 'length', label: 'Wet length of the rod, mm', values: dips },
        { kind: 'volume', label: 'Holds', values: dips.map((dip) => dippedVolume(shape(given), dip)) },
      ],
      points: [[given.dip, dippedVolume(shape(given), given.dip)]],
    };
  },
  examples: [
    {
      given: {
        dip: 300,
        bung: 600,
        head: 600,
        length: 800,
        strength: 60.3,
        temperature: 20,
        filled: 200,
        filledAt: 63.5,
        indrink: 0,
        years: 10,
        loss: 2,
        humidity: 65,
        steady: 65,
        allowed: 3,
      },
      gives: { full: 226.195, found: 113.097, expected: 103.768 },
      within: 1e-5,
      source: 'derived',
      note: 'a straight cask is a cylinder, π × 3² × 8 dm, and half its depth is half of it; 127 L × 0.98 to the tenth power',
    },
    {
      given: {
        dip: 450,
        bung: 600,
        head: 600,
        length: 800,
        strength: 60.3,
        temperature: 20,
        filled: 200,
        filledAt: 63.5,
        indrink: 0,
        years: 10,
        loss: 2,
        humidity: 65,
        steady: 65,
        allowed: 3,
      },
      gives: { found: 181.974 },
      within: 1e-5,
      source: 'derived',
      note: 'the segment of a circle of 3 dm filled to 4.5: 9 × (2π ÷ 3) + 1.5 × √6.75 dm², times 8 dm, by hand',
    },
    {
      given: {
        dip: 406.4,
        bung: 812.8,
        head: 609.6,
        length: 1016,
        strength: 60,
        temperature: 20,
        filled: 440,
        filledAt: 63.5,
        indrink: 0,
        years: 10,
        loss: 2,
        humidity: 65,
        steady: 65,
        allowed: 3,
      },
      gives: { full: 445.9, found: 222.95 },
      within: 1e-3,
      source: 'cask-gauging',
      note: 'bung 32, head 24 and length 40 in, second variety: 0.0023959 × 32² × 40 = 98.136 gallons, of 277.274 cubic inches then (from memory); half full at half the depth',
    },
  ],
});
