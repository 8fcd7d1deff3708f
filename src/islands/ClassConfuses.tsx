// What a class confuses: the kinds most missed, six questions on them, and a lesson of ten minutes with a worked example.
import { createEffect, createMemo, createSignal, For, on, Show } from 'solid-js';
import {
  confusions,
  QUESTIONS_ON_MISSED,
  questionsOnMissed,
  kindsTaught,
  tenMinutes,
  resultsUntold,
} from '../exercises/class/confuses.ts';
import type { ClassBook } from '../exercises/class/book.ts';
import { mistakeWords, ownAskedIn, placeAsked, type OwnKnown } from '../exercises/class/own-words.ts';
import { GENERATOR } from '../exercises/draw.ts';
import { askingOwn, settling, type OwnAsked } from '../exercises/own/own-sheet.ts';
import { kindsOf } from '../exercises/kinds/fetched-kinds.ts';
import { passageOf } from '../exercises/passages.ts';
import { formatNumber } from '../core/format.ts';
import { randomId } from './class-kept.ts';
import { ownQuestionsKnown } from './class-own.ts';
import { ownLink } from './own-address.ts';
import { PaperQuestion } from './PaperQuestion.tsx';
import { drawnInSteps } from './use-kinds.ts';

const SHOWN = 8; // kinds that are listed
const READ = 3; // kinds whose passages the lesson names

