// Runs before all else, in any browser: says when the rest of the page's script cannot come, and mends links in pages opened from a file.
(function () {
  var root = document.documentElement;
  function fail(reason) {
    if (!root.hasAttribute('data-script')) root.setAttribute('data-script', reason);
  }
  if (location.protocol === 'file:') {
    fail('file');
    document.addEventListener('click', function (event) {
      var link = event.target.closest && event.target.closest('a[href]');
      if (link && link.protocol === 'file:' && link.pathname.slice(-1) === '/') link.pathname += 'index.html';
    });
  }
  addEventListener(
    'error',
    function (event) {
      if (event.target && event.target.tagName === 'SCRIPT') fail('lost');
    },
    true,
  );
  addEventListener('astro:hydration-error', function () {
    fail('lost');
  });
})();
