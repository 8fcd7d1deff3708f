// A part of a page that is fetched once it is wanted; where it cannot be fetched, the page is as good without it.
import { createComponent, createEffect, createSignal, Show, type Component, type JSX } from 'solid-js';

export function fetchedWhenWanted<P extends object>(
  come: () => Promise<Component<P>>,
): (props: P & { readonly isWanted: boolean }) => JSX.Element {
  return (props) => {
    const [Part, setPart] = createSignal<Component<P>>();
    createEffect(() => {
      if (props.isWanted && !Part())
        come().then(
          (part) => setPart(() => part),
          () => undefined,
        );
    });
    return <Show when={props.isWanted && Part()}>{(part) => createComponent(part(), props)}</Show>;
  };
}
