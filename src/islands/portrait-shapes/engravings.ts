// Every vessel of the portrait as an engraving: the outlines of the live line's vessels, and those that it has not, each with its shade.
import type { Shape } from '../../house/portrait-vessels.ts';
import { lineVessels } from '../LineVessel.tsx';
import { sacks } from './sacks.ts';
import { safe } from './safe.ts';
import { level, upright } from './shade.ts';
import { steel, tub } from './tub.ts';

/** Paths in a square of 130 by 162 units, with the floor at 158. */
export interface Engraving {
  /** What stands behind the body, its own outline. */
  readonly beside?: string;
  readonly body: string;
  readonly lines: string;
  readonly hatch: string;
  /** Cut off at the body. */
  readonly shade: string;
}
export const [ENGRAVING_WIDTH, ENGRAVING_HEIGHT] = [130, 162]; // units

const without = (what: keyof typeof lineVessels) => {
  const { body, lines, hatch } = lineVessels[what];
  return { body, lines, hatch };
};

export const engravings: Readonly<Record<Shape | 'safe' | 'bottle', Engraving>> = {
  sacks,
  mill: { ...without('malt'), shade: upright(24, 106, 30, 140) },
  'mash-tun': { ...without('mash-tun'), shade: level(22, 114, 44, 126) },
  washback: { ...without('washback'), shade: upright(29, 103, 36, 156) },
  steel,
  tub,
  'wash-still': { ...without('wash-still'), shade: level(14, 91, 20, 146) },
  'spirit-still': { ...without('spirit-still'), shade: level(18, 82, 16, 146) },
  safe,
  bottle: { ...without('bottle'), shade: upright(42, 82, 44, 158) },
};
