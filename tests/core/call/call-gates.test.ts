import { describe, expect, it } from 'vitest';
import {
  type CallMoment,
  type CallScene,
  callGates,
  callRoles,
  callScenes,
  hears,
  largePicture,
  noWishes,
  wishesAfter,
} from '../../../core/call/call-gates.ts';
import { seatId } from '../../../core/ids.ts';
import type { Cue, CueKind, Step } from '../../../core/running-order/cue.ts';
import { shownTraits } from '../../../core/running-order/cue-traits.ts';

const all = { microphone: true, camera: true, atMyTurn: true };
const moment = (given: Partial<CallMoment> & Pick<CallMoment, 'scene'>): CallMoment => ({
  role: 'guest',
  wishes: all,
  myTurn: false,
  handRaised: false,
  pressed: false,
  ...given,
});
const sceneOf = (kind: CueKind, step?: Step): CallScene =>
  shownTraits({ kind, step, tells: [] } as unknown as Cue).call;

const everyStep: Readonly<Record<Step, true>> = {
  swirl: true,
  look: true,
  nose: true,
  sip: true,
  spit: true,
  write: true,
  review: true,
  reflect: true,
};
const silentCues: readonly (readonly [CueKind, Step?])[] = [
  ...(Object.keys(everyStep) as Step[]).map((step) => ['step', step] as const),
  ['practice', 'look'],
  ['practice', 'nose'],
  ['water'],
  ['ranking'],
  ['odd-one-out'],
];
const loudCues: readonly CueKind[] = [
  'gathering',
  'welcome',
  'ground-rules',
  'practice',
  'break',
  'discussion',
  'result',
  'reveal',
  'farewell',
];

describe('[V1] silence', () => {
  it.each(silentCues.map(([kind, step]) => ({ kind, step })))(
    'closes a guest’s microphone at $kind $step, and leaves the host’s open',
    ({ kind, step }) => {
      const scene = sceneOf(kind, step);
      for (const role of ['guest', 'room'] as const) {
        for (const myTurn of [false, true]) {
          const gates = callGates(moment({ scene, role, myTurn, pressed: true }));
          expect(gates.microphone).toBe('nobody');
          expect(gates.mayOpen.microphone).toBe(false);
        }
      }
      expect(callGates(moment({ scene, role: 'host' })).microphone).toBe('all');
    },
  );

  it.each(loudCues)('ends at %s, where a tap opens it', (kind) => {
    const gates = callGates(moment({ scene: sceneOf(kind) }));
    expect(gates).toMatchObject({ microphone: 'all', mayOpen: { microphone: true } });
    expect(callGates(moment({ scene: sceneOf(kind), wishes: noWishes })).microphone).toBe('nobody');
  });

  it('lets nobody play a guest’s voice, whatever is sent', () => {
    for (const scene of callScenes) {
      const silent = silentCues.some(([kind, step]) => sceneOf(kind, step) === scene);
      for (const listener of callRoles) {
        for (const role of ['guest', 'room'] as const) {
          const heard = hears(scene, listener, { role, handRaised: false });
          expect({ scene, listener, role, heard }).toEqual({ scene, listener, role, heard: !silent });
        }
        expect(hears(scene, listener, { role: 'host', handRaised: false })).toBe(true);
      }
    }
  });
});

describe('[V2] eyes closed and the white card', () => {
  it('make every picture dark, and the host’s voice stays', () => {
    const scene = sceneOf('step', 'nose');
    for (const role of callRoles) {
      const gates = callGates(moment({ scene, role }));
      expect(gates).toMatchObject({ camera: false, pictures: 'dark', mayOpen: { camera: false } });
    }
    expect(callGates(moment({ scene, role: 'host' })).microphone).toBe('all');
  });

  it('leave a guest the voice in look, and the tablet its tiles', () => {
    const scene = sceneOf('step', 'look');
    expect(callGates(moment({ scene })).pictures).toBe('voice');
    expect(callGates(moment({ scene, role: 'host' })).pictures).toBe('shown');
    expect(callGates(moment({ scene })).camera).toBe(true);
  });

  it('are the only ones that take a picture away', () => {
    const cues: readonly (readonly [CueKind, Step?])[] = [
      ...silentCues,
      ...loudCues.map((kind) => [kind] as const),
    ];
    for (const [kind, step] of cues) {
      if (step === 'nose' || step === 'look') continue;
      expect(callGates(moment({ scene: sceneOf(kind, step) })).pictures).toBe('shown');
    }
  });
});

