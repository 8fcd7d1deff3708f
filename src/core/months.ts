// The names of the months, January first.
export const months: readonly string[] =
  'January February March April May June July August September October November December'.split(' ');
