// Questions of a trainer's own: written in a form, every draw tried, kept in a bank, shared as a file.
import { createSignal, For, onMount, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { keepTogether } from '../core/keep-together.ts';
import { draw } from '../exercises/draw.ts';
import { bankText, LONGEST_BANK, readBank, withQuestions } from '../exercises/own/bank-file.ts';
import { draftOf, freshDraft, questionOf, type Draft } from '../exercises/own/draft.ts';
import type { WrittenDraft } from '../exercises/own/draft-text.ts';
import { kindOfOwnQuestion } from '../exercises/own/own-kind.ts';
import type { OwnQuestion } from '../exercises/own/own-question.ts';
import { proofOfQuestion, type Proof } from '../exercises/own/proof.ts';
import { isChoiceQuestion, isNumberQuestion, type Question } from '../exercises/question.ts';
import { topicTitles } from '../exercises/topics.ts';
import { allowedBy, answerInWords } from '../exercises/wording.ts';
import { builtInHouse } from '../house/figures.ts';
import { focusAfter } from './focus-after.ts';
import { Lettered } from './PaperQuestion.tsx';
import { TextFileField } from './TextFileField.tsx';
import { keepBank, keptBank } from './own-kept.ts';
import { isWrittenKey, keepWritten, keptWritten } from './own-written-kept.ts';
import { OwnQuestionForm } from './OwnQuestionForm.tsx';
import { saveFile } from './save-file.ts';
import { useWayBack } from './use-way-back.tsx';
import { Working } from './Working.tsx';

const MOST_TRIES = 12; // draws, until two differ
const NOT_KEPT = 'This browser does not keep your questions: save them to a file.';
const freshId = (place = 0) => `own-${Date.now().toString(36)}${place.toString(36)}`;

export default function OwnQuestionDesk() {
  const [draft, setDraft] = createSignal<Draft>(freshDraft);
  const [editing, setEditing] = createSignal<string>();
  const [bank, setBank] = createSignal<readonly OwnQuestion[]>([]);
  const [tried, setTried] = createSignal<{
    readonly of: Draft;
    readonly proof: Proof;
    readonly question?: OwnQuestion;
  }>();
  const [examples, setExamples] = createSignal<readonly Question[]>([]);
  const { say, Said, saying } = useWayBack();
  let draws = 0;
  let finding: HTMLDivElement | undefined;
  let form: HTMLHeadingElement | undefined;

  onMount(() => {
    const kept = keptBank();
    setBank(kept.all);
    if (kept.problem) say(kept.problem);
    setWritten(keptWritten());
    addEventListener('storage', ({ key }) => {
      setBank(keptBank().all);
      if (isWrittenKey(key)) setWritten(keptWritten());
    });
  });
  const setWritten = (written: WrittenDraft | undefined) => {
    if (!written) return;
    setEditing(written.editing);
    setDraft(written.draft);
  };
  /** Puts a form on the desk and keeps it; `of` is the question of the bank that it changes. */
  const write = (next: Draft, of: string | undefined) => {
    setEditing(of);
    setDraft(next);
    if (!keepWritten({ draft: next, editing: of })) say('This browser does not keep what you write: keep it in your bank, and save that to a file.'); // prettier-ignore
  };
  const isFresh = () => editing() === undefined && JSON.stringify(draft()) === JSON.stringify(freshDraft);
  /** Keeps the bank as it has become, and says what was done, with the way back where there is one. */
  const take = (next: readonly OwnQuestion[], sentence: string, back?: () => string) => {
    setBank(next);
    if (keepBank(next)) say(sentence, back);
    else say(NOT_KEPT);
  };
  /** Takes what stands in the form away for something else; what it returns puts it back. */
  const replaceForm = (next: Draft, of: string | undefined): (() => string) | undefined => {
    const [before, was, isLost] = [draft(), editing(), !isFresh()];
    write(next, of);
    setTried(undefined);
    setExamples([]);
    const back = () => {
      write(before, was);
      return 'What stood in the form is back.';
    };
    return isLost ? back : undefined;
  };
  const remove = (question: OwnQuestion, event: Event) => {
    const all = keptBank().all;
    const place = all.findIndex(({ id }) => id === question.id);
    take(
      all.filter(({ id }) => id !== question.id),
      `“${question.title}” is removed.`,
      () => {
        const next = keptBank().all.toSpliced(place, 0, question);
        setBank(next);
        return keepBank(next) ? `“${question.title}” is back in your bank.` : NOT_KEPT;
      },
    );
    focusAfter(event, saying);
  };
  /** Draws two that differ, for whoever wrote it to judge; one where it has no other. */
  const work = (of: OwnQuestion) => {
    const found = new Map<string, Question>();
    for (let tries = 0; tries < MOST_TRIES && found.size < 2; tries++) {
      const question = draw(kindOfOwnQuestion(of), `example/${++draws}`, builtInHouse)?.question;
      if (question) found.set(`${question.prompt} ${answerInWords(question)}`, question);
    }
    setExamples([...found.values()]);
  };
  const tryAll = () => {
    const of = draft();
    const question = questionOf(of, editing() ?? 'own-draft');
    const proof = typeof question === 'string' ? { isSound: false, tried: 0, leftOut: 0, says: [question], doubts: [] } : proofOfQuestion(question); // prettier-ignore
    setTried({ of, proof, ...(typeof question === 'string' ? {} : { question }) });
    setExamples([]);
    if (proof.isSound) work(question as OwnQuestion);
    return proof.isSound;
  };
  const isTried = () => tried()?.of === draft();
  const keep = (event: Event) => {
    if (!tryAll()) return void focusAfter(event, () => finding);
    const question = { ...tried()!.question!, id: freshId() };
    const { doubts } = tried()!.proof;
    const others = keptBank().all.filter(({ id }) => id !== editing());
    take([...others, question], `“${question.title}” is in your bank. You find it under “my own questions” on the page of your own sheet.${doubts.length > 0 ? ` Is this meant? ${doubts.join(' ')}` : ''}`); // prettier-ignore
    replaceForm(freshDraft, undefined);
    focusAfter(event, saying);
  };
  const edit = (question: OwnQuestion, event: Event) => {
    const back = replaceForm(draftOf(question), question.id);
    say(
      `“${question.title}” stands in the form. Sheets that ask it already go on asking it as it was.`,
      back,
    );
    focusAfter(event, () => form);
  };
  const open = (text: string, file: string) => {
    const read = readBank(text);
    if (typeof read === 'string') return void say(read);
    const unsound = read.filter((each) => !proofOfQuestion(each).isSound);
    const fit = read.filter((each) => !unsound.includes(each));
    const before = keptBank().all;
    const next = withQuestions(before, fit, freshId);
    take(
      next,
      `${next.length - before.length} of ${read.length} questions of ${file} are new and in your bank.${unsound.length > 0 ? ` Not taken, as they are not sound: ${unsound.map(({ title }) => `“${title}”`).join(', ')}.` : ''}`,
    );
  };

  return (
    <>
      <section class="calculator sheet-desk" aria-labelledby="own-q-head">
        <h2 id="own-q-head" tabindex="-1" ref={form}>
          {editing() === undefined ? 'Write a question' : 'Change a question'}
        </h2>
        <OwnQuestionForm draft={draft()} change={(part) => write({ ...draft(), ...part }, editing())} />
        <p class="actions">
          <button type="button" onClick={() => void tryAll()}>
            Try every draw
          </button>
          <button type="button" onClick={keep}>
            Keep it in my bank
          </button>
          <button
            type="button"
            disabled={isFresh()}
            onClick={(event) => {
              say('The form is empty.', replaceForm(freshDraft, undefined));
              focusAfter(event, () => form);
            }}
          >
            Empty the form
          </button>
        </p>
        <div class="own-finding" role="status" tabindex="-1" ref={finding}>
          <Show when={isTried() && tried()}>
            {(now) => (
              <>
                <p class={now().proof.isSound ? 'verdict' : 'problem'}>
                  {now().proof.isSound
                    ? `${now().proof.tried === 1 ? 'Its one draw holds together.' : `Every draw holds together: ${formatNumber(now().proof.tried, 0)} tried.`} Whether the key is right is for you to see: here ${examples().length === 1 ? 'is one draw' : 'are two draws'} worked.`
                    : 'It does not hold together yet.'}
                </p>
                <For each={now().proof.says}>{(each) => <p>{each}</p>}</For>
                <Show when={now().proof.doubts.length > 0}>
                  <p>Is this meant? It can be kept as it is.</p>
                  <For each={now().proof.doubts}>{(each) => <p>{each}</p>}</For>
                </Show>
              </>
            )}
          </Show>
        </div>
        <Show when={isTried() && examples().length > 0}>
          <For each={examples()}>
            {(question) => (
              <div class="own-preview">
                <p class="prompt">{keepTogether(question.prompt)}</p>
                <Show when={isChoiceQuestion(question) && question}>
                  {(choice) => <Lettered of={choice().options.map(({ text }) => text)} />}
                </Show>
                <p>
                  Answer: <b class="number">{answerInWords(question)}</b>{' '}
                  <span class="about">
                    {isNumberQuestion(question) ? `counts as right: ${allowedBy(question)}` : ''}
                  </span>
                </p>
                <Working question={question} />
              </div>
            )}
          </For>
          <p class="actions">
            <button type="button" onClick={() => work(tried()!.question!)}>
              Two other draws
            </button>
          </p>
        </Show>
        <Said id="own-question-said" />
      </section>
      <section aria-labelledby="own-bank-title">
        <h2 id="own-bank-title">Your bank</h2>
        <Show when={bank().length > 0} fallback={<p>No question of your own is kept in this browser yet.</p>}>
          <ul class="own-found">
            <For each={bank()}>
              {(question) => (
                <li>
                  <p>
                    <b>{question.title}</b>{' '}
                    <span class="about">
                      {topicTitles[question.topic]}, level {question.level}
                      {question.rests === '' ? ', no source given' : `, rests on ${question.rests}`}
                    </span>
                  </p>
                  <p class="actions">
                    <button
                      type="button"
                      aria-label={`Change: ${question.title}`}
                      onClick={(event) => edit(question, event)}
                    >
                      Change
                    </button>
                    <button
                      type="button"
                      aria-label={`Remove: ${question.title}`}
                      onClick={(event) => remove(question, event)}
                    >
                      Remove
                    </button>
                  </p>
                </li>
              )}
            </For>
          </ul>
          <p class="actions">
            <button
              type="button"
              onClick={() => {
                saveFile('questions.own.json', bankText(bank()), 'application/json');
                say('The bank is saved as questions.own.json.');
              }}
            >
              Save the bank to a file
            </button>
          </p>
        </Show>
        <TextFileField
          id="own-bank-file"
          label="Take in questions from a file"
          most={LONGEST_BANK}
          what="a file of questions"
          saidBy="own-question-said"
          take={open}
          tell={say}
        />
      </section>
    </>
  );
}