describe('[V3] the large picture', () => {
  const [mara, timo] = [seatId('mara'), seatId('timo')];
  const host = { role: 'host', seat: null } as const;
  const room = { role: 'room', seat: null } as const;
  const atHome = [mara, timo].map((seat) => ({ role: 'guest', seat }) as const);

  it('is of whoever has the turn, of the table when they sit there, else the host’s', () => {
    const others = [...atHome, room, host];
    expect(largePicture(others, timo)).toBe(atHome[1]);
    expect(largePicture(others, seatId('at the table'))).toBe(room);
    expect(largePicture([...atHome, host], seatId('at the table'))).toBe(host);
    expect(largePicture(others, null)).toBe(host);
    expect(largePicture([...atHome, room], null)).toBe(room);
    expect(largePicture(atHome, null)).toBe(atHome[0]);
    expect(largePicture([], timo)).toBeUndefined();
  });
});

describe('[V4] what opens by itself', () => {
  it('is a microphone at one’s own turn in a talk, for who said so', () => {
    const wishes = { ...noWishes, atMyTurn: true };
    for (const scene of callScenes) {
      for (const role of callRoles) {
        for (const myTurn of [false, true]) {
          const { microphone, camera } = callGates(moment({ scene, role, wishes, myTurn, pressed: true }));
          const opens = scene === 'turns' && role === 'guest' && myTurn;
          expect({ microphone, camera }).toEqual({ microphone: opens ? 'all' : 'nobody', camera: false });
        }
      }
    }
    expect(callGates(moment({ scene: 'turns', wishes: noWishes, myTurn: true })).microphone).toBe('nobody');
  });

  it('is nothing on a screen, which shows and plays only', () => {
    for (const scene of callScenes) {
      const gates = callGates(
        moment({ scene, role: 'screen', myTurn: true, handRaised: true, pressed: true }),
      );
      expect(gates).toMatchObject({ microphone: 'nobody', camera: false, mayPress: false });
      expect(gates.mayOpen).toEqual({ microphone: false, camera: false });
    }
  });

  it('does not come back after silence, nor after a break', () => {
    let wishes = wishesAfter(all, 'open', 'hush', 'guest');
    expect(wishes).toEqual({ ...all, microphone: false });
    wishes = wishesAfter(wishes, 'hush', 'turns', 'guest');
    expect(callGates(moment({ scene: 'turns', wishes })).microphone).toBe('nobody');
    for (const role of callRoles) {
      const rested = wishesAfter(all, 'turns', 'rest', role);
      expect(rested).toEqual({ microphone: false, camera: false, atMyTurn: true });
      expect(wishesAfter(rested, 'rest', 'hush', role)).toEqual(rested);
    }
  });

  it('keeps the host’s microphone through silence, and what one opens in a break', () => {
    expect(wishesAfter(all, 'turns', 'hush', 'host')).toEqual(all);
    expect(wishesAfter(all, 'rest', 'rest', 'guest')).toEqual(all);
    expect(callGates(moment({ scene: 'rest' }))).toMatchObject({ microphone: 'all', camera: true });
  });
});

describe('[V5] a raised hand in silence', () => {
  it('speaks to the host alone, while the button is held', () => {
    for (const scene of callScenes) {
      const raised = moment({ scene, wishes: noWishes, handRaised: true });
      const silent = callGates(raised).mayPress;
      expect(silent).toBe(['hush', 'card', 'eyes-closed'].includes(scene));
      expect(callGates(raised).microphone).toBe('nobody');
      expect(callGates({ ...raised, pressed: true }).microphone).toBe(silent ? 'host' : 'nobody');
      expect(callGates({ ...raised, handRaised: false, pressed: true }).microphone).toBe('nobody');
      expect(hears(scene, 'host', { role: 'guest', handRaised: true })).toBe(true);
      expect(hears(scene, 'guest', { role: 'guest', handRaised: true })).toBe(!silent);
    }
  });
});
