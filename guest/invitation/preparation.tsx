import { beforeWords } from '../../shared/language/en/before.ts';
import type { Invitation } from '../../shared/wire/http.ts';
import type { NamedPour } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { PourFacts } from '../stage/pour-facts.tsx';
import { wallTimes } from './wall-times.ts';

interface PreparationProps {
  readonly invitation: Invitation;
  readonly code: string;
  readonly locale: string;
}

/** What a guest wants to know in the days before: when, where, what, how, and what to have ready. */
export function Preparation({ invitation, code, locale }: PreparationProps) {
  const { place, startsAt, timeZone, pours, atHome, callLink } = invitation;
  const said = beforeWords;
  const times = startsAt === null ? null : wallTimes(startsAt, timeZone, locale);
  return (
    <>
      <dl class="before-when">
        <dt>{said.when}</dt>
        <dd>{times === null ? said.noDate : times.host}</dd>
        {times !== null && times.own !== null && <dd>{said.ownClock(times.own)}</dd>}
        {place !== '' && (
          <>
            <dt>{said.where}</dt>
            <dd>{place}</dd>
          </>
        )}
      </dl>
      <section class="stack-tight">
        <h2>{said.pours}</h2>
        {pours === null ? <p>{said.blind}</p> : <PourList pours={pours} />}
      </section>
      <section class="stack-tight">
        <h2>{words.rules.title}</h2>
        <ul class="plain-list">
          {words.rules.list.map((rule) => (
            <li key={rule}>{rule}</li>
          ))}
        </ul>
        <p>{said.care}</p>
      </section>
      {atHome && (
        <section class="stack-tight">
          <h2>{said.atHome}</h2>
          <ul class="plain-list">
            {Object.values(words.kit.items).map((item) => (
              <li key={item}>{item}</li>
            ))}
          </ul>
          <a class="button" href={`/kit/${encodeURIComponent(code)}`}>
            {said.tryDevices}
          </a>
          {callLink !== null && (
            <a class="button" href={callLink} target="_blank" rel="noreferrer noopener">
              {words.glass.callLink}
            </a>
          )}
        </section>
      )}
    </>
  );
}

function PourList({ pours }: { readonly pours: readonly NamedPour[] }) {
  if (pours.length === 0) return <p class="soft">{beforeWords.noPours}</p>;
  return (
    <ol class="reveal">
      {pours.map((pour) => (
        <li key={pour.id}>
          <h3>{pour.name}</h3>
          <PourFacts pour={pour} />
          {pour.link !== null && (
            <a href={pour.link} target="_blank" rel="noreferrer noopener">
              {words.pour.more}
              <span class="visually-hidden">: {pour.name}</span>
            </a>
          )}
        </li>
      ))}
    </ol>
  );
}
