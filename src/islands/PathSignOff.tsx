// The sheet that a trainer signs: the standard, when each part of it was reached, and what the sheet does not prove.
import { For } from 'solid-js';
import { bookStamp } from '../house/book.ts';
import type { PathStage } from '../path/steps.ts';
import type { StageStanding } from '../path/standing-of.ts';
import { stageTitle } from './path-says.ts';
import { dateInWords } from './today.ts';

export function PathSignOff(props: {
  readonly stage: PathStage;
  readonly standing: StageStanding;
  readonly names: Readonly<Record<string, string>>;
  readonly name: string;
  readonly tasks: readonly { readonly says: string; readonly day: string | undefined }[];
}) {
  const day = (text: string | undefined) => (text === undefined ? 'not yet' : dateInWords(text));
  return (
    <section class="paper sign-off" aria-hidden="true">
      <h2>Sign-off: {stageTitle(props.stage.stage)}</h2>
      <p>Trainee: {props.name || '…………………………………………'}</p>
      <p>{props.stage.goal}</p>
      <table>
        <caption>Right twice in practice, at least a day apart</caption>
        <thead>
          <tr>
            <th scope="col">Asked</th>
            <th scope="col">Reached</th>
            <th scope="col">Trainer asked it again</th>
          </tr>
        </thead>
        <tbody>
          <For each={props.standing.kinds}>
            {(each) => (
              <tr>
                <th scope="row">{props.names[each.kind]}</th>
                <td>{day(each.reached)}</td>
                <td />
              </tr>
            )}
          </For>
          <For each={props.tasks}>
            {(task) => (
              <tr>
                <th scope="row">{task.says}</th>
                <td>{task.day === undefined ? 'not yet' : `marked ${dateInWords(task.day)}`}</td>
                <td />
              </tr>
            )}
          </For>
        </tbody>
      </table>
      <p>
        {props.standing.day === undefined
          ? 'The standard is not reached yet.'
          : `The standard was reached on ${dateInWords(props.standing.day)}.`}
      </p>
      <p class="small">
        This sheet shows what was answered in the handbook, as this browser kept it, and what a trainer saw.
        It is no permit, licence or authorisation, and does not show that anyone may work alone. The site’s
        own authorisation and local rules come first. {`Book ${bookStamp}.`}
      </p>
      <div class="signatures">
        <p>Trainee, signature and date</p>
        <p>Trainer, name, signature and date</p>
      </div>
    </section>
  );
}
