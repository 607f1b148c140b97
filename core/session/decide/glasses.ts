import type { PourId } from '../../ids.ts';
import { limits } from '../../tasting.ts';
import { glassesToCome, reordered, withPour } from '../arrangement.ts';
import type { HostCommand } from '../command.ts';
import { type Decision, happened, refused } from '../decision.ts';
import { servedInOwnOrders } from '../serving.ts';
import type { UnderWay } from '../state.ts';

type GlassesCommand = Extract<
  HostCommand,
  { type: 'SwapBottle' | 'MendPour' | 'AddPour' | 'ReorderGlasses' }
>;

/** The bottles and the order of the glasses, while the evening runs. Nothing here touches a note or a number [P22, P23]. */
export function decideGlasses(session: UnderWay, ask: GlassesCommand): Decision {
  switch (ask.type) {
    case 'SwapBottle':
    case 'MendPour': {
      const { pour, bottle } = ask;
      if (!session.plan.pours.some(({ id }) => id === pour)) return refused('no-such-pour');
      return happened({ type: 'BottleChanged', pour, bottle, swapped: ask.type === 'SwapBottle' });
    }
    case 'AddPour':
      return addPour(session, ask);
    case 'ReorderGlasses':
      return reorder(session, ask.order);
    default:
      return ask satisfies never;
  }
}

function addPour(session: UnderWay, ask: Extract<GlassesCommand, { type: 'AddPour' }>): Decision {
  const { pours, trials, codes, blind } = session.plan;
  if ([...pours, ...trials].some(({ id }) => id === ask.pour)) return refused('nothing-to-do');
  if (pours.length >= limits.pours) return refused('too-many-pours');
  // A glass without a code would stand out among those that have one [Q4].
  const taken = [...Object.values(codes), ...trials.flatMap((trial) => [...trial.codes.a, ...trial.codes.b])];
  if (blind && (ask.code === null || taken.includes(ask.code))) return refused('code-taken');
  const pour = { ...ask.bottle, id: ask.pour, drink: ask.drink };
  const code = blind ? ask.code : null;
  return happened({ type: 'PourAdded', pour, code, arranged: withPour(session, pour, code) });
}

/** [P24] Asked for by a device that knew of other glasses to come, nothing is moved: the room has gone on meanwhile. */
function reorder(session: UnderWay, order: readonly PourId[]): Decision {
  if (servedInOwnOrders(session.plan)) return refused('own-orders');
  const coming = glassesToCome(session);
  const same = coming.length === order.length && coming.every((pour) => order.includes(pour));
  if (!same) return refused('moved-on');
  if (coming.every((pour, index) => pour === order[index])) return refused('nothing-to-do');
  return happened({ type: 'GlassesReordered', arranged: reordered(session, order) });
}
