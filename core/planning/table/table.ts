import { laidDepth, laidWidth, leastPlaceWidth, placeDepthMm } from './place-setting.ts';

/** A table's top, in mm. */
export type Table =
  | {
      readonly shape: 'rectangle';
      readonly lengthMm: number;
      readonly widthMm: number;
      /** Where people sit: along one long side, along both, or at the ends too. */
      readonly seated: 'one-side' | 'both-sides' | 'all-round';
    }
  | { readonly shape: 'round'; readonly diameterMm: number }
  | {
      /** Tables joined to three sides of a square; people sit on the outer sides. */
      readonly shape: 'horseshoe';
      /** The outer length of the side across, and of each leg with its corner. */
      readonly acrossMm: number;
      readonly legMm: number;
      /** From the outer to the inner side. */
      readonly depthMm: number;
    };

export interface TablePlaces {
  readonly places: number;
  /** How many at each side that people sit at; a round table has one. */
  readonly sides: readonly number[];
  /** What each gets of the edge where it is shared most narrowly, in mm; 0 where nobody can sit. */
  readonly widthEachMm: number;
}

const mostMm = 100_000;
/** Half a millimetre is no reason to send a guest away. */
const slackMm = 0.5;

function measured(...sizes: readonly number[]): void {
  if (!sizes.every((size) => size > 0 && size <= mostMm)) {
    throw new RangeError('Measure the table in millimetres: each side above 0 and up to 100 metres.');
  }
}

const along = (lengthMm: number, widthMm: number) => Math.max(0, Math.floor((lengthMm + slackMm) / widthMm));

interface Run {
  readonly lengthMm: number;
  readonly places: number;
}

function summed(runs: readonly Run[]): TablePlaces {
  const widths = runs.filter(({ places }) => places > 0).map(({ lengthMm, places }) => lengthMm / places);
  return {
    places: runs.reduce((sum, { places }) => sum + places, 0),
    sides: runs.map(({ places }) => places),
    widthEachMm: widths.length > 0 ? Math.min(...widths) : 0,
  };
}

/** A place at an end takes its depth from both long sides: with or without, whichever seats more. */
function rectangle(lengthMm: number, widthMm: number, ends: boolean, each: number): TablePlaces {
  const facing = widthMm + slackMm >= 2 * placeDepthMm;
  const counts = ends && facing ? [0, 1, 2] : [0];
  const options = counts
    .filter((count) => count * placeDepthMm <= lengthMm)
    .map((count) => {
      const sideMm = lengthMm - count * placeDepthMm;
      const side = { lengthMm: sideMm, places: along(sideMm, each) };
      const end = { lengthMm: widthMm, places: along(widthMm, each) };
      return summed([...(facing ? [side, side] : [side]), ...Array.from({ length: count }, () => end)]);
    });
  return options.reduce((best, option) => (option.places > best.places ? option : best));
}

/**
 * Round a table each place needs its width along the edge, and what lies on it its own slice: the far corners of two
 * neighbours do not meet towards the middle. One guest alone has the whole table, where it holds a place at all.
 */
function round(diameterMm: number, each: number, computer: boolean): TablePlaces {
  const lengthMm = Math.PI * diameterMm;
  const half = laidWidth(computer) / 2;
  // The edge bends away from a place, so that what lies on it begins further in than on a straight one.
  const far = Math.sqrt(Math.max(0, (diameterMm / 2) ** 2 - half ** 2)) - laidDepth();
  if (far <= 0) return summed([{ lengthMm, places: diameterMm >= laidWidth(computer) ? 1 : 0 }]);
  const slices = Math.floor(Math.PI / Math.atan(half / far));
  return summed([{ lengthMm, places: Math.max(1, Math.min(along(lengthMm, each), slices)) }]);
}

/**
 * How many places a table holds, each as wide as asked, or as wide as a place must be. Throws a RangeError on sizes
 * that are none and on a place narrower than the least.
 */
export function placesAtTable(
  table: Table,
  computer: boolean,
  placeWidthMm: number = leastPlaceWidth(computer),
): TablePlaces {
  if (!(placeWidthMm >= leastPlaceWidth(computer) && placeWidthMm <= mostMm)) {
    throw new RangeError(`Give each place at least ${leastPlaceWidth(computer)} mm of the table's edge.`);
  }
  switch (table.shape) {
    case 'rectangle': {
      const { lengthMm, widthMm, seated } = table;
      measured(lengthMm, widthMm);
      if (Math.min(lengthMm, widthMm) + slackMm < placeDepthMm) return summed([]);
      if (seated !== 'one-side') return rectangle(lengthMm, widthMm, seated === 'all-round', placeWidthMm);
      return summed([{ lengthMm, places: along(lengthMm, placeWidthMm) }]);
    }
    case 'round':
      measured(table.diameterMm);
      return round(table.diameterMm, placeWidthMm, computer);
    case 'horseshoe': {
      const { acrossMm, legMm, depthMm } = table;
      measured(acrossMm, legMm, depthMm);
      if (depthMm + slackMm < placeDepthMm) return summed([]);
      const free = legMm - placeDepthMm;
      const leg = { lengthMm: free, places: along(free, placeWidthMm) };
      return summed([{ lengthMm: acrossMm, places: along(acrossMm, placeWidthMm) }, leg, leg]);
    }
  }
}

/** How many such tables seat everybody; undefined where nobody can sit at one. */
export function tablesFor(guests: number, { places }: TablePlaces): number | undefined {
  return places > 0 ? Math.ceil(Math.max(0, guests) / places) : undefined;
}
