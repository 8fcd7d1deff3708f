// Powers of ten behind a number: 1.2e6, 1.2 × 10^6, 3.15 x 10¹⁴.

const written = /\s*(?:e|[x×*·]\s*10\s*(?:\^|\*\*)?)\s*(?:([-+−]?\d{1,2})|([⁻⁺]?[⁰¹²³⁴-⁹]{1,2}))(?![\d.,])/iy;
const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * The power of ten at a place of a text, and where it ends.
 * @example powerAt('1.2e6', 3) // { power: 6, end: 5 } (ten to the sixth)
 */
export function powerAt(text: string, at: number): { power: number; end: number } | undefined {
  written.lastIndex = at;
  const found = written.exec(text);
  if (!found) return undefined;
  const plain = [...(found[1] ?? found[2]!)]
    .map((sign) => (raised.includes(sign) ? raised.indexOf(sign) : sign))
    .join('')
    .replace(/[−⁻]/, '-')
    .replace(/[+⁺]/, '');
  return { power: Number(plain), end: at + found[0].length };
}
