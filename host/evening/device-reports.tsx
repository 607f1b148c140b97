import { useEffect, useState } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import { deviceReportWords as words } from '../../shared/language/en/device-reports.ts';
import {
  type DeviceResults,
  devicesAreReady,
  type DeviceReports as Reports,
} from '../../shared/wire/device-check.ts';
import type { HostApi } from '../api.ts';

/** Guests try their devices while the host looks on; ms. */
const lookAgainEvery = 15_000;

interface DeviceReportsProps {
  readonly api: Pick<HostApi, 'deviceReports'>;
  readonly tasting: TastingId;
  /** How many taste along at home. */
  readonly expected: number;
  /** Whether there is still time to let the call reach further. */
  readonly early: boolean;
}

/** Who at home has tried camera, sound and line, how that went, and how far the call reaches. */
export function DeviceReports({ api, tasting, expected, early }: DeviceReportsProps) {
  const [reports, setReports] = useState<Reports>();
  useEffect(() => {
    let gone = false;
    const look = (): void => {
      if (document.visibilityState !== 'hidden')
        void api.deviceReports(tasting).then((answer) => {
          if (!gone && answer.ok) setReports(answer.body);
        });
    };
    look();
    const timer = setInterval(look, lookAgainEvery);
    return () => {
      gone = true;
      clearInterval(timer);
    };
  }, [api, tasting]);
  if (reports === undefined) return null;
  const { kits: told, reach } = reports;
  return (
    <section class="stack-tight" aria-labelledby="device-reports">
      <h3 id="device-reports">{words.title}</h3>
      {told.length === 0 ? (
        <p class="soft">{words.none}</p>
      ) : (
        <>
          <p class="figures">
            {words.count(
              told.filter(({ tried }) => devicesAreReady(tried)).length,
              Math.max(expected, told.length),
            )}
          </p>
          <ul class="plain-list">
            {told.map(({ name, tried, at }) => (
              <li key={`${at} ${name}`}>
                <bdi>{name}</bdi>: {deviceWords(tried)}
              </li>
            ))}
          </ul>
        </>
      )}
      {early && <p class="soft small">{words.reach[reach]}</p>}
    </section>
  );
}

/** Ready, or all that is amiss. */
export function deviceWords(tried: DeviceResults): string {
  if (devicesAreReady(tried)) return tried.line === 'voice' ? words.voiceOnly : words.ready;
  const parts = ['camera', 'microphone', 'loudspeaker', 'line'] as const;
  return parts
    .flatMap((part) => {
      const went = tried[part];
      if (went === undefined) return [words.untried[part]];
      const amiss: Readonly<Record<string, string>> = words.amiss[part];
      return amiss[went] ?? [];
    })
    .join(', ');
}
