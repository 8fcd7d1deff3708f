// What is practised: a topic and a level, or all of them.
import { For } from 'solid-js';
import { levels, levelTitles, topics, topicTitles, type Level, type Topic } from '../exercises/topics.ts';

export function PracticeChoices(props: {
  readonly topic: Topic | 'all';
  readonly level: Level | 'all';
  readonly chooseTopic: (topic: string) => void;
  readonly chooseLevel: (level: Level | 'all') => void;
}) {
  return (
    <form class="choose" autocomplete="off" onSubmit={(event) => event.preventDefault()}>
      <div class="field">
        <label for="practice-topic">Practise</label>
        <select
          id="practice-topic"
          autocomplete="off"
          value={props.topic}
          onChange={(event) => props.chooseTopic(event.currentTarget.value)}
        >
          <option value="all">everything, mixed</option>
          <For each={topics}>{(each) => <option value={each}>{topicTitles[each]}</option>}</For>
        </select>
      </div>
      <div class="field">
        <label for="practice-level">Level</label>
        <select
          id="practice-level"
          autocomplete="off"
          value={String(props.level)}
          onChange={(event) =>
            props.chooseLevel(levels.find((each) => String(each) === event.currentTarget.value) ?? 'all')
          }
        >
          <option value="all">all three</option>
          <For each={levels}>
            {(each) => <option value={String(each)}>{`${each}: ${levelTitles[each]}`}</option>}
          </For>
        </select>
      </div>
    </form>
  );
}
