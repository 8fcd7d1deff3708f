// The way from field to bottle with links of the asker’s own: “5 acres at 3 t, 80 % comes out as malt, how much spirit?”, “2 t at 410, how many casks?”
import { formatNumber, formatWorking } from '../core/format.ts';
import { inCore, resultInWords, type Numbered, type Reckoner } from './reckoned.ts';
import type { AskedQuantity } from './quantities.ts';
import { textBehind, numberText, isWithinRange } from './sum-kit.ts';
import { namedCask, spiritSaid } from './spirit-said.ts';

const YIELDS = [100, 500] as const; // litres of pure alcohol from a tonne that a malt can be said to give
const HARVESTS = [0.3, 15] as const; // t of grain from an acre or a hectare
const CASKS = [20, 700] as const; // L; the largest cask of the law is of 700 L, Regulation (EU) 2019/787
const BOTTLES = [0.04, 2] as const; // L
const STRENGTHS = [30, 80] as const; // % vol in cask or bottle
const SHARES = [50, 100] as const; // kg of malt from a hundred of barley
const WASHES = [4, 15] as const; // % vol
const MOST = { mashes: 200, weeks: 52 } as const;
const ON_LAND =
  /^\s*(?:of (?:barley|grain|malt)\s+)?(?:an?|per|to the|to an?|the|each|every|\/)\s*(?:acre|hectare|ha)\b/i;
const A_TONNE =
  /^\s*(?:(?:litres?|liters?|lpas?|l)\s+)?(?:of (?:pure )?alcohol\s+)?(?:an?|per|to the|to a|the|each|every|from a|\/)\s*(?:metric )?t(?:onn?e?)?s?\b/i;
const OF_MALT =
  /^\s*(?:of it |of that )?(?:(?:comes|came|come|goes|turns|ends|is|will be) )?(?:out |up )?(?:as |to |into )?malt|^\s*(?:malting )?yield|^\s*left as malt/i;
const COUNTS_MASHES = /^\s*(?:mash|brew|batch)/i;

type Step = 'land' | 'barley' | 'malt';

/** What is asked for at the end of the way. */
function endIn(text: string): 'bottles' | 'casks' | 'alcohol' | 'malt' | 'wash' {
  if (/\bhow many .{0,24}\bbottles?\b|\b(?:in|into|as|to) bottles?\b|bottles (?:is|would|will|do|from|out)/i.test(text)) return 'bottles';
  if (/\bhow many .{0,30}(?:casks?|barrels?|hogsheads?|butts?)\b|\b(?:in|into|as) (?:casks|barrels|hogsheads)/i.test(text)) return 'casks';
  if (/\bhow (?:much|many)\b.{0,40}\b(?:malt)\b/i.test(text) && !/how (?:much|many)\b.{0,24}(?:spirit|alcohol|lpa|whisk)/i.test(text)) return 'malt';
  if (/\bwash\b/i.test(text) && /volume|how (?:much|many)|litres|balance/i.test(text)) return 'wash';
  return 'alcohol';
} // prettier-ignore

const taken = (each: AskedQuantity, used: Set<AskedQuantity>) => (used.add(each), each);

