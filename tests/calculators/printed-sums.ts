// The sums printed in a working, read as a learner with paper reads them: "1,500 × 77.5 ÷ 100 = 1,163".

export interface PrintedSum {
  readonly text: string;
  /** What the printed numbers make. */
  readonly makes: number;
  readonly printed: number;
  /** Half a unit of the last digit printed. */
  readonly half: number;
}

const NUMBER = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?|^\d+(?:\.\d+)?/;
const UNIT =
  /^(?:L pure alcohol|of pure alcohol|casks|bottles|degrees|°C|% vol|% mass|kg|m³|min|MJ|kJ|kWh|ha|L|h|K|g|t|%)(?![A-Za-z/])/;

/** A reader of one sum, from the left; `undefined` where the text is no sum. */
class Reader {
  private at = 0;
  operations = 0;
  private readonly text: string;
  constructor(text: string) {
    this.text = text;
  }
  private skip() {
    while (this.text[this.at] === ' ' || this.text[this.at] === '\u00a0' || this.text[this.at] === '\u202f')
      this.at++;
  }
  private take(what: string): boolean {
    this.skip();
    if (!this.text.startsWith(what, this.at)) return false;
    this.at += what.length;
    return true;
  }
  whole(): number | undefined {
    const value = this.sum();
    this.skip();
    return this.at === this.text.length ? value : undefined;
  }
  private sum(): number | undefined {
    let value = this.product();
    for (;;) {
      if (value === undefined) return undefined;
      const sign = this.take('+') ? 1 : this.take('−') ? -1 : 0;
      if (sign === 0) return value;
      this.operations++;
      const next = this.product();
      value = next === undefined ? undefined : value + sign * next;
    }
  }
  private product(): number | undefined {
    let value = this.power();
    for (;;) {
      if (value === undefined) return undefined;
      const times = this.take('×');
      if (!times && !this.take('÷')) return value;
      this.operations++;
      const next = this.power();
      if (next === undefined) return undefined;
      value = times ? value * next : value / next;
    }
  }
  private power(): number | undefined {
    const base = this.atom();
    if (base === undefined) return undefined;
    const exponent = this.take('²') ? 2 : this.take('³') ? 3 : undefined;
    if (exponent !== undefined) return base ** exponent;
    if (!this.take('to the power')) return base;
    this.operations++;
    if (this.take('⅓')) return base ** (1 / 3);
    const to = this.atom();
    return to === undefined ? undefined : base ** to;
  }
  private atom(): number | undefined {
    if (this.take('−')) {
      const value = this.atom();
      return value === undefined ? undefined : -value;
    }
    if (this.take('π')) return Math.PI;
    for (const [name, of] of [
      ['ln', Math.log],
      ['exp', Math.exp],
    ] as const)
      if (this.take(`${name}(`)) {
        this.at--;
        this.operations++;
        const value = this.atom();
        return value === undefined ? undefined : of(value);
      }
    if (this.take('(')) {
      const value = this.sum();
      return this.take(')') ? value : undefined;
    }
    this.skip();
    const found = NUMBER.exec(this.text.slice(this.at))?.[0];
    if (found === undefined) return undefined;
    this.at += found.length;
    this.skip();
    this.at += UNIT.exec(this.text.slice(this.at))?.[0].length ?? 0;
    return Number(found.replaceAll(',', ''));
  }
}

/** The longest sum that ends a text, and how many operations it has. */
function sumAtEnd(text: string): { text: string; value: number; operations: number } | undefined {
  for (let from = 0; from < text.length; from++) {
    if (from > 0 && /[\d.,(²³]/.test(text[from - 1]!) && /[\d.,]/.test(text[from]!)) continue;
    const tail = text.slice(from).trim();
    const reader = new Reader(tail);
    const value = reader.whole();
    if (value !== undefined) return { text: tail, value, operations: reader.operations };
  }
  return undefined;
}

/** Every sum of a printed line: numbers with signs between them, then "=", then what they make. */
export function printedSums(line: string): readonly PrintedSum[] {
  const parts = line.split('=');
  return parts.slice(1).flatMap((right, i) => {
    const answer = /^\s*([−+]?)(\d{1,3}(?:,\d{3})+(?:\.\d+)?|\d+(?:\.\d+)?)/.exec(right);
    const rest = answer ? right.slice(answer[0].length) : '';
    // A right side that is itself a sum is a rule written out, and is checked with its own "=".
    if (!answer || /^\s*(?:[×÷+−]|to the power)/.test(rest.replace(/^\s*(?:L|kg|%|g)\b/, ''))) return [];
    const left = sumAtEnd(parts[i]!);
    if (!left || left.operations === 0) return [];
    const printed = Number(answer[2]!.replaceAll(',', '')) * (answer[1] === '−' ? -1 : 1);
    const decimals = answer[2]!.split('.')[1]?.length ?? 0;
    return [
      { text: `${left.text} = ${answer[0].trim()}`, makes: left.value, printed, half: 0.5 * 10 ** -decimals },
    ];
  });
}
