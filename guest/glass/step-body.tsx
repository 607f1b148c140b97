import { useEffect, useRef } from 'preact/hooks';
import { after } from '../../shared/follower/timer.ts';
import { textFields } from '../../shared/notes/entry.ts';
import { useLazyPart } from '../../shared/page/lazy-part.ts';
import { Notice } from '../../shared/ui/notice.tsx';
import type { SeatView, StageUnderWay } from '../../shared/wire/views.ts';
import { words } from '../language.ts';
import { NoteField } from '../notebook/note-field.tsx';
import { notebookPart } from '../parts/lazy-parts.ts';
import { useRoom } from '../room/room.ts';
import { chime } from '../sound/chime.ts';
import { timeOf } from '../stage/cue-time.ts';
import { closeEyes, type ClosedEyes as Eyes } from './closed-eyes.ts';

/** One step with one glass, or its practice with plain water. */
export function StepBody({ stage, own }: { readonly stage: StageUnderWay; readonly own: SeatView }) {
  const { step, sense, pours, kind } = stage.cue;
  const pour = kind === 'step' ? pours[0] : undefined;
  const pages = useLazyPart(notebookPart)?.notebookPages;
  const practice = kind === 'practice' ? <p class="only-water">{words.glass.onlyWater}</p> : null;
  const told = stage.cue.allergens;
  const water = (
    <>
      {practice}
      {own.onlyWater && pages && <pages.OnlyWater />}
      {told && pages && !own.onlyWater && step !== 'spit' && <pages.AllergenLine told={told} />}
    </>
  );
  switch (step) {
    case 'look':
      return (
        <>
          {water}
          <div class="look-card" />
        </>
      );
    case 'nose':
      return <ClosedEyes key={stage.cue.id} stage={stage} />;
    case 'sip':
      return (
        <>
          {water}
          <Notice kind="water">{words.glass.spitAndWater}</Notice>
        </>
      );
    case 'write':
      return pour === undefined || sense === null ? null : (
        <>
          <NoteField key={`${pour}/${sense}`} pour={pour} field={sense} rows={2} hint />
          {pages && (
            <pages.SenseMarks key={`${pour}/${sense}/marks`} stage={stage} pour={pour} sense={sense} />
          )}
        </>
      );
    case 'review':
      if (pour === undefined) return null;
      return pages ? (
        <pages.ReviewPage stage={stage} pour={pour} />
      ) : (
        textFields.map((field) => <NoteField key={`${pour}/${field}`} pour={pour} field={field} rows={2} />)
      );
    case 'reflect':
      return pour === undefined ? null : (
        <>
          <NoteField key={`${pour}/thoughts`} pour={pour} field="thoughts" rows={3} hint />
          {pages && <pages.ReflectMarks stage={stage} pour={pour} />}
        </>
      );
    case 'swirl':
    case 'spit':
    case null:
      return water;
    default:
      return step satisfies never;
  }
}

/** Begins and ends with a tone; what is on the screen meanwhile nobody sees. */
function ClosedEyes({ stage }: { readonly stage: StageUnderWay }) {
  const { follower } = useRoom();
  const { id } = stage.cue;
  const startsAt = stage.clock.startsAt;
  const time = timeOf(stage);
  const endsAt = time.status === 'running' ? time.endsAt : null;
  const eyes = useRef<Eyes | null>(null);
  useEffect(() => {
    eyes.current = closeEyes({ startsAt, now: follower.clock.now, after, chime });
    return () => {
      const now = follower.stage.peek();
      eyes.current?.leave(now?.status !== 'under-way' || now.cue.id !== id);
    };
  }, [follower]);
  useEffect(() => eyes.current?.endsAt(endsAt), [endsAt]);
  return null;
}
