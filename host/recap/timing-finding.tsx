import type { EveningRecap } from '../../core/recap/evening-recap.ts';
import type { TimedPart, Timing } from '../../core/recap/timing.ts';
import { recapWords as words } from '../../shared/language/en/recap.ts';
import { forecastWords as said } from '../../shared/language/en/recap-forecast.ts';
import { timeOfDay } from '../language.ts';
import { cueName, withinPart } from './cue-name.ts';
import { differenceOf, lengthOf } from './figures.ts';
import { Finding, Table } from './finding.tsx';
import { type Segment, Timeline } from './pictures/timeline.tsx';

/** The evening against its plan, part by part. */
export function TimingFinding({ recap }: { readonly recap: EveningRecap }) {
  const { timing } = recap;
  const { parts, breaks } = timing;
  const places = placesOf(recap);
  const nameOf = (part: TimedPart) => partName(part, places);
  const shortOf = ({ kind, pour }: TimedPart) =>
    kind === 'glass' ? String(places.get(pour ?? '') ?? '') : words.timing.letters[kind];
  let until = 0;
  const planned = parts.flatMap((part): Segment[] => {
    const from = until;
    until += part.planned;
    return part.planned === 0
      ? []
      : [{ kind: part.kind, from, to: until, name: nameOf(part), short: shortOf(part) }];
  });
  const taken = timing.stretches.flatMap(({ part: index, from, to }): Segment[] => {
    const part = parts[index];
    return part === undefined || to === from
      ? []
      : [{ kind: part.kind, from, to, name: nameOf(part), short: shortOf(part) }];
  });
  return (
    <Finding
      title={words.timing.title}
      said={words.timing.headline[timing.meaning](lengthOf(timing.overrun))}
      table={{
        caption: words.timing.title,
        columns: [words.timing.part, words.timing.planned, words.timing.took, words.timing.difference],
        rows: parts.map((part) => [
          nameOf(part),
          lengthOf(part.planned),
          part.took === null ? words.timing.skipped : lengthOf(part.took),
          part.took === null ? '–' : differenceOf(part.took - part.planned),
        ]),
      }}
      reckoned={[words.timing.reckoned]}
    >
      <p>
        {words.timing.sums(lengthOf(timing.planned), lengthOf(timing.took))}{' '}
        {breaks.taken === 0
          ? words.timing.noBreaks(breaks.planned)
          : words.timing.breaks(breaks.taken, breaks.planned, breaks.called, lengthOf(breaks.takenSeconds))}
      </p>
      {timing.foretold.length > 0 && <p>{foretoldIn(timing)}</p>}
      <Timeline planned={planned} taken={taken} />
      <details>
        <summary>{words.timing.perStep}</summary>
        <Table
          caption={words.timing.perStep}
          columns={[words.timing.step, words.timing.planned, words.timing.took, words.timing.difference]}
          rows={timing.cues.map(({ part, planned: wanted, took, ...cue }) => [
            withinPart(nameOf(parts[part] ?? noPart), cueName(cue)),
            minutes(wanted),
            took === null ? words.timing.skipped : minutes(took),
            took === null ? '–' : signed(took - wanted),
          ])}
        />
      </details>
    </Finding>
  );
}

/** What the head said of the end during the evening, and how that came out. */
function foretoldIn({ foretold, finishedAt }: Timing): string {
  const ranges = foretold.map(({ when, end: { early, late, likely } }) =>
    said.range(said.moments[when], timeOfDay(early), timeOfDay(late), timeOfDay(likely)),
  );
  const held = foretold.filter((each) => each.held).length;
  return [...ranges, said.ended(timeOfDay(finishedAt), held, foretold.length)].join(' ');
}

const noPart: TimedPart = { kind: 'opening', pour: null, called: false, planned: 0 as never, took: null };

/** Places of the glasses as they were counted that evening: dropped ones leave no gap. */
function placesOf({ pours }: EveningRecap): ReadonlyMap<string, number> {
  const kept = pours.filter(({ standing }) => standing !== 'dropped');
  return new Map(kept.map(({ id }, index) => [id, index + 1]));
}

function partName({ kind, pour, called }: TimedPart, places: ReadonlyMap<string, number>): string {
  if (kind === 'break' && called) return words.timing.calledBreak;
  const place = kind === 'glass' ? places.get(pour ?? '') : undefined;
  return place === undefined ? words.timing.parts[kind] : words.glass(place);
}

const minutes = (seconds: number): string => {
  const whole = Math.round(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
};
const signed = (seconds: number): string =>
  seconds < 0 ? words.timing.less(minutes(-seconds)) : words.timing.more(minutes(seconds));
