// In any browser, and whatever becomes of the page's other scripts: says when they did not come, and mends links in pages opened from a file.
(function () {
  var root = document.documentElement;
  function say(reason) {
    root.setAttribute('data-script', reason);
  }
  if (location.protocol === 'file:') {
    say('file');
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
  });
  addEventListener('astro:hydration-error', function () {
    say('lost');
  });
})();
