/** Stands in everything that is thrown at the server, so that an echo of it is found in answers and logs. */
export const mark = 'fuzzmark';

/** Chooses among what no device of ours would send; the same for the same source of chance. */
export class Nasty {
  constructor(readonly random: () => number) {}

  below(count: number): number {
    return Math.floor(this.random() * count);
  }

  chance(share: number): boolean {
    return this.random() < share;
  }

  pick<Item>(items: readonly [Item, ...Item[]]): Item {
    return items[this.below(items.length)] ?? items[0];
  }

  text(): string {
    const core = this.pick(texts);
    const marked = this.chance(0.5) ? `${mark}${core}` : `${core}${mark}`;
    return this.chance(0.02) ? marked.repeat(1 + this.below(400)) : marked;
  }

  /** A value that JSON can carry. */
  value(depth = 0): unknown {
    const which = this.random();
    if (which < 0.4) return this.text();
    if (which < 0.6) return this.pick(numbers);
    if (which < 0.7) return this.pick([null, true, false]);
    if (depth > 4) return {};
    if (which < 0.8) return Array.from({ length: this.below(4) }, () => this.value(depth + 1));
    if (which < 0.83) return this.deep();
    return this.object(depth);
  }

  /** The same shape, with one thing in it that is not as it should be; what stays is good. */
  spoiled(good: unknown): unknown {
    if (typeof good !== 'object' || good === null || this.chance(0.05)) return this.value();
    if (Array.isArray(good)) {
      const at = this.below(good.length + 1);
      return good.toSpliced(at, this.chance(0.5) ? 1 : 0, this.spoiled(good[at]));
    }
    const names = Object.keys(good);
    const name = names[this.below(names.length)] ?? 'ask';
    const which = this.random();
    if (which < 0.15) return Object.fromEntries(Object.entries(good).filter(([each]) => each !== name));
    if (which < 0.35) return withOwn(good, this.pick(keys), this.value());
    return withOwn(good, name, this.spoiled((good as Record<string, unknown>)[name]));
  }

  /** JSON that no serialiser would write. */
  json(value: unknown): string {
    const text = JSON.stringify(value) ?? '';
    const which = this.random();
    if (which < 0.7) return text;
    if (which < 0.8) return text.slice(0, this.below(text.length + 1));
    if (which < 0.9) return text.replace('{', `{"__proto__":{"role":"house","${mark}":1},`);
    if (which < 0.95) return `${'['.repeat(5000)}${mark}`;
    return `${text}${String.fromCharCode(this.below(32))}${mark}`;
  }

  private object(depth: number): object {
    let made = {};
    for (let fields = this.below(4); fields >= 0; fields -= 1) {
      made = withOwn(made, this.chance(0.5) ? this.pick(keys) : this.text(), this.value(depth + 1));
    }
    return made;
  }

  private deep(): unknown {
    let nested: unknown = mark;
    for (let depth = 50 + this.below(700); depth > 0; depth -= 1)
      nested = this.chance(0.5) ? [nested] : { a: nested };
    return nested;
  }
}

/** An own property even where the name is `__proto__`. */
const withOwn = (object: object, name: string, value: unknown): object =>
  Object.defineProperty({ ...object }, name, { value, enumerable: true, configurable: true, writable: true });

const keys: readonly [string, ...string[]] = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'seat',
  'tasting',
  'role',
  'by',
  'type',
  'id',
  'then',
  'toJSON',
  'length',
  '_placeholder',
  'num',
];

const texts: readonly [string, ...string[]] = [
  '',
  ' ',
  '\0',
  '\ud800',
  '\udfff\ud800',
  '\u202e\u2066right to left\u2069',
  '\ufeff\u200b\u200d',
  '\r\nSet-Cookie: a=b',
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "'; DROP TABLE notes; --",
  '=HYPERLINK("http://127.0.0.1/")',
  'BEGIN:VEVENT\r\nEND:VCALENDAR',
  '[x](javascript:alert(1))',
  '../../../../etc/passwd',
  '..%2f..%2fhouse.key',
  '%00',
  '%E0%A4%A',
  '$' + '{process.exit()}',
  '{{7*7}}',
  '__proto__',
  'constructor',
  'e\u0301'.repeat(50),
  'Z\u0351\u036b\u0343\u036a'.repeat(20),
  '👩‍👩‍👧‍👦',
  '語'.repeat(300),
];

const numbers: readonly [number, ...number[]] = [
  0,
  -0,
  -1,
  1,
  0.5,
  1e308,
  -1e308,
  5e-324,
  2 ** 31,
  2 ** 32,
  2 ** 53,
  -(2 ** 53),
  4e12,
  1_000_001,
];
