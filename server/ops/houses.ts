import { type HouseId, houseId, type TastingId } from '../../core/ids.ts';
import { epochMs } from '../../core/units.ts';
import { hashOf } from '../access/keys.ts';
import type { Chance } from '../chance.ts';
import type { House } from '../store/house.ts';
import type { Store } from '../store/store.ts';

const usage = [
  'Say one of these:',
  '  npm run house -- add "Name" [language=de] [units=ml | fl-oz-us | fl-oz-imperial]',
  '  npm run house -- list',
  '  npm run house -- key HOUSE                    a new key; the one of before opens nothing any more',
  '  npm run house -- limit HOUSE evenings=20 seats=30 megabytes=200    "none" takes a limit away',
  '  npm run house -- delete HOUSE NAME            with every evening, and all in them',
].join('\n');

export interface HouseDesk {
  readonly houses: Store['houses'];
  readonly chance: Pick<Chance, 'id' | 'key'>;
  readonly now: () => number;
  /** Where hosts reach the server, without a path. */
  readonly origin: string;
  /** Takes an evening away from whoever is in it; absent where nobody can be. */
  readonly remove?: (tasting: TastingId) => Promise<unknown>;
}

/** What whoever runs the server asks about its houses besides the first. Throws a sentence. */
export async function houseErrand(asked: readonly string[], desk: HouseDesk): Promise<string> {
  const { houses, chance, now, origin, remove } = desk;
  const [what, first = '', ...rest] = asked;
  const known = async (): Promise<House> => {
    const found = await houses.find(houseId(first));
    if (found !== undefined) return found;
    throw new Error('There is no such house: "npm run house -- list" names all of them.');
  };
  const link = (key: string, { language }: House['ways']) =>
    `${origin}/host${language === null ? '' : `?language=${language}`}#key=${key}`;
  switch (what) {
    case 'add': {
      const name = first.trim();
      if (name === '' || name.length > 80) throw new Error(`Give the house a name.\n${usage}`);
      const key = chance.key();
      const ways = waysIn(rest);
      const house: HouseId = houseId(chance.id());
      const limits = { evenings: null, seats: null, bytes: null };
      const createdAt = epochMs(now());
      await houses.add({ house, name, keyHash: hashOf(key), createdAt, open: false, limits, ways });
      return `${name} is house ${house}. Its host opens this link, which stands nowhere else and opens this house only:\n  ${link(key, ways)}`;
    }
    case 'list': {
      const all = await houses.list();
      if (all.length === 0)
        return 'There is the first house only. Its key is house.key in the data folder: for a new one delete that file, then start again.';
      const lines = all.map(async ({ house, name, limits }) => {
        const { evenings, bytes } = await houses.usage(house);
        const of = (used: string, most: number | null) => (most === null ? used : `${used} of ${most}`);
        const megabytes = limits.bytes === null ? null : limits.bytes / 1e6;
        return `  ${house}  ${name}: evenings ${of(String(evenings), limits.evenings)}, megabytes ${of((bytes / 1e6).toFixed(1), megabytes)}, seats at a table ${limits.seats ?? 'as the server allows'}`;
      });
      return ['Besides the first house:', ...(await Promise.all(lines))].join('\n');
    }
    case 'key': {
      const { house, name, ways } = await known();
      const key = chance.key();
      await houses.changeKey(house, hashOf(key));
      return `${name} has a new link, and the one of before opens nothing any more:\n  ${link(key, ways)}`;
    }
    case 'limit': {
      const { house, name, limits } = await known();
      await houses.limit(house, limitsIn(rest, limits));
      return `The limits of ${name} are set.`;
    }
    case 'delete': {
      const { house, name } = await known();
      if (rest.join(' ') !== name)
        throw new Error(`To delete it with every evening in it, write its name after it: ${name}`);
      // From here on nobody begins another.
      await houses.changeKey(house, hashOf(chance.key()));
      const { evenings } = await houses.usage(house);
      if (remove !== undefined) for (const tasting of await houses.evenings(house)) await remove(tasting);
      await houses.remove(house);
      return `${name} is gone with ${evenings} ${evenings === 1 ? 'evening' : 'evenings'}; nothing of it is left in the store.`;
    }
    default:
      throw new Error(usage);
  }
}

function waysIn(said: readonly string[]): House['ways'] {
  const ways = { language: null as string | null, volumeUnit: null as House['ways']['volumeUnit'] };
  for (const each of said) {
    const [name, value = ''] = each.split('=');
    if (name === 'language' && /^[a-z]{2,3}(-[A-Za-z0-9]{2,8})*$/.test(value)) ways.language = value;
    else if (name === 'units' && (value === 'ml' || value === 'fl-oz-us' || value === 'fl-oz-imperial'))
      ways.volumeUnit = value;
    else throw new Error(usage);
  }
  return ways;
}

function limitsIn(said: readonly string[], before: House['limits']): House['limits'] {
  let limits = before;
  if (said.length === 0) throw new Error(usage);
  for (const each of said) {
    const [name, value = ''] = each.split('=');
    const most = value === 'none' ? null : Number(value);
    if (most !== null && !/^[1-9]\d{0,8}$/.test(value)) throw new Error(usage);
    if (name === 'evenings') limits = { ...limits, evenings: most };
    else if (name === 'seats') limits = { ...limits, seats: most };
    else if (name === 'megabytes') limits = { ...limits, bytes: most === null ? null : most * 1e6 };
    else throw new Error(usage);
  }
  return limits;
}
