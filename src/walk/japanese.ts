// Numbers as they are written in Japanese: 二千五百, 2万9千, ２，５００.

const numerals = '〇一二三四五六七八九';
const small = [[1000, '千'], [100, '百'], [10, '十']] as const; // prettier-ignore
const large = [[1e8, '億'], [1e4, '万']] as const; // prettier-ignore
const WIDE = 0xfee0; // from a narrow figure to its wide one

/** Wide figures, commas, points and letters as narrow ones, each in its place. */
export const narrowed = (text: string): string =>
  text.replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - WIDE));
/** Figures, commas and points as wide ones. */
export const widened = (text: string): string =>
  text.replace(/[\d.,]/g, (narrow) => String.fromCharCode(narrow.charCodeAt(0) + WIDE));

function belowMan(n: number): string {
  let text = '';
  for (const [size, sign] of small) {
    const many = Math.floor(n / size) % 10;
    if (many > 0) text += (many === 1 ? '' : numerals[many]!) + sign;
  }
  return text + (n % 10 === 0 ? '' : numerals[n % 10]!);
}

/** A whole number in kanji. */
export function inKanji(n: number): string {
  for (const [size, sign] of large)
    if (n >= size) return inKanji(Math.floor(n / size)) + sign + (n % size === 0 ? '' : inKanji(n % size));
  return n === 0 ? numerals[0]! : belowMan(n);
}

/** A whole number in figures grouped by ten thousands: 2万9000; below ten thousand plain. */
export function inMan(n: number): string {
  for (const [size, sign] of large)
    if (n >= size) return inMan(Math.floor(n / size)) + sign + (n % size === 0 ? '' : String(n % size));
  return String(n);
}

/** A number in kanji, or in figures with 千, 百 or 万 among them, at the beginning of a text; nothing where there is none. */
export function japaneseAt(text: string): { value: number; end: number } | undefined {
  const found = /^(?:[〇一二三四五六七八九十百千万億]+|\d[\d,.]*(?=[千百万億])[\d,.千百万億]*)/.exec(text)?.[0]; // prettier-ignore
  if (!found) return undefined;
  let [total, group, figure] = [0, 0, ''];
  for (const sign of found.replaceAll(',', '')) {
    const scale = large.find(([, each]) => each === sign)?.[0];
    const size = small.find(([, each]) => each === sign)?.[0];
    if (scale) [total, group, figure] = [total + (group + Number(figure) || 1) * scale, 0, ''];
    else if (size) [group, figure] = [group + (figure === '' ? 1 : Number(figure)) * size, ''];
    else figure += numerals.includes(sign) ? String(numerals.indexOf(sign)) : sign;
  }
  const value = total + group + Number(figure);
  return Number.isFinite(value) ? { value, end: found.length } : undefined;
}

/** What the units of the talk are called behind a number in Japanese. */
export const japaneseUnits: Readonly<Record<string, string>> = { L: 'リットル', kg: 'キロ', t: 'トン', h: '時間', '°C': '度', '%': 'パーセント', '% vol': 'パーセント' }; // prettier-ignore
