import type { NetworkInterfaceInfo } from 'node:os';
import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { originAllowed } from '../../../server/access/origin.ts';
import { externalAddresses } from '../../../server/addresses.ts';
import { announcement } from '../../../server/announce.ts';

const ipv4 = (address: string, internal = false): NetworkInterfaceInfo => ({
  address,
  netmask: '255.255.255.0',
  family: 'IPv4',
  mac: '00:00:00:00:00:00',
  internal,
  cidr: `${address}/24`,
});

const common = {
  scheme: 'http',
  port: 4680,
  origins: [],
  houseKey: 'the-key',
  data: '/data',
  terminal: false,
} as const;

describe('the addresses that are printed', () => {
  it('are all external ones, those where guests are first', () => {
    const found = externalAddresses({
      lo: [ipv4('127.0.0.1', true)],
      docker0: [ipv4('172.17.0.1')],
      eth1: [ipv4('169.254.7.7')],
      eth0: [ipv4('203.0.113.9')],
      wlan0: [ipv4('192.168.1.20')],
      en1: [ipv4('10.0.0.4')],
    });
    expect(found).toEqual(['192.168.1.20', '10.0.0.4', '203.0.113.9', '172.17.0.1', '169.254.7.7']);
  });

  it('say where host and guests go, and when no phone can come', () => {
    const open = announcement({ ...common, external: ['192.168.1.20'] });
    expect(open).toContain('http://192.168.1.20:4680/host#key=the-key');
    expect(open).toContain('http://localhost:4680/host#key=the-key');
    expect(open).toMatch(/[█▀▄]{10}/);
    expect(announcement({ ...common, external: [] })).toMatch(/on no network/);
  });

  it('has an address for host and guests and a square for every network', () => {
    const said = announcement({ ...common, external: ['192.168.1.20', '10.0.0.7'] });
    for (const name of ['192.168.1.20', '10.0.0.7']) {
      expect(said).toMatch(new RegExp(`Host +http://${name}:\\d+/host#key=`));
      expect(said).toMatch(new RegExp(`Guests +http://${name}:\\d+/\n`));
    }
    // A square of 25 modules with its border has 15 lines of half blocks, the first one all light.
    expect(said.split('\n').filter((line) => /^█+$/.test(line)).length).toBe(2);
  });

  it('draw the square black on white in a terminal, whatever its colours, as a camera reads it', () => {
    const said = announcement({ ...common, terminal: true, external: ['192.168.1.20'] });
    // ECMA-48: 30 and 47 are a black foreground on a white background.
    const lines = said.split('\n').filter((line) => line.startsWith('\u001B[30;47m'));
    const rows = lines.map((line) => line.slice(8, -4));
    const dark = rows.flatMap((row) => {
      const half = (blocks: string) => [...row].map((block) => blocks.includes(block));
      return [half('█▀'), half('█▄')];
    });
    const size = dark[0]?.length ?? 0;
    const pixels = new Uint8ClampedArray(size * size * 64 * 4).fill(255);
    const at = (x: number, y: number) => dark[Math.floor(y / 8)]?.[Math.floor(x / 8)] === true;
    for (let y = 0; y < size * 8; y += 1)
      for (let x = 0; x < size * 8; x += 1)
        if (at(x, y)) pixels.fill(0, (y * size * 8 + x) * 4, (y * size * 8 + x) * 4 + 3);
    expect(jsQR(pixels, size * 8, size * 8)?.data).toBe('http://192.168.1.20:4680/');
  });
});

describe('origins', () => {
  it('pass when the page came from the address it asks, and no other way', () => {
    const cases: [string | undefined, string | undefined, boolean][] = [
      [undefined, 'a:1', true],
      ['http://a:1', 'a:1', true],
      ['http://A:1', 'a:1', true],
      ['https://a', 'a:443', true],
      ['http://a', 'a:80', true],
      ['http://a', 'a', true],
      ['http://a:1', 'a:2', false],
      ['http://a:1', 'a', false],
      ['http://a.b', 'a', false],
      ['http://a@b', 'a', false],
      ['file://a', 'a', false],
      ['null', 'null', false],
      ['', '', false],
      ['http://a', undefined, false],
      ['https://named.example', 'a', true],
      ['http://named.example', 'a', false],
    ];
    for (const [origin, host, allowed] of cases) {
      expect({ origin, host, allowed: originAllowed(origin, host, ['https://named.example']) }).toEqual({
        origin,
        host,
        allowed,
      });
    }
  });
});
