// A release whose signature fits: by whom, whether by the same key as before, how far the reader was behind, and what to do with it.
import { createEffect, createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { kinds, type Signed } from '../handing/envelope.ts';
import { takenOf, withKey, withTaken } from '../handing/handed.ts';
import { keepHanded, keptHanded } from '../handing/handing-store.ts';
import { judged } from '../handing/judged.ts';
import { changedByReader, clashes, labelOf, merged } from '../handing/merge.ts';
import { decode } from '../house/codec.ts';
import { problemsOfParts } from '../house/parts/index.ts';
import { changeHouseWhole, liveName, loadHouse, ownHouse } from '../house/store.ts';
import { announce } from './announce.ts';
import { HandedOnClashes } from './HandedOnClashes.tsx';
import { inWords } from './today.ts';

const NOT_NOTED =
  ' This browser does not let the handbook remember whose release it is, so the next one will seem the first.';

export function HandedOn(props: {
  readonly signed: Signed;
  readonly digits: string;
  /** Called once the reader has chosen, with what came of it. */
  readonly done: (event: Event, sentence: string) => void;
}) {
  const { signed } = props;
  const { name, release, kind } = signed;
  const [handed, setHanded] = createSignal(keptHanded().handed);
  const [keeps, setKeeps] = createSignal<readonly string[]>([]);
  const how = () => judged(signed, handed());

  /** The release the reader had, the house as it has become, and this release; nothing when there is no such house any more, or this one cannot be read in full. */
  const three = createMemo(() => {
    const before = takenOf(handed(), signed);
    const yours = before && ownHouse(before.as);
    const theirs = decode(signed.text);
    return yours && theirs.problems.length === 0 ? { had: decode(before.text), yours, theirs } : undefined;
  });
  const isJoined = () => how().release === 'newer' && three() !== undefined;
  const both = () => (three() ? clashes(three()!) : []);
  const standing = () => (three() ? changedByReader(three()!).map(labelOf) : []);
  const says = () => [how().ofKey, ...(how().key === 'another' ? [] : [how().ofRelease])];
  createEffect(() => announce('handed-on', () => [`Signed by ${signed.signer}.`, ...says()].join(' ')));

  const note = (as: string) => (keepHanded(withTaken(keptHanded().handed, signed, as)) ? '' : NOT_NOTED);
  const trust = () => {
    setHanded(withKey(handed(), signed));
    keepHanded(handed());
  };
  /** Opens it under a name of its own; only what the reader takes as his copy of the release is remembered. */
  const open = (isNoted: boolean): string => {
    const inside = JSON.stringify({ ...JSON.parse(signed.text), name });
    const wrong = loadHouse(inside, problemsOfParts);
    const unnoted = isNoted ? note(liveName()) : '';
    return [`${liveName()} is open: release ${release}, signed by ${signed.signer}.${unnoted}`, ...wrong].join(' '); // prettier-ignore
  };
  const join = (): string => {
    const { here, gaveWay } = merged(three()!, keeps());
    const aside = changeHouseWhole(here, gaveWay);
    const unnoted = note(here.name);
    const wrong = problemsOfParts(here.parts);
    const what = aside
      ? ` What you changed and this release cannot stand together: the release holds, and your house as it was is on the shelf as “${aside}”.`
      : '';
    return [`${here.name} is open at release ${release}.${what}${unnoted}`, ...wrong].join(' ');
  };

  return (
    <div class="handed-on">
      <p>
        <b>
          {name}, {kind === 'house' ? '' : `${kinds[kind]}, `}release {release}
        </b>{' '}
        of {inWords(signed.date)}, signed by <b>{signed.signer}</b>. The signature fits. Fingerprint of the
        key: <span class="fingerprint">{props.digits}</span>
      </p>
      <p class={how().key === 'another' ? 'problem' : undefined}>{how().ofKey}</p>
      <Show when={how().key !== 'another' && how().ofRelease}>
        <p>{how().ofRelease}</p>
      </Show>
      <Show when={how().key !== 'another' && isJoined()}>
        <Show when={standing().length > 0}>
          <p>What you alone changed since then stays as you have it: {standing().join(', ')}.</p>
        </Show>
        <HandedOnClashes clashes={both()} release={release} keeps={keeps()} choose={setKeeps} />
      </Show>
      <p class="actions">
        <Switch>
          <Match when={how().key === 'another'}>
            <button type="button" onClick={trust}>
              Trust this key from now on
            </button>{' '}
          </Match>
          <Match when={kind === 'sheet'}>
            <a
              href={`../../sheet/${signed.text}`}
              onClick={() => ['first', 'newer'].includes(how().release) && note(name)}
            >
              Open the sheet
            </a>{' '}
          </Match>
          <Match when={isJoined()}>
            <button type="button" onClick={(event) => props.done(event, join())}>
              Take release {release}
            </button>{' '}
          </Match>
          <Match when={how().release === 'first' || how().release === 'newer'}>
            <button type="button" onClick={(event) => props.done(event, open(true))}>
              Open {name}
            </button>{' '}
          </Match>
        </Switch>
        <Show when={kind === 'house' && (how().key === 'another' || how().release !== 'first')}>
          <button type="button" onClick={(event) => props.done(event, open(false))}>
            Open it as another house
          </button>{' '}
        </Show>
        <button
          type="button"
          onClick={(event) => props.done(event, 'The file is put away; nothing was changed here.')}
        >
          Put it away
        </button>
      </p>
    </div>
  );
}
