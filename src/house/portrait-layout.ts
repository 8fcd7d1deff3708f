// Where things stand on the house's portrait, in millimetres of an A4 sheet on its side; on A3 all is larger alike.
import type { CaskSizeShares } from './portrait-vessels.ts';

export const [PORTRAIT_WIDTH, PORTRAIT_HEIGHT] = [297, 210];

/** A room between its walls, from the floor up. */
export interface RoomPlace {
  readonly left: number;
  readonly right: number;
  readonly floor: number;
  readonly height: number;
}
export interface StandingVessel {
  readonly x: number;
  readonly y: number;
  /** Millimetres of a unit of the vessel's own drawing. */
  readonly scale: number;
}

/** The two floors: ridge, ceiling and floor of each. */
export const portraitFloors = [
  { ridge: 37, ceiling: 45, floor: 87 },
  { ridge: 114, ceiling: 122, floor: 164 },
] as const;
export const [PORTRAIT_LEFT, PORTRAIT_RIGHT] = [16, PORTRAIT_WIDTH - 16]; // inner faces of the end walls

const clamp = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));

/** The inner walls of both floors, by how many mash tuns and stills there are. */
export const innerWalls = (tuns: number, stills: number): readonly [readonly number[], readonly number[]] => {
  const mash = clamp(48 + 12 * tuns, 60, 84);
  return [
    [PORTRAIT_LEFT + 49, PORTRAIT_LEFT + 94, PORTRAIT_LEFT + 94 + mash],
    [PORTRAIT_LEFT + clamp(64 + 24 * stills, 116, 166)],
  ];
};

const BEHIND = 0.2; // of a vessel's height by which each rank stands above the one before it
const MOST_RANKS = 4;

/** Vessels standing in ranks, as large as there is room for: each by its middle and its foot, those behind first. */
export function inRanks(
  sizes: readonly number[],
  { left, right, floor, height }: RoomPlace,
  [wide, high]: readonly [number, number],
): readonly (StandingVessel & { readonly of: number })[] {
  const scaleFor = (ranks: number) => {
    const across = Math.ceil(sizes.length / ranks) + (ranks > 1 ? 0.5 : 0);
    return Math.min((right - left) / across / wide, height / high / (1 + BEHIND * (ranks - 1)));
  };
  const choices = Array.from({ length: Math.min(MOST_RANKS, sizes.length) }, (_, i) => i + 1);
  const ranks = choices.reduce((best, each) => (scaleFor(each) > scaleFor(best) * 1.05 ? each : best), 1);
  const scale = scaleFor(ranks);
  const across = Math.ceil(sizes.length / ranks);
  const step = (right - left) / (across + (ranks > 1 ? 0.5 : 0));
  return sizes
    .map((size, of) => {
      const rank = Math.floor(of / across);
      const x = left + step * ((of % across) + 0.5 + (ranks > 1 && rank % 2 === 1 ? 0.5 : 0));
      return { x, y: floor - rank * BEHIND * high * scale, scale: scale * size, of };
    })
    .sort((a, b) => a.y - b.y);
}

const BELLY = 0.0225; // of the height of the tiers: radius of a cask, for each cube root of a litre; three tiers of butts are a little too high
const TIERS = 3;
const APART = 2.1; // of a radius, from the middle of one cask to that of the next

interface Lying {
  readonly x: number;
  readonly y: number;
  readonly r: number;
}

/** Casks lying end on in three tiers, the largest lowest, in the shares of a mix; all alike where it is not known. */
export function inTiers(mix: CaskSizeShares, { left, right, floor, height }: RoomPlace): readonly Lying[] {
  const sizes = [...(mix.size > 0 ? mix : new Map([[200, 100]]))].sort(([a], [b]) => b - a);
  const radius = (size: number) => BELLY * height * Math.cbrt(size);
  const mean = sizes.reduce((sum, [size, share]) => sum + (APART * radius(size) * share) / 100, 0);
  const lay = (room: number): readonly [casks: readonly Lying[], isAll: boolean] => {
    const row = sizes.flatMap(([size, share]) => Array.from({ length: Math.max(1, Math.round((room * share) / 100)) }, () => radius(size)));
    const casks: Lying[] = [];
    let [x, y, highest] = [left, floor, 0];
    for (const r of row) {
      if (x + 2 * r > right) [x, y, highest] = [left, y - 2 * highest - height * 0.03, 0];
      if (y - 2 * r < floor - height) break;
      casks.push({ x: x + r, y: y - r, r });
      [x, highest] = [x + APART * r, Math.max(highest, r)];
    }
    return [casks, casks.length === row.length];
  };
  const whole = (TIERS * (right - left)) / mean;
  const tries = Array.from({ length: 40 }, (_, i) => lay(whole * (1 - i / 40)));
  return (tries.find(([, isAll]) => isAll) ?? tries.at(-1)!)[0];
} // prettier-ignore

/** A text broken into lines of at most so many characters, where there are spaces. */
export function wrappedLines(text: string, most: number): readonly string[] {
  return text.split(' ').reduce<string[]>((lines, word) => {
    const last = lines.at(-1);
    if (last === undefined || last.length + 1 + word.length > most) return [...lines, word];
    return [...lines.slice(0, -1), `${last} ${word}`];
  }, []);
}

const LETTER = 0.5; // of its height: mean width of a letter of a serif

/** Letters as high as wanted, or as the room allows, mm. */
export const letterHeight = (text: string, wanted: number, room: number, letter = LETTER): string =>
  Math.min(wanted, room / (Math.max(1, [...text].length) * letter)).toFixed(2);
