// What a guide reads aloud once, so that the walk knows how many words go into a minute.

export const PASSAGE_TO_READ =
  'Good morning, and welcome. Before we go in, three things. Keep to the yellow line, and keep your hands in your pockets where it is hot. Nobody goes back alone, so if you want to leave, tell me first. And ask whatever you like; if I do not know, I will find somebody who does. What you are going to see has not changed much: barley is made to sprout, dried and ground, and its sugar is washed out with hot water. Yeast turns the sugar into alcohol. The stills draw the alcohol off, twice, and we keep the middle of it. Then it goes into oak, and then we wait. The waiting is the longest part, and I promise that this morning you will do very little of it.';
