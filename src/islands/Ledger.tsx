// The alcohol ledger: litres of pure alcohol at every station, always in reach.
import { createMemo, createSignal, For, onMount, Show } from 'solid-js';
import { cautions } from '../core/line/cautions.ts';
import { ledger, paces, stations, type Pace, type Station } from '../core/line/ledger.ts';
import { formatNumber } from '../core/format.ts';
import { useHouseAtHand } from './at-hand.ts';
import { useAnnouncement } from './announce.ts';

const litres = (value: number) => `${formatNumber(value, value < 100 ? 1 : 0)} L`;

export default function Ledger() {
  let sheet: HTMLDetailsElement | undefined;
  const { line, name } = useHouseAtHand(() => sheet);
  const [pace, setPace] = createSignal<Pace>('mash');
  const amounts = createMemo(() => ledger(line(), pace()));
  const most = () => Math.max(...Object.values(amounts()));
  const remarks = createMemo(() => cautions(line()));
  useAnnouncement('ledger', amounts, () =>
    [
      `Pure alcohol ${paces[pace()]}: heart ${litres(amounts().heart)}, bottles ${litres(amounts().bottles)}.`,
      ...remarks().flatMap(({ weight, says }) => (weight === 'impossible' ? [says] : [])),
    ].join(' '),
  );
  // Beside the text there is room for the whole table; over it, on a narrow screen, it opens only when asked.
  onMount(() => {
    if (sheet && matchMedia('(min-width: 72rem)').matches) sheet.open = true;
  });

  return (
    <aside class="ledger" aria-label="Alcohol ledger">
      <details
        ref={sheet}
        onToggle={(event) =>
          (document.documentElement.dataset['ledger'] = event.currentTarget.open ? 'open' : 'closed')
        }
      >
        <summary>
          <span class="ledger-title">Pure alcohol</span>{' '}
          <span class="ledger-brief">
            heart {litres(amounts().heart)} · bottles {litres(amounts().bottles)} {paces[pace()]}
            <Show when={remarks().some(({ weight }) => weight === 'impossible')}> · does not agree</Show>
          </span>
        </summary>
        <div class="ledger-body">
          <div class="pace" role="radiogroup" aria-label="Litres of pure alcohol for">
            <For each={Object.keys(paces) as Pace[]}>
              {(choice) => (
                <label>
                  <input
                    type="radio"
                    name="ledger-pace"
                    checked={pace() === choice}
                    onChange={() => setPace(choice)}
                  />
                  <span>{paces[choice]}</span>
                </label>
              )}
            </For>
          </div>
          <table>
            <caption>
              {name()}: litres of pure alcohol at 20 °C, {paces[pace()]}
            </caption>
            <tbody>
              <For each={Object.keys(stations) as Station[]}>
                {(station) => (
                  <tr>
                    <th scope="row">{stations[station]}</th>
                    <td class="number" data-station={station}>
                      {litres(amounts()[station])}
                    </td>
                    <td class="bar" aria-hidden="true">
                      <svg viewBox="0 0 100 8" preserveAspectRatio="none">
                        <rect class="amount" width={(100 * amounts()[station]) / most()} height="8" />
                      </svg>
                    </td>
                  </tr>
                )}
              </For>
            </tbody>
          </table>
          <p class="note">The charge also holds the foreshots and feints that go round.</p>
          <Show when={remarks().length > 0}>
            <ul class="cautions">
              <For each={remarks()}>{({ weight, says }) => <li class={weight}>{says}</li>}</For>
            </ul>
          </Show>
        </div>
      </details>
    </aside>
  );
}
