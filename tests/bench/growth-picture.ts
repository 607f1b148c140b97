import type { SessionsRun } from './sessions.ts';
import type { TapRun } from './tap.ts';

/** How cost grows, as a picture: both axes logarithmic, so that growing in step is a straight line. */
export function growthPicture(taps: readonly TapRun[], sessions: readonly SessionsRun[]): string {
  const panels = [
    panel({
      title: 'One tap until the last guest has it',
      across: 'guests',
      up: 'ms',
      lines: [
        { name: 'Quietpour', points: taps.map(({ guests, oursMs }) => [guests, oursMs]) },
        { name: 'floor', points: taps.map(({ guests, floorMs }) => [guests, floorMs]) },
      ],
    }),
    panel({
      title: 'Sessions of ten guests, 20 times real speed',
      across: 'sessions',
      up: 'ms',
      lines: [
        { name: 'alarm late, p99', points: sessions.map((run) => [run.sessions, run.lateP99]) },
        { name: 'event loop, p99', points: sessions.map((run) => [run.sessions, run.loopP99]) },
      ],
    }),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${2 * size.width} ${size.height}" font-family="sans-serif" font-size="12">`,
    '<title>How cost grows with guests and with sessions</title>',
    `<rect width="${2 * size.width}" height="${size.height}" fill="#fff"/>`,
    ...panels.map((each, index) => `<g transform="translate(${index * size.width} 0)">${each}</g>`),
    '</svg>',
    '',
  ].join('\n');
}

interface Panel {
  readonly title: string;
  readonly across: string;
  readonly up: string;
  readonly lines: readonly { readonly name: string; readonly points: readonly (readonly number[])[] }[];
}

const size = { width: 420, height: 300 } as const;
const room = { left: 52, right: 116, top: 36, bottom: 44 } as const;
const looks = [
  { colour: '#7a3b12', dash: 'none' },
  { colour: '#2f5d73', dash: '6 4' },
] as const;

function panel({ title, across, up, lines }: Panel): string {
  const all = lines.flatMap(({ points }) => points).filter((point) => point.every((each) => each > 0));
  if (all.length === 0) return '';
  const x = scale(
    all.map(([first = 1]) => first),
    [room.left, size.width - room.right],
  );
  const y = scale(
    all.map(([, second = 1]) => second),
    [size.height - room.bottom, room.top],
  );
  const ticks = (values: readonly number[]) => [...new Set(values)].toSorted((a, b) => a - b);
  const drawn = lines.map(({ name, points }, index) => {
    const look = looks[index % looks.length] ?? looks[0];
    const at = points.filter((point) => point.every((each) => each > 0));
    const places = at.map(([first = 1, second = 1]) => `${x(first)},${y(second)}`);
    const [, last = 1] = at.at(-1) ?? [];
    const end = (at.at(-1)?.[0] ?? 1) as number;
    return [
      `<polyline points="${places.join(' ')}" fill="none" stroke="${look.colour}" stroke-width="2" stroke-dasharray="${look.dash}"/>`,
      ...places.map((place) => {
        const [cx, cy] = place.split(',');
        return `<circle cx="${cx}" cy="${cy}" r="3" fill="${look.colour}"/>`;
      }),
      `<text x="${x(end) + 8}" y="${y(last) + (index === 0 ? -2 : 12)}" fill="${look.colour}">${name}</text>`,
    ].join('');
  });
  return [
    `<text x="${room.left}" y="20" font-weight="bold">${title}</text>`,
    `<path d="M${room.left} ${room.top}V${size.height - room.bottom}H${size.width - room.right}" fill="none" stroke="#555"/>`,
    ...ticks(all.map(([first = 1]) => first)).map(
      (value) =>
        `<text x="${x(value)}" y="${size.height - room.bottom + 16}" text-anchor="middle">${value.toLocaleString('en')}</text>`,
    ),
    ...tens(all.map(([, second = 1]) => second)).map(
      (value) => `<text x="${room.left - 6}" y="${y(value) + 4}" text-anchor="end">${value}</text>`,
    ),
    `<text x="${(room.left + size.width - room.right) / 2}" y="${size.height - 10}" text-anchor="middle">${across}</text>`,
    `<text x="12" y="${room.top - 4}">${up}</text>`,
    ...drawn,
  ].join('\n');
}

function scale(values: readonly number[], [from, to]: readonly [number, number]): (value: number) => number {
  const [low, high] = [Math.log10(Math.min(...values)), Math.log10(Math.max(...values))];
  const span = high - low || 1;
  return (value) => Math.round(from + ((Math.log10(value) - low) / span) * (to - from));
}

/** Powers of ten within, and the ends where there is none. */
function tens(values: readonly number[]): number[] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const powers = Array.from({ length: 9 }, (_, index) => 10 ** (index - 2));
  const within = powers.filter((power) => power >= low && power <= high);
  return within.length > 1 ? within : [low, high].map((value) => Number(value.toPrecision(2)));
}
