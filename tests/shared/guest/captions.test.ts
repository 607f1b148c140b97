import { describe, expect, it } from 'vitest';
import { levels } from '../../../core/drinks/drink-kinds.ts';
import { seatId } from '../../../core/ids.ts';
import { compile } from '../../../core/running-order/compile.ts';
import { cueNow } from '../../../core/session/state.ts';
import { seatView } from '../../../core/session/views/seat.ts';
import { type StageUnderWay, stageView } from '../../../core/session/views/stage.ts';
import { seconds } from '../../../core/units.ts';
import { captionOf } from '../../../guest/captions/host-says.tsx';
import { say } from '../../../shared/language/en/host-script.ts';
import { sayOf } from '../../../shared/language/host-script.ts';
import { EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

const lark = seatId('lark');

function anEvening(level: (typeof levels)[number]) {
  const plan = planOf(4, {
    level,
    blind: true,
    codes: { ash: '417', birch: '952', cedar: '118', dogwood: '236' },
  });
  const evening = new EveningTold(plan);
  const ask = { type: 'TakeSeat', seat: lark, name: 'Lark', leftHanded: false, remote: true } as const;
  expect(evening.attempt({ by: 'newcomer', ask })).toBe('done');
  const caption = () => {
    const own = seatView(evening.underWay, lark, 1);
    if (own === undefined) throw new Error('Lark has a seat.');
    return captionOf(stageView(evening.underWay, 1) as StageUnderWay, own);
  };
  return { plan, evening, caption };
}

describe('what the host says, on a phone at home', () => {
  it.each(levels)('is what stands on the tablet at every cue of an evening with %s', (level) => {
    const { plan, evening, caption } = anEvening(level);
    const texts = new Set<string>();
    for (const { id } of compile(plan)) {
      if (evening.cue !== id) evening.host({ type: 'JumpTo', cue: id });
      const cue = cueNow(evening.underWay);
      const glass = 'pour' in cue ? plan.pours.findIndex((pour) => pour.id === cue.pour) + 1 : 1;
      // As on the tablet: before a talk is opened another thing is said than in it.
      const who = { drink: plan.drink, level, glass, silent: cue.kind === 'discussion' };
      expect(caption(), id).toBe(sayOf(say, cue, who));
      texts.add(caption());
    }
    expect(texts.size).toBeGreaterThan(10);
  });

  it('changes as a talk is opened, in a break that was called, and for words of the host’s own', () => {
    const { plan, evening, caption } = anEvening('regulars');
    const talk = compile(plan).find(({ kind }) => kind === 'discussion');
    if (talk?.kind !== 'discussion') throw new Error('The plan has a talk.');
    for (const pour of talk.pours)
      evening.host({ type: 'JumpTo', cue: `${pour}/first/look` as typeof talk.id });
    evening.host({ type: 'JumpTo', cue: talk.id });
    expect(caption()).toBe(say.beforeTalk.regulars);
    evening.host({ type: 'OpenDiscussion', pours: [...talk.pours] });
    expect(caption()).toBe(say.cues.discussion.regulars);
    evening.host({ type: 'CallBreak', seconds: seconds(300) });
    expect(caption()).toBe(say.break.called);
    evening.host({ type: 'JumpTo', cue: talk.id });
    evening.host({ type: 'EditCue', cue: talk.id, say: 'Let us hear Lark first.' });
    expect(caption()).toBe('Let us hear Lark first.');
  });

  it('goes to seats at home only: no other is told for how used a table it is', () => {
    const { evening } = anEvening('newcomers');
    evening.sit('ada');
    expect(seatView(evening.underWay, lark, 1)?.crowd).toBe('newcomers');
    expect(seatView(evening.underWay, seatId('ada'), 1)).not.toHaveProperty('crowd');
  });
});
