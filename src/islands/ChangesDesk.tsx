// Earlier versions of the house: put down as it is today, two of them chosen, and what changed from one to the other.
import { createMemo, createSignal, Show } from 'solid-js';
import { formatCount } from '../core/format.ts';
import { stampInWords } from '../house/book.ts';
import { changesBetween } from '../house/changes.ts';
import { useKnown } from '../browser/known-store.ts';
import { isRefusal } from '../core/refusal.ts';
import { lineIn } from '../house/line-of.ts';
import { datesPart, MOST_HOUSE_VERSIONS, versionNameProblem, withVersion, type HouseVersion } from '../house/parts/dates.ts'; // prettier-ignore
import { plainName } from '../house/name.ts';
import { usePart } from '../browser/part-store.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { ChangedTable } from './ChangedTable.tsx';
import { ChangesSheets } from './ChangesSheets.tsx';
import { ChoiceField } from './ChoiceField.tsx';
import { StockField } from './StockField.tsx';
import { dateInWords, today } from './today.ts';
import { Troubles } from './Troubles.tsx';

const NOW = 'now';
const keyOf = ({ day, name }: HouseVersion) => `${day} ${name}`;

export default function ChangesDesk() {
  const { value: versions, set, mounted } = usePart(datesPart);
  const { house, name } = useHouse();
  const { known } = useKnown();
  const [called, setCalled] = createSignal('');
  const [wrong, setWrong] = createSignal<string>();
  const [said, setSaid] = createSignal('');
  const [from, setFrom] = createSignal<string>();
  const [to, setTo] = createSignal(NOW);
  let desk: HTMLDivElement | undefined;

  const now = (): HouseVersion => ({ day: mounted() ? today() : '', name: 'Now', figures: house(), known: known() });
  const chosen = (key: string | undefined) => versions().find((each) => keyOf(each) === key);
  const before = () => chosen(from()) ?? versions()[0];
  const after = () => chosen(to()) ?? now();
  const inFull = ({ name, day }: HouseVersion) => `“${name}”, ${dateInWords(day)}`;
  const put = () => {
    const next = { ...now(), name: plainName(called()) };
    const isNew = !versions().some((each) => keyOf(each) === keyOf(next));
    const problem =
      versionNameProblem(next.name) ??
      (isNew && versions().length >= MOST_HOUSE_VERSIONS
        ? `A house keeps ${MOST_HOUSE_VERSIONS} versions: take one out first.`
        : undefined) ??
      set(withVersion(versions(), next))[0];
    setWrong(problem);
    if (problem !== undefined) return;
    setCalled('');
    setFrom(keyOf(next));
    setSaid(`${name()} is put down as “${next.name}”, ${dateInWords(next.day)}.`);
  };
  const takeOut = (gone: HouseVersion) => {
    set(versions().filter((each) => each !== gone));
    setFrom(undefined);
    if (to() === keyOf(gone)) setTo(NOW);
    setSaid(`“${gone.name}” is taken out.`);
    document.getElementById('version-name')?.focus();
  };
  const changes = createMemo(() => {
    const old = before();
    if (!old) return undefined;
    const [was, is] = [old, after()].map((version) => ({ line: lineIn(version.figures), known: version.known })); // prettier-ignore
    if (isRefusal(was!.line) || isRefusal(is!.line)) return undefined;
    return changesBetween({ line: was!.line, known: was!.known }, { line: is!.line, known: is!.known });
  });
  const count = () => {
    const found = changes();
    if (!found) return '';
    if (found.given.length + found.counted.length === 0) return 'Nothing that the house gives or counts has changed.'; // prettier-ignore
    return `${formatCount(found.given.length + found.counted.length, 'figure of the house', 'figures of the house')} changed, ${formatCount(found.computed.length, 'computed figure')} moved, and the cards say ${formatCount(found.cards.length, 'figure')} otherwise.`;
  };
  useAnnouncement('changes', () => [said(), count()], () => `${said()} ${count()}`.trim(), () => desk); // prettier-ignore
  const options = () => Object.fromEntries(versions().map((each) => [keyOf(each), `${each.name}, ${dateInWords(each.day)}`])); // prettier-ignore

  return (
    <div ref={desk} class="stock-desk changes-desk">
      <Troubles />
      <section class="calculator stock put-down" aria-labelledby="put-down-title">
        <h2 id="put-down-title">Put today’s house down</h2>
        <div>
          <StockField
            id="version-name"
            label="What you call it"
            text={called()}
            problem={wrong()}
            meaning="As “Before the new stills”. It keeps today’s figures and counts."
            take={(text) => {
              setCalled(text);
              setWrong(undefined);
            }}
          />
        </div>
        <p class="actions">
          <button type="button" onClick={put}>
            Put it down
          </button>
        </p>
        <Show when={said()}>
          <p class="remark">{said()}</p>
        </Show>
      </section>
      <section class="calculator stock changes" aria-labelledby="changes-title">
        <h2 id="changes-title">What changed</h2>
        <Show
          when={before()}
          fallback={<p class="remark">{name()} has no earlier version yet. Put it down before you change it.</p>}
        >
          {(old) => (
            <>
              <div class="which">
                <ChoiceField
                  id="changes-from"
                  label="From"
                  options={options()}
                  value={keyOf(old())}
                  take={(key) => void setFrom(key)}
                />
                <ChoiceField
                  id="changes-to"
                  label="To"
                  options={{ [NOW]: 'The house as it is now', ...options() }}
                  value={to()}
                  take={(key) => void setTo(key)}
                />
              </div>
              <p class="sum-up">
                {name()} from {inFull(old())} to {chosen(to()) ? inFull(after()) : 'now'}. {count()}
              </p>
              <Show when={changes()} fallback={<p class="remark">One of the two contradicts itself: it has no figures to compare.</p>}>
                {(found) => (
                  <>
                    <ChangedTable title="What the house gives" rows={found().given} />
                    <ChangedTable title="What was counted" rows={found().counted} />
                    <ChangedTable title="What is computed" rows={found().computed} />
                    <ChangedTable title="What the cards say" rows={found().cards} />
                    <ChangesSheets name={name()} to={after()} versions={versions()} touched={found()} />
                  </>
                )}
              </Show>
              <p class="meaning">{stampInWords(name())}{mounted() && `, ${dateInWords(today())}`}.</p>
              <p class="actions">
                <button type="button" onClick={() => print()}>
                  Print what changed
                </button>{' '}
                <button type="button" onClick={() => takeOut(old())}>
                  Take “{old().name}” out
                </button>
              </p>
            </>
          )}
        </Show>
      </section>
    </div>
  );
} // prettier-ignore
