import { useEffect, useState } from 'preact/hooks';
import type { Admission } from '../../../shared/page/screen-preview.ts';
import { requestServer } from '../../../shared/page/server-request.ts';
import { codeGroups } from '../../../shared/seats/seat-link.ts';
import { QrCode } from '../../../shared/ui/qr-code.tsx';
import type { Invitation } from '../../../shared/wire/http.ts';
import type { StageUnderWay } from '../../../shared/wire/views.ts';
import { guestWords, words } from '../language.ts';

interface GatheringSceneProps {
  readonly admission: Admission;
  /** Null before the doors are open. */
  readonly stage: StageUnderWay | null;
}

/** Who hosts, and how a phone comes in. */
export function GatheringScene({ admission: { code, linkCode, guestOrigins }, stage }: GatheringSceneProps) {
  const invitation = useInvitation(linkCode);
  const origin = guestOrigins[0] ?? window.location.origin;
  return (
    <div class="scene scene-gathering">
      <div class="scene-main">
        <h1 class="scene-title" dir="auto">
          {stage?.title || invitation?.title || guestWords.app}
        </h1>
        {invitation !== null && invitation.hostName !== '' && (
          <p class="scene-hint" dir="auto">
            {words.gathering.hostedBy(invitation.hostName)}
          </p>
        )}
        {stage === null && <p class="scene-water">{words.soon}</p>}
        <dl class="scene-join">
          <div>
            <dt>{words.gathering.address}</dt>
            <dd class="scene-address" dir="ltr" translate={false}>
              {origin.replace(/^https?:\/\//, '')}
            </dd>
          </div>
          <div>
            <dt>{words.gathering.code}</dt>
            <dd class="scene-code figures" translate={false}>
              {codeGroups(code).join(' ')}
            </dd>
          </div>
        </dl>
        <p class="scene-aside">{words.gathering.noPhone}</p>
      </div>
      <figure class="scene-square">
        <QrCode of={`${origin}/j/${linkCode}`} label={words.gathering.scan(code)} />
        <figcaption>{words.gathering.join}</figcaption>
      </figure>
    </div>
  );
}

/** Asked once; without an answer the screen shows what it knows. */
function useInvitation(code: string): Invitation | null {
  const [invitation, setInvitation] = useState<Invitation | null>(null);
  useEffect(() => {
    let gone = false;
    void requestServer<Invitation>(`/api/invitations/${encodeURIComponent(code)}`).then((answer) => {
      if (!gone && answer.ok) setInvitation(answer.body);
    });
    return () => {
      gone = true;
    };
  }, [code]);
  return invitation;
}
