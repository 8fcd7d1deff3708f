// Sealing a sheet, and the sheets that were sealed in this browser, with the links that are handed out.
import { createEffect, createSignal, For, on, onMount, Show } from 'solid-js';
import {
  onlyVersion,
  readSealed,
  rulesTyped,
  sealedText,
  type SealedRules,
  type SealedSheet,
} from '../exercises/sealed/sealed-sheet.ts';
import type { OwnSheet } from '../exercises/own/own-sheet.ts';
import { pinnedWarning } from '../exercises/own/pinned.ts';
import type { SecretKey } from '../handing/signing.ts';
import { copyAddress } from './copy-address.ts';
import { FileField } from './FileField.tsx';
import { fileNameOf } from './file-name.ts';
import { textOfFile } from './open-file.ts';
import { HandOutFold } from './HandOutFold.tsx';
import { saveFile } from './save-file.ts';
import { isSheetToSeal, isSealedLinkTooLong, LONG_LINK, sealedLink } from './sealed-address.ts';
import type { Sealable } from './sealed-draw.ts';
import { keepSeal, keptSeals } from './seal-kept.ts';
import { dateInWords, today } from './today.ts';

const LONGEST_OWN = 400_000; // bytes of a sheet's file that are read, as own-text.ts has it

interface Made {
  readonly sealed: SealedSheet;
  readonly day: string;
  readonly all: string;
  readonly ones: readonly string[];
  /** Where it stands with its answers, where the key opens it. */
  readonly desk?: string;
}
async function linksOf(sealed: SealedSheet): Promise<Pick<Made, 'all' | 'ones'>> {
  return {
    all: await sealedLink(sealed),
    ones: await Promise.all(sealed.versions.map(({ version }) => sealedLink(onlyVersion(sealed, version)))),
  };
}

function RuleField(props: {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly set: (text: string) => void;
}) {
  return (
    <div class="field">
      <label for={props.id}>{props.label}</label>
      <input
        id={props.id}
        class="words"
        type="text"
        inputmode="numeric"
        maxlength="4"
        autocomplete="off"
        aria-describedby="sealed-said"
        value={props.value}
        onInput={(event) => props.set(event.currentTarget.value)}
      />
    </div>
  );
}

