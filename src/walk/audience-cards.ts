// The figures of a card in the units of those who come, and as they write numbers.
import { formatNumber } from '../core/format.ts';
import type { KindName } from '../core/kinds.ts';
import { lineFor, mashesIn } from '../core/line/ledger.ts';
import type { Line } from '../core/line/line.ts';
import { unitsOf, type Unit } from '../core/units.ts';
import { figureText, figureValue, kindOfFigure } from '../house/prose.ts';
import type { Piece } from '../house/visitor-questions.ts';
import type { SaidIn } from './audience-kinds.ts';
import { inMan } from './japanese.ts';

const units: Partial<Readonly<Record<SaidIn, Partial<Readonly<Record<KindName, string>>>>>> = {
  American: { mass: 'lb', volume: 'US gal', volume20: 'US gal', alcohol: 'US proof gal', temperature: '°F', strength: '° US proof' },
  imperial: { mass: 'lb', volume: 'UK gal', volume20: 'UK gal', temperature: '°F' },
}; // prettier-ignore

/** The unit of a kind for an audience: the handbook's own where they have no other. */
export function unitFor(kind: KindName, saidIn: SaidIn): Unit {
  const own = unitsOf(kind);
  return own.find(({ unit }) => unit === units[saidIn]?.[kind]) ?? own[0]!;
}

const names: Readonly<Record<string, string>> = { 'UK gal': 'imperial gal', '° US proof': 'US proof' };

/** A quantity in a unit of an audience: whole from a hundred on, below it with one decimal. */
export function inTheirs(value: number, unit: Unit): string {
  const many = unit.fromCore(value);
  const number = formatNumber(many, Math.abs(many) >= 100 ? 0 : 1);
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
export function answerFor(answer: readonly Piece[], line: Line, saidIn: SaidIn, told: (path: string) => string): Piece[] {
  return answer.map((piece): Piece => {
    if (typeof piece === 'string') return piece;
    if ('when' in piece) return { ...piece, says: answerFor(piece.says, line, saidIn, told) };
    if ('fact' in piece) return { ...piece, otherwise: answerFor(piece.otherwise, line, saidIn, told) };
    const { figure, per = 'mash', digits } = piece;
    const kind = kindOfFigure(figure)?.kind;
    const unit = kind && unitFor(kind, saidIn);
    const text =
      unit && unit !== unitsOf(kind)[0]
        ? inTheirs(figureValue(lineFor(per, line), figure) * mashesIn(per, line), unit)
        : figureText(line, figure, per, digits);
    return writtenFor(text, saidIn) + told(figure);
  });
} // prettier-ignore
