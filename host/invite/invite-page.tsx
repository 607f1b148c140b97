import { useSignal } from '@preact/signals';
import { useMemo, useRef } from 'preact/hooks';
import { invitationFile, invitationText } from '../../core/planning/invitation/invitation.ts';
import { epochMs } from '../../core/units.ts';
import { invitationWords, inviteWords } from '../../shared/language/en/invite.ts';
import { setterOf } from '../../shared/page/signal-setter.ts';
import { Button } from '../../shared/ui/button.tsx';
import { Choice, optionsOf } from '../../shared/ui/choice.tsx';
import { Notice } from '../../shared/ui/notice.tsx';
import { QrCode } from '../../shared/ui/qr-code.tsx';
import type { EveningContext } from '../evening/evening-context.ts';
import { guestAddresses } from '../evening/guest-addresses.ts';
import { locale } from '../locale.ts';
import { hrefOf } from '../route.ts';
import { saveAsFile } from '../save-as-file.ts';
import { type AddressReach, addressReach } from './address-reach.ts';

/** Dates and times in it are written as this device writes them. */
const invitation = { ...invitationWords, language: locale };

/** What guests get before the evening: a text to send, a file for calendars, the link and its square code. */
export function InvitePage({ evening }: { readonly evening: EveningContext }) {
  const { plan, tasting, code, revision } = evening.stored;
  const [address] = guestAddresses(evening.stored, window.location.origin);
  const link = address?.link ?? window.location.origin;
  const unreached = whyUnreached(addressReach(link), plan.remoteGuests > 0);
  const kind = useSignal<'table' | 'home'>(plan.guests === 0 && plan.remoteGuests > 0 ? 'home' : 'table');
  const deviceCheck = kind.value === 'home' ? address?.deviceCheck : undefined;
  const way = useMemo(() => ({ link, code, deviceCheck }), [link, code, deviceCheck]);
  const written = useMemo(() => invitationText(plan, way, invitation), [plan, way]);
  /** What the host made of each kind. */
  const edited = useSignal<{ readonly table?: string; readonly home?: string }>({});
  const text = edited.value[kind.value] ?? written;
  const edit = (typed: string): void => {
    edited.value = { ...edited.value, [kind.value]: typed };
  };
  const field = useRef<HTMLTextAreaElement>(null);
  const { status } = evening.app;

  const copy = async (what: string): Promise<void> => {
    try {
      await navigator.clipboard.writeText(what);
      status.say(inviteWords.copied);
    } catch {
      // Over plain http a browser has no clipboard to give.
      field.current?.focus();
      field.current?.select();
      status.say(inviteWords.selected);
    }
  };
  const save = (): void => {
    // Of its own, so that a calendar with both keeps both.
    const uid = deviceCheck === undefined ? `${tasting}@quietpour` : `${tasting}-home@quietpour`;
    const made = { uid, revision, now: epochMs(Date.now()) };
    const file = invitationFile(plan, way, invitation, made);
    if (file === undefined) return;
    const title = plan.title === '' ? invitationWords.untitled : plan.title;
    const name = deviceCheck === undefined ? title : `${title}, ${inviteWords.homeFile}`;
    saveAsFile(`${name}.ics`, 'text/calendar', file);
  };

  return (
    <main class="page">
      <header class="paper-head">
        <h1>{inviteWords.title}</h1>
        <a class="button button-quiet" href={hrefOf({ page: 'doors', tasting })}>
          {inviteWords.back}
        </a>
      </header>
      {unreached !== undefined && (
        <Notice kind="caution">
          <p>{unreached}</p>
        </Notice>
      )}
      <div class="invite">
        <section class="stack-tight">
          {plan.remoteGuests > 0 && plan.guests > 0 && (
            <Choice
              legend={inviteWords.kind}
              across
              value={kind.value}
              options={optionsOf(['table', 'home'], inviteWords.kinds)}
              onChoose={setterOf(kind)}
            />
          )}
          <label class="field-label" for="invitation">
            {inviteWords.text}
          </label>
          <p class="field-hint" id="invitation-hint">
            {inviteWords.textHint}
          </p>
          <textarea
            id="invitation"
            class="field-input invite-field"
            aria-describedby="invitation-hint"
            ref={field}
            dir="auto"
            value={text}
            onInput={(event) => edit(event.currentTarget.value)}
          />
          <div class="thumb-bar">
            {text !== written && (
              <Button kind="quiet" onPress={() => edit(written)}>
                {inviteWords.fresh}
              </Button>
            )}
            <Button kind="primary" onPress={() => void copy(text)}>
              {inviteWords.copy}
            </Button>
          </div>
        </section>
        <div class="stack">
          <section class="stack" aria-labelledby="invite-link">
            <h2 id="invite-link">{inviteWords.link}</h2>
            <QrCode of={link} label={inviteWords.scan(code)} />
            <p class="invite-address" dir="ltr" translate={false}>
              {link}
            </p>
            <p class="soft small">{inviteWords.linkHint}</p>
          </section>
          <section class="stack" aria-labelledby="invite-calendar">
            <h2 id="invite-calendar">{inviteWords.calendar}</h2>
            {plan.startsAt === undefined ? (
              <>
                <p class="soft">{inviteWords.noDate}</p>
                <a class="button" href={hrefOf({ page: 'plan', tasting })}>
                  {inviteWords.toPlan}
                </a>
              </>
            ) : (
              <>
                <p class="soft small">{inviteWords.calendarHint}</p>
                <Button onPress={save}>{inviteWords.download}</Button>
              </>
            )}
          </section>
          {(plan.callLink !== undefined || plan.remoteGuests > 0) && (
            <section class="stack" aria-labelledby="invite-call">
              <h2 id="invite-call">{inviteWords.call}</h2>
              {plan.callLink === undefined ? (
                <p class="soft">{inviteWords.noCall}</p>
              ) : (
                <>
                  <p class="soft small">{inviteWords.tryCallHint}</p>
                  <a class="button" href={plan.callLink} target="_blank" rel="noopener noreferrer">
                    {inviteWords.tryCall}
                  </a>
                </>
              )}
            </section>
          )}
        </div>
      </div>
    </main>
  );
}

/** A private network is enough for guests at the table; an address that no other device opens is enough for nobody. */
function whyUnreached(reach: AddressReach, anyAtHome: boolean): string | undefined {
  if (reach === 'anywhere' || (reach === 'network' && !anyAtHome)) return undefined;
  return inviteWords.reach[reach];
}
