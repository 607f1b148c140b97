import { recapWords } from '../../shared/language/en/recap.ts';
import { lazyComponent, lazyPart } from '../../shared/page/lazy-part.ts';
import type { ListedTasting } from '../../shared/wire/http.ts';
import type { AppContext } from '../app-context.ts';
import { dayOf, timeOfDay, words } from '../language.ts';
import { hrefOf } from '../route.ts';

/** Apart, for most lists never show one. */
const setAside = lazyPart(() => import('./set-aside-tasting.tsx'));
const SetAsideTasting = lazyComponent(
  setAside,
  (part) => part.SetAsideTasting,
  () => <li class="tasting soft">{words.loading}</li>,
);

const StoreDamage = lazyComponent(setAside, (part) => part.StoreDamage);
const AlteredParts = lazyComponent(setAside, (part) => part.AlteredParts);

interface TastingListProps {
  readonly tastings: readonly ListedTasting[];
  /** The file that holds them all is broken somewhere. */
  readonly damaged: boolean;
  readonly app: AppContext;
  /** The list is another one now. */
  readonly onChanged: () => void;
}

export function TastingList({ tastings, damaged, app, onChanged }: TastingListProps) {
  return (
    <>
      {damaged && <StoreDamage />}
      <ul class="tastings">
        {tastings.map((tasting) =>
          tasting.trouble ? (
            <SetAsideTasting
              key={tasting.tasting}
              tasting={tasting}
              trouble={tasting.trouble}
              app={app}
              onChanged={onChanged}
            />
          ) : (
            <Listed key={tasting.tasting} tasting={tasting} />
          ),
        )}
      </ul>
    </>
  );
}

function Listed({ tasting }: { readonly tasting: ListedTasting }) {
  const { stage, code } = tasting;
  const links = linksOf(tasting);
  return (
    <li class={`tasting tasting-${stage}`}>
      <div class="tasting-words">
        <h3>{tasting.title === '' ? words.untitled : tasting.title}</h3>
        <p class="soft">
          <span class={`stage stage-${stage}`}>{words.home.stages[stage]}</span>
          {' · '}
          {dayWords(tasting)}
          {tasting.pours > 0 && `${words.home.size(tasting.pours, tasting.guests)} · `}
          <span class="code-small">{words.home.code(code)}</span>
        </p>
        {tasting.altered && <AlteredParts altered={tasting.altered} />}
      </div>
      <div class="thumb-bar">
        {links.map(({ href, label, main }) => (
          <a key={href} class={main ? 'button button-primary' : 'button'} href={href}>
            {label}
          </a>
        ))}
      </div>
    </li>
  );
}

interface StageLink {
  readonly href: string;
  readonly label: string;
  readonly main: boolean;
}

/** What one does with an evening depends on its stage; the most likely stands last, under the thumb. */
function linksOf({ tasting, stage }: ListedTasting): StageLink[] {
  const plan = { href: hrefOf({ page: 'plan', tasting }), label: words.home.plan };
  const doors = { href: hrefOf({ page: 'doors', tasting }), label: words.home.doors };
  const room = { href: hrefOf({ page: 'room', tasting }), label: words.home.room };
  switch (stage) {
    case 'planned':
      return [
        { ...plan, main: false },
        { ...doors, main: true },
      ];
    case 'under-way':
      return [
        { ...doors, main: false },
        { ...room, main: true },
      ];
    case 'finished':
      return [
        { ...room, label: recapWords.toRoom, main: false },
        { href: hrefOf({ page: 'recap', tasting }), label: words.home.recap, main: true },
      ];
    default:
      return stage satisfies never;
  }
}

/** The day it is planned for; without one the day it ended, or was made. */
function dayWords({ startsAt, finishedAt, createdAt }: ListedTasting): string {
  if (startsAt !== null) return `${whenOf(startsAt)} · `;
  if (finishedAt !== null) return `${words.home.ended(dayOf(finishedAt))} · `;
  // Where this device knows no more of it than its plan.
  return createdAt > 0 ? `${words.home.made(dayOf(createdAt))} · ` : '';
}

function whenOf(startsAt: string): string {
  const at = Date.parse(startsAt);
  return Number.isNaN(at) ? startsAt : `${dayOf(at)}, ${timeOfDay(at)}`;
}
