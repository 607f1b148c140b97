import { describe, expect, it } from 'vitest';
import { wallTimes } from '../../../guest/invitation/wall-times.ts';

const evening = '2031-03-28T19:30:00+01:00';

describe('when an evening begins', () => {
  it('is said once where the guest’s clock shows the same as the host’s', () => {
    const times = wallTimes(evening, 'Europe/Vienna', 'en-GB', 'Europe/Berlin');
    expect(times.host).toMatch(/^Friday,? 28 March 2031 at 19:30$/);
    expect(times.own).toBeNull();
  });

  it('is said on both clocks, with their zones, where they differ', () => {
    // On that day Lord Howe Island is still on its summer time, 11 hours ahead of UTC (IANA time zone database).
    const times = wallTimes(evening, 'Europe/Vienna', 'en-GB', 'Australia/Lord_Howe');
    expect(times.host).toMatch(/^Friday,? 28 March 2031 at 19:30 CET$/);
    expect(times.own).toMatch(/^Saturday,? 29 March 2031 at 05:30 /);
  });

  it('goes by the rules of that day: an hour more apart while only one side has changed its clocks', () => {
    // The United States change their clocks on 9 March 2031 (15 U.S.C. 260a), Vienna on 30 March (directive 2000/84/EC).
    const own = (startsAt: string) => wallTimes(startsAt, 'Europe/Vienna', 'en-GB', 'America/New_York').own;
    expect(own('2031-03-08T19:30:00+01:00')).toMatch(/at 13:30 /);
    expect(own(evening)).toMatch(/at 14:30 /);
  });

  it('is said in the device’s own zone where the host’s is not known to it', () => {
    expect(wallTimes(evening, 'Atlantis/Harbour', 'en-GB').own).toBeNull();
  });
});
