// What makes zip files, by itself: a page that only packs links fetches none of it.
export { strToU8, zipSync } from 'fflate';
