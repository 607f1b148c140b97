import { useState } from 'preact/hooks';
import { limits } from '../../../core/tasting.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { TextArea } from '../../../shared/ui/text-area.tsx';
import { TextField } from '../../../shared/ui/text-field.tsx';
import { Fold } from '../fields/fold.tsx';
import { LinkField } from '../fields/link-field.tsx';
import { SelectField } from '../fields/select-field.tsx';
import type { PlanEditor } from '../plan-editor.ts';
import { instantOf, isLongPast, type WallTime, wallAt, zoneIsKnown } from '../wall-time.ts';
import { words } from '../words.ts';

export function EveningPart({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.evening;
  return (
    <>
      <TextField
        label={said.title}
        hint={said.titleHint}
        value={plan.title}
        maxLength={limits.line}
        onInput={(title) => editor.edit((now) => ({ ...now, title }))}
      />
      <When editor={editor} />
      <div class="plan-pair">
        <TextField
          label={said.place}
          hint={said.placeHint}
          value={plan.place}
          maxLength={limits.line}
          onInput={(place) => editor.edit((now) => ({ ...now, place }))}
        />
        <TextField
          label={said.hostName}
          hint={said.hostNameHint}
          value={plan.hostName}
          maxLength={limits.name}
          autocomplete="name"
          onInput={(hostName) => editor.edit((now) => ({ ...now, hostName }))}
        />
      </div>
      <TextArea
        label={said.welcome}
        hint={said.welcomeHint}
        value={plan.welcome}
        maxLength={limits.text}
        onInput={(welcome) => editor.edit((now) => ({ ...now, welcome }))}
      />
      <Fold title={said.more} open={plan.remoteGuests > 0 || plan.callLink !== undefined}>
        <LinkField
          label={said.callLink}
          hint={said.callHint}
          value={plan.callLink}
          onLink={(link) =>
            editor.edit(({ callLink: _, ...now }) => (link === undefined ? now : { ...now, callLink: link }))
          }
        />
        {plan.callLink !== undefined && (
          <a class="button" href={plan.callLink} target="_blank" rel="noopener noreferrer">
            {said.test}
          </a>
        )}
      </Fold>
    </>
  );
}

/** Seven in the evening is when most begin. */
const usualTime = '19:00';

function When({ editor }: { readonly editor: PlanEditor }) {
  const plan = editor.draft.plan.value;
  const said = words.evening;
  const kept = plan.startsAt === undefined ? undefined : wallAt(Date.parse(plan.startsAt), plan.timeZone);
  const [typed, setTyped] = useState<Partial<WallTime>>({});
  const wall = { date: typed.date ?? kept?.date ?? '', time: typed.time ?? kept?.time ?? usualTime };
  const instant = wall.date === '' ? undefined : instantOf(wall, plan.timeZone);

  const set = (changed: Partial<WallTime>, zone = plan.timeZone): void => {
    const now = { ...wall, ...changed };
    setTyped(now);
    const found = instantOf(now, zone);
    editor.edit(({ startsAt, ...rest }) => ({
      ...rest,
      timeZone: zone,
      ...(found.is === 'instant'
        ? { startsAt: found.startsAt }
        : startsAt !== undefined && now.date !== ''
          ? { startsAt }
          : {}),
    }));
    if (found.is === 'instant') setTyped({});
  };
  return (
    <div class="plan-group">
      <div class="plan-pair">
        <TextField
          label={said.date}
          type="date"
          value={wall.date}
          error={
            instant?.is === 'not-a-date'
              ? said.notADate
              : instant?.is === 'instant' && isLongPast(instant.startsAt, Date.now())
                ? said.past
                : undefined
          }
          onInput={(date) => set({ date })}
        />
        <TextField
          label={said.time}
          type="time"
          value={wall.time}
          error={instant?.is === 'no-such-time' ? said.noSuchTime : undefined}
          onInput={(time) => set({ time })}
        />
      </div>
      <Fold title={said.zoneNow(plan.timeZone)} small>
        <SelectField
          label={said.zone}
          value={plan.timeZone}
          options={zonesWith(plan.timeZone).map((zone) => ({
            value: zone,
            label: zone.replaceAll('_', ' '),
          }))}
          // The clock on the wall stays as it was written; the instant moves.
          onChoose={(zone) => set({}, zone)}
        />
        {plan.startsAt !== undefined && (
          <div>
            <Button
              kind="quiet"
              onPress={() => {
                setTyped({ date: '' });
                editor.edit(({ startsAt: _, ...now }) => now);
              }}
            >
              {said.clear}
            </Button>
          </div>
        )}
      </Fold>
    </div>
  );
}

let zones: readonly string[] | undefined;

function zonesWith(own: string): readonly string[] {
  zones ??= [...new Set(['UTC', ...(Intl.supportedValuesOf?.('timeZone') ?? [])])].filter(zoneIsKnown);
  return zones.includes(own) ? zones : [own, ...zones];
}
