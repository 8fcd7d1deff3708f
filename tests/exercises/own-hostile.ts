// Texts that mean mischief, for the formulas, files and links of a trainer's own questions and sheets.
import { injections, prototypeKeys } from '../hostile-texts.ts';

export const hostileTexts: readonly string[] = [
  ...injections,
  ...prototypeKeys,
  ...prototypeKeys.map((key) => `${key}(1)`),
  '('.repeat(300),
  `${'2^'.repeat(140)}2`,
  `${'−'.repeat(299)}1`,
  `${'1+'.repeat(149)}1`,
  '9^9^9^9',
  'constructor.constructor("hurt=1")()',
  '\u0000',
  '[',
  'malt['.repeat(50),
  'a'.repeat(1_000_000),
];
