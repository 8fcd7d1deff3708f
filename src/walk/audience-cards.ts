// The figures of a card in the units of those who come, and as they write numbers.
import { formatNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { lineFor, mashesIn } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { measures } from '../core/measures.ts';
import { unitsOf, type Unit } from '../core/units.ts';
import { figureText, figureValue, kindOfFigure } from '../house/prose.ts';
import type { AnswerPiece } from '../house/visitor-questions.ts';
import type { SaidIn } from './audience-kinds.ts';
import { inMan } from './japanese.ts';
import { US_PROOF } from './us-proof.ts';

const units: Partial<Readonly<Record<SaidIn, Partial<Readonly<Record<KindName, string>>>>>> = {
  American: { mass: 'lb', volume: 'US gal', volume20: 'US gal', alcohol: 'US proof gal', temperature: '°F' },
  imperial: { mass: 'lb', volume: 'UK gal', volume20: 'UK gal', temperature: '°F' },
}; // prettier-ignore

const sizeOf = (unit: string) => measures.find((each) => each.unit === unit)!.size!;
const TON = sizeOf('US tons') / sizeOf('t'); // tonnes in a US ton of 2,000 lb; NIST Handbook 44, Appendix C
const PROOF_GALLON = sizeOf('US proof gal'); // litres of pure alcohol; 27 CFR 19.1
/** Units that are a visitor's alone: proof as it is said there, twice the strength (27 CFR 5.1), and a yield. */
const theirs: Partial<Readonly<Record<SaidIn, Partial<Readonly<Record<KindName, Unit>>>>>> = {
  American: {
    strength: { unit: '° US proof', digits: 1, fromCore: (value) => value * US_PROOF, toCore: (value) => value / US_PROOF },
    yield: { unit: 'US proof gal/US ton', digits: 0, fromCore: (value) => (value * TON) / PROOF_GALLON, toCore: (value) => (value * PROOF_GALLON) / TON },
  },
}; // prettier-ignore

/** The unit of a kind for an audience: the handbook's own where they have no other. */
export function unitForAudience(kind: KindName, saidIn: SaidIn): Unit {
  const only = theirs[saidIn]?.[kind];
  if (only) return only;
  const own = unitsOf(kind);
  return own.find(({ unit }) => unit === units[saidIn]?.[kind]) ?? own[0]!;
}

const names: Readonly<Record<string, string>> = { 'UK gal': 'imperial gal', '° US proof': 'US proof' };

const [FEW_FIGURES, MOST_FIGURES] = [3, 4];
const LARGE = 1000; // in the book's own unit: from here on its figures have four digits and more
/** A quantity in a unit of an audience, with no more figures than the book's own has: four at most, three below a thousand and of an estimate. */
export function inTheirs(value: number, unit: Unit, isEstimate = false): string {
  const figures = isEstimate || Math.abs(value) < LARGE ? FEW_FIGURES : MOST_FIGURES;
  const many = Number(unit.fromCore(value).toPrecision(figures));
  const isWhole = Math.abs(many) >= 100 || (unit.unit === '° US proof' && many % 1 === 0);
  const number = formatNumber(many, isWhole ? 0 : 1);
  return `${number}\u00a0${(names[unit.unit] ?? unit.unit).replaceAll(' ', '\u00a0')}`;
}

const NUMBER = /\d+(?:,\d{3})*(?:\.\d+)?/g;
/** A text of the handbook with its numbers written as an audience writes them. */
export function writtenFor(text: string, saidIn: SaidIn): string {
  if (saidIn === 'European')
    return text.replace(NUMBER, (number) => number.replace(/[,.]/g, (mark) => (mark === ',' ? '.' : ',')));
  if (saidIn === 'Japanese')
    return text.replace(NUMBER, (number) => {
      const plain = number.replaceAll(',', '');
      return plain.includes('.') ? plain : inMan(Number(plain));
    });
  return text;
}

/** An answer with the figures of the house in it told in the units of an audience. */
export function answerFor(answer: readonly AnswerPiece[], line: Line, saidIn: SaidIn, told: (path: string) => string): AnswerPiece[] {
  return answer.map((piece): AnswerPiece => {
    if (typeof piece === 'string') return piece;
    if ('when' in piece) return { ...piece, says: answerFor(piece.says, line, saidIn, told) };
    if ('fact' in piece) return { ...piece, otherwise: answerFor(piece.otherwise, line, saidIn, told) };
    const { figure, per = 'mash', digits } = piece;
    const kind = kindOfFigure(figure)?.kind;
    const unit = kind && unitForAudience(kind, saidIn);
    const text =
      unit && unit !== unitsOf(kind)[0]
        ? inTheirs(figureValue(lineFor(per, line), figure) * mashesIn(per, line), unit)
        : figureText(line, figure, per, digits);
    return writtenFor(text, saidIn) + told(figure);
  });
} // prettier-ignore
