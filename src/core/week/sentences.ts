// A week's verdict in sentences: whether so many mashes fit, what is nearest its limit, and what stands in the way of more.
import { formatCount, formatNumber } from '../format.ts';
import type { WeekNeeds } from './run-weeks.ts';
import type { Lack } from './lack.ts';
import { usedPart, type Timetable } from './timetable.ts';
import { overWeekend, type VesselKind } from './uses.ts';

const ones = {
  tuns: ['mash tun', 'mash'],
  washbacks: ['washback', 'fermentation'],
  wash: ['wash still', 'wash run'],
  intermediate: ['intermediate still', 'intermediate run'],
  spirit: ['spirit still', 'spirit run'],
} as const satisfies Record<VesselKind, readonly [vessel: string, turn: string]>;

const hours = (n: number) => `${formatNumber(n, n % 1 === 0 ? 0 : 1)} h`;
const litres = (n: number) => `${formatNumber(n, 0)} L`;
const sum = (groups: readonly { readonly number: number }[]) =>
  groups.reduce((n, { number }) => n + number, 0);

/** How many of a kind of vessel there are. */
function numberOf(needs: WeekNeeds, kind: VesselKind): number {
  if (kind === 'tuns') return sum(needs.tuns);
  if (kind === 'washbacks') return needs.washbacks;
  return sum(needs.stages.find(({ id }) => id === kind)!.groups);
}
/** “the washbacks”, “the mash tun”; and with “are” or “is”. */
const the = (needs: WeekNeeds, kind: VesselKind) =>
  `the ${ones[kind][0]}${numberOf(needs, kind) === 1 ? '' : 's'}`;
const are = (needs: WeekNeeds, kind: VesselKind) =>
  `${the(needs, kind)} ${numberOf(needs, kind) === 1 ? 'is' : 'are'}`;

/** What is too little, as the end of a sentence. */
function tooLittle(lack: Lack, needs: WeekNeeds): string {
  const { kind } = lack;
  if (kind === 'receiver')
    return `the low wines receiver holds ${litres(needs.receiver)}, and would have to hold about ${litres(lack.litres!)}, ${litres(lack.litres! - needs.receiver)} more`;
  if (kind === 'charger')
    return `the wash charger holds ${litres(needs.charger)}, and would have to hold about ${litres(lack.litres!)}, ${litres(lack.litres! - needs.charger)} more`;
  const { needed, available } = lack.uses.find((use) => use.kind === kind)!;
  const { long, isCause } = lack.weekend;
  const weekend = long > 0 && (kind === 'washbacks' || isCause) ? `, with ${formatCount(long, 'fermentation')} of ${hours(needs.weekend)} over the weekend` : '';
  const falls = lack.behind === Infinity ? 'and the work would come to a stand' : `and each week would fall ${hours(lack.behind)} behind the last`;
  const isShort = lack.hours > 0
    ? `in the week, ${hours(lack.hours)} too little${weekend}`
    : `in the week${weekend}, but not free when the work comes, ${falls}`;
  const ways = [
    ...(lack.shorter === undefined ? [] : [`if each ${ones[kind][1]} were ${hours(lack.shorter)} shorter`]),
    ...(lack.more === undefined ? [] : [`with ${lack.more === 1 ? `one more ${ones[kind][0]}` : `${lack.more} more ${ones[kind][0]}s`}`]),
  ];
  const would = ways.length > 0 ? `; it would do ${ways.join(', or ')}` : '';
  const cause = isCause ? `. The weekend is the cause: were no fermentation longer than ${hours(needs.short)}, it would do` : '';
  return `${are(needs, kind)} needed for ${hours(needed)} of ${hours(available)} ${isShort}${would}${cause}`;
} // prettier-ignore

/**
 * Why so many mashes do not fit: the vessel, and by how much it is too little.
 * @example lackSentence({ kind: 'charger', litres: 9000, alone: true }, 5, { charger: 8000 }) // '5 mashes a week do not fit: the wash charger holds 8,000 L, and would have to hold about 9,000 L, 1,000 L more.' (9,000 less 8,000)
 */
export function lackSentence(lack: Lack, mashes: number, needs: WeekNeeds): string {
  const others = lack.alone ? '' : ' More of that alone would not be enough.';
  return `${formatCount(mashes, 'mash', 'mashes')} a week ${mashes === 1 ? 'does' : 'do'} not fit: ${tooLittle(lack, needs)}.${others}`;
}

/**
 * That the mashes of a timetable fit, how they are laid, and which vessel is nearest its limit.
 * @example fitsSentence({ number: 1, needs: { tuns: [{ number: 1, hours: 8 }], short: 60, weekend: 60, distilling: { days: 7, from: 0, hours: 24 } }, pattern: 'spread', division: 'by-mash', uses: [{ kind: 'tuns', needed: 8, available: 168 }], washbacks: [], step: 1 }).startsWith('1 mash a week fits.') // true (one mash)
 */
export function fitsSentence({ number, needs, pattern, division, uses, washbacks, step }: Timetable): string {
  const most = uses.reduce((a, b) => (usedPart(b) > usedPart(a) ? b : a));
  const laid =
    pattern === 'spread'
      ? ''
      : ' They do not fit when they are spread evenly: each is begun as soon as a tun and a washback are free.';
  const mixed =
    division === 'by-mash'
      ? ''
      : ' The stills are filled through the charger, and some charges are of two mashes.';
  const long = overWeekend(
    needs,
    washbacks.map(({ start }) => start * step),
  );
  const unused =
    long === 0 && needs.weekend > needs.short
      ? ` The stills run when each is ready, so no fermentation takes ${hours(needs.weekend)}.`
      : '';
  return `${formatCount(number, 'mash', 'mashes')} a week ${number === 1 ? 'fits' : 'fit'}. Nearest the limit: ${the(needs, most.kind)}, in use for ${hours(most.needed)} of ${hours(most.available)}, ${formatNumber(100 * usedPart(most), 0)} %.${laid}${mixed}${unused}`;
}

/**
 * The most mashes, and what stands in the way of one more; not again where `asked` mashes are that one more, of which it was said.
 * @example mostSentence(5, {}, {}, 6) // 'The most is 5 mashes.' (of the sixth it was said already)
 */
export function mostSentence(most: number, next: Lack, needs: WeekNeeds, asked?: number): string {
  if (most === 0) return asked === 1 ? '' : lackSentence(next, 1, needs);
  if (asked === most + 1) return `The most is ${formatCount(most, 'mash', 'mashes')}.`;
  return `The most is ${formatCount(most, 'mash', 'mashes')}; one more does not fit: ${tooLittle(next, needs)}.`;
}
