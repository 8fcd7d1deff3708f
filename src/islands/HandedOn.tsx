// A release whose signature fits: by whom, whether by the same key as before, how far the reader was behind, and what to do with it.
import { createEffect, createMemo, createSignal, For, Match, Show, Switch } from 'solid-js';
import { signedKinds, type Signed } from '../handing/envelope.ts';
import { takenOf, withKey, withTaken } from '../handing/handed.ts';
import { keepHanded, keptHanded } from '../browser/handing-store.ts';
import { judgeFile } from '../handing/judge-file.ts';
import { labelOfOffer, mergedRelease, offerOf, type Stated } from '../handing/merge.ts';
import { decodeHouse } from '../house/codec.ts';
import { problemsOfParts } from '../house/parts/index.ts';
import { changeHouseWhole, loadHouse, openHouse, ownHouse } from '../browser/shelf-store.ts';
import { liveName } from '../browser/house-store.ts';
import { announce } from './announce.ts';
import { HandedOnClashes, type Choices } from './HandedOnClashes.tsx';
import { dateInWords } from './today.ts';

const NOT_NOTED =
  ' This browser does not let the handbook remember whose release it is, so the next one will seem the first.';

/** “Malt in a mash: 1,800 kg → 2,000 kg”; a part has its name alone. */
const inAList = ({ what, was, is }: Stated) => `${labelOfOffer(what)}${was && `: ${was} → ${is}`}`;
/** “Malt in a mash, 1,800 kg”. */
const asYours = ({ what, is }: Stated) => `${labelOfOffer(what)}${is && `, ${is}`}`;

export function HandedOn(props: {
  readonly signed: Signed;
  readonly digits: string;
  /** Called once the reader has chosen, with what came of it, and with how to undo it, which answers in a sentence. */
  readonly done: (event: Event, sentence: string, undo?: () => string) => void;
}) {
  const { signed } = props;
  const { name, release, kind } = signed;
  const [handed, setHanded] = createSignal(keptHanded().handed);
  const [choices, setChoices] = createSignal<Choices>({});
  const [missing, setMissing] = createSignal('');
  const how = () => judgeFile(signed, handed());

  /** The release the reader had, the house as it has become, and this release; nothing when there is no such house any more, or this one cannot be read in full. */
  const three = createMemo(() => {
    const before = takenOf(handed(), signed);
    const yours = before && ownHouse(before.as);
    const theirs = decodeHouse(signed.text);
    return yours && theirs.problems.length === 0
      ? { had: decodeHouse(before.text), yours, theirs }
      : undefined;
  });
  const isJoined = () => how().release === 'newer' && three() !== undefined;
  const offer = createMemo(() => (isJoined() ? offerOf(three()!) : undefined));
  const unchosen = () => (offer()?.clashes ?? []).filter(({ what }) => !Object.hasOwn(choices(), what));
  /** The house as it would be; nothing while a choice is missing. */
  const together = createMemo(() => {
    if (!offer() || unchosen().length > 0) return undefined;
    const keeps = Object.keys(choices()).filter((what) => choices()[what] === 'yours');
    return mergedRelease(three()!, keeps, offer());
  });
  const cannot = () => {
    const house = together();
    return house && 'problem' in house ? house.problem : undefined;
  };
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
  const join = (event: Event): void => {
    const house = together();
    if (!house) {
      const left = unchosen().map(({ what }) => `“${labelOfOffer(what)}”`);
      return void setMissing(`Choose first which holds: ${left.join(', ')}.`);
    }
    if ('problem' in house) return;
    const [before, open, known] = [three()!.yours, liveName(), keptHanded().handed];
    const undo = () => {
      changeHouseWhole(before);
      keepHanded(known);
      if (open !== before.name) openHouse(open);
      return `${before.name} is again as it stood before release ${release}.`;
    };
    changeHouseWhole(house);
    const unnoted = note(house.name);
    const wrong = problemsOfParts(house.parts);
    props.done(event, [`${house.name} is open at release ${release}.${unnoted}`, ...wrong].join(' '), undo);
  };

  return (
    <div class="handed-on">
      <p>
        <b>
          {name}, {kind === 'house' ? '' : `${signedKinds[kind]}, `}release {release}
        </b>{' '}
        of {dateInWords(signed.date)}, signed by <b>{signed.signer}</b>. The signature fits. Fingerprint of
        the key: <span class="fingerprint">{props.digits}</span>
      </p>
      <p class={how().key === 'another' ? 'problem' : undefined}>{how().ofKey}</p>
      <Show when={how().key !== 'another' && how().ofRelease}>
        <p>{how().ofRelease}</p>
      </Show>
      <Show when={how().key !== 'another' && isJoined()}>
        <p>{offer()!.released.length > 0 ? 'The release changes:' : 'The release changes no figure.'}</p>
        <ul>
          <For each={offer()!.released}>{(each) => <li>{inAList(each)}</li>}</For>
        </ul>
        <Show when={offer()!.stays.length > 0}>
          <p>What you alone changed stays as you have it: {offer()!.stays.map(asYours).join('; ')}.</p>
        </Show>
        <HandedOnClashes
          clashes={offer()!.clashes}
          release={release}
          choices={choices()}
          choose={(what, whose) => {
            setChoices({ ...choices(), [what]: whose });
            setMissing('');
          }}
        />
        <div aria-live="polite">
          <Show when={missing() || cannot()}>
            <p class="problem" id="handed-on-problem">
              {missing() ||
                `What you changed and this release cannot stand together. ${cannot()} ${offer()!.clashes.length > 0 ? 'Choose otherwise, or open' : 'Open'} it as another house.`}
            </p>
          </Show>
        </div>
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
            <Show when={cannot() === undefined}>
              <button type="button" onClick={join}>
                Take release {release}
              </button>{' '}
            </Show>
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
          onClick={(event) => props.done(event, 'The file is closed; nothing was changed here.')}
        >
          Close it, change nothing
        </button>
      </p>
    </div>
  );
}
