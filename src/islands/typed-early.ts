// What a reader gave a field as it was built, before its script came.
import { sharedConfig } from 'solid-js';
import { isServer } from 'solid-js/web';

/** The field as it was built with the page; nothing where there was none. */
const built = (id: string) => (isServer || !sharedConfig.context ? null : document.getElementById(id));

/** What was typed; nothing where the field was left as it was. */
export function typedEarly(id: string): string | undefined {
  const field = built(id) as HTMLInputElement | null;
  return field && field.value !== field.defaultValue ? field.value : undefined;
}

/** What was chosen; nothing where the choice was left as it was. */
export function chosenEarly(id: string): string | undefined {
  const field = built(id) as HTMLSelectElement | null;
  return field && field.selectedOptions[0]?.defaultSelected === false ? field.value : undefined;
}
