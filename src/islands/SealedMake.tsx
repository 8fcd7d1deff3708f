// Sealing a sheet, and the sheets that were sealed in this browser, with the links that are handed out.
import { createSignal, For, Show } from 'solid-js';
import { readSealed, rulesTyped, sealedText } from '../exercises/sealed/sealed-sheet.ts';
import type { SecretKey } from '../handing/signing.ts';
import { SealedChoose, type SealingTyped } from './SealedChoose.tsx';
import { linksOfSealed, SealedLinks, type SealedLinked } from './SealedLinks.tsx';
import { keepSeal, keptSeals } from './seal-kept.ts';
import { useSheetToSeal } from './sealed-source.ts';
import { dateInWords, today } from './today.ts';

export function SealedMake(props: { readonly key: SecretKey; readonly list: string }) {
  const [said, setSaid] = createSignal('');
  const source = useSheetToSeal();
  const [made, setMade] = createSignal<SealedLinked>();
  const [kept, setKept] = createSignal(keptSeals());
  const sealIt = async (typed: SealingTyped) => {
    const from = await source.wanted();
    if (typeof from === 'string') return void setSaid(from);
    const rules = rulesTyped(typed.minutes, typed.passMark);
    if (typeof rules === 'string') return void setSaid(rules);
    setSaid('The sheet is being drawn and sealed …');
    const { sealSheet } = await import('./sealed-draw.ts');
    const found = await sealSheet(
      from,
      props.key,
      'own' in from ? from.own.title : typed.title.trim(),
      props.list,
      rules,
    );
    if (typeof found === 'string') return void setSaid(found);
    const { sealed, drawn } = found;
    setMade({ sealed, day: today(), ...(await linksOfSealed(sealed)), desk: drawn.address });
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
    const [links, desk] = await Promise.all([linksOfSealed(sealed), deskOfSealed(sealed.id, sealed.seal, props.key)]); // prettier-ignore
    setMade({ sealed, day, ...links, ...(typeof desk === 'string' ? {} : { desk: desk.address }) });
    setSaid(`The links of “${sealed.title}” are here again.${typeof desk === 'string' ? ` ${desk}` : ''}`);
  };

  return (
    <section class="calculator sealed-desk" aria-labelledby="sealed-make-title">
      <h2 id="sealed-make-title">Seal a sheet</h2>
      <SealedChoose source={source} say={setSaid} seal={(typed) => void sealIt(typed)} />
      <p class="small">
        It is drawn anew under a name made by chance, so that nobody can draw it again by guessing the name. A
        sheet with draws that you kept stays as it is: whoever has seen it knows its numbers.
      </p>
      <Show when={made()}>{(now) => <SealedLinks of={now()} say={setSaid} />}</Show>
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
