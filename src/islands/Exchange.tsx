// A sheet for other systems: packages of the open standard QTI, all versions in one click, or a table for a spreadsheet.
import { createSignal } from 'solid-js';
import { questionsTable, type SheetVersion } from '../exercises/exchange/questions-csv.ts';
import type { Standard } from '../exercises/qti/package.ts';
import { saveFile } from './save-file.ts';
import { Tick } from './Tick.tsx';

export interface ExchangeProps {
  /** What tells the sheet from others, its title, and the generator that drew it. */
  readonly mark: () => string;
  readonly title: string;
  readonly generator: number;
  /** The version on the page, and how many there are. */
  readonly shown: number;
  readonly versions: number;
  /** Draws versions; undefined, and it is said why, where they cannot be drawn. */
  readonly load: (versions: readonly number[]) => Promise<readonly SheetVersion[] | undefined>;
}

export function Exchange(props: ExchangeProps) {
  const [all, setAll] = createSignal(true);
  const [half, setHalf] = createSignal(true);
  const [working, setWorking] = createSignal(true);
  const [comma, setComma] = createSignal(false);
  const [said, setSaid] = createSignal('');

  const save = async (as: Standard | 'table') => {
    setSaid('');
    const wanted = all() ? Array.from({ length: props.versions }, (_, i) => i + 1) : [props.shown];
    const made = await props.load(wanted);
    if (!made) return void setSaid('The sheet could not be drawn; load the page again.');
    const name = `sheet-${props.mark()}-${made.length === 1 ? `version-${made[0]!.version}` : `${made.length}-versions`}`;
    if (as === 'table') {
      saveFile(`${name}.csv`, questionsTable(made, { working: working(), comma: comma() }), 'text/csv;charset=utf-8');
      return void setSaid(`${name}.csv is saved, keys and bounds and all: it is the trainer’s.`);
    }
    const parts = await Promise.all([import('./zip.ts'), import('../exercises/qti/package.ts')]).catch(() => undefined);
    if (!parts) return void setSaid('A part of the book did not come; load the page again.');
    const [{ strToU8, zipSync }, { qtiPackage }] = parts;
    const packed = ({ version, questions, marks }: SheetVersion) =>
      zipSync(
        Object.fromEntries(
          Object.entries(
            qtiPackage(questions, {
              sheet: `${props.mark()}-version-${version}`,
              title: `${props.title}, version ${version}`,
              version: String(props.generator),
              standard: as,
              rules: { half: half(), working: working(), comma: comma() },
              ...(marks && { marks }),
            }),
          ).map(([path, text]) => [path, strToU8(text)]),
        ),
      );
    const file = `${name}.qti${as === '2.1' ? '21' : ''}.zip`;
    const bytes =
      made.length === 1
        ? packed(made[0]!)
        : zipSync(
            Object.fromEntries(made.map((each) => [`version-${each.version}.zip`, packed(each)])),
            { level: 0 },
          );
    saveFile(file, bytes, 'application/zip');
    setSaid(
      made.length === 1
        ? `${file} is saved: one package, to be taken in as it is.`
        : `${file} is saved: unpack it, and take in the package of each version.`,
    );
  };

  return (
    <>
      <form class="choices" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <Tick checked={all()} take={setAll}>
          {`All ${props.versions} versions; without it, version ${props.shown} alone`}
        </Tick>
        <Tick checked={half()} take={setHalf}>
          Half marks for a number that is rounded too far
        </Tick>
        <Tick checked={working()} take={setWorking}>
          With the working
        </Tick>
        <Tick checked={comma()} take={setComma}>
          Answers and tables with a decimal comma
        </Tick>
      </form>
      <p class="actions">
        <button type="button" onClick={() => void save('3.0')}>
          Save as QTI 3.0
        </button>
        <button type="button" onClick={() => void save('2.1')}>
          Save as QTI 2.1
        </button>
        <button type="button" onClick={() => void save('table')}>
          Save the questions as a table
        </button>
      </p>
      <p class="meaning">
        QTI is an open standard of 1EdTech. In it a number is typed as the system reads numbers, so choose the comma
        only where yours takes one. The prompts keep their points. Marks for a wrong unit are not in it: the unit stands beside the field.
      </p>
      <p role="status">{said()}</p>
    </>
  );
} // prettier-ignore
