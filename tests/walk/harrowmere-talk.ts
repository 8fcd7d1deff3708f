// A talk of seven hundred words through Harrowmere, by its figures (content/houses/harrowmere.json and the line they make), and the room of each paragraph by hand.

export const rooms = ['barn', 'barn', 'mill', 'mash', 'mash', 'tun', 'tun', 'still', 'still', 'still', 'fill', 'fill'] as const; // prettier-ignore

export const talk = `Good morning, and welcome to Harrowmere. Come in out of the rain, there is room at the back. We are a small house. Stay with me, stay behind the yellow lines, and ask whatever you like.

This is the barn where the malt comes in. It is barley that has been steeped, allowed to sprout for some days, and then dried in a kiln before it knows what has happened to it. It comes to us at four and a half per cent moisture, dry enough to keep. To make what we need for one mash somebody had to grow just over 1.8 tonnes of barley. Chew a grain of it. It tastes of biscuit, and that sweetness is what we are after.

Mind the step, and through here is the mill. It has four rollers: the upper pair cracks the grain and the lower pair opens it. A tonne and a half of malt goes through for each mash, and it takes an hour. What comes out we call grist: a fifth of it is husk, a tenth is flour, and the rest is grits. No phones in here please: dust of malt in the air will burn.

Now it gets warm. In the mash tun the grist meets water, four litres of it to the kilo, and the mash stands at 64.5 degrees. At that heat the malt turns its own starch into sugar, with no help from us. After that comes the second water, at 75 degrees, and then a last one at 85, which we keep back and begin the next mash with.

What we draw off is called wort. There are 7,500 litres of it from each mash, at a gravity of 1058, and it is as sweet as it smells. The draff that is left, about 1.6 tonnes, goes to a farmer whose cows can tell the time by it. We mash six times a week, forty-six weeks of the year.

These are the washbacks, four of them, made of wood. Each one holds ten thousand litres, and we leave a good part of that for the froth. The wort is set at 19 degrees with thirty kilos of yeast, and for the first night you can hear it working. Do not lean over, and I mean that: the gas on top cannot be seen and it will put you on the floor. One mash gives off just under 450 kilos of it.

After 72 hours it is quiet, and the gravity has fallen to 998, a little lighter than water. Now it is a sort of beer of 8 per cent. It is strong and sour.

Through the double doors, and here are the stills. Two of them, of copper, one for each time that we distil. The wash still takes the whole of a washback, 7,500 litres, and in seven hours it gives us about 2,580 litres of low wines at 23 per cent.

Low wines go into the smaller one together with the foreshots and feints from the last run, so the charge of the spirit still is just over 3,600 litres at 26.4 per cent.

At the spirit safe the stillman makes his cuts. The first of the run he turns away, the heart he keeps, and at 62 per cent he turns the handle again. From one mash we keep about 846 litres of new spirit at 70 per cent, which is about 593 litres of pure alcohol. All the rest goes round once more.

Across the yard now, to the filling store. With water the spirit is brought down to 63.5 per cent and it goes into oak: mostly barrels, some hogsheads. We fill twenty-five casks a week, just under 1,150 a year. No flash in here, please, and no phones.

And this is the warehouse, with some eleven and a half thousand casks asleep in it. Each year 2 per cent of the alcohol leaves through the wood, and the angels have never sent a note of thanks. Ours stay for ten years. Then they are emptied and brought down to 46 per cent, and a cask gives about 350 bottles. That is all there is to it. Follow me back to the door, and those who are not driving may taste what ten years do.
`;
