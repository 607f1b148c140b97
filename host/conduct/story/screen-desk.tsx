import { type ComponentChildren, toChildArray } from 'preact';
import type { SeatId } from '../../../core/ids.ts';
import { type Cue, poursOf } from '../../../core/running-order/cue.ts';
import { traitsOf } from '../../../core/running-order/cue-traits.ts';
import type { ScreenShows } from '../../../core/session/state.ts';
import type { HostUnderWay } from '../../../core/session/views/host.ts';
import { boardWords } from '../../../shared/language/en/board.ts';
import { type StoryWords, storyWords } from '../../../shared/language/en/host-story.ts';
import { pageByItself, pageShown, type ScreenPage, screenPages } from '../../../shared/talk/screen-pages.ts';
import { turnNow, turnsClock } from '../../../shared/talk/speaking-order.ts';
import { Button } from '../../../shared/ui/button.tsx';
import { Icon } from '../../../shared/ui/icon.tsx';
import { back, next } from '../../../shared/ui/strokes.ts';
import { useTick } from '../../../shared/ui/use-tick.ts';
import { glassOf } from '../../evening/cue-words.ts';
import type { EveningContext } from '../../evening/evening-context.ts';
import type { HostActions } from '../actions/host-actions.ts';
import { ScreenPicture } from './screen-picture.tsx';

const words: StoryWords['screen'] = storyWords.screen;

interface ScreenDeskProps {
  readonly evening: EveningContext;
  readonly view: HostUnderWay;
  readonly cue: Cue;
  readonly actions: HostActions;
}

/** What the room's screens show, and what they are given to [F8]: a page, a glass, a person, the result, the dark. */
export function ScreenDesk({ evening, view, cue, actions }: ScreenDeskProps) {
  const { follower } = evening;
  const board = follower.board.value;
  const clock = turnsClock(traitsOf(cue), view.clock);
  const moment = useTick(follower.clock.now, { running: clock !== null, anchor: 0, period: 5000 });
  const pages = screenPages({
    cue: { kind: cue.kind, pours: poursOf(cue) },
    named: namedPours(view),
    board,
    results: view.results,
    guesses: follower.guesses.value,
  });
  const itself = pageByItself(pages, { ...view, cue, turn: turnNow(board, clock, moment) });
  const { screen } = view;
  const chosen = screen.is === 'page' ? pages.find(({ id }) => id === screen.page) : undefined;
  const shown = screen.is === 'dark' ? null : pageShown(pages, chosen?.id ?? null, itself);
  const at = pages.findIndex(({ id }) => id === shown?.id);
  const give = (shows: ScreenShows): void => actions.just({ type: 'SteerScreen', shows });
  const turn = (page: ScreenPage | undefined): void => {
    if (page !== undefined && page.id !== chosen?.id) give({ is: 'page', page: page.id });
  };
  const by = (step: number): void =>
    turn(pages[(Math.max(at, step < 0 ? 0 : -1) + step + pages.length) % pages.length]);
  const nameOf = (page: ScreenPage): string => pageName(page, (pour) => glassOf(view.pours, pour));
  // What was told of the whole room goes before the places on shared pages; the newest first.
  const result = pages.findLast(({ shows }) => shows.is === 'result') ?? pages.find(isResult);
  return (
    <section class="screen-desk" aria-label={words.title}>
      <div class="screen-now">
        <ScreenPicture evening={evening} />
        <div class="screen-turns">
          <p class="screen-at">
            {screen.is === 'dark' && words.isDark}
            {shown !== null && `${words.at(at + 1, pages.length)} · ${nameOf(shown)}`}
            {screen.is !== 'dark' && shown === null && words.nothing}
          </p>
          {pages.length > 1 && (
            <p class="row screen-pair">
              <Button label={words.back} onPress={() => by(-1)}>
                <Icon of={back} turns />
              </Button>
              <Button label={words.on} onPress={() => by(1)}>
                <Icon of={next} turns />
              </Button>
            </p>
          )}
          <p class="row screen-pair">
            <Button
              pressed={screen.is === 'room' || (screen.is === 'page' && chosen === undefined)}
              onPress={() => {
                if (screen.is !== 'room') give({ is: 'room' });
              }}
            >
              {words.follow}
            </Button>
            <Button
              pressed={screen.is === 'dark'}
              onPress={() => give({ is: screen.is === 'dark' ? 'room' : 'dark' })}
            >
              {words.dark}
            </Button>
          </p>
        </div>
      </div>
      <Picks legend={words.glasses}>
        {[...new Set(pages.flatMap(({ pour }) => pour ?? []))].map((pour) => (
          <Button
            key={pour}
            pressed={shown?.pour === pour && shown.seat === null}
            onPress={() => turn(pages.find((page) => page.pour === pour && page.seat === null))}
          >
            {glassOf(view.pours, pour) || words.pages.odd}
          </Button>
        ))}
        {result !== undefined && (
          <Button pressed={shown !== null && isResult(shown)} onPress={() => turn(result)}>
            {words.result}
          </Button>
        )}
      </Picks>
      <Picks legend={words.people}>
        {peopleOn(pages).map(({ seat, name }) => (
          <Button
            key={seat}
            pressed={shown?.seat === seat}
            onPress={() => turn(pageOfPerson(pages, seat, shown))}
          >
            <bdi>{name}</bdi>
          </Button>
        ))}
      </Picks>
    </section>
  );
}

interface PicksProps {
  readonly legend: string;
  readonly children: ComponentChildren;
}

function Picks({ legend, children }: PicksProps) {
  return toChildArray(children).length === 0 ? null : (
    <fieldset class="screen-picks">
      <legend class="small soft">{legend}</legend>
      {children}
    </fieldset>
  );
}

const namedPours = ({ pours, blind }: HostUnderWay) =>
  pours
    .filter(({ dropped, reached, revealed }) => !dropped && (blind ? revealed : reached))
    .map(({ id }) => id);

const isResult = ({ shows }: ScreenPage): boolean =>
  shows.is === 'result' || (shows.is === 'board' && shows.page.shows.part === 'places');

/** Everybody who has a page, once. */
function peopleOn(pages: readonly ScreenPage[]): { readonly seat: SeatId; readonly name: string }[] {
  const people = new Map<SeatId, string>();
  for (const { seat, shows } of pages)
    if (seat !== null && shows.is === 'person') people.set(seat, shows.note.name);
  return [...people].map(([seat, name]) => ({ seat, name }));
}

/** Of the glass that shows; where they have nothing of that, their first. */
const pageOfPerson = (pages: readonly ScreenPage[], seat: SeatId, shown: ScreenPage | null) =>
  pages.find((page) => page.seat === seat && page.pour === shown?.pour) ??
  pages.find((page) => page.seat === seat);

function pageName(
  { pour, shows }: ScreenPage,
  glass: (pour: NonNullable<ScreenPage['pour']>) => string,
): string {
  const of = pour === null ? [] : [glass(pour)].filter((name) => name !== '');
  switch (shows.is) {
    case 'card':
      return [...of, words.pages.card].join(' · ');
    case 'guesses':
      return [...of, words.pages.guesses].join(' · ');
    case 'names':
      return words.pages.names;
    case 'result':
      return words.result;
    case 'person':
      return [shows.note.name, ...of].join(' · ');
    case 'board': {
      const { part } = shows.page.shows;
      const said =
        part === 'structure' || part === 'places'
          ? words.pages[part]
          : part === 'odd-one-out'
            ? words.pages.odd
            : boardWords.fields[part];
      return [...of, said].join(' · ');
    }
    default:
      return shows satisfies never;
  }
}
