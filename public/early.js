// In any browser: says when the page's scripts did not come, mends links in pages opened from a file, and keeps early clicks.
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
  addEventListener('load', function () {
    var hydrates = !document.querySelector('astro-island') || customElements.get('astro-island');
    if (root.hasAttribute('data-script') && hydrates) return;
    say('lost');
  });
  addEventListener('astro:hydration-error', function () {
    say('lost');
  });
  function waiting(event) {
    return event.target.closest && event.target.closest('astro-island[ssr]');
  }
  function once(island, act) {
    island.addEventListener('astro:hydrate', act, { once: true });
  }
  var hands = {
    click: function (event, island) {
      var button = event.target.closest('button');
      if (button)
        once(island, function () {
          button.click();
        });
    },
    keydown: function (event, island) {
      var knob = event.target;
      if (event.key !== 'Tab' && knob.getAttribute('role') === 'slider')
        once(island, function () {
          knob.dispatchEvent(new KeyboardEvent('keydown', { key: event.key, bubbles: true }));
        });
    },
    pointerdown: function (event, island) {
      island.setAttribute('data-pressed', event.clientY);
    },
  };
  function keep(event) {
    var island = waiting(event);
    if (island) hands[event.type](event, island);
  }
  for (var hand in hands) addEventListener(hand, keep, true);
  addEventListener(
    'astro:hydrate',
    function () {
      if (!document.querySelector('astro-island[ssr]'))
        for (var hand in hands) removeEventListener(hand, keep, true);
    },
    true,
  );
})();
