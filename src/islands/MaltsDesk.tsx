// The malts of a year: each grist as one malt, the weeks for each, and what all of them are together.
import { createMemo, createSignal, For, Index, Show } from 'solid-js';
import { format, formatCount } from '../core/format.ts';
import { extractBases, meanMalt, yearOfMalts, type Basis, type MeanMalt } from '../core/malting/grist.ts';
import { count } from '../core/quantity.ts';
import { isRefusal } from '../core/refusal.ts';
import type { NumberName } from '../house/figures.ts';
import {
  campaignNameProblem,
  finalGravityField,
  LONGEST_CAMPAIGN_NAME,
  maltColumns,
  maltsPart,
  MOST_CAMPAIGNS,
  MOST_MALTS,
  WEEKS,
  type Malts,
  type NamedCampaign,
} from '../house/parts/malts.ts';
import { usePart } from '../browser/part-store.ts';
import { figureText } from '../house/prose.ts';
import { changeFigure, keepFigures } from '../browser/change-figure.ts';
import { useHouse } from '../browser/house-store.ts';
import { useAnnouncement } from './announce.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { focusAfter } from './focus-after.ts';
import { NumberField } from './NumberField.tsx';
import { RowsField } from './RowsField.tsx';
import { StockField } from './StockField.tsx';
import { Troubles } from './Troubles.tsx';
import { useWayBack } from './use-way-back.tsx';

/** A grist without what it was not given. */
const withoutEmpty = (grist: object): NamedCampaign =>
  Object.fromEntries(
    Object.entries(grist).filter(([, value]) => value !== undefined),
  ) as unknown as NamedCampaign;

const rowsOf = { label: 'Malts', columns: maltColumns, value: [], count: [1, MOST_MALTS] } as const;
type Row = Readonly<Record<string, number>>;

