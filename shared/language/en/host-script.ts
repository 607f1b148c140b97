import type { HostScript } from '../host-script.ts';

/** What the host says aloud, in English: two or three sentences, to be read out as they stand or said in one's own way. */
export const say: HostScript = {
  cues: {
    gathering: {
      newcomers:
        'Good evening, and come in. Find your place, pour yourself some water, and open the page on your phone. There is nothing you have to know tonight.',
      regulars:
        'Good evening, and welcome back. Find your place, fill your water glass, and open the page on your phone. We begin when everybody sits.',
      devotees:
        'Good evening. Take your place and your water, open the page, and leave the lids on for now. We begin when everybody sits.',
    },
    welcome: {
      newcomers:
        'Welcome, all of you. Tonight we taste slowly, one glass at a time, and I will tell you each step. Whatever you find in your glass is right, because you found it.',
      regulars:
        'Welcome. We go glass by glass: the senses first, then the pen, then the talk. Take your time; the room waits for you.',
      devotees:
        'Welcome. Tonight the senses come first and the words second, and nobody hears a word before everybody has their own. Let us give these glasses the quiet they deserve.',
    },
    'ground-rules': {
      newcomers:
        'A few kind rules. We all spit, me included. Until I open the talk, nobody says what they see, smell or taste. No word is wrong, and nobody reads your notes unless you share them.',
      regulars:
        'You know the rules: we spit, we keep quiet until the talk, no word is wrong, and your notes are yours. Please agree on your phone.',
      devotees:
        'The usual rules: spit every sip, keep quiet until the talk, no word is wrong, and your notes are yours. A raised eyebrow is also a word.',
    },
    farewell: {
      newcomers:
        'Thank you for tasting with me. Your notes are yours to keep; save them on your phone before you go. Nobody drives tonight, so let us see that everyone has a way home.',
      regulars:
        'Thank you for your company and your quiet. Save your notes before you leave. Nobody drives tonight: tell me if you need a way home.',
      devotees:
        'Thank you for your attention to these glasses. Keep your notes; they are worth reading again in a year. Nobody drives tonight, so tell me if you need a way home.',
    },
    ranking: {
      newcomers:
        'Quietly, each for yourself: put the glasses in your own order on your phone, best first. It is only about what you like.',
      regulars:
        'Quietly, each for yourself: put the glasses in your own order on your phone, best first. Taste again if you must.',
      devotees:
        'Quietly, each for yourself: your order on your phone, best first. Go back to the glasses and make up your mind.',
    },
    'odd-one-out': {
      newcomers:
        'Three glasses with codes: two are the same, one is not. Choose the odd one; if you cannot tell, guess. A guess counts.',
      regulars:
        'Three glasses with codes, and one is different. Choose it, and guess if you must: a guess counts.',
      devotees:
        'Three codes, and one of them is different. Everybody chooses, and a guess counts; keep your face still.',
    },
    discussion: {
      newcomers:
        'Now you may talk! Your phone asks what may go to the table: with your name, without it, or nothing. One tap will do. Then we go in the order on your phone, and anyone may pass: which one word are you fond of?',
      regulars:
        'The talk is open. Tap on your phone what goes to the table, with your name or without, and keep the rest. We go in the order on your phone; say so if you noticed something quite different.',
      devotees:
        'The talk is open. Tap what goes to the table, with your name or without. Let us start with where we differ.',
    },
    result: {
      newcomers:
        'Let us see what we made of these glasses, all of us together. Only the sum is shown, and nobody’s own order. Remember yours; it is not wrong when it differs.',
      regulars:
        'Let us see what the room made of these glasses. Only the sum of us is shown. Hold on to your own order: a majority has no better nose.',
      devotees: 'And now the room. Only the sum is shown; look at where we spread, not only at what won.',
    },
    reveal: {
      newcomers:
        'And now the names. Look at your notes first, and then at the label: which one surprises you most?',
      regulars:
        'And now the names. Hold on to your notes while you hear them: they are about the glass, not about the label.',
      devotees: 'And now the names. One last guess, silently, before I say them.',
    },
  },
  practice: {
    swirl:
      'Let us practise with plain water, where nothing can go wrong. Hold the glass by its stem, keep the foot on the table, and draw small circles.',
    look: 'Now hold the water against something white and tilt it a little. That is all there is to looking: light behind it, and a moment of patience.',
    nose: 'Bring the glass to your nose and close your eyes. Short, gentle breaths, mouth a little open. Water smells of almost nothing, and that is what we compare with.',
    sip: 'Take a small sip, no more than a teaspoon. Move it around your whole mouth and draw a little air in over it. It may sound silly; it should.',
    spit: 'And spit, close to the cup and with a little courage. There: the hardest thing of the evening is behind you.',
  },
  steps: {
    spirit: {
      'first/swirl':
        'Take the glass by its stem, lift the lid, and turn it once or twice. Slowly: we want to wake it, not to chase it.',
      'first/look':
        'Hold it against the white card and look. How deep is the colour, and how does it run down the glass?',
      'first/nose':
        'Close your eyes and bring the glass to your nose from below. Little breaths, mouth slightly open, and go back and forth. Say nothing, only notice.',
      'first/sip':
        'A small sip, just enough to wet the tongue. Move it everywhere, let it warm, and draw a little air over it.',
      'first/spit':
        'And spit, please, all of us. Then breathe out slowly through your nose and notice what stays.',
      'writing/look': 'Pens now. Look once more, and write down what you see before anything else.',
      'writing/nose':
        'Back to the nose with the glass, as often as you like. Write down whatever comes: a fruit, a room, a summer, somebody’s coat.',
      'writing/sip':
        'Another small sip, and let it go all the way round. This time listen to how it changes.',
      'writing/spit': 'Spit, and keep your words in your head for a moment longer.',
      'writing/palate':
        'Write down the taste: what came first, what came after, and how it felt in the mouth.',
      'writing/finish':
        'And now the end. How long does it stay, and what is the last thing to leave? Write that down.',
      'closing/review':
        'Read your page from top to bottom, and go back to the glass. Is it still in there? Change what is no longer true.',
      'closing/reflect':
        'Put the glass down. One line about what this one made you think of, or feel. It need not be about the drink at all.',
    },
    wine: {
      'first/swirl':
        'Keep the foot on the table and draw a few small circles. The air does the work; you only invite it in.',
      'first/look':
        'Tilt the glass over the white card and look from above: first at the middle, then at the rim. How does the colour fade?',
      'first/nose':
        'Eyes closed, nose in the glass, one long easy breath. Then a few short ones. Say nothing, only notice.',
      'first/sip':
        'A small sip, and let it cover the whole tongue. Draw a little air through it. Where do you feel it: the sides, the gums, the roof?',
      'first/spit': 'And spit, please, all of us. Count quietly how long it stays with you.',
      'writing/look':
        'Pens now. Tilt it once more, and write down the colour and the rim before anything else.',
      'writing/nose':
        'Back to the nose, with a swirl whenever it goes quiet. Write down what comes: fruit, flowers, a kitchen, a forest floor.',
      'writing/sip': 'Another sip, and some air. This time feel for freshness, sweetness and grip.',
      'writing/spit': 'Spit, and keep your words in your head for a moment longer.',
      'writing/palate':
        'Write down the taste and the feel: what is fresh, what is dry, what is round, and in which order.',
      'writing/finish':
        'And now the end. How long does it stay, and does it make you want to eat something? Write that down.',
      'closing/review':
        'Read your page from top to bottom, and go back to the glass: it has had some air by now. Is it all still in there? Change what is no longer true.',
      'closing/reflect':
        'Put the glass down. One line about where this wine took you, or who you would open it with.',
    },
    beer: {
      'first/swirl':
        'Turn the glass gently, two or three times, to wake the foam. Be quick: what rises now is soon gone.',
      'first/look':
        'Hold it against the white card. How clear is it, how deep, and how does the foam cling to the glass?',
      'first/nose':
        'Nose over the foam at once, short breaths, eyes closed. Then once more from further away. Say nothing, only notice.',
      'first/sip':
        'A sip big enough to feel the bubbles, moved all around. Wait for the bitterness; it comes last.',
      'first/spit':
        'And spit, please, all of us, even with beer. Then breathe out through your nose: much of it is there.',
      'writing/look': 'Pens now. Colour, haze and foam: write down what you see before it settles.',
      'writing/nose':
        'A turn of the glass, and back to the nose. Write down what comes: bread, grass, fruit, spice, a farmyard, all are welcome.',
      'writing/sip':
        'Another sip, and let the bubbles fade on your tongue. This time listen for sweet against bitter.',
      'writing/spit': 'Spit, and keep your words in your head for a moment longer.',
      'writing/palate':
        'Write down the taste and the body: thin or full, soft or prickly, and what is underneath the bitterness.',
      'writing/finish': 'And now the end. Is it clean, does it linger, is it dry? Write that down.',
      'closing/review':
        'Read your page from top to bottom, and go back to the glass, which is warmer now. Is it all still in there? Change what is no longer true.',
      'closing/reflect':
        'Put the glass down. One line about the place or the weather in which you would want this beer.',
    },
  },
  more: {
    newcomers: {
      'first/look': 'There is no right answer; the first word is good enough.',
      'first/nose': 'If you smell nothing at all, rest and come back: that happens to everybody.',
      'first/sip': 'It may be strong or strange at first; the second moment tells you more.',
      'writing/nose': 'You may pick from the words on your phone if your own will not come.',
      'writing/palate': 'Three words are plenty.',
    },
    regulars: {
      'first/nose': 'Try the left and the right nostril by turns.',
      'writing/palate': 'Put the moments in order, if you can.',
    },
    devotees: {
      'first/look': 'Note it silently; the pen waits for the second pass.',
      'first/nose': 'Try for families before single things, and do not settle yet.',
      'writing/nose': 'Be as exact as you can: not fruit but which, not which but how ripe.',
      'writing/palate': 'Separate what you taste from what you feel.',
      'writing/finish': 'Give it time; what comes late is often the best of it.',
    },
  },
  water: {
    spirit:
      'Water, please: a good mouthful, and another. If your nose is tired, smell the back of your own hand; it knows you best.',
    wine: 'Water, please, and a bite of plain bread if you like. The next glass wants a clean mouth.',
    beer: 'Water, please, and a bite of plain bread if you like. Let the bitterness go before the next one.',
  },
  break: {
    planned:
      'Time for a break. Stand up, open a window, drink water and eat a little something. Leave the next glasses alone; I will call you back.',
    called:
      'Let us pause here for a few minutes. Water, air, whatever you need. Nothing is lost: afterwards we start this step again.',
  },
  beforeTalk: {
    newcomers:
      'Finish your sentence, and then put the pen down. In a moment we talk, and your phone asks what of your page may go to the table. It is yours until you say so.',
    regulars:
      'Finish your sentence, please, and pens down. In a moment we talk, and your phone asks what may go to the table; take one last look at your page.',
    devotees:
      'Finish your sentence, and pens down. From here on your notes stay as they are; what of them goes to the table, your phone asks you.',
  },
  rankingNamed:
    'Now that you know the names: put the glasses in your own order on your phone, best first. Try to rank what was in the glass, and not the label.',
  drops:
    'Now the water: three drops, no more, and a slow turn. Give it a moment, then compare with what you found in it neat.',
  anyStep: 'Take your time with this one, and stay with your own glass.',
};
