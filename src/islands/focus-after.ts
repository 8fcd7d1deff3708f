// Where the focus goes when the control that had it is gone, or what it asked for stands elsewhere.

/** Moves the focus once the page has changed. A finger's tap leaves it, so that no keyboard opens over the page. */
export function focusAfter(event: Event, find: () => HTMLElement | null | undefined): void {
  if ((event as PointerEvent).pointerType === 'touch') return;
  queueMicrotask(() => find()?.focus());
}
