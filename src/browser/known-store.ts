// What is known of the house of the page, and which of its computed figures are estimates because of what is not.
import { createEffect, createMemo, createRoot, createSignal, onMount, untrack } from 'solid-js';
import { isServer } from 'solid-js/web';
import type { FigureId } from '../core/figures/index.ts';
import { isRough, standings, usualWay, type FigureStanding } from '../core/figures/standing.ts';
import { builtInHouse, builtInName, isNumberName, type NumberName } from '../house/figures.ts';
import { forABottle } from '../house/for-a-bottle.ts';
import { figureAt, textOfFigure } from '../house/prose.ts';
import { lineIn } from '../house/line-of.ts';
import { whenIdle } from './defer.ts';
import { figuresThatCount, knownOf, knownPart, nothingKnown, type Known } from '../house/parts/known.ts';
import { readPart } from '../house/parts/part.ts';
import { liveHouse, liveName, liveParts, tellOfPart } from './house-store.ts';

type Hanging = ReadonlyMap<FigureId, readonly NumberName[]>;
const NONE: Hanging = new Map();
const REST = 1000; // ms without a change until what hangs on what is looked at anew

/** What is known of the live house. Under the built-in name all is, whatever this says. */
const liveKnown = createRoot(() =>
  createMemo((): Known => knownOf({ house: liveHouse(), parts: liveParts() })),
);
const unknownNow = (): readonly NumberName[] =>
  liveName() === builtInName
    ? []
    : figuresThatCount(liveHouse()).filter((figure) => !(figure in liveKnown().given));

const [unknown, setUnknown] = createSignal<readonly NumberName[]>([]);
const [hanging, setHanging] = createSignal<Hanging>(NONE);

/** Looks at what hangs on each figure that is not known, one figure at a time, once the hand rests. A page of a house that is known whole does not fetch what that takes. */
function lookAnew(): void {
  const [house, figures] = untrack(() => [liveHouse(), unknown()] as const);
  if (figures.length === 0) return void setHanging(NONE);
  void import('../core/line/hangs-on.ts').then(({ computedFrom }) => {
    for (const figure of figures) whenIdle(() => void computedFrom(house, [figure], lineIn));
    whenIdle(() => house === liveHouse() && setHanging(computedFrom(house, figures, lineIn)));
  });
}

if (!isServer)
  createRoot(() => {
    let timer: ReturnType<typeof setTimeout> | undefined;
    createEffect((before: string | undefined) => {
      const figures = unknownNow();
      const key = figures.join();
      clearTimeout(timer);
      if (key === before) {
        if (figures.length > 0) timer = setTimeout(lookAnew, REST);
      } else {
        setUnknown(figures);
        lookAnew();
      }
      return key;
    });
  });

/** True when a computed figure of the live house is an estimate. */
const isLiveEstimate = (id: FigureId): boolean =>
  liveName() !== builtInName && liveKnown().counted[id] === undefined && (isRough(id) || hanging().has(id));

/** What has to be said of a figure of the live house that prose quotes: whose it is, or that it is an estimate; nothing of one that is known. */
export function liveDoubtAt(path: string): string | undefined {
  const id = path in forABottle ? 'bottles' : figureAt(path);
  if (id === undefined || liveName() === builtInName) return undefined;
  if (!isNumberName(id)) return isLiveEstimate(id) ? standings.estimate : undefined;
  if (!unknown().includes(id)) return undefined;
  return liveHouse()[id] === builtInHouse[id] ? `${builtInName}’s` : standings.estimate;
}
/** What was counted of a figure of the live house that prose quotes, as text. */
export function liveCountedAt(path: string): string | undefined {
  const id = figureAt(path);
  const counted = id && liveKnown().counted[id];
  return counted === undefined ? undefined : textOfFigure(id!, counted);
}
/** Changes with what hangs on what is not known. */
export const liveHanging = hanging;
/** The figures of the live house that are not known. */
export const liveUnknownFigures = unknown;
/** How many figures of the live house are not known, of how many. */
export const liveUnknown = () => ({ unknown: unknown().length, of: figuresThatCount(liveHouse()).length });

/** What is known inside an island; until it is mounted all is, as the page was built with the built-in house. */
export function useKnown() {
  const [mounted, setMounted] = createSignal(false);
  onMount(() => setMounted(true));
  createEffect(() => {
    const raw = liveParts().known;
    if (mounted()) tellOfPart('known', readPart(knownPart, raw).problems);
  });
  const known = createMemo(() => (mounted() ? liveKnown() : nothingKnown));
  const isBuiltIn = () => !mounted() || liveName() === builtInName;
  const hasGiven = () => Object.keys(known().given).length > 0;
  /** Under the built-in house's name nothing is marked in the book; where a house is entered it is, once something was given. */
  const isKnown = (figure: NumberName, entering: boolean) =>
    figure in known().given || (isBuiltIn() && !(entering && hasGiven()));
  const counted = (id: FigureId) => known().counted[id];
  const isEstimate = (id: FigureId) => !isBuiltIn() && isLiveEstimate(id);
  return {
    /** True for a house that has the built-in one's name: all of it is known. */
    isBuiltIn,
    known,
    /** Whose a figure is that is not known, as a mark beside its field; nothing for one that is. */
    notKnown: (figure: NumberName, entering = false): string | undefined =>
      isKnown(figure, entering)
        ? undefined
        : liveHouse()[figure] === builtInHouse[figure]
          ? `${builtInName}’s`
          : standings.estimate,
    counted,
    isEstimate,
    doubtAt: (path: string) => (isBuiltIn() ? undefined : liveDoubtAt(path)),
    /** What is not known, and what hangs on it. */
    unknown: () => (isBuiltIn() ? [] : unknown()),
    hangsOn: (id: FigureId): readonly NumberName[] => (isBuiltIn() ? [] : (hanging().get(id) ?? [])),
    standing: (id: FigureId): FigureStanding => {
      if (isNumberName(id)) return known().given[id] ?? (isKnown(id, true) ? usualWay(id) : 'unknown');
      return counted(id) !== undefined ? 'counted' : isEstimate(id) ? 'estimate' : 'computed';
    },
  };
}
