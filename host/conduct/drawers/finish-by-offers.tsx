import type { Cue } from '../../../core/running-order/cue.ts';
import type { Offer } from '../../../core/running-order/offers.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { Button } from '../../../shared/ui/button.tsx';
import type { SentHostCommand } from '../../../shared/wire/commands.ts';
import { shownName } from '../../evening/names-cover.ts';
import { words } from '../../language.ts';
import type { HostActions } from '../actions/host-actions.ts';

interface OffersProps {
  readonly offers: readonly Offer[];
  /** Seconds by which even the shortest evening is too long. */
  readonly over: number;
  readonly view: HostUnderWay;
  readonly order: readonly Cue[];
  readonly actions: HostActions;
}

/** What could be left out, each with the time it saves and whether that is enough; one tap each. */
export function Offers({ offers, over, view, order, actions }: OffersProps) {
  if (offers.length === 0) return null;
  const at = order.find(({ id }) => id === view.cue);
  const take = (offer: Offer): void => {
    const pour = offer.kind === 'drop-pour' && view.pours.find(({ id }) => id === offer.pour);
    if (pour) actions.drop(pour, shownName(pour, view.blind), at);
    if (offer.kind === 'drop-closing-pass') actions.dropClosing(at);
    if (offer.kind === 'shorten-discussions') actions.shortenTalks();
  };
  return (
    <section>
      <h3 class="finish-would">{words.pace.offers}</h3>
      <ul class="finish-offers">
        {offers.map((offer) => (
          <li key={offer.kind === 'drop-pour' ? offer.pour : offer.kind}>
            <Button onPress={() => take(offer)}>
              <span class="finish-offer">
                <bdi>{nameOf(offer, view)}</bdi>
                <span class="small soft figures">
                  {words.pace.saves(offer.saves)}
                  {offer.saves >= over && `, ${words.pace.enough}`}
                </span>
              </span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function nameOf(offer: Offer, { pours, blind }: HostUnderWay): string {
  const said = words.pace.offer;
  switch (offer.kind) {
    case 'drop-pour':
      return said.pour(
        pours.flatMap((pour) => (pour.id === offer.pour ? [shownName(pour, blind)] : [])).join(),
      );
    case 'drop-closing-pass':
      return said.closing;
    case 'shorten-discussions':
      return said.talks;
    default:
      return offer satisfies never;
  }
}

interface LeftOutProps {
  readonly view: HostUnderWay;
  readonly actions: HostActions;
}

/** What has been left out so far, each with its way back. */
export function LeftOut({ view, actions }: LeftOutProps) {
  const said = words.pace;
  const rows: readonly { readonly what: string; readonly back: SentHostCommand }[] = [
    ...view.pours
      .filter(({ dropped }) => dropped)
      .map((pour) => ({
        what: shownName(pour, view.blind),
        back: { type: 'RestorePour', pour: pour.id } as const,
      })),
    ...(view.closingPass === 'dropped'
      ? [{ what: said.closingOut, back: { type: 'RestoreClosingPass' } as const }]
      : []),
    ...(view.shortTalks ? [{ what: said.talksShort, back: { type: 'RestoreDiscussions' } as const }] : []),
  ];
  if (rows.length === 0) return null;
  return (
    <section>
      <h3 class="finish-would">{said.leftOut}</h3>
      <ul class="finish-work finish-out">
        {rows.map(({ what, back }) => (
          <li key={what}>
            <bdi>{what}</bdi>
            <Button kind="quiet" label={said.putBackLabel(what)} onPress={() => actions.just(back)}>
              {said.putBack}
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
