import { seededRandom } from '../support/seeded-random.ts';

/** Seeded chance in the shapes that the attacks need. */
export class Chances {
  readonly next: () => number;

  constructor(seed: number) {
    this.next = seededRandom(seed);
  }

  happens(share: number): boolean {
    return this.next() < share;
  }
  between(from: number, to: number): number {
    return from + (to - from) * this.next();
  }
  below(count: number): number {
    return Math.floor(this.next() * count);
  }
  oneOf<Item>(items: readonly [Item, ...Item[]]): Item {
    return items[this.below(items.length)] ?? items[0];
  }
  /** Undefined only where there is nothing to choose from. */
  anyOf<Item>(items: readonly Item[]): Item | undefined {
    return items[this.below(items.length)];
  }
  /** One of the keys, as often as its weight says. */
  weighed<Key extends string>(weights: Readonly<Record<Key, number>>): Key {
    const entries = Object.entries<number>(weights) as [Key, number][];
    let left = this.next() * entries.reduce((sum, [, weight]) => sum + weight, 0);
    for (const [key, weight] of entries) {
      left -= weight;
      if (left < 0) return key;
    }
    throw new Error('Nothing has a weight.');
  }
  exponential(mean: number): number {
    return -mean * Math.log(1 - this.next());
  }
  normal(mean: number, deviation: number): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.next()));
    return mean + deviation * radius * Math.cos(2 * Math.PI * this.next());
  }
  /** `sigma`: the standard deviation of the logarithm. */
  logNormal(mean: number, sigma: number): number {
    return mean * Math.exp(this.normal(-(sigma ** 2) / 2, sigma));
  }
}