/** A way that begins with land, grain or malt, with at least one link that the question tells. */
export const chain: Reckoner = (asked: Numbered) => {
  const { text, quantities, line, house } = asked;
  const end = endIn(text);
  if (quantities.length < 2 || /\bif your\b|instead|drop|promis|certificate|\bcost|price|\bppm\b|gravity|extract|\bwater\b/i.test(text)) return undefined;
  const used = new Set<AskedQuantity>();
  const masses = quantities.filter(({ dimension, number }) => dimension === 'mass' && number > 0);
  const perLand = masses.find((each) => ON_LAND.test(textBehind(text, each)));
  const isPerLand = perLand && isWithinRange(HARVESTS, inCore(perLand, 'mass')! / 1000);
  if (isPerLand) taken(perLand, used);
  const areas = quantities.filter(({ dimension, unit, number }) => (dimension === 'area' || unit === 'ha') && number > 0);
  const area = areas.find((each) => !(isPerLand && each.number === 1 && areas.length > 1 && each.start <= perLand.end + 4)) ?? areas[0];
  for (const each of areas) taken(each, used);
  const yielded = quantities.find((each) => isWithinRange(YIELDS, each.number) && (each.dimension === 'yield' || ((each.unit === undefined || each.dimension === 'alcohol' || each.unit === 'L') && (A_TONNE.test(textBehind(text, each)) || /\b(?:at|yield(?:s|ing|ed)?|gives?|of)\s+(?:about\s+)?$/i.test(text.slice(0, each.start)))) && !used.has(each)));
  if (yielded) taken(yielded, used);
  const share = quantities.find((each) => each.dimension === 'percent' && isWithinRange(SHARES, each.number) && (OF_MALT.test(textBehind(text, each)) || /malt(?:ing)? (?:yield|at|gives)\s*(?:of\s*)?$/i.test(text.slice(0, each.start))));
  if (share) taken(share, used);
  const mashes = quantities.find((each) => each.unit === undefined && COUNTS_MASHES.test(textBehind(text, each)) && isWithinRange([1, MOST.mashes], each.number));
  const weeks = quantities.find(({ unit, number }) => unit === 'weeks' && isWithinRange([1, MOST.weeks], number));
  if (mashes) taken(mashes, used);
  if (weeks) taken(weeks, used);
  // “a tonne” that only belongs to the yield is no start.
  const start = masses.find((each) => !used.has(each) && !(each.number === 1 && each.unit === 't' && yielded && each.start >= yielded.end && each.start - yielded.end < 24));
  const isYear = mashes !== undefined && /week|year|annual|annum/i.test(text);
  if (start) taken(start, used);
  for (const each of masses) taken(each, used);
  const rest = { ...asked, quantities: quantities.filter((each) => !used.has(each)) };
  const { volumes } = spiritSaid(rest);
  const sized = volumes.find(({ litres }) => isWithinRange(end === 'bottles' ? BOTTLES : CASKS, litres));
  const at = rest.quantities.find(({ number, unit, dimension }) => (unit === undefined || dimension === 'percent' || dimension === 'strength') && isWithinRange(STRENGTHS, number));
  if (!(isPerLand && (area || /acre|hectare/i.test(text))) && !start && !isYear) return undefined;
  const washAt = end === 'wash' ? quantities.find(({ number, dimension, unit }) => (dimension === 'percent' || dimension === 'strength' || unit === undefined) && isWithinRange(WASHES, number)) : undefined;
  if (washAt) taken(washAt, used);
  if (!yielded && !share && !isPerLand && !washAt) return undefined;
  if (quantities.some((each) => !used.has(each) && each !== at && !(each.dimension === 'volume' && sized) && each.unit !== 'years')) return undefined;
  if (quantities.some(({ unit }) => unit === 'years')) return undefined;

  const words: string[] = [];
  const barleyPerMalt = share ? 100 / share.number : line.barley.mass / line.malt.mass;
  const isBarley = start && /^\s*(?:of\s+)?(?:\w+\s+)?(?:barley|grain)/i.test(textBehind(text, start));
  let step: Step = start && !isPerLand ? (isBarley ? 'barley' : 'malt') : isPerLand ? 'land' : 'malt';
  let amount: number;
  if (step === 'land') {
    const ofOne = inCore(perLand!, 'mass')! / 1000;
    amount = ofOne * (area && area.number !== 1 ? area.number : 1);
    words.push(`${area ? numberText(area.number) : 'one'} × ${formatWorking(ofOne)} t = ${formatNumber(amount, amount % 1 === 0 ? 0 : 2)} t of barley`);
    step = 'barley';
  } else {
    const each = start ? inCore(start, 'mass')! / 1000 : line.pace.tonnesPerMash;
    const times = mashes ? mashes.number * (isYear ? (weeks?.number ?? house.weeksPerYear) : 1) : 1;
    amount = each * times;
    words.push(times === 1 ? `${formatWorking(each)} t` : `${numberText(mashes!.number)}${isYear ? ` × ${numberText(weeks?.number ?? house.weeksPerYear)}` : ''} × ${formatWorking(each)} t = ${formatNumber(amount, amount % 1 === 0 ? 0 : 1)} t`);
  }
  if (step === 'barley') {
    amount /= barleyPerMalt;
    words.push(`${share ? `× ${formatWorking(share.number)} %` : `÷ ${formatNumber(barleyPerMalt, 3)}`} = ${formatNumber(amount, 2)} t of malt`);
    step = 'malt';
  }
  const place = { at: 'distilling/check/#figures-to-know', place: 'Distilling: figures to know' };
  if (end === 'malt') return { says: `About ${formatNumber(amount, 2)} t of malt.`, sum: words.join('; '), ...place, paths: [] };
  const each = yielded?.number ?? line.heart.alcohol / line.pace.tonnesPerMash;
  const alcohol = amount * each;
  words.push(`× ${numberText(each)} L a tonne = ${resultInWords(alcohol, 'alcohol')}`);
  const paths = yielded ? [] : ['heart.alcohol'];
  const ours = isYear && yielded ? `; ours are ${resultInWords(line.heart.alcohol * line.pace.mashesPerYear, 'alcohol')} a year` : yielded ? '' : ', at our own yield';
  if (end === 'alcohol') return { says: `About ${isYear ? `${formatNumber(alcohol, 0)}\u00a0L of pure alcohol` : resultInWords(alcohol, 'alcohol')}${isYear ? ` from ${numberText(mashes.number * (weeks?.number ?? house.weeksPerYear))} mashes a year` : ''}${ours}.`, sum: words.join('; '), ...place, paths };
  if (end === 'wash') {
    const strong = washAt?.number ?? line.wash.strength;
    words.push(`÷ ${formatWorking(strong)} %`);
    return { says: `About ${resultInWords(alcohol / (strong / 100), 'volume20')} of wash at ${resultInWords(strong, 'strength')}, a little more for what the stills leave, and ${resultInWords(alcohol, 'alcohol')} from it${ours}.`, sum: words.join('; '), ...place, paths };
  }
  if (end === 'bottles' && !yielded && !at && !sized) {
    const bottles = (1000 * amount * line.bottling.bottles) / line.malt.mass;
    return { says: `About ${formatNumber(bottles, 0)} of our bottles, after the years in wood; ${resultInWords(alcohol, 'alcohol')} as new spirit.`, sum: words.join('; '), ...place, paths: ['bottling.bottles'] };
  }
  if (end === 'bottles') {
    const [size, strong] = [sized?.litres ?? house.bottleSize / 100, at?.number ?? line.bottling.strength];
    const bottles = Math.floor(alcohol / ((size * strong) / 100) + 1e-9);
    words.push(`÷ (${formatNumber(size, 2)} L × ${formatWorking(strong)} %)`);
    return { says: `About ${formatNumber(bottles, 0)} bottles of ${formatNumber(100 * size, 0)} cL at ${resultInWords(strong, 'strength')}, if none is lost on the way: ${resultInWords(alcohol, 'alcohol')}${ours}.`, sum: words.join('; '), at: 'sums/casks-and-bottles/', place: 'Casks and bottles', paths };
  }
  const size = sized?.litres ?? namedCask({ text, quantities: [] })?.litres ?? line.casks.meanSize;
  const strong = at?.number ?? house.fillingStrength;
  const litres = alcohol / (strong / 100);
  const full = Math.floor(litres / size + 1e-9);
  words.push(`÷ ${numberText(strong)} % ÷ ${numberText(size)} L`);
  return {
    says: `${formatNumber(full, 0)} full casks of ${resultInWords(size, 'volume20')}, and about ${resultInWords(litres - full * size, 'volume20')} over: ${resultInWords(litres, 'volume20')} at ${resultInWords(strong, 'strength')}${ours}.`,
    sum: words.join('; '),
    at: 'sums/fill-casks/',
    place: 'Fill the casks you have',
    paths,
  };
}; // prettier-ignore