export default function MaltsDesk() {
  const { value: given, set } = usePart(maltsPart);
  const { house, line, name } = useHouse();
  const { say, said, Said, saying } = useWayBack(true);
  const [named, setNamed] = createSignal<Readonly<Record<number, string>>>({}); // names that cannot be used
  let desk: HTMLDivElement | undefined;
  const change = (next: Malts): string | undefined => set(next)[0];
  const withGrist = (at: number, part: Omit<Partial<NamedCampaign>, 'finalGravity'> & { finalGravity?: number | undefined }) =>
    change({ ...given(), campaigns: given().campaigns.map((old, i) => (i === at ? withoutEmpty({ ...old, ...part }) : old)) }); // prettier-ignore
  const rename = (at: number, text: string) => {
    const problem = campaignNameProblem(text) ?? withGrist(at, { name: text });
    const { [at]: _, ...others } = named();
    setNamed(problem === undefined ? others : { ...others, [at]: problem });
  };
  const add = () => {
    const { maltPerMash: mass, maltMoisture: moisture, solubleExtract: extract, fermentability } = house();
    const malt = { mass, moisture, extract, fermentability, phenols: 0 } as never;
    const grist = { name: `Grist ${given().campaigns.length + 1}`, weeks: 0, malts: [malt] };
    change({ ...given(), campaigns: [...given().campaigns, grist] });
  };
  const year = createMemo(() => yearOfMalts(given().campaigns, given().basis, count(house().mashesPerWeek)));
  /** What becomes of the year where the grists’ weeks are not the house’s. */
  const otherWeeks = () => {
    const over = found()!.weeks - house().weeksPerYear;
    if (Math.abs(over) < 1e-9) return '';
    return over > 0
      ? 'That is more than you work: the book takes them as shares of your weeks.'
      : 'In the other weeks you mash your house’s own malt.';
  };
  const found = () => {
    const now = year();
    return isRefusal(now) ? undefined : now;
  };
  /** Puts the year's malt, as one, where the house has its malt; told where a figure cannot be so. */
  const put = () => {
    const { mean, mashes } = found()!;
    const figures: readonly (readonly [NumberName, number])[] = [
      ['maltPerMash', mean.mass / mashes],
      ['maltMoisture', mean.moisture],
      ['solubleExtract', mean.extract],
      ['fermentability', mean.fermentability],
    ];
    const putFiguresBack = keepFigures();
    const wrong = figures.map(([figure, value]) => changeFigure(figure, Number(value.toFixed(2))));
    say(wrong.find((each) => each !== undefined) ?? `${name()} now has this malt.`, () => {
      putFiguresBack();
      return `${name()} has the malt that it had.`;
    });
  };
  useAnnouncement(
    'malts',
    () => [year(), said()],
    () => `${said()} ${found() ? `${format(found()!.mean.phenols, 'ppm')}, ${format(found()!.mean.spiritYield, 'yield')}.` : ''}`.trim(), // prettier-ignore
    () => desk,
  );

  return (
    <div ref={desk} class="stock-desk malts-desk">
      <Troubles />
      <section class="calculator stock" aria-labelledby="malts-basis-title">
        <h2 id="malts-basis-title">How the maltster states it</h2>
        <ChoiceField
          id="malts-basis"
          label="Extract and phenols are parts of"
          options={extractBases}
          value={given().basis}
          take={(basis) => change({ ...given(), basis: basis as Basis })}
        />
      </section>
      <Index each={given().campaigns}>
        {(grist, at) => (
          <section class="calculator stock" aria-labelledby={`grist-${at}-title`}>
            <h2 id={`grist-${at}-title`}>{grist().name}</h2>
            <div>
              <StockField
                id={`grist-${at}-name`}
                label="Name"
                text={grist().name}
                problem={named()[at]}
                take={(text) => rename(at, text.slice(0, LONGEST_CAMPAIGN_NAME + 1))}
              />
              <NumberField
                id={`grist-${at}-weeks`}
                label="Weeks of the year"
                kind="count"
                range={WEEKS}
                step={1}
                value={grist().weeks}
                take={(weeks) => withGrist(at, { weeks })}
              />
              <NumberField
                id={`grist-${at}-finalGravity`}
                label="Final gravity"
                kind="gravity"
                range={finalGravityField.range}
                step={finalGravityField.step}
                value={grist().finalGravity}
                meaning="Empty where the yeast goes as far as it does in your house."
                take={(finalGravity) => withGrist(at, { finalGravity })}
                clear={() => withGrist(at, { finalGravity: undefined })}
              />
              <RowsField
                id={`grist-${at}-malts`}
                of={rowsOf}
                rows={grist().malts as unknown as readonly Row[]}
                take={(rows) => withGrist(at, { malts: rows as never })}
                onState={() => undefined}
              />
            </div>
            <Mean of={meanMalt(grist().malts, given().basis)} />
            <p class="actions">
              <button
                type="button"
                onClick={(event) => {
                  const gone = grist();
                  change({ ...given(), campaigns: given().campaigns.filter((_, i) => i !== at) });
                  say(`${gone.name} is taken out.`, () =>
                    given().campaigns.length < MOST_CAMPAIGNS &&
                    change({ ...given(), campaigns: given().campaigns.toSpliced(at, 0, gone) }) === undefined
                      ? `${gone.name} is back.`
                      : 'There is no room for it: take another out first.',
                  );
                  focusAfter(event, saying);
                }}
              >
                Take {grist().name} out
              </button>
            </p>
          </section>
        )}
      </Index>
      <section class="calculator stock" aria-labelledby="malts-year-title">
        <h2 id="malts-year-title">The malt of a year</h2>
        <Show when={given().campaigns.length === 0}>
          <p class="remark">{name()} has no grists yet. Add one: it begins with your house’s own malt.</p>
        </Show>
        <Show when={given().campaigns.length < MOST_CAMPAIGNS}>
          <p class="actions">
            <button type="button" id="grist-add" onClick={add}>
              Add a grist
            </button>
          </p>
        </Show>
        <Show when={found()}>
          {(now) => (
            <>
              <p class="remark">
                {formatCount(now().weeks, 'week')} of the {formatCount(house().weeksPerYear, 'week')} that you
                work, {formatCount(now().mashes, 'mash', 'mashes')},{' '}
                {format(now().mean.mass / 1000, 'count', 0)} t of malt. {otherWeeks()}
              </p>
              <Mean of={now().mean} />
              <div class="results">
                <dl class="others">
                  <Row says="It could give">{format(now().alcohol, 'alcohol', 0)}</Row>
                  <Row says="Phenols in it">
                    {format((now().mean.mass * now().mean.phenols) / 1e6, 'mass', 2)}
                  </Row>
                  <Row says="New spirit of the whole year">
                    {figureText(line(), 'heart.alcohol', 'year', 0)}
                  </Row>
                </dl>
              </div>
              <p class="actions">
                <button type="button" onClick={put}>
                  Make this the malt of your house
                </button>
              </p>
            </>
          )}
        </Show>
        <Said />
        <p class="purpose">
          Malt dust can explode and sacks hurt backs: <a href="/milling/safe/">stay safe</a>.
        </p>
      </section>
    </div>
  );
}

/** A grist as one malt; or why it is none. */
function Mean(props: { readonly of: ReturnType<typeof meanMalt> }) {
  const mean = (): MeanMalt | undefined => (isRefusal(props.of) ? undefined : props.of);
  const rows = (of: MeanMalt): readonly (readonly [string, string])[] => [
    ['Moisture', format(of.moisture, 'percent')],
    ['Extract, as it is', format(of.extract, 'percent')],
    ['Extract, dry', format(of.extractDry, 'percent')],
    ['Fermentability', format(of.fermentability, 'percent')],
    ['Phenols, as it is', format(of.phenols, 'ppm')],
    ['It could give', format(of.spiritYield, 'yield')],
  ];
  return (
    <Show when={mean()} fallback={<p class="remark">{isRefusal(props.of) ? props.of.refused : ''}</p>}>
      {(now) => (
        <div class="results">
          <dl class="others">
            <For each={rows(now())}>{([says, value]) => <Row says={says}>{value}</Row>}</For>
          </dl>
        </div>
      )}
    </Show>
  );
}

function Row(props: { readonly says: string; readonly children: string }) {
  return (
    <div>
      <dt>{props.says}</dt>
      <dd class="number">{props.children}</dd>
    </div>
  );
}
