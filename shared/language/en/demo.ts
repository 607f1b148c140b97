/** What is written in the demo evening: an invented place, and producers that do not exist. */
export const demoWords = {
  title: 'Six lanterns: an evening from orchard to smoke',
  hostName: 'Maren',
  place: 'The old ferry house, Quellhaven',
  welcome: 'Come hungry for smells, not for food. Eat before you come, and leave the car at home.',
  pours: {
    orchardWall: {
      name: 'Orchard Wall',
      producer: 'Tarnweather Still',
      region: 'Fennmark hills',
      style: 'single malt, unpeated',
      cask: 'first-fill maple-toasted oak',
      story: 'The still stands against a pear orchard, and in a warm autumn the door is left open.',
    },
    slowCandle: {
      name: 'Slow Candle',
      producer: 'Varrowmere & Daughters',
      region: 'Fennmark hills',
      style: 'single malt, unpeated',
      cask: 'refill oak',
      story: 'Three sisters took turns at the fire, and never agreed about the cut.',
    },
    bellfoundersRest: {
      name: 'Bellfounder’s Rest',
      producer: 'Ostrevane Distillery',
      region: 'Lower Quell valley',
      style: 'grain and malt',
      cask: 'sweet-wine butt',
    },
    saltOnTheSill: {
      name: 'Salt on the Sill',
      producer: 'Hollin Skerry Works',
      region: 'Quell coast',
      style: 'single malt, coastal',
      cask: 'refill oak, warehouse by the sea',
    },
    secondLighthouse: {
      name: 'Second Lighthouse',
      producer: 'Hollin Skerry Works',
      region: 'Quell coast',
      style: 'single malt, peated',
      cask: 'first-fill oak',
    },
    charcoalBurnersCoat: {
      name: 'Charcoal Burner’s Coat',
      producer: 'Nine Embers Stillhouse',
      region: 'Moss islands',
      style: 'single malt, heavily peated',
      cask: 'small charred oak',
      story: 'Cut strong and bottled young, because the founder could not wait.',
    },
  },
};
export type DemoWords = typeof demoWords;
