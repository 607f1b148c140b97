import type { SeatId } from '../../../core/ids.ts';
import { sources } from '../../../core/planning/figures/sources.ts';
import { emergencyNumbers } from '../../../core/planning/strength/emergency-numbers.ts';
import { isAgeCountry } from '../../../core/planning/strength/legal-ages.ts';
import type { HostSeat } from '../../../core/session/views/host-seats.ts';
import { careWords as said } from '../../../shared/language/en/host-care.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Dialog } from '../../../shared/ui/dialog.tsx';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';
import type { DrawerProps } from '../drawer.ts';

interface CareSheetProps extends DrawerProps {
  readonly seat: SeatId | null;
}

/** Somebody is drunk, unwell or arrives drunk: whom to pour no more, what to do, whom to call. */
export function CareSheet({ seat: id, evening, table, actions, onOpen, onClose }: CareSheetProps) {
  const seats = [...table.asking, ...table.others]
    .map(({ seat }) => seat)
    .filter(({ presence }) => presence === 'seated');
  const chosen = seats.filter((seat) => seat.id === id);
  return (
    <Dialog title={said.title} onClose={onClose} close={words.close}>
      <Call lawOf={evening.stored.plan.lawOf} />
      {chosen.length === 0 && <Steps />}
      <section class="stack-tight" aria-labelledby="no-more">
        <h3 id="no-more">{said.noMore}</h3>
        <p class="soft">{said.noMoreHint}</p>
        {seats.length === 0 && <p class="soft">{words.table.nobody}</p>}
        <ul class="plain-list">
          {(chosen.length > 0 ? chosen : seats).map((seat) => (
            <li key={seat.id} class="glass-row">
              <NoMore seat={seat} actions={actions} />
            </li>
          ))}
        </ul>
        {chosen.length > 0 && seats.length > 1 && (
          <Button kind="quiet" onPress={() => onOpen({ shows: 'care', seat: null })}>
            {said.somebodyElse}
          </Button>
        )}
      </section>
      {chosen.length > 0 && <Steps />}
      <p class="small soft">
        {said.notMedical} {said.source(sources['alcohol-poisoning'].title)}
      </p>
    </Dialog>
  );
}

const Steps = () => (
  <ul class="plain-list">
    {said.steps.map((step) => (
      <li key={step}>{step}</li>
    ))}
  </ul>
);

function NoMore({ seat, actions }: { readonly seat: HostSeat; readonly actions: HostActions }) {
  const type = seat.onlyWater ? 'ResumePouring' : 'StopPouring';
  return (
    <>
      <p class="glass-words">
        <strong>
          <bdi>{seat.name}</bdi>
        </strong>
        {seat.onlyWater && <span class="soft">{words.table.onlyWater}</span>}
      </p>
      <Button
        label={seat.onlyWater ? said.pourAgainTo(seat.name) : said.stopFor(seat.name)}
        onPress={() => actions.just({ type, seat: seat.id })}
      >
        {seat.onlyWater ? said.pourAgain : said.stop}
      </Button>
    </>
  );
}

/** The number of the place, to tap where the device can call; where no country is known, the ones to choose from. */
function Call({ lawOf }: { readonly lawOf: string | undefined }) {
  if (!isAgeCountry(lawOf)) {
    return (
      <div class="stack-tight">
        <div class="row">
          {(['DE', 'US', 'GB'] as const).map((country) => {
            const [number] = emergencyNumbers[country].numbers;
            return (
              <a key={country} class="button" href={`tel:${number}`}>
                {said.callIn[country](number)}
              </a>
            );
          })}
        </div>
        <p class="small soft">{said.numbersElsewhere}</p>
      </div>
    );
  }
  const { numbers, source } = emergencyNumbers[lawOf];
  const [first, ...others] = numbers;
  const { title, checked } = sources[source];
  return (
    <div class="stack-tight">
      <a class="button button-primary button-big" href={`tel:${first}`}>
        {said.call(first)}
      </a>
      <p class="small soft">
        {[
          ...(others.length > 0 ? [said.or(others)] : []),
          said.checkNumber,
          checked === 'from memory' ? said.fromMemory(title) : said.source(title),
        ].join(' ')}
      </p>
    </div>
  );
}
