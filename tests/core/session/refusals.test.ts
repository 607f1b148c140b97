import { describe, expect, it } from 'vitest';
import { cueId, pourId, seatId } from '../../../core/ids.ts';
import type { HostCommand, SessionRefusalCode } from '../../../core/session/command.ts';
import { decide } from '../../../core/session/decide.ts';
import type { GuestCommand } from '../../../core/session/sent-command.ts';
import { unopened } from '../../../core/session/state.ts';
import { seconds } from '../../../core/units.ts';
import { ash, birch, cedar, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

/** Each refusal by its own code, for a device words its sentence by it, and each leaves everything as it was. */

const ada = seatId('ada');
const nobody = seatId('nobody');
const atNose = () => new EveningTold().sit('ada').goTo('ash/first/nose');
const after = (...asks: readonly HostCommand[]) => {
  const evening = atNose();
  for (const ask of asks) expect(evening.host(ask)).toBe('done');
  return evening;
};

const hosts: readonly (readonly [SessionRefusalCode, EveningTold, HostCommand])[] = [
  ['already-open', atNose(), { type: 'OpenDoors', plan: planOf(3) }],
  ['not-finished', atNose(), { type: 'Reopen' }],
  ['no-such-cue', atNose(), { type: 'JumpTo', cue: cueId('nowhere') }],
  ['no-such-cue', atNose(), { type: 'EditCue', cue: cueId('nowhere'), seconds: seconds(30) }],
  ['no-such-pour', atNose(), { type: 'DropPour', pour: pourId('nothing') }],
  ['already-dropped', after({ type: 'DropPour', pour: birch }), { type: 'DropPour', pour: birch }],
  ['not-dropped', atNose(), { type: 'RestorePour', pour: birch }],
  ['not-held', atNose(), { type: 'Resume' }],
  ['already-held', after({ type: 'Hold' }), { type: 'Hold' }],
  ['nothing-to-do', atNose(), { type: 'ClearReminder' }],
  ['nothing-to-do', atNose(), { type: 'WaitForRemote', wait: false }],
  ['nothing-to-do', atNose(), { type: 'SetDoors', doors: 'open' }],
  ['nothing-to-do', after({ type: 'Reveal', pours: [ash] }), { type: 'Reveal', pours: [ash] }],
  ['not-reached', atNose(), { type: 'Reveal', pours: [ash, birch] }],
  ['no-such-pour', atNose(), { type: 'Reveal', pours: [ash, pourId('nothing')] }],
  ['no-such-seat', atNose(), { type: 'AdmitSeat', seat: nobody }],
  ['nothing-to-do', atNose(), { type: 'AdmitSeat', seat: ada }],
  ['nothing-to-do', atNose(), { type: 'RestoreSeat', seat: ada }],
  ['nothing-to-do', atNose(), { type: 'AnswerSeat', seat: ada }],
  ['nothing-to-do', after({ type: 'RemoveSeat', seat: ada }), { type: 'RemoveSeat', seat: ada }],
  ['finished', after({ type: 'Finish' }), { type: 'Hold' }],
  ['finished', after({ type: 'Finish' }), { type: 'Finish' }],
];

const here = cueId('ash/first/nose');
const told = (...asks: readonly GuestCommand[]) => {
  const evening = atNose();
  for (const ask of asks) expect(evening.guest('ada', ask)).toBe('done');
  return evening;
};
const guests: readonly (readonly [SessionRefusalCode, EveningTold, string, GuestCommand])[] = [
  ['no-such-seat', atNose(), 'nobody', { type: 'AcceptGroundRules' }],
  ['nothing-to-do', told({ type: 'AcceptGroundRules' }), 'ada', { type: 'AcceptGroundRules' }],
  ['nothing-to-do', atNose(), 'ada', { type: 'ChangeSeat' }],
  ['nothing-to-do', atNose(), 'ada', { type: 'CatchUp', pour: ash }],
  ['nothing-to-do', atNose(), 'ada', { type: 'CheckKit', item: 'water', ready: false }],
  ['nothing-to-do', atNose(), 'ada', { type: 'GiveSignal', signal: null, cue: here }],
  ['moved-on', atNose(), 'ada', { type: 'GiveSignal', signal: 'ready', cue: cueId('ash/first/sip') }],
  ['nothing-to-do', told({ type: 'LeaveTable' }), 'ada', { type: 'LeaveTable' }],
  ['not-seated', told({ type: 'LeaveTable' }), 'ada', { type: 'AcceptGroundRules' }],
  ['nothing-to-do', after({ type: 'RemoveSeat', seat: ada }), 'ada', { type: 'LeaveTable' }],
  ['finished', after({ type: 'Finish' }), 'ada', { type: 'AcceptGroundRules' }],
];

describe('what is refused', () => {
  it.each(hosts)('to the host: %s', (code, evening, ask) => {
    const before = evening.session;
    expect(evening.host(ask), ask.type).toBe(code);
    expect(evening.session).toBe(before);
  });

  it.each(guests)('to a guest: %s', (code, evening, seat, ask) => {
    const before = evening.session;
    expect(evening.guest(seat, ask), ask.type).toBe(code);
    expect(evening.session).toBe(before);
  });

  it('a signal that stands already, but not another one', () => {
    const evening = atNose().ready('ada');
    const signal = (value: 'ready' | 'more-time' | null) =>
      evening.guest('ada', { type: 'GiveSignal', signal: value, cue: here });
    expect(signal('ready')).toBe('nothing-to-do');
    expect(signal('more-time')).toBe('done');
    expect(signal(null)).toBe('done');
    expect(evening.underWay.signals).toEqual({});
  });

  it('a seat that is taken, and a plan without pours', () => {
    const evening = atNose();
    const ask = { type: 'TakeSeat', seat: ada, name: 'Ada', leftHanded: false, remote: false } as const;
    expect(evening.attempt({ by: 'newcomer', ask })).toBe('nothing-to-do');
    const plan = { ...planOf(3), pours: [] };
    const opened = decide(unopened, { by: 'host', ask: { type: 'OpenDoors', plan } }, evening.moment);
    expect(opened).toEqual({ ok: false, code: 'no-pours' });
    for (const command of [
      { by: 'host', ask: { type: 'Hold' } },
      { by: 'guest', seat: ada, ask: { type: 'AcceptGroundRules' } },
      { by: 'newcomer', ask },
    ] as const) {
      expect(decide(unopened, command, evening.moment)).toEqual({ ok: false, code: 'not-open' });
    }
  });

  it('[P10] the last pour that is left', () => {
    const evening = new EveningTold(planOf(3));
    for (const pour of [ash, birch]) expect(evening.host({ type: 'DropPour', pour })).toBe('done');
    expect(evening.host({ type: 'DropPour', pour: cedar })).toBe('only-pour');
  });

  it('what the clock asks for where it has nothing to ask', () => {
    const evening = new EveningTold(planOf(3, { pacing: { by: 'room', share: 0.5 } })).sit('ada');
    evening.goTo('ash/first/nose').wait(600).ready('ada').goTo('birch/first/nose').wait(600);
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
    expect(evening.clock('WeighRoom', 'ash/first/nose')).toBe('moved-on');
    expect(evening.clock('ExpireCue', 'ash/first/nose')).toBe('moved-on');
    evening.host({ type: 'Hold' });
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    evening.host({ type: 'ChoosePacing', pacing: { by: 'clock' } });
    evening.host({ type: 'Resume' });
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
    evening.goTo('farewell').wait(6000);
    expect(evening.clock('ExpireCue')).toBe('nothing-to-do');
    expect(evening.clock('WeighRoom')).toBe('nothing-to-do');
  });
});
