import { expect } from 'vitest';
import { cueId, pourId, type SeatId, seatId } from '../../core/ids.ts';
import type { Command, HostCommand, Moment, SessionRefusalCode } from '../../core/session/command.ts';
import { decide } from '../../core/session/decide.ts';
import type { SessionEvent } from '../../core/session/event.ts';
import { evolveAll } from '../../core/session/evolve.ts';
import type { GuestCommand } from '../../core/session/sent-command.ts';
import { cueNow, type Session, type UnderWay, unopened } from '../../core/session/state.ts';
import type { Plan } from '../../core/tasting.ts';
import { durationMs, epochMs, toMs } from '../../core/units.ts';
import { planOf } from './plans.ts';

/** The moment at which every evening of the tests opens its doors. */
export const doorsAt = 1_800_000_000_000;

/**
 * An evening told in steps: who asks what and when, and what comes of it. Each step goes through `decide` and
 * `evolve`; the events are kept, so that a replay can be compared.
 */
export class EveningTold {
  session: Session = unopened;
  events: SessionEvent[] = [];
  now = doorsAt;
  lead = 0;
  hostPresent = true;
  present: SeatId[] = [];
  overtimeWaits = false;

  constructor(plan: Plan = planOf(6)) {
    this.host({ type: 'OpenDoors', plan });
  }

  get underWay(): UnderWay {
    if (this.session.status !== 'under-way') throw new Error(`The session is ${this.session.status}.`);
    return this.session;
  }
  get cue(): string {
    return cueNow(this.underWay).id;
  }
  get moment(): Moment {
    return {
      now: epochMs(this.now),
      lead: durationMs(this.lead),
      hostPresent: this.hostPresent,
      present: new Set(this.present),
      overtimeWaits: this.overtimeWaits,
    };
  }

  attempt(command: Command): SessionRefusalCode | 'done' {
    const decision = decide(this.session, command, this.moment);
    if (!decision.ok) return decision.code;
    this.events.push(...decision.events);
    this.session = evolveAll(this.session, decision.events);
    return 'done';
  }

  host(ask: HostCommand): SessionRefusalCode | 'done' {
    return this.attempt({ by: 'host', ask });
  }
  guest(seat: string, ask: GuestCommand): SessionRefusalCode | 'done' {
    return this.attempt({ by: 'guest', seat: seatId(seat), ask });
  }
  clock(type: 'ExpireCue' | 'WeighRoom', cue = this.cue): SessionRefusalCode | 'done' {
    return this.attempt({ by: 'clock', ask: { type, cue: cueId(cue) } });
  }

  wait(seconds: number): this {
    this.now += seconds * 1000;
    return this;
  }
  sit(...names: readonly string[]): this {
    for (const name of names) {
      const ask = { type: 'TakeSeat', seat: seatId(name), name, leftHanded: false, remote: false } as const;
      expect(this.attempt({ by: 'newcomer', ask })).toBe('done');
      this.present.push(seatId(name));
    }
    return this;
  }
  next(times = 1): this {
    for (let time = 0; time < times; time += 1) {
      expect(this.host({ type: 'Advance', from: cueId(this.cue) })).toBe('done');
    }
    return this;
  }
  goTo(cue: string): this {
    expect(this.host({ type: 'JumpTo', cue: cueId(cue) })).toBe('done');
    return this;
  }
  ready(...names: readonly string[]): this {
    for (const name of names) {
      expect(this.guest(name, { type: 'GiveSignal', signal: 'ready', cue: cueId(this.cue) })).toBe('done');
    }
    return this;
  }
  /** Ms left on the clock of the current cue. */
  get left(): number {
    const { clock } = this.underWay;
    return clock.kind === 'held' ? clock.remaining : clock.endsAt - this.now;
  }
  get idealMs(): number {
    return toMs(cueNow(this.underWay).ideal);
  }
}

export const ash = pourId('ash');
export const birch = pourId('birch');
export const cedar = pourId('cedar');
