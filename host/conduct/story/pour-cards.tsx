import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { serviceTemperatureOf } from '../../../core/drinks/service-temperature.ts';
import type { PourId } from '../../../core/ids.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import type { Pour } from '../../../core/tasting.ts';
import { type StoryWords, storyWords } from '../../../shared/language/en/host-story.ts';
import { serveAt } from '../../../shared/language/en/temperature.ts';
import { keepText, keptText } from '../../../shared/page/device-storage.ts';
import { GuessSpread } from '../../../shared/talk/guess-spread.tsx';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { look } from '../../../shared/ui/strokes.ts';
import { glassOf, placesOf } from '../../evening/cue-words.ts';
import type { EveningContext } from '../../evening/evening-context.ts';
import { isCovered } from '../../evening/names-cover.ts';
import { useHeld } from '../../evening/use-held.ts';
import { money } from '../../numbers.ts';

const words: StoryWords['card'] = storyWords.card;
/** Whether this device shows prices on the cards. */
const priceShelf = 'quietpour.card-price';

interface PourCardsProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  /** The glasses that can be told of now, in the order in which they will be. */
  readonly pours: readonly PourId[];
}

/**
 * What the host reads aloud of each glass: label, facts and story. It begins with the glass that was told last, or comes
 * next. While a name is secret its card is covered, for the tablet lies face up.
 */
export function PourCards({ evening, view, pours }: PourCardsProps) {
  const [newest] = view.justTold.filter((pour) => pours.includes(pour));
  const first = newest ?? view.toTell[0] ?? pours[0];
  const chosen = useSignal<PourId | null>(null);
  useEffect(() => {
    // A name that is told turns its card up, whichever lay there.
    chosen.value = null;
  }, [newest, view.cue, chosen]);
  const price = useSignal(keptText(priceShelf) === 'on');
  const shown = pours.find((pour) => pour === chosen.value) ?? first;
  const pour = view.pours.find(({ id }) => id === shown);
  if (pour === undefined) return <p class="soft">{words.none}</p>;
  const facts = evening.stored.plan.pours.find(({ id }) => id === pour.id);
  const guesses = evening.follower.guesses.value.get(pour.id);
  return (
    <section class="cards" aria-label={words.title}>
      {pours.length > 1 && (
        <fieldset class="card-picks" aria-label={words.choose}>
          {pours.map((each) => (
            <Button
              key={each}
              label={glassOf(view.pours, each)}
              pressed={each === shown}
              onPress={() => {
                chosen.value = each;
              }}
            >
              {placesOf(view.pours).get(each) ?? glassOf(view.pours, each)}
            </Button>
          ))}
        </fieldset>
      )}
      {facts && (
        <PourCard
          key={pour.id}
          pour={facts}
          name={pour.name}
          glass={glassOf(view.pours, pour.id)}
          secret={isCovered(pour, view.blind)}
          price={
            price.value && facts.priceMinor !== undefined
              ? money(facts.priceMinor, evening.stored.plan.currency)
              : null
          }
        />
      )}
      {guesses !== undefined && !isCovered(pour, view.blind) && (
        <GuessSpread guesses={guesses} drink={facts?.drink ?? evening.stored.plan.drink} />
      )}
      {facts?.priceMinor !== undefined && !isCovered(pour, view.blind) && (
        <p>
          <Button
            kind="quiet"
            pressed={price.value}
            onPress={() => {
              price.value = !price.value;
              keepText(priceShelf, price.value ? 'on' : null);
            }}
          >
            {words.price}
          </Button>
        </p>
      )}
    </section>
  );
}

interface PourCardProps {
  readonly pour: Pour;
  readonly name: string;
  readonly glass: string;
  readonly secret: boolean;
  /** As it is read; null where the host does not want it. */
  readonly price: string | null;
}

function PourCard({ pour, name, glass, secret, price }: PourCardProps) {
  const { held, hold } = useHeld();
  return (
    <article class="pour-card">
      <p class="soft">{glass}</p>
      {secret && (
        <p class="pour-card-cover">
          <button type="button" class="button" {...hold}>
            <Icon of={look} />
            {words.hold}
          </button>
          {!held && <span>{words.covered(glass)}</span>}
        </p>
      )}
      {(!secret || held) && (
        <>
          <Labels pour={pour} name={name} />
          <h3>
            <bdi>{name}</bdi>
          </h3>
          {pour.story === undefined || pour.story === '' ? (
            <p class="soft">{words.noStory}</p>
          ) : (
            <p class="pour-card-story" dir="auto">
              {pour.story}
            </p>
          )}
          <p class="pour-card-facts">
            {[...factsOf(pour), ...(price === null ? [] : [words.priceOf(price)])].join(' · ')}
          </p>
        </>
      )}
    </article>
  );
}

function Labels({ pour: { photos }, name }: { readonly pour: Pour; readonly name: string }) {
  const photo = photos?.front ?? photos?.back;
  return photo === undefined ? null : (
    <img class="pour-card-label" src={`/photos/${encodeURIComponent(photo)}`} alt={words.photo(name)} />
  );
}

/** In the order in which people ask. */
function factsOf(pour: Pour): string[] {
  const range = serviceTemperatureOf(pour);
  return [
    pour.producer,
    pour.region,
    pour.country,
    pour.style,
    pour.ageYears === undefined ? undefined : words.years(pour.ageYears),
    pour.vintage === undefined ? undefined : String(pour.vintage),
    pour.abv === undefined ? undefined : words.abv(pour.abv),
    pour.cask,
    range === null ? undefined : serveAt(range),
  ].flatMap((fact) => (fact === undefined || fact === '' ? [] : [fact]));
}
