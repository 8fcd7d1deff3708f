// Counted casks beside those that the house's figures would have laid down, and what explains the difference.
import { createMemo, createSignal, For, Show } from 'solid-js';
import { formatNumber } from '../core/format.ts';
import { wasGiven } from '../core/quoted-given.ts';
import type { Line } from '../core/line/line.ts';
import { readQuantity } from '../core/reading/quantity.ts';
import { isRefusal } from '../core/refusal.ts';
import { countedMeetsComputed } from '../core/stock/counted.ts';
import { casksOf } from '../core/stock/sizes.ts';
import { besideGroups, besideProblem, type BesideName, type Stock } from '../house/parts/stock.ts';
import { useKnown } from '../browser/known-store.ts';
import { countFigure } from '../browser/change-figure.ts';
import { StockField } from './StockField.tsx';

const meanings: Partial<Record<BesideName, string>> = {
  laidElsewhere: 'A count, where you have one.',
  elsewhereShare: '80 for eight casks in ten; used where no count is given.',
  soldUnfilled: 'New spirit sent out by tanker or drum, in litres of pure alcohol.',
  emptied: 'Left empty, casks are taken as emptied when their years in wood are up.',
};
const units: Partial<Record<BesideName, string>> = { soldUnfilled: ' (L)', elsewhereShare: ' (%)' };
const names = Object.keys(besideGroups) as readonly BesideName[];
const whole = (value: number) => formatNumber(value, 0);
const title = (size: number) =>
  casksOf(2, size)
    .slice(2)
    .replace(/^./, (first) => first.toUpperCase());

/** The register with a number beside its groups, or without it. */
function withBeside(register: Stock, name: BesideName, value: number | undefined): Stock {
  const { [name]: _, ...rest } = register;
  return (value === undefined ? rest : { ...rest, [name]: value }) as Stock;
}

export interface StockCountedProps {
  readonly register: Stock;
  readonly line: Line;
  readonly day: string;
  readonly change: (next: Stock) => string | undefined;
}

export function StockCounted(props: StockCountedProps) {
  const [wrong, setWrong] = createSignal<Partial<Record<BesideName, string>>>({});
  const { counted, isEstimate } = useKnown();
  const own = () => counted('casksInStore');
  const guessed = () => (isEstimate('casksPerYear') || isEstimate('casksInStore') ? ', an estimate' : '');
  const take = (name: BesideName, text: string) => {
    const { [name]: _, ...others } = wrong();
    if (text.trim() === '') {
      setWrong(others);
      return void props.change(withBeside(props.register, name, undefined));
    }
    const { label, kind } = besideGroups[name];
    const read = readQuantity(text, { kind, label });
    const value = isRefusal(read) || read.as === 'range' ? text : read.value;
    const says =
      besideProblem(name, value) ??
      notYet(name, value, props.day) ??
      props.change(withBeside(props.register, name, value as number));
    setWrong(says === undefined ? others : { ...others, [name]: says });
  };
  const meets = createMemo(() => {
    const { opened, groups, ...unlisted } = props.register;
    if (opened === undefined || props.day === '') return undefined;
    const { house, casks } = props.line;
    const inHouse = own();
    const fillings = { ...house, casksPerYear: casks.perYear, meanSize: casks.meanSize };
    return countedMeetsComputed(
      groups,
      fillings,
      inHouse === undefined ? unlisted : { ...unlisted, inHouse },
      opened,
      props.day,
    );
  });

  return (
    <section class="calculator stock" aria-labelledby="stock-counted-title">
      <h2 id="stock-counted-title">Counted and reckoned</h2>
      <p class="purpose">
        Your casks as they are counted, beside those that your figures would have filled since you opened.
      </p>
      <div>
        <For each={names}>
          {(name) => (
            <StockField
              id={`stock-${name}`}
              label={`${besideGroups[name].label}${units[name] ?? ''}`}
              isNumber
              text={props.register[name] === undefined ? '' : formatYear(name, props.register[name])}
              problem={wrong()[name]}
              meaning={meanings[name]}
              take={(text) => take(name, text)}
              keep={() => {
                const stood = props.register[name];
                return () => void props.change(withBeside(props.register, name, stood));
              }}
            />
          )}
        </For>
      </div>
      <Show
        when={meets()}
        fallback={<p class="remark">Give the year of opening to set the two side by side.</p>}
      >
        {(found) => (
          <div class="results">
            <dl class="others">
              <Row
                says={`Filled since ${props.register.opened}, if every year had been like this one${guessed()}`}
                casks={found().filled}
              />
              <Row
                says={
                  props.register.emptied === undefined
                    ? 'Emptied, their years being up'
                    : 'Emptied, as counted'
                }
                casks={found().emptied}
              />
              <Row says={`So there should be${guessed()}`} casks={found().computed} />
              <Row says="Counted in this register" casks={found().counted} />
              <Show when={own() !== undefined}>
                <Row says="Counted in your house" casks={own()!} />
              </Show>
              <Row
                says={(own() ?? 0) > found().counted ? 'Difference, by your house’s count' : 'Difference'}
                casks={found().difference}
              />
              <Row says="of it laid elsewhere" casks={found().laidElsewhere} />
              <Row says="of it sold unfilled, as casks" casks={found().soldUnfilled} />
              <Row says="Not explained" casks={found().unexplained} />
            </dl>
            <Show when={own() !== found().counted && found().counted > 0}>
              <Show when={(own() ?? 0) > found().counted}>
                <p class="remark">
                  Your house has {whole(own()!)} counted; this register has {whole(found().counted)}.
                </p>
              </Show>
              <p class="actions">
                <button type="button" onClick={() => countFigure('casksInStore', found().counted)}>
                  {(own() ?? 0) > found().counted
                    ? `Put ${whole(found().counted)} in place of your house’s ${whole(own()!)}`
                    : `Keep ${whole(found().counted)} as the casks counted in your house`}
                </button>
              </p>
            </Show>
            <details class="working">
              <summary>The same by size of cask</summary>
              <div class="table" tabindex="0" role="group" aria-label="Casks by size">
                <table>
                  <thead>
                    <tr>
                      <th scope="col">Size</th>
                      <th scope="col" class="number">
                        Counted
                      </th>
                      <th scope="col" class="number">
                        Reckoned
                      </th>
                      <th scope="col" class="number">
                        Difference
                      </th>
                    </tr>
                  </thead>
                  <tbody>
                    <For each={found().bySize}>
                      {({ size, counted, computed }) => (
                        <tr>
                          <th scope="row">{title(size)}</th>
                          <td class="number">{whole(counted)}</td>
                          <td class="number">{whole(computed)}</td>
                          <td class="number">{whole(Math.round(computed) - counted)}</td>
                        </tr>
                      )}
                    </For>
                  </tbody>
                </table>
              </div>
            </details>
          </div>
        )}
      </Show>
    </section>
  );
}

/** A year has no commas, and a litre no more decimals than were given. */
const formatYear = (name: BesideName, value: number) =>
  name === 'opened' ? String(value) : formatNumber(value, value % 1 === 0 ? 0 : 1);

function Row(props: { readonly says: string; readonly casks: number }) {
  return (
    <div>
      <dt>{props.says}</dt>
      <dd class="number">{whole(props.casks)}</dd>
    </div>
  );
}

/** A house cannot open after the day on which its casks were counted. */
const notYet = (name: BesideName, value: unknown, day: string): string | undefined =>
  name === 'opened' && day !== '' && Number(value) > Number(day.slice(0, 4))
    ? wasGiven(besideGroups.opened.label, value, `it can be no later than ${day.slice(0, 4)}.`)
    : undefined;
