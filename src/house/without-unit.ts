// The number of a printed figure without its unit, for a column whose head names the unit.

/** "591.3 L pure alcohol" becomes "591.3". */
export function withoutUnit(text: string): string {
  return text.replace(/(?<=\d)[\s\u00a0\u202f].*$/u, '');
}
