// In any browser, and whatever becomes of the page's other scripts: says when they did not come, and mends links in pages opened from a file.
(function () {
  var root = document.documentElement;
  function say(reason) {
    root.setAttribute('data-script', reason);
  }
  /** Fields that would have come with their islands: seen, if of no use. */
  function bringFields() {
    document.querySelectorAll('astro-island noscript').forEach(function (kept) {
      var fields = new DOMParser().parseFromString(kept.textContent, 'text/html').body.firstChild;
      kept.parentNode.replaceChild(fields, kept);
    });
  }
  if (location.protocol === 'file:') {
    say('file');
    addEventListener('load', bringFields);
    document.addEventListener('click', function (event) {
      var link = event.target.closest && event.target.closest('a[href]');
      if (link && link.protocol === 'file:' && link.pathname.slice(-1) === '/') link.pathname += 'index.html';
    });
    return;
  }
  // By then each script of the page has run or failed; the page's own says that it ran.
  addEventListener('load', function () {
    var hydrates = !document.querySelector('astro-island') || customElements.get('astro-island');
    if (root.hasAttribute('data-script') && hydrates) return;
    say('lost');
    bringFields();
  });
  addEventListener('astro:hydration-error', function () {
    say('lost');
  });
})();