/** An address of a passage in words: “mashing, how hot the water must be”. */
const placeWords = (at: string) =>
  at
    .replace(/\/work\/#/, ', at work: ')
    .replace(/\/#/, ', ')
    .replace(/\/safe\/$/, ', working safely')
    .replace(/\/$/, '')
    .replaceAll('-', ' ');

interface Lesson {
  readonly of: string;
  readonly six: readonly OwnAsked[];
  readonly example: OwnAsked;
  readonly link: string;
}

export function ClassConfuses(props: { readonly book: ClassBook; readonly list: string }) {
  const kinds = createMemo(() => new Map(kindsOf(props.list).map((kind) => [kind.id, kind])));
  const [lesson, setLesson] = createSignal<Lesson>();
  const [said, setSaid] = createSignal('');
  const missed = createMemo(() => confusions(props.book));
  /** Those that a sheet can still draw: what keeps people safe first. Where nothing was missed, what was left blank. */
  const taught = createMemo(() => {
    const wrong = missed().filter(({ missed }) => missed > 0);
    const ids = (wrong.length > 0 ? wrong : missed()).map(({ kind }) => kind);
    return kindsTaught(ids.filter((id) => kinds().has(id) && kinds().get(id)!.until === undefined), (id) => kinds().get(id)!.topic === 'safety'); // prettier-ignore
  });
  const [own, setOwn] = createSignal<OwnKnown>(new Map());
  createEffect(on(() => [...ownAskedIn(props.book)].join(), () => void ownQuestionsKnown(props.book).then(setOwn, () => undefined))); // prettier-ignore
  const titleOf = (id: string) =>
    kinds().get(id)?.title ?? own().get(id)?.title ?? placeAsked(props.book, id);
  /** The passages of the first kinds, each once. */
  const passages = () => {
    const found = new Map<string, string[]>();
    for (const id of taught().slice(0, READ)) {
      const at = passageOf(id, kinds().get(id)?.topic);
      if (at !== undefined) found.set(at, [...(found.get(at) ?? []), id]);
    }
    return [...found];
  };
  const make = async () => {
    setSaid('The six questions are being drawn …');
    const of = taught();
    const draw = async (ids: readonly string[]) => {
      const made = await drawnInSteps(settling(questionsOnMissed(ids, GENERATOR, randomId()), kinds()), []);
      const asked = made && (await drawnInSteps(askingOwn(made.sheet, 1, kinds()), []));
      return made && asked && { sheet: made.sheet, asked };
    };
    const [six, example] = [await draw(of), await draw(of.slice(0, 1))];
    if (!six || !example || six.asked.length === 0) return void setSaid('A part of the book did not come; load the page again.'); // prettier-ignore
    setLesson({ of: of.join(), six: six.asked, example: example.asked[0]!, link: `../sheet/own/${await ownLink(six.sheet)}` }); // prettier-ignore
    setSaid('The lesson is below.');
  };

  return (
    <section class="calculator class-part" aria-labelledby="class-confuses">
      <h2 id="class-confuses">What the class confuses</h2>
      <Show when={resultsUntold(props.book) > 0}>
        <p class="remark">
          {resultsUntold(props.book)} results are of sheets whose links are not in the book, so it is not
          known what they asked.
        </p>
      </Show>
      <Show
        when={missed().length > 0}
        fallback={<p>Nothing is known to be missed. It is read from the result codes of sheets whose links are in the book.</p>} // prettier-ignore
      >
        <div class="table" tabindex="0" role="group" aria-label="What was missed most">
          <table>
            <thead>
              <tr>
                <th scope="col">Kind of question</th>
                <th scope="col">Points missed</th>
                <th scope="col">By whom</th>
                <th scope="col">Left blank</th>
                <th scope="col">Mistakes that were recognised</th>
              </tr>
            </thead>
            <tbody>
              <For each={missed().slice(0, SHOWN)}>
                {(each) => (
                  <tr>
                    <th scope="row">{titleOf(each.kind)}</th>
                    <td class="number">
                      {formatNumber(each.missed, each.missed % 1 === 0 ? 0 : 1)} of {each.asked}
                    </td>
                    <td>{each.people.join(', ')}</td>
                    <td>{each.blank === 0 ? '' : `${each.blank}: ${each.blankBy.join(', ')}`}</td>
                    <td>
                      {each.families
                        .map(([family, times]) => `${mistakeWords(each.kind, family, own())} (${times})`)
                        .join('; ')}
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
        </div>
        <p class="small">
          {missed().length > SHOWN ? `The first ${SHOWN} of ${missed().length} kinds. ` : ''}
          What was left blank is told beside the points, and is not counted in them.
        </p>
        <Show when={taught().length > 0}>
          <p class="actions screen-only">
            <button type="button" onClick={() => void make()}>
              Draw six questions and a ten-minute lesson
            </button>
            <a href={`../practice/#kinds=${taught().join(',')}`}>Practice of these kinds alone</a>
          </p>
          <p role="status">{said()}</p>
        </Show>
        <Show when={lesson()?.of === taught().join() && lesson()}>
          {(now) => (
            <div class="class-lesson">
              <h3>Ten minutes on: {taught().slice(0, READ).map(titleOf).join('; ')}</h3>
              <ol class="class-minutes">
                <For each={tenMinutes}>
                  {([from, to, does]) => (
                    <li>
                      <b>
                        {from}–{to} min
                      </b>{' '}
                      {does}
                    </li>
                  )}
                </For>
              </ol>
              <p>
                In the book:{' '}
                <For each={passages()}>
                  {([at, of], i) => (
                    <>
                      {i() > 0 ? '; ' : ''}
                      <a href={`../${at}`}>{placeWords(at)}</a> for{' '}
                      {of.map((id) => titleOf(id).toLowerCase()).join(' and ')}
                    </>
                  )}
                </For>
                .
              </p>
              <h4>The example</h4>
              <PaperQuestion question={now().example.question} part="answers" />
              <h4>Six questions</h4>
              <p class="small">
                {taught().length < QUESTIONS_ON_MISSED ? 'One of each kind first' : 'One of each kind'}, what
                keeps people safe before the rest.
              </p>
              <p class="screen-only">
                <a href={now().link}>Open them as a sheet</a>: its address is the link for the class.
              </p>
              <ol class="questions">
                <For each={now().six}>
                  {({ question }) => (
                    <li>
                      <PaperQuestion question={question} part="questions" />
                    </li>
                  )}
                </For>
              </ol>
            </div>
          )}
        </Show>
      </Show>
    </section>
  );
}
