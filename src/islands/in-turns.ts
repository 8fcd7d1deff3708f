// Work in pieces, each in a task of its own, so that the page answers between them; all of it before a page is printed.

/** A row of work: what is given to it takes the place of what it has not done yet. */
export function inTurns(): (pieces: readonly (() => void)[]) => void {
  let left: (() => void)[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const next = () => {
    const piece = left.shift();
    timer = left.length > 0 ? setTimeout(next) : undefined;
    piece?.();
  };
  if (typeof document !== 'undefined')
    addEventListener('beforeprint', () => {
      while (left.length > 0) next();
      clearTimeout(timer);
    });
  return (pieces) => {
    clearTimeout(timer);
    left = [...pieces];
    timer = setTimeout(next);
  };
}
