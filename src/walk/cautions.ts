// What a walk carries with it for the party's safety: one short list, and the caution of the book that stands for each stage. Common practice; the site's own rules come first.
import type { Stage } from '../house/figures.ts';

/** The caution whose one line a room of a stage carries. */
export const cautionOf: Readonly<Record<Stage, string>> = {
  malting: 'visitors',
  milling: 'dust',
  mashing: 'hot-liquor',
  fermenting: 'carbon-dioxide',
  distilling: 'ethanol-vapour',
  maturing: 'ethanol-vapour',
};

export const withEveryWalk: readonly (readonly [of: string, says: string])[] = [
  ['Drivers', 'Nobody who drives tastes; theirs goes home with them in a closed bottle.'],
  ['Age', 'Nobody under age is given a taste, and children stay beside an adult.'],
  ['Pregnancy', 'Ask before the nosing and the tasting, and offer something without alcohol.'],
  ['Vapour', 'Phones, cameras, flames and sparks stay out wherever spirit or dust may be in the air.'],
  ['Carbon dioxide', 'Nobody leans over a washback, a steep or a tank; when an alarm sounds, all go out.'],
  ['Lifting', 'Visitors lift nothing, roll no cask and touch no valve.'],
  ['Alone', 'Nobody walks alone; count the party in and out of each room.'],
];
export const WALK_DEFERS =
  'Your site’s own rules, its licence and the law of the country come before this list; ask those who are trained and licensed for the work.';
