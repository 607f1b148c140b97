import { type IntervalHistogram, monitorEventLoopDelay } from 'node:perf_hooks';
import type { ClientToServer } from '../../shared/wire/protocol.ts';

type Event = keyof ClientToServer | 'unknown';
export type Outcome = 'done' | 'refused' | 'not-stored';
type Place = 'api' | 'page' | 'health';

/** What stands at this moment, asked for at each reading. */
export interface Standing {
  readonly devices: {
    readonly host: number;
    readonly guest: number;
    readonly helper: number;
    readonly screen: number;
  };
  /** Sessions in memory. */
  readonly sessions: number;
  /** Among several processes: what this one has done, see `ClusterFigures`. */
  readonly cluster?: Readonly<Record<string, number>>;
}

/**
 * Figures for whoever runs the server, in the text exposition format of Prometheus, version 0.0.4. Labels come from
 * closed lists, so that nothing that anybody sends makes a new series, and none says which tasting or whose.
 *
 * Ours, because `prom-client` brings OpenTelemetry's interface and a digest of quantiles with it for these hundred lines,
 * and takes any label that it is given.
 */
export class Metrics {
  readonly #asked = new Map<string, number>();
  readonly #answered = new Map<string, number>();
  readonly #delay: IntervalHistogram = monitorEventLoopDelay({ resolution: 10 });
  readonly #begun = performance.now();

  constructor() {
    this.#delay.enable();
  }

  /** A message of a device was answered. What belongs to notebooks is counted nowhere [Q1]. */
  asked(event: Event, outcome: Outcome): void {
    if (event.startsWith('note:') || event === 'device:ask') return;
    count(this.#asked, labels({ event, outcome }));
  }

  /** A request over HTTP was answered. */
  answered(place: Place, status: number): void {
    count(
      this.#answered,
      labels({ place, status: `${Math.min(5, Math.max(1, Math.floor(status / 100)))}xx` }),
    );
  }

  read({ devices, sessions, cluster = {} }: Standing): string {
    const text = [
      ...series('quietpour_devices', 'gauge', 'Devices connected, by role.', perLabel('role', devices)),
      ...series(
        'quietpour_cluster',
        'gauge',
        'Among several processes: counts since the start, sessions owned, and ms by which the database’s clock is ahead.',
        perLabel('figure', cluster),
      ),
      ...series('quietpour_sessions_loaded', 'gauge', 'Sessions held in memory.', [['', sessions]]),
      ...series('quietpour_messages_total', 'counter', 'Messages of devices, by event and outcome.', [
        ...this.#asked,
      ]),
      ...series('quietpour_http_requests_total', 'counter', 'Requests over HTTP, by place and status.', [
        ...this.#answered,
      ]),
      ...series(
        'quietpour_event_loop_delay_seconds',
        'gauge',
        'Delay of the event loop since the last reading.',
        [50, 99].map((percentile) => [
          labels({ quantile: String(percentile / 100) }),
          finite(this.#delay.percentile(percentile) / 1e9),
        ]),
      ),
      ...series('process_resident_memory_bytes', 'gauge', 'Resident memory.', [
        ['', process.memoryUsage.rss()],
      ]),
      ...series('process_uptime_seconds', 'gauge', 'Time since the start.', [
        ['', (performance.now() - this.#begun) / 1000],
      ]),
    ];
    this.#delay.reset();
    return `${text.join('\n')}\n`;
  }

  stop(): void {
    this.#delay.disable();
  }
}

/** Lines of one metric; none at all before it has a value. */
function series(
  name: string,
  type: 'counter' | 'gauge',
  help: string,
  values: readonly (readonly [string, number])[],
): string[] {
  if (values.length === 0) return [];
  const lines = values.map(([label, value]) => `${name}${label} ${value}`);
  return [`# HELP ${name} ${help}`, `# TYPE ${name} ${type}`, ...lines];
}

const labels = (pairs: Readonly<Record<string, string>>): string =>
  `{${Object.entries(pairs)
    .map(([name, value]) => `${name}="${value}"`)
    .join(',')}}`;

const perLabel = (name: string, values: Readonly<Record<string, number>>): [string, number][] =>
  Object.entries(values).map(([value, amount]) => [labels({ [name]: value }), amount]);

function count(counts: Map<string, number>, key: string): void {
  counts.set(key, (counts.get(key) ?? 0) + 1);
}

const finite = (value: number): number => (Number.isFinite(value) ? value : 0);
