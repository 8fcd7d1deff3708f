// Says that a walk was written for another house than the one that stands here, with both ways on.
import { Show } from 'solid-js';
import { forHouse, notOfHere } from '../walk/house-of-walk.ts';
import { fetchedWhenWanted } from './fetched-part.tsx';
import { focusAfter } from './focus-after.ts';
import { PUT_IT_BACK, type OpenWalk } from './walk-open.ts';

const OpenHouse = fetchedWhenWanted(() => import('./OpenHouse.tsx').then((come) => come.OpenHouse));

export function WalkOther(props: { readonly of: OpenWalk }) {
  const { walk, house, other, take } = props.of;
  return (
    <Show when={other()}>
      {(name) => (
        <div class="remark walk-other">
          <p>
            {notOfHere(name(), house.name())} Open its house too, or hold it against {house.name()}.
          </p>
          <p class="actions">
            <OpenHouse isWanted wanted={name()} root="../" />{' '}
            <button
              type="button"
              onClick={(event) => {
                take(forHouse(walk(), house.name()), `It is held against ${house.name()} now.`, PUT_IT_BACK);
                focusAfter(event, () => document.getElementById('walk-rooms-title'));
              }}
            >
              Hold it against {house.name()}
            </button>
          </p>
        </div>
      )}
    </Show>
  );
}
