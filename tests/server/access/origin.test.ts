import { describe, expect, it } from 'vitest';
import { originAllowed } from '../../../server/access/origin.ts';

const allowed = (origin: string | undefined, host: string | undefined, ...others: readonly string[]) =>
  originAllowed(origin, host, others);

describe('the origin of a request', () => {
  it('may be missing: then no page of another site asks', () => {
    expect(allowed(undefined, 'evening.example')).toBe(true);
    expect(allowed(undefined, undefined)).toBe(true);
  });

  it.each([
    ['http://evening.example', 'evening.example'],
    ['https://evening.example', 'evening.example'],
    ['http://192.0.2.7:8080', '192.0.2.7:8080'],
    ['http://[2001:db8::7]:8080', '[2001:db8::7]:8080'],
    ['http://evening.example', 'Evening.EXAMPLE'],
    // The port of the scheme is left out of an origin (RFC 6454, 6.2) and may stand in a Host.
    ['http://evening.example', 'evening.example:80'],
    ['https://evening.example', 'evening.example:443'],
  ])('may be the address that is asked: %s at %s', (origin, host) => {
    expect(allowed(origin, host)).toBe(true);
  });

  it.each([
    ['http://elsewhere.example', 'evening.example'],
    ['http://evening.example.elsewhere.example', 'evening.example'],
    ['http://elsewhere.example', 'elsewhere.example.evening.example'],
    ['http://evening.example:8081', 'evening.example:8080'],
    ['http://evening.example', 'evening.example:8080'],
    ['http://evening.example', 'evening.example:443'],
    ['https://evening.example', 'evening.example:80'],
    // Not a port at all, but what stands before the port.
    ['http://evening.example80', 'evening.example:8080'],
    ['null', 'evening.example'],
    ['null', 'null'],
    ['', 'evening.example'],
    ['evening.example', 'evening.example'],
    ['ftp://evening.example', 'evening.example'],
    ['app-https://evening.example', 'evening.example'],
    ['http://evening.example', undefined],
  ])('may be no other: %s at %s', (origin, host) => {
    expect(allowed(origin, host)).toBe(false);
  });

  it('may be one that was named at the start, letter by letter', () => {
    const named = 'https://evening.example';
    expect(allowed(named, 'inside.example:8080', 'https://first.example', named)).toBe(true);
    expect(allowed(named, undefined, named)).toBe(true);
    expect(allowed(`${named}:8443`, 'inside.example', named)).toBe(false);
    expect(allowed('http://evening.example', 'inside.example', named)).toBe(false);
  });
});
