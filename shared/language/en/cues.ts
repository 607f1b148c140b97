/**
 * What a guest's screen says at each cue: one verb and one line. Steps differ by drink where the hand does something
 * else. Another language is one more file of this shape.
 */
export interface CueWords {
  readonly verb: string;
  readonly hint: string;
}

export const cueWords = {
  gathering: { verb: 'Arrive', hint: 'Sit down and leave the glasses alone for now. We begin together.' },
  welcome: { verb: 'Listen', hint: 'Your host opens the evening.' },
  'ground-rules': { verb: 'Agree', hint: 'A few rules, so that we each find our own words.' },
  water: { verb: 'Water', hint: 'Drink some, and rinse your mouth. A bite of plain bread helps.' },
  break: { verb: 'Break', hint: 'Water, something to eat, fresh air. Leave the full glasses alone.' },
  ranking: { verb: 'Rank', hint: 'Which one did you like best? Keep it to yourself for now.' },
  rankingNamed: { verb: 'Rank', hint: 'Now that you know the names: which one did you like best?' },
  'odd-one-out': { verb: 'Compare', hint: 'Two are the same and one is not. Keep it to yourself for now.' },
  discussion: { verb: 'Talk', hint: 'Say it in your own words, or just listen.' },
  result: { verb: 'Result', hint: 'What the room made of these glasses.' },
  reveal: { verb: 'Names', hint: 'This is what you tasted.' },
  farewell: { verb: 'Goodbye', hint: 'Drink a glass of water, and do not drive tonight.' },
  practice: {
    swirl: { verb: 'Swirl', hint: 'Only water. Keep the foot on the table and draw small circles.' },
    look: { verb: 'Look', hint: 'Only water. Hold it against this white card, a little tilted.' },
    nose: { verb: 'Nose', hint: 'Only water. Eyes closed, short breaths. A soft tone ends it.' },
    sip: { verb: 'Sip', hint: 'Only water. A small sip, moved around, with a little air drawn in.' },
    spit: { verb: 'Spit', hint: 'Into the cup, in one go. Everybody does, all evening.' },
  },
  step: {
    swirl: {
      spirit: { verb: 'Swirl', hint: 'Lid off. Tilt and turn it slowly, and let it settle.' },
      wine: { verb: 'Swirl', hint: 'Foot on the table, small circles, and let it settle.' },
      beer: { verb: 'Swirl', hint: 'Two or three gentle turns, to wake the foam.' },
    },
    drops: { verb: 'Add 3 drops', hint: 'Of water. Turn the glass slowly, and let it settle.' },
    look: {
      spirit: { verb: 'Look', hint: 'Hold it against the white. How deep is the colour?' },
      wine: { verb: 'Look', hint: 'Tilt it over the white. See the middle, then the rim.' },
      beer: { verb: 'Look', hint: 'Hold it against the white. Colour, haze, foam.' },
    },
    nose: {
      spirit: { verb: 'Nose', hint: 'Eyes closed, lips a little open. Come closer bit by bit.' },
      wine: { verb: 'Nose', hint: 'Eyes closed. One long, easy breath, then a few short ones.' },
      beer: { verb: 'Nose', hint: 'Eyes closed. Short breaths just above the foam.' },
    },
    sip: {
      spirit: { verb: 'Sip', hint: 'A very small one. Move it around, draw in a little air.' },
      wine: { verb: 'Sip', hint: 'Move it around the mouth and draw in a little air.' },
      beer: { verb: 'Sip', hint: 'Let it run over the whole tongue, and breathe out slowly.' },
    },
    spit: {
      spirit: { verb: 'Spit', hint: 'Into the cup. Then notice what stays.' },
      wine: { verb: 'Spit', hint: 'Into the cup. Then notice what stays.' },
      beer: { verb: 'Spit', hint: 'Into the cup. Then notice what stays.' },
    },
    review: { verb: 'Review', hint: 'Your own page, from the top. Is it still in the glass?' },
    reflect: { verb: 'Reflect', hint: 'What does this glass remind you of? How do you feel about it?' },
  },
  write: {
    look: { verb: 'Write', hint: 'Take the glass up again. What do you see?' },
    nose: { verb: 'Write', hint: 'Nose it again. What do you smell?' },
    palate: { verb: 'Write', hint: 'What was it like in your mouth?' },
    finish: { verb: 'Write', hint: 'What stays now, and for how long?' },
  },
};

export type CueWordSheet = typeof cueWords;
