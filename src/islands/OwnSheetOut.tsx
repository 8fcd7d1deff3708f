// How a trainer's own sheet goes out: as a link, a file, a sealed sheet, on paper, to each trainee, to another system.
import { createEffect, createSignal, lazy, on, Show } from 'solid-js';
import type { OwnAsked, OwnSheet } from '../exercises/own/own-sheet.ts';
import { ownSheetText } from '../exercises/own/own-text.ts';
import { newsOf } from '../exercises/sheet-news.ts';
import { copyAddress } from './copy-address.ts';
import { ExchangeFold } from './ExchangeFold.tsx';
import { fileNameOf } from './file-name.ts';
import { HandOutFold } from './HandOutFold.tsx';
import { isOwnLinkTooLong, ownLink } from './own-address.ts';
import type { DrawnOwnSheet } from './own-sheet-drawn.ts';
import type { PrintedPart } from './PaperQuestion.tsx';
import { PrintButtons, usePrintedVersions } from './print-versions.tsx';
import { saveFile } from './save-file.ts';
import { rememberSheet } from './sheets-set.ts';
import { today } from './today.ts';

// What only a sheet with questions needs comes with the first of them.
const OwnPaper = lazy(() => import('./OwnPaper.tsx').then((part) => ({ default: part.OwnPaper })));

/** What a sheet's buttons do, `say`ing how it went; its buttons and folds, and the paper that is printed. */
export function useOwnSheetOut(desk: DrawnOwnSheet, said: () => string, say: (sentence: string) => void) {
  const { sheet, shown, settled, isSettled, versionsOf, mark, numbers } = desk;
  const { print, Printed } = usePrintedVersions<readonly OwnAsked[]>();
  const [toSeal, setToSeal] = createSignal(''); // the end of the address under which the sheet is sealed
  createEffect(
    on(settled, (now) => {
      setToSeal('');
      const link = now && (now.evenness?.missing.length ?? 0) === 0 ? ownLink(now.sheet) : undefined;
      void link?.then((made) => settled() === now && !isOwnLinkTooLong(made) && setToSeal(made));
    }),
  );

  /** The sheet as it goes out; nothing, and a sentence, while a question of it cannot be drawn. */
  const whole = (): OwnSheet | undefined => {
    if (!isSettled()) return void say('The sheet is still being drawn; try again in a moment.');
    if ((settled()!.evenness?.missing.length ?? 0) > 0) return void say('One of the questions cannot be drawn for this house: swap it or take it out first.'); // prettier-ignore
    return settled()!.sheet;
  };
  /** The address of the sheet for trainees, which is remembered; nothing, and a sentence, where there is none. */
  const addressOut = async (): Promise<string | undefined> => {
    const made = whole();
    if (!made) return undefined;
    const link = await ownLink(made);
    if (isOwnLinkTooLong(link)) return void say('This sheet is too long for a link: save it to a file, which the trainee opens.'); // prettier-ignore
    rememberSheet({
      mark: mark(),
      title: made.title || 'A sheet',
      address: `sheet/own/${link}`,
      day: today(),
    });
    return `${location.origin}${location.pathname.replace(/sheets\/own\/$/, 'sheet/own/')}${link}`;
  };
  const share = async () => {
    const address = await addressOut();
    if (address !== undefined) say(await copyAddress(address, `The link to sheet ${mark()} is copied, ${address.length} characters. It draws the same ever after; add &version=3 for one version.`)); // prettier-ignore
  };
  const save = () => {
    const made = whole();
    if (!made) return;
    const file = fileNameOf(made.title || 'sheet', 'own');
    saveFile(file, ownSheetText(made), 'application/json');
    say(`Sheet ${mark()} is saved as ${file}.`);
  };
  const toExchange = async (wanted: readonly number[]) => {
    const made = whole();
    const versions = made && (await versionsOf(made, wanted));
    return versions?.map(({ version, asked }) => ({
      version,
      questions: asked.map(({ question }) => question),
      marks: made!.items.map(({ marks }) => marks),
    }));
  };
  const printOut = async (part: PrintedPart) => {
    const made = whole();
    if (!made) return;
    if (!(await OwnPaper.preload().catch(() => undefined)))
      return void say('A part of the book did not come; load the page again, and print then.');
    const versions = await versionsOf(made, numbers());
    if (versions) await print(part, versions.map(({ asked }) => asked), `${made.title || 'Sheet'} (${mark()})`); // prettier-ignore
  };

  const Out = () => (
    <>
      <p class="actions">
        <button type="button" disabled={!isSettled()} onClick={() => void share()}>
          Copy the link for trainees
        </button>
        <button type="button" disabled={!isSettled()} onClick={save}>
          Save it to a file
        </button>
        <Show when={toSeal()}>{(link) => <a href={`../sealed/${link()}`}>Seal this sheet</a>}</Show>
        <PrintButtons
          versions={sheet().versions}
          isReady={isSettled()}
          print={(part) => void printOut(part)}
        />
      </p>
      <HandOutFold
        isReady={isSettled()}
        title={sheet().title || 'A sheet'}
        mark={mark()}
        versions={sheet().versions}
        links={async () => {
          const address = await addressOut();
          return address === undefined ? said() : numbers().map((each) => `${address}&version=${each}`);
        }}
      />
      <ExchangeFold
        isReady={isSettled()}
        mark={mark}
        title={sheet().title || 'A sheet of the Malt Spirit Handbook'}
        generator={sheet().generator}
        shown={shown()}
        versions={sheet().versions}
        load={toExchange}
      />
    </>
  );
  const OnPaper = () => (
    <Printed>
      {(asked, version, part) => (
        <OwnPaper
          part={part}
          sheet={settled()!.sheet}
          asked={asked}
          news={part === 'questions' ? [] : newsOf(sheet(), asked)}
          version={version}
          mark={mark()}
        />
      )}
    </Printed>
  );
  return { Out, OnPaper };
}
