// The steps that a key asks of a handle: right and up raise its figure, left and down lower it, on every drawing.
export const keySteps: Readonly<Record<string, number>> = { ArrowUp: 1, ArrowRight: 1, PageUp: 10, ArrowDown: -1, ArrowLeft: -1, PageDown: -10 }; // prettier-ignore
