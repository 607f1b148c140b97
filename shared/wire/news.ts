/**
 * What is new of a value that is told again and again, so short that nothing known is said twice. Where fields stood, a list of
 * one with the fields that are others; where a list stood, by place what is another in it; anything else as it is now. Which of
 * these it is can be told from what stood there, for no field of ours is now a list and now fields.
 */
export type News = unknown;

type Fields = Readonly<Record<string, unknown>>;
const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const areFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !isList(value);

/** Undefined where nothing is. Both are as JSON has them. */
export function newsBetween(was: unknown, is: unknown): News {
  if (isList(was) && isList(is) && was.length === is.length) return newsOfFields({ ...was }, { ...is });
  if (areFields(was) && areFields(is)) {
    // A field that has gone cannot be said.
    if (Object.keys(was).some((name) => was[name] !== undefined && is[name] === undefined)) return is;
    const fields = newsOfFields(was, is);
    return fields && [fields];
  }
  return was === is ? undefined : is;
}

function newsOfFields(was: Fields, is: Fields): Fields | undefined {
  const news = Object.keys(is).flatMap((name) => {
    const each = newsBetween(was[name], is[name]);
    return each === undefined ? [] : [[name, each] as const];
  });
  return news.length === 0 ? undefined : Object.fromEntries(news);
}

/** What it is now, of what it was. */
export function withNews(was: unknown, news: News): unknown {
  if (isList(was) && areFields(news)) return was.map((each, place) => newOr(each, news[place]));
  if (!areFields(was) || !isList(news)) return news;
  const now: Record<string, unknown> = { ...was };
  for (const [name, each] of Object.entries(news[0] as Fields)) now[name] = withNews(was[name], each);
  return now;
}
const newOr = (was: unknown, news: News): unknown => (news === undefined ? was : withNews(was, news));
