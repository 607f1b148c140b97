import { useEffect, useState } from 'preact/hooks';
import { lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import { requestServer } from '../../shared/page/server-request.ts';
import type { KeptSeat } from '../../shared/seats/kept-seats.ts';
import { Button } from '../../shared/ui/button.tsx';
import { LanguageChoice } from '../../shared/ui/language-choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import type { Invitation } from '../../shared/wire/http.ts';
import { locale, words } from '../language.ts';
import { LoadingLine } from '../page/loading-line.tsx';
import { PageTitle } from '../page/page-title.tsx';
import { refusalSentence } from '../page/refusal-sentence.ts';
import { SeatForm } from '../seat/seat-form.tsx';
import { wallTimes } from './wall-times.ts';

const preparationPart = lazyPart(() => import('./preparation.tsx'));

interface InvitationPageProps {
  readonly code: string;
  readonly onOtherCode: () => void;
  readonly onSeat: (seat: KeptSeat) => void;
}

type Looking =
  | { readonly status: 'looking' }
  | { readonly status: 'refused'; readonly code: string }
  | { readonly status: 'found'; readonly invitation: Invitation };

/** While the doors are shut or the network is gone, it looks again by itself. */
const lookAgainEvery = 4000;

export function InvitationPage({ code, onOtherCode, onSeat }: InvitationPageProps) {
  const [looking, setLooking] = useState<Looking>({ status: 'looking' });
  useEffect(() => {
    let gone = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = async (): Promise<void> => {
      const answer = await requestServer<Invitation>(`/api/invitations/${encodeURIComponent(code)}`);
      if (gone) return;
      setLooking(
        answer.ok ? { status: 'found', invitation: answer.body } : { status: 'refused', code: answer.code },
      );
      const shut = answer.ok ? answer.body.doors === 'not-yet' : answer.code === 'no-answer';
      if (shut) timer = setTimeout(() => void look(), lookAgainEvery);
    };
    void look();
    return () => {
      gone = true;
      clearTimeout(timer);
    };
  }, [code]);

  switch (looking.status) {
    case 'looking':
      return (
        <main class="page">
          <p class="soft">{words.door.looking}</p>
        </main>
      );
    case 'refused':
      return (
        <main class="page">
          <PageTitle>{words.door.title}</PageTitle>
          <Notice kind="info">{refusalSentence(looking.code)}</Notice>
          <Button kind="primary" onPress={onOtherCode}>
            {words.invitation.otherCode}
          </Button>
        </main>
      );
    case 'found':
      return (
        <main class="page">
          <header class="stack-tight">
            <PageTitle>{looking.invitation.title || words.door.keptUntitled}</PageTitle>
            <InvitationLines invitation={looking.invitation} />
          </header>
          {looking.invitation.stage === 'planned' && (
            <Before invitation={looking.invitation} code={code} locale={locale} />
          )}
          <Entry invitation={looking.invitation} code={code} onSeat={onSeat} />
          <Button kind="quiet" onPress={onOtherCode}>
            {words.invitation.otherCode}
          </Button>
          <LanguageChoice />
        </main>
      );
    default:
      return looking satisfies never;
  }
}

const Before = lazyComponent(preparationPart, (part) => part.Preparation, LoadingLine);

function InvitationLines({ invitation }: { readonly invitation: Invitation }) {
  const { hostName, place, startsAt, timeZone, welcome, stage, minimumAge } = invitation;
  // Before the evening when and where have more room below.
  const brief = stage !== 'planned';
  const lines = [
    ...(hostName === '' ? [] : [words.invitation.hostedBy(hostName)]),
    ...(brief && place !== '' ? [place] : []),
    ...(brief && startsAt !== null ? [wallTimes(startsAt, timeZone, locale).host] : []),
  ];
  return (
    <>
      <p class="soft">{lines.join(' · ')}</p>
      {minimumAge !== null && <p class="soft">{words.invitation.age(minimumAge)}</p>}
      {welcome !== '' && <p class="invitation-welcome">{welcome}</p>}
    </>
  );
}

interface EntryProps {
  readonly invitation: Invitation;
  readonly code: string;
  readonly onSeat: (seat: KeptSeat) => void;
}

function Entry({ invitation, code, onSeat }: EntryProps) {
  if (invitation.stage === 'finished') return <Notice kind="info">{words.invitation.finished}</Notice>;
  switch (invitation.doors) {
    case 'not-yet':
      return <Notice kind="info">{words.invitation.notYet}</Notice>;
    case 'closed':
      return <Notice kind="info">{words.invitation.closed}</Notice>;
    case 'ask':
    case 'open':
      return (
        <>
          {invitation.doors === 'ask' && <Notice kind="info">{words.invitation.ask}</Notice>}
          <SeatForm
            code={code}
            onTaken={({ tasting }, key) =>
              onSeat({ tasting, key, code, title: invitation.title || null, cautioned: false })
            }
          />
        </>
      );
    default:
      return invitation.doors satisfies never;
  }
}
