// A file of the reader's is opened and read as text, and what came of it is said: below the field, or where `saidBy` names.
import { Show } from 'solid-js';
import { quotedGiven } from '../core/quoted-given.ts';
import { FileField } from './FileField.tsx';
import { textOfFile } from './open-file.ts';

export function TextFileField(props: {
  readonly id: string;
  readonly label: string;
  /** Bytes of a file that is still opened, and what a refusal calls such a file. */
  readonly most: number;
  readonly what: string;
  readonly disabled?: boolean;
  /** What came of it, where it is said below the field. */
  readonly said?: string;
  /** Else the id of the sentence that says it. */
  readonly saidBy?: string;
  /** Takes its text, and the file's name as a sentence may quote it. */
  readonly take: (text: string, name: string) => unknown;
  /** Says why it cannot be read. */
  readonly tell: (problem: string) => void;
}) {
  const sentence = `${props.id}-said`;
  const open = async (file: File | undefined) => {
    if (!file) return;
    const read = await textOfFile(file, props.most, props.what);
    if ('problem' in read) props.tell(read.problem);
    else await props.take(read.text, quotedGiven(file.name));
  };
  const saidBy = () => (props.said === undefined ? props.saidBy : sentence);
  return (
    <>
      <div class="field">
        <FileField
          id={props.id}
          label={props.label}
          accept=".json,application/json"
          disabled={props.disabled ?? false}
          saidBy={saidBy()}
          open={open}
        />
      </div>
      <Show when={props.said !== undefined}>
        <p role="status" id={sentence}>
          {props.said}
        </p>
      </Show>
    </>
  );
}
