// A guide's own pace, from a passage read aloud once, from start to stop.
import { createSignal } from 'solid-js';
import { PASSAGE_TO_READ } from '../walk/passage.ts';
import { paceOf, wordsIn } from '../walk/time.ts';
import { walkLimits } from '../walk/walk.ts';

export interface AloudProps {
  readonly take: (pace: number) => void;
}

export function WalkAloud(props: AloudProps) {
  const [begun, setBegun] = createSignal<number>();
  const [says, setSays] = createSignal('');
  const press = () => {
    const from = begun();
    if (from === undefined) {
      setSays('');
      return void setBegun(performance.now());
    }
    setBegun(undefined);
    const pace = paceOf(wordsIn(PASSAGE_TO_READ), (performance.now() - from) / 1000, walkLimits.pace);
    if (typeof pace !== 'number') return void setSays(pace.refused);
    setSays(`You say ${pace} words a minute.`);
    props.take(pace);
  };
  return (
    <details>
      <summary>Find your own pace: read aloud once</summary>
      <p>Press, read this aloud as you would to a party, and press again at the last word.</p>
      <blockquote>{PASSAGE_TO_READ}</blockquote>
      <p class="actions">
        <button type="button" onClick={press}>
          {begun() === undefined ? 'Start reading' : 'Stop: I have read it'}
        </button>
      </p>
      <p role="status">{says()}</p>
    </details>
  );
}
