// How fierce a dust is: its Kst and its class.
import { formatNumber as n } from '../../core/format.ts';
import { dustClass, dustViolence } from '../../core/milling/dust.ts';
import { count } from '../../core/quantity.ts';
import { defineCalculator } from '../define.ts';

/** Kst of dusts of the grain trade, bar m/s: the UK flour-millers’ report of 2004, and for malt from memory. */
const KNOWN =
  'wheat flour is published at 53 to 100 bar m/s and wheat grain dust at 105 to 122, and 80 to 130 is recalled for malt dust, all St 1; for barley up to 240 is told, which is St 2';

export default defineCalculator({
  id: 'dust-class',
  stage: 'milling',
  title: 'How fierce a dust is',
  purpose: 'Turns the pressure rise in a test vessel into Kst, and Kst into the explosion class.',
  sources: ['flour-dust-2004', 'memory'],
  cautions: ['dust'],
  inputs: {
    rise: { kind: 'pressureRise', label: 'Fastest rise of pressure', range: [0, 5000], step: 5, value: 110 },
    vessel: { kind: 'volume', label: 'Test vessel', range: [20, 10_000], step: 10, value: 1000 },
  },
  outputs: {
    violence: { kind: 'dustViolence', label: 'Kst' },
    level: { kind: 'count', label: 'Explosion class: St' },
  },
  compute: ({ rise, vessel }) => {
    const violence = dustViolence(rise, vessel);
    return { violence, level: count(dustClass(violence)) };
  },
  steps: ({ rise, vessel }, result) => [
    'Kst = fastest rise of pressure × cube root of the test vessel’s cubic metres; in a vessel of 1,000 L the two are one number',
    `${n(rise, 0)} × cube root of ${n(vessel / 1000, 3)} = ${n(result.violence, 0)} bar m/s`,
    'Class St 1 reaches to 200, St 2 to 300, and St 3 is all above; St 0 did not explode (limits from memory)',
    `${n(result.violence, 0)} bar m/s is St ${result.level}`,
  ],
  remark: (_, { level }) => {
    if (level === 0) {
      return 'That holds for this sample only: finer or drier dust of the same malt may explode. Specialists test your dust and decide.';
    }
    return `${level === 1 ? 'For comparison,' : 'That is fierce for grain:'} ${KNOWN}. Take yours for St 2 until it is tested. Even the lowest class can kill; the venting of a mill is designed by specialists from a test of its own dust.`;
  },
  examples: [
    {
      given: { rise: 122, vessel: 1000 },
      gives: { level: 1 },
      within: 1e-9,
      source: 'flour-dust-2004',
      note: 'the highest Kst of wheat grain dust, 122 bar m/s, there called St 1',
    },
    {
      given: { rise: 53, vessel: 1000 },
      gives: { level: 1 },
      within: 1e-9,
      source: 'flour-dust-2004',
      note: 'the lowest Kst of wheat flour, 53 bar m/s, there called St 1',
    },
    {
      given: { rise: 800, vessel: 27 },
      gives: { violence: 240, level: 2 },
      within: 1e-9,
      source: 'memory',
      note: 'the cube root of 0.027 is 0.3; the limits 200 and 300 are recalled from EN 14034',
    },
  ],
});
