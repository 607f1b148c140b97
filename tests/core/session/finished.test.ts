import { describe, expect, it } from 'vitest';
import { seatId } from '../../../core/ids.ts';
import { hostView } from '../../../core/session/views/host.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { ash, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

describe('an evening that is over', () => {
  const over = () => {
    const evening = new EveningTold(planOf(3)).sit('ada').goTo('ash/first/nose').ready('ada').wait(60);
    evening.host({ type: 'OpenDiscussion', pours: [ash] });
    evening.host({ type: 'Finish' });
    if (evening.session.status !== 'finished') throw new Error('It is not over.');
    return { session: evening.session, now: evening.now };
  };

  it('is shown to the host with when it ended, its seats, its pours, and no cue', () => {
    const { session, now } = over();
    const view = hostView(session, 9);
    expect(view).toMatchObject({
      version: 9,
      status: 'finished',
      finishedAt: now,
      title: 'An evening at the Old Weighhouse',
      seats: [{ id: 'ada', presence: 'seated', signal: null }],
      pours: [{ id: 'ash', producer: null, reached: true, discussion: 'open' }, { id: 'birch' }, {}],
    });
    expect(view).not.toHaveProperty('cue');
    expect(view).not.toHaveProperty('doors');
  });

  it('is shown to a seat without a signal', () => {
    expect(seatView(over().session, seatId('ada'), 9)).toMatchObject({ presence: 'seated', signal: null });
  });
});
