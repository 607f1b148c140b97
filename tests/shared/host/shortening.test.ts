import { describe, expect, it } from 'vitest';
import { cueId } from '../../../core/ids.ts';
import { aheadOf } from '../../../core/session/fitting.ts';
import { cueNow } from '../../../core/session/state.ts';
import { epochMs } from '../../../core/units.ts';
import { createHostActions, type HostActions } from '../../../host/conduct/actions/host-actions.ts';
import { createCommandsUnderWay } from '../../../host/evening/commands-under-way.ts';
import { createStatus } from '../../../shared/ui/status.ts';
import { doorsAt, EveningTold } from '../../support/evening.ts';
import { planOf } from '../../support/plans.ts';

/** A host's hand on a room without a network between them. */
function hand(evening: EveningTold) {
  const status = createStatus();
  const commands = createCommandsUnderWay({
    send: async (ask) => {
      if (ask.type === 'OpenDoors' || ask.type === 'TellResult') throw new Error('Not asked here.');
      const answer = evening.host(ask);
      return answer === 'done' ? { ok: true } : { ok: false, code: answer };
    },
    onRefusal: (code) => {
      throw new Error(`Refused: ${code}`);
    },
    pause: () => Promise.resolve(),
  });
  const conducting = createHostActions({ commands, status, onFinish: () => undefined });
  const settle = async () => {
    for (let turn = 0; turn < 40; turn += 1) await Promise.resolve();
  };
  return {
    async does(what: (conducting: HostActions) => void): Promise<void> {
      what(conducting);
      await settle();
    },
    async undoes(): Promise<void> {
      const action = status.message.peek()?.action;
      if (action === undefined) throw new Error('There is nothing to undo.');
      status.clear();
      action.onPress();
      await settle();
    },
  };
}

const stands = ({ underWay: { cues, wishedEnd, fitted, closingDropped, at } }: EveningTold) => ({
  lengths: cues.map(({ ideal, floor }) => [ideal, floor]),
  wishedEnd,
  fitted,
  closingDropped,
  at,
});
const endOf = ({ underWay }: EveningTold) => ({
  wishedEnd: underWay.wishedEnd,
  fitted: underWay.fitted !== null,
});

describe('the undoing of what makes an evening shorter', () => {
  const evening = () => new EveningTold(planOf(6, { level: 'devotees' }));
  const soon = epochMs(doorsAt + 80 * 60_000);
  const later = epochMs(doorsAt + 95 * 60_000);

  it('leaves everything as it was after a first fit, the wished end too', async () => {
    const told = evening();
    const was = stands(told);
    const host = hand(told);
    await host.does((conducting) => conducting.fit(soon, endOf(told), 'done'));
    expect(stands(told)).not.toEqual(was);
    await host.undoes();
    expect(stands(told)).toEqual(was);
  });

  it('leaves the fit before as it was after a second one', async () => {
    const told = evening();
    const host = hand(told);
    await host.does((conducting) => conducting.fit(later, endOf(told), 'done'));
    const was = stands(told);
    await host.does((conducting) => conducting.fit(soon, endOf(told), 'done'));
    expect(stands(told).lengths).not.toEqual(was.lengths);
    await host.undoes();
    expect(stands(told)).toEqual(was);
  });

  it('puts back the closing pass and the room into the middle of it', async () => {
    const told = evening().goTo('ash/closing/review');
    const was = stands(told);
    const host = hand(told);
    await host.does((conducting) => conducting.dropClosing(cueNow(told.underWay)));
    expect(told.cue).toBe('ash/water');
    await host.undoes();
    expect(stands(told)).toEqual(was);
    expect(told.cue).toBe(cueId('ash/closing/review'));
  });

  it('gives the talks their time back', async () => {
    const told = evening();
    const was = stands(told);
    const host = hand(told);
    const length = () => aheadOf(told.underWay, epochMs(told.now)).remaining.length;
    const cues = length();
    await host.does((conducting) => conducting.shortenTalks());
    expect(stands(told)).not.toEqual(was);
    expect(length()).toBe(cues);
    await host.undoes();
    expect(stands(told)).toEqual(was);
  });
});
