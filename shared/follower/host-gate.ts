import { type ReadonlySignal, signal } from '@preact/signals-core';
import type { HostView, RunningOrderView } from '../../core/session/views/host.ts';
import { createCueGate, type GateOptions } from './cue-gate.ts';

/** The room as a host's screen shows it: a new cue at the moment set for everybody [F4], and its running order with it. */
export interface HostGate {
  readonly view: ReadonlySignal<HostView | null>;
  readonly runningOrder: ReadonlySignal<RunningOrderView | null>;
  receiveView(view: HostView): void;
  receiveOrder(order: RunningOrderView): void;
  rewind(): void;
  close(): void;
}

export function createHostGate(options: GateOptions): HostGate {
  const runningOrder = signal<RunningOrderView | null>(null);
  let waiting: RunningOrderView | null = null;
  let rewound = false;

  const showOrder = (order: RunningOrderView): void => {
    waiting = null;
    runningOrder.value = order;
  };
  const gate = createCueGate<HostView>(
    (view) => (view.status === 'under-way' ? { cue: view.cue, at: view.takesEffectAt } : null),
    options,
    () => {
      if (waiting !== null) showOrder(waiting);
    },
  );

  return {
    view: gate.shown,
    runningOrder,
    receiveView: gate.receive,
    receiveOrder(order) {
      if (!rewound && order.version < ((waiting ?? runningOrder.peek())?.version ?? 0)) return;
      rewound = false;
      // An order without the cue that still shows would leave the screen without words for it.
      const coming = gate.coming();
      if (coming !== null && order.version >= coming.version) waiting = order;
      else showOrder(order);
    },
    rewind() {
      waiting = null;
      rewound = true;
      gate.rewind();
    },
    close: gate.close,
  };
}
