import { describe, expect, it } from 'vitest';
import { epochMs } from '../../core/units.ts';
import { turnCredential } from '../../server/access/call-servers.ts';
import published from './turn-credentials.json' with { type: 'json' };

describe('names and passwords for a relay', () => {
  it.each(published.cases)(
    'are what OpenSSL makes of $name',
    ({ secret, expires, id, username, credential }) => {
      // Whatever part of a second has gone by.
      expect(turnCredential(secret, id, epochMs(expires * 1000 + 999))).toEqual({ username, credential });
    },
  );
});
