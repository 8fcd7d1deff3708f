// What visitors ask in each room, with the answers of this house.
import { createMemo, For, Show } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { withVessels } from '../house/facts-beside.ts';
import { facts, factSays, type FactId } from '../house/facts.ts';
import { useKnown } from '../browser/known-store.ts';
import { factsPart } from '../house/parts/facts.ts';
import { plantPart } from '../house/parts/plant.ts';
import { usePart } from '../browser/part-store.ts';
import { secondFigureText } from '../house/prose.ts';
import { useHouse } from '../browser/house-store.ts';
import { answerText, notSaid } from '../house/visitor-questions.ts';
import { questionsByRoom } from '../walk/guide-file.ts';
import type { Walk } from '../walk/walk.ts';
import { OtherHouse, useGuideWalk } from './guide-file-walk.ts';
import { RoomName } from './RoomName.tsx';
import type { WalkQuestion } from './WalkDesk.tsx';

export function AskedPart(props: {
  readonly walk: Walk;
  readonly questions: readonly WalkQuestion[];
  readonly under: 'h2' | 'h3';
  readonly root?: string;
}) {
  const questions = unwrap(props.questions);
  const { line, name } = useHouse();
  const { doubtAt, unknown } = useKnown();
  const { value: given } = usePart(factsPart);
  const { value: plant } = usePart(plantPart);
  const ofHouse = createMemo(() => withVessels(given(), plant()));
  const says = (fact: FactId) => factSays(ofHouse(), fact);
  const told = (path: string) => {
    const doubt = doubtAt(path);
    return secondFigureText(line(), path) + (doubt === undefined ? '' : ` (${doubt})`);
  };
  const rooms = createMemo(() => questionsByRoom(props.walk, questions));
  const open = () => [...new Set(rooms().flat().flatMap(({ say }) => notSaid(say, says)))]; // prettier-ignore
  return (
    <>
      <For each={rooms()}>
        {(asked, i) => (
          <Show when={asked.length > 0}>
            <section class="guide-room">
              <RoomName under={props.under} name={props.walk.rooms[i()]!.name} />
              <dl class="guide-asked">
                <For each={asked}>
                  {({ question, say }) => (
                    <div>
                      <dt>{question}</dt>
                      <dd>{answerText(say, line(), told, says, unknown())}</dd>
                    </div>
                  )}
                </For>
              </dl>
            </section>
          </Show>
        )}
      </For>
      <Show when={props.root !== undefined && open().length > 0}>
        <p class="meaning">
          {name()} does not say yet:{' '}
          {open()
            .map((fact) => facts[fact].label.toLowerCase())
            .join(', ')}
          . <a href={`${props.root}house/facts/`}>Say it on the fact sheet</a>
        </p>
      </Show>
    </>
  );
}

export default function GuideFileAsked(props: { readonly questions: readonly WalkQuestion[] }) {
  const { walk, other } = useGuideWalk();
  return (
    <div class="guide-file">
      <OtherHouse isWanted={other() !== undefined} other={other()!} root="../../" />
      <AskedPart walk={walk()} questions={props.questions} under="h2" root="../../" />
    </div>
  );
}
