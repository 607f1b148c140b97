import compat from '@mdn/browser-compat-data' with { type: 'json' };
import { parseAst } from 'vite';

/**
 * What built pages ask of a browser beside what the oldest that we serve knows. Source of what each knows: MDN's
 * browser-compat-data (CC0), read as it is published.
 */

/** Lowest versions, by the names of the data. */
export type Floor = Readonly<Record<string, number>>;

interface Support {
  readonly version_added: string | boolean | null;
  readonly version_removed?: unknown;
  readonly flags?: unknown;
  readonly prefix?: unknown;
  readonly alternative_name?: unknown;
}

interface Known {
  readonly __compat?: {
    readonly support: Readonly<Record<string, Support | readonly Support[]>>;
    readonly status?: { readonly experimental: boolean };
  };
  readonly [part: string]: unknown;
}

const known = compat as unknown as {
  readonly api: Readonly<Record<string, Known>>;
  readonly javascript: { readonly builtins: Readonly<Record<string, Known>> };
  readonly css: Readonly<
    Record<'properties' | 'selectors' | 'at-rules' | 'types', Readonly<Record<string, Known>>>
  >;
};

const partOf = (whole: Known | undefined, name: string): Known | undefined =>
  whole !== undefined && Object.hasOwn(whole, name) ? (whole[name] as Known) : undefined;

/** Whether every browser of the floor knows it; what the data does not know is our own. */
function supported(what: Known | undefined, floor: Floor): boolean {
  if (what?.__compat === undefined) return true;
  const { support } = what.__compat;
  return Object.entries(floor).every(([browser, floorVersion]) =>
    [support[browser] ?? []]
      .flat()
      .some(
        ({ version_added: since, version_removed, flags, prefix, alternative_name }) =>
          [version_removed, flags, prefix, alternative_name].every((each) => each === undefined) &&
          (since === true || Number.parseFloat(String(since).replace('≤', '')) <= floorVersion),
      ),
  );
}

/** Interfaces whose methods our pages call without naming them. */
const interfaces = [
  ...['Blob', 'Crypto', 'CustomElementRegistry', 'DOMRect', 'Document', 'Element', 'Event', 'EventTarget'],
  ...['HTMLDialogElement', 'HTMLElement', 'HTMLInputElement', 'History', 'Navigator', 'Node', 'Response'],
  ...['Selection', 'URLSearchParams', 'Window'],
];
/** What our methods share a name with, but never are. */
const notOurs = /^(Temporal|Iterator|AsyncIterator|Symbol|Atomics|Error|SuppressedError|WebAssembly)$/;
const plannedOnly = (part: Known) => part.__compat?.status?.experimental !== false;

/** Every thing of the language or the page that has a method of this name. */
const methods = new Map<string, Known[]>();
const owners = [
  ...Object.entries(known.javascript.builtins).filter(([name]) => !notOurs.test(name)),
  ...interfaces.map((name) => [name, known.api[name] ?? {}] as const),
];
for (const [, owner] of owners)
  for (const [name, part] of Object.entries(owner))
    if (name !== '__compat' && !name.endsWith('_static') && !plannedOnly(part as Known))
      methods.set(name, [...(methods.get(name) ?? []), part as Known]);

interface SyntaxNode {
  readonly type: string;
  readonly [part: string]: unknown;
}
const isNode = (value: unknown): value is SyntaxNode =>
  typeof value === 'object' && value !== null && typeof (value as SyntaxNode).type === 'string';

