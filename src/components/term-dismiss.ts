// Lets Escape put away the meaning of a term that is shown by hover or focus.
addEventListener('keydown', ({ key }) => {
  if (key !== 'Escape') return;
  for (const term of document.querySelectorAll('.term:hover, .term:focus-within')) {
    term.classList.add('dismissed');
    const back = () => term.classList.remove('dismissed');
    term.addEventListener('pointerleave', back, { once: true });
    term.addEventListener('focusout', back, { once: true });
  }
});