export function SealedMake(props: { readonly key: SecretKey; readonly list: string }) {
  const [said, setSaid] = createSignal('');
  const [address, setAddress] = createSignal('');
  const [title, setTitle] = createSignal('');
  const [chosen, setChosen] = createSignal('');
  const [titles, setTitles] = createSignal<readonly string[]>([]);
  const [minutes, setMinutes] = createSignal('');
  const [passMark, setPassMark] = createSignal('');
  const [about, setAbout] = createSignal<SealedRules & { readonly warning: string }>(); // of the sheet that is chosen
  let asked = 0;
  const [fromFile, setFromFile] = createSignal<OwnSheet>();
  const [made, setMade] = createSignal<Made>();
  const [kept, setKept] = createSignal(keptSeals());
  onMount(async () => {
    if (isSheetToSeal(location.hash)) {
      setAddress(
        location.href.replace(
          /sheets\/sealed\//,
          location.hash.startsWith('#own=') ? 'sheet/own/' : 'sheet/',
        ),
      );
      history.replaceState(null, '', location.pathname); // that address is not sealed, so it stays in nobody’s bar
    }
    const { keptSheets } = await import('./own-kept.ts');
    setTitles(keptSheets().all.flatMap(({ title, notes }) => (notes ? [title] : [])));
  });

  /** Takes a sheet from one place: what the others held is let go. */
  const choose = (from: { title?: string; address?: string; own?: OwnSheet }) => {
    setChosen(from.title ?? '');
    setAddress(from.address ?? '');
    setFromFile(from.own);
  };
  const isChosen = () => chosen() !== '' || address().trim() !== '' || fromFile() !== undefined;
  const wanted = async (): Promise<Sealable | string> => {
    if (fromFile()) return { own: fromFile()! };
    if (chosen() !== '') {
      const { keptSheets } = await import('./own-kept.ts');
      const own = keptSheets().all.find(({ title }) => title === chosen());
      return own ? { own } : 'This sheet is no longer kept in this browser.';
    }
    const hash = address()
      .slice(Math.max(0, address().indexOf('#')))
      .trim();
    const [{ readOwnLink }, { readSheetLink }] = await Promise.all([import('./own-address.ts'), import('../exercises/sheet-link.ts')]); // prettier-ignore
    const own = await readOwnLink(hash);
    if (own) return typeof own === 'string' ? own : { own: own.sheet };
    const read = readSheetLink(hash);
    if (!read) return 'Choose a sheet, or paste the whole link to one.';
    return 'problem' in read ? read.problem : { sheet: read.sheet };
  };
  createEffect(
    on([chosen, address, fromFile], async () => {
      setAbout(undefined);
      const mine = ++asked;
      const from = isChosen() ? await wanted().catch(() => '') : '';
      if (mine !== asked || typeof from === 'string') return;
      setAbout('own' in from ? { ...from.own, warning: pinnedWarning(from.own) } : { minutes: 0, passMark: 0, warning: '' }); // prettier-ignore
    }),
  );
  const sealIt = async (from: Sealable | string) => {
    if (typeof from === 'string') return void setSaid(from);
    const rules = rulesTyped(minutes(), passMark());
    if (typeof rules === 'string') return void setSaid(rules);
    setSaid('The sheet is being drawn and sealed …');
    const { sealSheet } = await import('./sealed-draw.ts');
    const found = await sealSheet(
      from,
      props.key,
      'own' in from ? from.own.title : title().trim(),
      props.list,
      rules,
    );
    if (typeof found === 'string') return void setSaid(found);
    const { sealed, drawn } = found;
    setMade({ sealed, day: today(), ...(await linksOf(sealed)), desk: drawn.address });
    const isKept = keepSeal({
      id: sealed.id,
      title: sealed.title,
      day: today(),
      seal: sealed.seal,
      text: sealedText(sealed),
    });
    setKept(keptSeals());
    setSaid(`Sealed as ${sealed.id}.${isKept ? '' : ' This browser does not keep the seal: save the sheet to a file, with which answers are opened.'}`); // prettier-ignore
  };
  const show = async (text: string, day: string) => {
    const sealed = readSealed(text);
    if (typeof sealed === 'string') return void setSaid(sealed);
    const { deskOfSealed } = await import('./sealed-draw.ts');
    const [links, desk] = await Promise.all([linksOf(sealed), deskOfSealed(sealed.id, sealed.seal, props.key)]); // prettier-ignore
    setMade({ sealed, day, ...links, ...(typeof desk === 'string' ? {} : { desk: desk.address }) });
    setSaid(`The links of “${sealed.title}” are here again.${typeof desk === 'string' ? ` ${desk}` : ''}`);
  };
  const addressOf = (link: string) => `${location.origin}${location.pathname.replace(/sheets\/sealed\/$/, 'sheet/sealed/')}${link}`; // prettier-ignore
  const copy = async (link: string, what: string) => {
    if (isSealedLinkTooLong(link)) return void setSaid(`${what} would have ${link.length} characters, too many for a link: save the sheet to a file, which the trainee opens.`); // prettier-ignore
    const address = addressOf(link);
    const long = address.length > LONG_LINK ? ' Some programs cut links as long as this: send one version each, or the file.' : ''; // prettier-ignore
    setSaid(await copyAddress(address, `${what} is copied, ${address.length} characters.${long}`));
  };

  return (
    <section class="calculator sealed-desk" aria-labelledby="sealed-make-title">
      <h2 id="sealed-make-title">Seal a sheet</h2>
      <form autocomplete="off" onSubmit={(event) => event.preventDefault()}>
        <Show when={titles().length > 0}>
          <div class="field">
            <label for="sealed-kept">A sheet of your own</label>
            <select
              id="sealed-kept"
              autocomplete="off"
              value={chosen()}
              onChange={(event) => choose({ title: event.currentTarget.value })}
            >
              <option value="">by its link or file</option>
              <For each={titles()}>{(title) => <option value={title}>{title}</option>}</For>
            </select>
          </div>
        </Show>
        <div class="field own-line">
          <label for="sealed-address">
            {titles().length > 0 ? 'Or the link of a sheet' : 'The link of a sheet'}
          </label>
          <input
            id="sealed-address"
            class="words"
            type="text"
            autocomplete="off"
            value={address()}
            onInput={(event) => choose({ address: event.currentTarget.value })}
          />
        </div>
        <Show when={chosen() === '' && address().trim() !== ''}>
          <div class="field own-line">
            <label for="sealed-title">What the trainees see as its title</label>
            <input
              id="sealed-title"
              class="words"
              type="text"
              maxlength="60"
              autocomplete="off"
              value={title()}
              onInput={(event) => setTitle(event.currentTarget.value)}
            />
          </div>
        </Show>
        <div class="field">
          <FileField
            id="sealed-own-file"
            label="Or a sheet of your own from a file"
            accept=".json,application/json"
            saidBy="sealed-said"
            open={async (file) => {
              if (!file) return;
              const text = await textOfFile(file, LONGEST_OWN, 'a sheet');
              const { readOwnSheet } = await import('../exercises/own/own-text.ts');
              const read = 'problem' in text ? text.problem : readOwnSheet(text.text);
              if (typeof read === 'string') return void setSaid(read);
              choose({ own: read });
              setSaid(
                `“${read.title || 'A sheet'}” is read from the file. It is sealed when you press the button.`,
              );
            }}
          />
        </div>
        <Show when={about()?.minutes === 0}>
          <RuleField
            id="sealed-minutes"
            label="Minutes allowed, empty for no limit"
            value={minutes()}
            set={setMinutes}
          />
        </Show>
        <Show when={about()?.passMark === 0}>
          <RuleField
            id="sealed-pass"
            label="Pass mark in % of the marks, empty for none"
            value={passMark()}
            set={setPassMark}
          />
        </Show>
        <Show when={about()?.warning}>
          <p class="remark" role="alert">
            {about()!.warning}
          </p>
        </Show>
        <p class="actions">
          <button type="button" disabled={!isChosen()} onClick={() => void wanted().then(sealIt)}>
            {about()?.warning ? 'Seal it as it is' : 'Draw it anew and seal it'}
          </button>
        </p>
      </form>
      <p class="small">
        It is drawn anew under a name made by chance, so that nobody can draw it again by guessing the name. A
        sheet with draws that you kept stays as it is: whoever has seen it knows its numbers.
      </p>
      <Show when={made()}>
        {(now) => (
          <>
            <p>
              “{now().sealed.title}”, sealed on {dateInWords(now().day)}: {now().sealed.versions.length}{' '}
              {now().sealed.versions.length === 1 ? 'version' : 'versions'}
              {now().sealed.minutes > 0 ? `, ${now().sealed.minutes} minutes` : ', no time limit'}. A link to
              all has {addressOf(now().all).length} characters, a link to one at most{' '}
              {addressOf(now().ones.reduce((a, b) => (a.length > b.length ? a : b))).length}.{' '}
              <Show when={now().desk}>
                {(desk) => (
                  <>
                    <a href={`../../${desk()}`}>See it with its answers</a>: that address is not sealed, so
                    give it to nobody.
                  </>
                )}
              </Show>
            </p>
            <p class="actions">
              <button type="button" onClick={() => void copy(now().all, 'The link to all versions')}>
                Copy the link to all versions
              </button>
              <button
                type="button"
                onClick={() => {
                  const file = fileNameOf(now().sealed.title, 'sealed');
                  saveFile(file, sealedText(now().sealed), 'application/json');
                  setSaid(`The sealed sheet is saved as ${file}.`);
                }}
              >
                Save the sealed sheet to a file
              </button>
              <For each={now().ones}>
                {(link, i) => (
                  <button type="button" onClick={() => void copy(link, `The link to version ${i() + 1}`)}>
                    Version {i() + 1}
                  </button>
                )}
              </For>
            </p>
            <HandOutFold
              isReady
              title={now().sealed.title}
              mark={now().sealed.id}
              versions={now().ones.length}
              links={() =>
                Promise.resolve(
                  now().ones.some(isSealedLinkTooLong)
                    ? 'A version is too long for a link: save the sheet to a file, which the trainees open.'
                    : now().ones.map(addressOf),
                )
              }
            />
          </>
        )}
      </Show>
      <p id="sealed-said" role="status">
        {said()}
      </p>
      <Show when={kept().length > 0}>
        <details>
          <summary>Sealed before, in this browser</summary>
          <ul>
            <For each={kept()}>
              {(each) => (
                <li>
                  “{each.title}”, {dateInWords(each.day)} ({each.id}){' '}
                  <Show when={each.text} fallback="its links are in the file that was saved">
                    {(text) => (
                      <button type="button" class="reset" onClick={() => void show(text(), each.day)}>
                        its links
                      </button>
                    )}
                  </Show>
                </li>
              )}
            </For>
          </ul>
        </details>
      </Show>
    </section>
  );
}
