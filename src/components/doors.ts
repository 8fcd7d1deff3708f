// Shuts what stands open over the text, a door of the head or the list of headings: on Escape, on a press beside it, once the focus has gone past it, and when it has led somewhere on the page.
const standing = () => document.querySelector<HTMLDetailsElement>(':is(.door, .contents)[open]');

addEventListener('keydown', ({ key }) => {
  const open = standing();
  if (key !== 'Escape' || !open) return;
  const isInside = open.contains(document.activeElement);
  open.open = false;
  if (isInside) open.querySelector('summary')!.focus();
});
for (const event of ['pointerdown', 'focusin'])
  addEventListener(event, ({ target }) => {
    const open = standing();
    if (open && target instanceof Node && !open.contains(target)) open.open = false;
  });
addEventListener('hashchange', () => standing()?.removeAttribute('open'));
