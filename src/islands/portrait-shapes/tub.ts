// A tub of which nobody has said what it is made of, and one of steel: seams, a manhole in its lid and a shine.
import type { Engraving } from './engravings.ts';
import { upright } from './shade.ts';

export const tub: Engraving = {
  body: 'M36 40 L29 148 A37 7 0 0 0 103 148 L96 40 A30 6 0 0 0 36 40Z',
  lines: 'M36 40 A30 6 0 0 1 96 40 A30 6 0 0 1 36 40Z',
  hatch: '',
  shade: upright(29, 103, 36, 156),
};

export const steel: Engraving = {
  body: 'M30 50 V148 A36 7 0 0 0 102 148 V50 C98 38 84 34 66 34 C48 34 34 38 30 50Z',
  lines: 'M30 50 A36 7 0 0 0 102 50 M30 98 A36 7 0 0 0 102 98 M30 146 A36 7 0 0 0 102 146 M56 36 V30 H76 V36 M52 30 H80 M48 122 a7 8 0 1 0 14 0 a7 8 0 1 0 -14 0Z',
  hatch: 'M43 60 V92 M47 62 V88 M43 108 V116 M38 154 v4 M94 154 v4',
  shade: upright(30, 102, 34, 156),
}; // prettier-ignore
