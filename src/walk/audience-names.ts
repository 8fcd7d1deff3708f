// What those who come and their units are called, and what is left out for them.
import { isForAudience, type Coming, type AudienceMark, type SaidIn } from './audience-kinds.ts';

/** Those who may come. */
export const comers: Readonly<Record<Coming, string>> = {
  children: 'Children',
  chemist: 'A chemist',
  trade: 'Trade visitors',
  us: 'US visitors',
};

/** Units and ways of writing. */
export const sayings: Readonly<Record<SaidIn, string>> = {
  metric: 'Litres, kilograms and °C',
  American: 'US gallons, pounds, °F and proof',
  imperial: 'Imperial gallons, pounds and °F',
  European: 'Metric, written 1.234,5',
  Japanese: 'Metric, written 1万2345',
};

/** How many pieces are left out for their mark, in a sentence; nothing where there are none. */
export function leftOutFor(
  pieces: readonly { readonly whom?: AudienceMark }[],
  coming?: Coming,
): string | undefined {
  const many = pieces.filter(({ whom }) => !isForAudience(whom, coming)).length;
  if (many === 0) return undefined;
  const whom = coming === undefined ? 'is told only to some' : coming === 'children' ? 'is not for children' : 'is for others'; // prettier-ignore
  return many === 1
    ? `One piece ${whom}, and stays out.`
    : `${many} pieces ${whom.replace(/^is/, 'are')}, and stay out.`;
}