/** What a script calls that is newer than the floor: `.toSorted()`, `AbortSignal.timeout`, `lookbehind`. */
export function newerInScript(code: string, floor: Floor): ReadonlySet<string> {
  const found = new Set<string>();
  const nameOf = (node: unknown) =>
    isNode(node) && node.type === 'Identifier' ? String(node.name) : undefined;
  const global = (name: string | undefined) =>
    name === undefined ? undefined : (known.javascript.builtins[name] ?? known.api[name]);
  function called(callee: unknown) {
    if (!isNode(callee)) return;
    const own = nameOf(callee);
    if (own !== undefined && !supported(global(own), floor)) found.add(own);
    if (callee.type !== 'MemberExpression' || callee.computed === true) return;
    const method = nameOf(callee.property);
    if (method === undefined) return;
    const object = nameOf(callee.object);
    const owner = global(object);
    const fixed = partOf(owner, `${method}_static`) ?? partOf(owner, method);
    if (fixed !== undefined && !supported(fixed, floor)) found.add(`${object}.${method}`);
    const some = methods.get(method);
    if (owner === undefined && some?.every((each) => !supported(each, floor))) found.add(`.${method}()`);
  }
  function visit(node: unknown) {
    if (Array.isArray(node)) for (const each of node) visit(each);
    if (!isNode(node)) return;
    if (node.type === 'CallExpression' || node.type === 'NewExpression') called(node.callee);
    const regex = node.regex as { pattern: string; flags: string } | undefined;
    if (regex && /\(\?<[=!]/.test(regex.pattern)) found.add('lookbehind');
    if (regex && /v/.test(regex.flags)) found.add('flag v');
    for (const part of Object.values(node)) visit(part);
  }
  visit(parseAst(code));
  return found;
}

/**
 * What a style uses that is newer than the floor, but for what stands in an `@supports` or behind an older value of the
 * same property: `:has`, `text-wrap`, `overflow: clip`, `@media range`.
 */
export function newerInStyle(style: string, floor: Floor): ReadonlySet<string> {
  const found = new Set<string>();
  const at = (what: Known | undefined, name: string) => {
    if (!supported(what, floor)) found.add(name);
  };
  const { properties, selectors, types } = known.css;
  const rules = known.css['at-rules'];
  function prelude(text: string) {
    const [, rule] = /^@([\w-]+)/.exec(text) ?? [];
    if (rule === undefined) {
      for (const [, name = ''] of text.matchAll(/::?([a-z][\w-]*)/g)) at(selectors[name], `:${name}`);
      return;
    }
    at(rules[rule], `@${rule}`);
    if (rule !== 'media') return;
    if (/[<>]/.test(text)) at(partOf(rules.media, 'range_syntax') ?? rules.media, '@media range');
    for (const [, name = ''] of text.matchAll(/\(([a-z-]+)/g))
      at(partOf(rules.media, name.replace(/^(min|max)-/, '')), `@media ${name}`);
  }
  function declared(body: string) {
    const earlier = new Set<string>();
    for (const each of body.split(';')) {
      const [property = '', ...rest] = each.split(':');
      const value = rest.join(':');
      const what = Object.hasOwn(properties, property) ? properties[property] : undefined;
      if (what === undefined || earlier.has(property)) continue;
      earlier.add(property);
      at(what, property);
      for (const [word] of value.matchAll(/[a-z][a-z-]+(?![\w(-])/g))
        at(partOf(what, word), `${property}: ${word}`);
      if (/\d[dsl]v[hwbi]\b/.test(value))
        at(partOf(types.length, 'viewport_percentage_units_dynamic'), `${property}: dvh`);
      if (/\dcq[whib]\b/.test(value))
        at(partOf(types.length, 'container_query_length_units'), `${property}: cqi`);
      for (const [, name = ''] of value.matchAll(/\b([a-z-]+)\(/g))
        at(types[name] ?? partOf(types.color, name), `${name}()`);
    }
  }
  const stack: string[] = [];
  for (const [, text = '', end] of style.replace(/\/\*.*?\*\//gs, '').matchAll(/([^{}]*)([{}])/g)) {
    const guarded = stack.some((each) => each.startsWith('@supports'));
    if (end === '{') {
      const opening = text.slice(text.lastIndexOf(';') + 1).trim();
      if (!guarded) prelude(opening);
      stack.push(opening);
    } else {
      if (!guarded) declared(text);
      stack.pop();
    }
  }
  return found;
}
