// The strength measured, against the one on the label.
import { formatNumber as n, formatWorking as w } from '../../core/format.ts';
import { againstLabel, EU_TOLERANCE } from '../../core/maturing/label-tolerance.ts';
import { defineCalculator } from '../define.ts';

const HAIR = 1e-9; // % vol; what a sum of decimals may be off

export default defineCalculator({
  id: 'label-tolerance',
  stage: 'maturing',
  title: 'Label and reading',
  purpose: 'Whether a bottling’s strength may carry its label.',
  sources: ['eu-1169-2011-strength', 'eu-2019-787'],
  readings: ['measured', 'sure'],
  inputs: {
    label: { house: 'bottlingStrength', label: 'On the label', staysHere: true },
    measured: { kind: 'strength', label: 'Measured', range: [30, 80], step: 0.05, value: 46.1 },
    sure: {
      kind: 'strengthDifference',
      label: 'The reading is good to ±',
      range: [0, 1],
      step: 0.05,
      value: 0.1,
    },
    tolerance: {
      kind: 'strengthDifference',
      label: 'Allowed either way',
      range: [0, 1],
      step: 0.05,
      value: EU_TOLERANCE,
    },
    least: { kind: 'strength', label: 'Least strength of its name', range: [15, 60], step: 0.5, value: 40 },
  },
  outputs: {
    lowest: { kind: 'strength', label: 'Lowest allowed', digits: 2 },
    highest: { kind: 'strength', label: 'Highest allowed', digits: 2 },
    off: { kind: 'strengthDifference', label: 'Measured, above the label' },
    room: { kind: 'strengthDifference', label: 'Room to the nearer edge' },
  },
  compute: ({ label, measured, tolerance }) => againstLabel(label, measured, tolerance),
  steps: ({ label, measured, tolerance }, { lowest, highest, off, room }) => [
    `From ${w(label)} − ${w(tolerance)} = ${n(lowest, 2)} to ${w(label)} + ${w(tolerance)} = ${n(highest, 2)} % vol`,
    `Measured − label = ${w(measured)} − ${w(label)} = ${n(off, 2)} % vol`,
    `Room = ${w(tolerance)} − ${w(Math.abs(off))} = ${n(room, 2)} % vol`,
  ],
  remark: ({ measured, sure, least }, { room }) => {
    if (measured < least - HAIR)
      return `Below ${n(least, 1)} % vol it may not carry the name, whatever the label allows; ask your authority before you lean on the tolerance there.`;
    if (room < -HAIR) return 'It lies outside: it may not carry this label. Blend it, or print another.';
    return room < sure - HAIR
      ? 'It lies inside, but by less than the reading is good for: measure again, and by a better way.'
      : 'It lies inside, and the reading is good enough to say so. Other countries allow other tolerances.';
  },
  examples: [
    {
      given: { label: 40, measured: 40.2, sure: 0.1, tolerance: 0.3, least: 40 },
      gives: { lowest: 39.7, highest: 40.3 },
      within: 1e-9,
      source: 'cfr-27-19-356',
      note: 'paragraph (d): a label of 40 % vol stands for no less than 39.7 and no more than 40.3',
    },
    {
      given: { label: 40, measured: 40.2, sure: 0.1, tolerance: 0.3, least: 40 },
      gives: { off: 0.2, room: 0.1 },
      within: 1e-9,
      source: 'derived',
      note: 'by hand: 40.2 − 40, and 0.3 − 0.2',
    },
  ],
});
