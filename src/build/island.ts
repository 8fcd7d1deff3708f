// Takes an island over in the browser, once all that it shows has come: until then the text stands as it was built.
import { createComponent, Suspense, type Component, type JSX } from 'solid-js';
import { hydrate } from 'solid-js/web';
import { nextTask } from '../house/next-task.ts';
import { builtInLine } from '../house/line-of.ts';

type Props = Readonly<Record<string, unknown>>;
interface Island extends Component<Props> {
  /** Fetches what this island shows besides its own script. */
  readonly fetched?: (props: Props) => Promise<unknown>;
}

/** What an author wrote between an island's tags, by the name of its place. */
function slotsOf(element: HTMLElement): Props {
  const own = [...element.querySelectorAll('astro-slot')].filter(
    (slot) => slot.parentElement!.closest('astro-island') === element,
  );
  return Object.fromEntries(own.map((slot) => [slot.getAttribute('name') ?? 'children', slot]));
}

/** Each island is taken over in a task of its own, so that a hand never waits for all of them; and so is the line reckoned that nearly all of them show. */
let before: Promise<void> = nextTask().then(() => void builtInLine());

export default (element: HTMLElement) =>
  async (island: Island, props: Props): Promise<void> => {
    if (!element.hasAttribute('ssr')) return;
    try {
      await island.fetched?.(props);
    } catch (error) {
      element.dispatchEvent(new CustomEvent('astro:hydration-error', { bubbles: true, composed: true }));
      throw error;
    }
    await (before = before.then(nextTask));
    const all = { ...props, ...slotsOf(element) };
    const drawn = () => createComponent(island, all);
    // The built page was drawn inside one of these; both must agree.
    const whole = () => createComponent(Suspense, { get children() { return drawn() as JSX.Element; } }); // prettier-ignore
    hydrate(whole, element, { renderId: element.dataset['solidRenderId'] ?? '' });
  };
