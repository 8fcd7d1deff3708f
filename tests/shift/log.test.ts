// The log of a shift and a shift that is run again: what came of each action, also of a kept one, and the word when it stands.
import { expect, test } from 'vitest';
import type { Acted, Course, Moment } from '../../src/core/shift/course.ts';
import { runAgain, type Again } from '../../src/islands/shift-again.ts';
import { outcomeInLog, logLines } from '../../src/islands/shift-log.ts';

type Action = { readonly do: 'look' | 'turn' | 'climb' };
type State = Moment<'bell', 'climbed'>;
const empty: State = { step: 0, isDone: false, happened: [], wrong: [], readings: [] };
const acts: Record<Action['do'], (state: State) => Acted<State>> = {
  look: (state) => ({ state, says: `Clear at ${state.step}.` }),
  turn: (state) => ({ state: { ...state }, says: 'It turns.' }),
  climb: (state) => ({ state: { ...state, wrong: [{ step: state.step, id: 'climbed' }] }, says: 'No.', isRefused: true }),
}; // prettier-ignore
const course: Course<object, State, Action> = {
  begin: () => empty,
  act: (_, state, action) => acts[action.do](state),
  step: (_, state) => ({ ...state, step: state.step + 1 }),
  longest: 5000,
};
const log = [
  { step: 2, action: { do: 'look' } },
  { step: 2, action: { do: 'turn' } },
  { step: 2, action: { do: 'turn' } },
  { step: 900, action: { do: 'climb' } },
] as const;
const again = (isWanted = () => true) =>
  new Promise<Again<State>>((then) =>
    runAgain({ course, told: [] }, {}, { log, step: 1000 }, isWanted, then),
  );

test('a kept shift is run again to where it stood, in portions, and only then is the word given', async () => {
  let isAwake = false;
  setTimeout(() => (isAwake = true));
  const { state, came } = await again();
  expect(isAwake).toBe(true); // the page had a turn meanwhile
  expect(state.step).toBe(1000);
  expect(came).toEqual(['. Clear at 2.', '.', '.', ': refused.']);
});

test('one that is no longer wanted never gives the word', async () => {
  let isWanted = true;
  const told = Promise.race([again(() => isWanted), new Promise((then) => setTimeout(then, 100, 'nothing'))]);
  isWanted = false;
  expect(await told).toBe('nothing');
});

test('the log says what a look found, what was refused and of several turns the last', async () => {
  const { state, came } = await again();
  const words = { wordsOf: (action: Action) => action.do, turned: ['turn'], told: [], happenings: { bell: 'Bell.' }, whys: { climbed: ['danger', 'Stay down.'] } } as const; // prettier-ignore
  expect(logLines(words, log, came, { ...state, happened: [{ step: 2, id: 'bell' }] })).toEqual([
    { step: 2, text: 'Bell.' },
    { step: 2, text: 'look. Clear at 2.' },
    { step: 2, text: 'turn.' },
    { step: 900, text: 'climb: refused.' },
    { step: 900, text: 'Stay down.' },
  ]);
  expect(outcomeInLog(empty, { state: { ...empty }, says: 'It turns.' }, true)).toBe('. It turns.');
  expect(outcomeInLog(empty, { state: empty, says: '' }, true)).toBe('.');
});
