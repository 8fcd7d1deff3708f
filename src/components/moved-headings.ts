// Goes on to the page on which a heading, calculator or caution of this chapter now stands, when the address names one that is no longer here.
const kept = document.getElementById('moved-headings')?.dataset['moved'];
const wanted = decodeURIComponent(location.hash.slice(1));
const here = document.getElementById(wanted);
if (kept && wanted && (!here || here.matches('.dangers > li'))) {
  const moved: unknown = JSON.parse(kept);
  const path = moved && typeof moved === 'object' && Object.hasOwn(moved, wanted) ? (moved as Record<string, unknown>)[wanted] : undefined; // prettier-ignore
  if (typeof path === 'string') location.replace(`${path}#${wanted}`);
}
