import { useEffect, useState } from 'preact/hooks';
import type { TastingId } from '../../core/ids.ts';
import { kitReportWords as words } from '../../shared/language/en/kit-reports.ts';
import { type KitTry, kitIsReady, type KitReports as Reports } from '../../shared/wire/kit-try.ts';
import type { HostApi } from '../api.ts';

/** Guests try their kit while the host looks on; ms. */
const lookAgainEvery = 15_000;

interface KitReportsProps {
  readonly api: Pick<HostApi, 'kits'>;
  readonly tasting: TastingId;
  /** How many taste along at home. */
  readonly expected: number;
  /** Whether there is still time to let the call reach further. */
  readonly early: boolean;
}

/** Who at home has tried camera, sound and line, how that went, and how far the call reaches. */
export function KitReports({ api, tasting, expected, early }: KitReportsProps) {
  const [reports, setReports] = useState<Reports>();
  useEffect(() => {
    let gone = false;
    const look = (): void => {
      if (document.visibilityState !== 'hidden')
        void api.kits(tasting).then((answer) => {
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
  const { kits, reach } = reports;
  return (
    <section aria-labelledby="kits">
      <h3 id="kits">{words.title}</h3>
      {kits.length === 0 ? (
        <p class="soft">{words.none}</p>
      ) : (
        <>
          <p class="figures">
            {words.count(
              kits.filter(({ tried }) => kitIsReady(tried)).length,
              Math.max(expected, kits.length),
            )}
          </p>
          <ul class="plain-list">
            {kits.map(({ name, tried, at }) => (
              <li key={`${at} ${name}`}>
                <bdi>{name}</bdi>: {kitWords(tried)}
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
export function kitWords(tried: KitTry): string {
  if (kitIsReady(tried)) return tried.line === 'voice' ? words.voiceOnly : words.ready;
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
