/** English words of which four are drawn for a guest: short, common, easily told apart, and none that hurts. */
export const englishWords = `
  acorn amber anchor apple apron arrow aspen autumn badge baker balcony bamboo banjo barley barn basket
  beach beacon beaver berry bicycle birch biscuit blanket blossom bonfire bottle boulder bracket branch
  bread breeze brick bridge bronze brook brush bucket butter button cabin cactus camel candle canoe canvas
  canyon captain caravan carpet carrot castle cedar cellar chalk chapel cherry chestnut chimney cider cinema
  circle circus clay clever cliff clock cloud clover coast cobalt coffee comet compass copper coral corner
  cotton cousin cradle crane crater crayon cricket crown crystal curtain cushion daisy dancer dawn desert
  diamond dolphin donkey dragon drawer drum dune eagle early echo elbow ember emerald engine evening falcon
  farmer feather fence ferry fiddle field finger flag flame flannel flute forest fossil fountain fox frost
  galaxy garden garlic gate ginger giraffe glacier glove golden goose granite grape gravel guitar hammer
  hammock harbour harp harvest hazel hedge helmet heron hill hockey holiday hollow honey horizon horse hotel
  iceberg igloo indigo island ivory ivy jacket jasmine jelly jewel jigsaw jolly journey juggler jungle
  juniper kayak kernel kettle kitchen kitten koala ladder lagoon lantern larch laurel lavender leather
  legend lemon lentil library lilac lily linen lizard lobster locket lotus lunar magnet mango maple marble
  market marsh meadow melody melon mermaid midnight mirror mitten monsoon morning mosaic mountain museum
  mustard napkin nectar needle nickel north nutmeg oasis oat ocean olive onion opera orange orbit orchard
  orchid organ otter oven owl oyster paddle painter palace panda paper parade parcel parrot pasta pastry
  patio peach pebble pelican pencil penguin pepper petal piano picnic pigeon pillow pilot pine pirate planet
  plum pocket poem polar pond poplar poppy porch postcard potato prairie pretzel puddle pumpkin puppet
  purple puzzle pyramid quarry quartz quiet quill quilt rabbit radio radish railway rainbow raisin ranger
  raven ribbon ridge ripple river robin rocket rooster rose rowing ruby saddle saffron sailor salmon sandal
  sapphire saturn savanna scarf school season shadow shell shepherd silver singer sketch skyline slate
  sleigh smooth snow sofa south sparrow spice spiral spring spruce squirrel stable stamp station stone storm
  story stream summer summit sunday sunset swallow swan syrup table talent tango teapot temple tennis
  thistle thunder ticket tiger timber toast tomato topaz torch tower tractor trumpet tulip tundra tunnel
  turtle umbrella uncle valley vanilla velvet village vine violet violin volcano waffle wagon walnut walrus
  water wave weaver wheat whistle willow window winter wizard wonder wood wool yacht yellow yogurt zebra
  zephyr zigzag
`
  .trim()
  .split(/\s+/);
