// Remembers what the book tells of the reader's house, and says once what a corrected book tells otherwise.
// What the book last told is kept with its stamp (src/build/stamp.ts) and compared when the stamp is another: tests/house/corrected.test.ts.
import { bookStamp } from '../house/book.ts';
import { keepText, keptText } from '../browser/browser-store.ts';
import {
  correctedSince,
  rememberedFigures,
  nameOfRemembered,
  readRemembered,
  withRemembered,
  type Corrected,
  type LastTold,
  type ToldFigures,
} from '../house/corrected.ts';
import { isVisit, liveLine, liveName } from '../browser/house-store.ts';
import {
  BUILT_IN_HOUSE,
  textOfPageHouse as own,
  setCorrectionsTold,
  REMEMBERED_KEY,
} from '../browser/corrections-store.ts';
import { announce } from '../islands/announce.ts';

const MOST = 5; // figures that are named

const remembered = () => readRemembered(keptText(REMEMBERED_KEY)).get(liveName());
const remember = (told: LastTold) => {
  keepText(REMEMBERED_KEY, withRemembered(readRemembered(keptText(REMEMBERED_KEY)), liveName(), told));
  setCorrectionsTold(told.news.length === 0);
};

/** What the book tells of the house as it stands; that of the built-in house was reckoned when the book was built. */
async function toldNow(): Promise<ToldFigures> {
  if (own() !== BUILT_IN_HOUSE) return rememberedFigures(liveLine());
  const told = await fetch(new URL('../told.json', import.meta.url));
  return (await told.json()) as ToldFigures;
}

const element = <T extends keyof HTMLElementTagNameMap>(
  tag: T,
  text: string,
  with_: Partial<HTMLElementTagNameMap[T]> = {},
) => Object.assign(document.createElement(tag), { textContent: text }, with_);

/** Says above the text what is told otherwise, until the reader puts it away. */
function say(news: readonly Corrected[]): void {
  const head = `This book was corrected: ${news.length === 1 ? 'one of the figures' : `${news.length} figures`} of ${liveName()} ${news.length === 1 ? 'is' : 'are'} told otherwise.`;
  const list = element('ul', '');
  for (const { path, was, now } of news.slice(0, MOST)) {
    const { name, stage } = nameOfRemembered(path);
    const item = element('li', ': ');
    item.prepend(element('a', name, { href: new URL(`../house/${stage}/`, import.meta.url).href }));
    item.append(`${was} → ${now}`);
    list.append(item);
  }
  if (news.length > MOST) list.append(element('li', `and ${news.length - MOST} more`));
  const cards = element('p', 'Cards that were printed before carry the old figures: ');
  cards.append(
    element('a', 'print new ones', { href: new URL('../cards/', import.meta.url).href }),
    '. A sheet says by itself which of its answers moved. ',
    element('a', 'All changes to the book', { href: new URL('../changes/', import.meta.url).href }),
    '.',
  );
  const box = element('div', '', { className: 'visit corrected' });
  box.setAttribute('role', 'region');
  box.setAttribute('aria-label', 'What was corrected');
  const away = element('button', 'I have seen it', { type: 'button' });
  away.addEventListener('click', () => {
    const told = remembered();
    if (told) remember({ ...told, news: [] });
    box.remove();
    document.getElementById('main')?.focus({ preventScroll: true });
  });
  const actions = element('p', '', { className: 'actions' });
  actions.append(away);
  box.append(element('p', head), list, cards, actions);
  document.querySelector('.sheet')?.before(box);
  announce('corrected', () => head);
}

async function compare(): Promise<void> {
  if (isVisit()) return;
  const [before, house] = [remembered(), own()];
  if (before?.book === bookStamp && before.house === house)
    return before.news.length > 0 ? say(before.news) : void setCorrectionsTold(true);
  const figures = await toldNow();
  if (own() !== house || isVisit()) return; // changed meanwhile
  const news = before?.house === house ? correctedSince(before, figures) : [];
  remember({ book: bookStamp, house, figures, news });
  if (news.length > 0) say(news);
}

void compare().catch(() => undefined); // where nothing can be kept or fetched, nothing is compared
// A house that was changed on this page is remembered as it was last told.
addEventListener('pagehide', () => {
  const [before, house] = [remembered(), own()];
  if (isVisit() || house === BUILT_IN_HOUSE || before?.house === house) return;
  remember({ book: bookStamp, house, figures: rememberedFigures(liveLine()), news: [] });
});
