import fc from 'fast-check';
import { Decoder as TheirDecoder, Encoder as TheirEncoder } from 'socket.io-parser';
import { describe, expect, it } from 'vitest';
import { Decoder, Encoder, type Packet } from '../../../shared/line/parser.ts';

/** The package that servers and other clients read and write with is the measure. */
const theirs = {
  write: (packet: Packet) => new TheirEncoder().encode(packet as never).map(String),
  read(text: string) {
    const heard: Packet[] = [];
    const decoder = new TheirDecoder();
    decoder.on('decoded', (packet) => heard.push(packet as Packet));
    decoder.add(text);
    return heard;
  },
};
const ours = {
  write: (packet: Packet) => new Encoder().encode(packet),
  read(text: string) {
    const heard: unknown[] = [];
    const decoder = new Decoder();
    decoder.on('decoded', (packet) => heard.push(packet));
    decoder.add(text);
    decoder.destroy();
    return heard;
  },
};

const json = fc.jsonValue({ maxDepth: 3 });
const id = fc.nat({ max: 100_000 });
const name = fc.constantFrom('stage', 'seat', 'note:save', '', '7', '[');
const nsp = fc.constantFrom('/', '/room', '/a-b');
const packet: fc.Arbitrary<Packet> = fc.oneof(
  fc.record({ type: fc.constant(0), nsp, data: fc.dictionary(fc.string(), json, { noNullPrototype: true }) }),
  fc.record({ type: fc.constant(1), nsp }),
  fc.record({ type: fc.constant(2), nsp, data: fc.tuple(name, json).map((all) => [...all]) }),
  fc.record({ type: fc.constant(2), nsp, id, data: fc.tuple(name, json).map((all) => [...all]) }),
  fc.record({ type: fc.constant(3), nsp, id, data: fc.array(json, { maxLength: 3 }) }),
  fc.record({
    type: fc.constant(4),
    nsp,
    data: fc.record({ message: fc.string() }, { noNullPrototype: true }),
  }),
);
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('packets of the pages’ own parser', () => {
  it('are written as the package writes them, and read as it reads them', () => {
    fc.assert(
      fc.property(packet, (one) => {
        const text = theirs.write(one);
        expect(ours.write(one)).toEqual(text);
        expect(plain(ours.read(text.join('')))).toEqual(plain(theirs.read(text.join(''))));
      }),
    );
  });

  it('are refused where the package refuses them', () => {
    const wrong = ['x', '7[]', '2{}', '2["connect"]', '2[{}]', '3{}', '1{}', '0[]', '4[1]', '2["stage"'];
    for (const text of wrong) {
      expect(() => theirs.read(text), text).toThrow();
      expect(() => ours.read(text), text).toThrow();
    }
  });
});
