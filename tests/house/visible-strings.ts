import { parseSync } from 'vite';

/** A part of a syntax tree (ESTree), as far as it is looked at. */
interface Node {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

/** Attributes and properties of components whose text people see or hear. */
const shown = new Set(
  'aria-label aria-description aria-roledescription aria-valuetext alt caption closeLabel content error hint label legend placeholder says summary text title'.split(
    ' ',
  ),
);

/** The same on the way there, in an object; a colour of a text is no text. */
const shownKeys = new Set([...shown].filter((name) => name !== 'text' && name !== 'content'));

const hasLetters = (text: string): boolean => /\p{L}/u.test(text);
/** Two words: what stands in code as a name or a key has no space in it. */
const isSentence = (text: string): boolean => /\p{L}[\p{L}’',.:;!?)]* +[(“"‘]?\p{L}/u.test(text);

const isNode = (value: unknown): value is Node =>
  typeof value === 'object' && value !== null && typeof (value as Node).type === 'string';

const childrenOf = (node: Node): Node[] =>
  Object.entries(node).flatMap(([key, value]) =>
    key === 'parent' ? [] : (Array.isArray(value) ? value : [value]).filter(isNode),
  );

const nodeOf = (node: Node, key: string): Node | undefined => (isNode(node[key]) ? node[key] : undefined);
const nodesOf = (node: Node, key: string): Node[] =>
  Array.isArray(node[key]) ? node[key].filter(isNode) : [];

/** The text of a literal; of a template what stands between its holes. */
function textOf(node: Node): string | undefined {
  if (node.type === 'Literal') return typeof node.value === 'string' ? node.value : undefined;
  if (node.type === 'JSXText') return String(node.value);
  if (node.type !== 'TemplateLiteral') return undefined;
  return nodesOf(node, 'quasis')
    .map(({ value }) => (value as { cooked?: string }).cooked ?? '')
    .join(' … ');
}

/** The literals that an expression may come out as; not what is handed to a function on the way. */
function outcomes(node: Node | undefined): Node[] {
  switch (node?.type) {
    case 'JSXExpressionContainer':
    case 'ParenthesizedExpression':
    case 'TSAsExpression':
    case 'TSSatisfiesExpression':
      return outcomes(nodeOf(node, 'expression'));
    case 'ConditionalExpression':
      return [...outcomes(nodeOf(node, 'consequent')), ...outcomes(nodeOf(node, 'alternate'))];
    case 'LogicalExpression':
      return [
        ...outcomes(nodeOf(node, 'right')),
        ...(node.operator === '&&' ? [] : outcomes(nodeOf(node, 'left'))),
      ];
    case 'BinaryExpression':
      return node.operator === '+'
        ? [...outcomes(nodeOf(node, 'left')), ...outcomes(nodeOf(node, 'right'))]
        : [];
    case 'Literal':
    case 'TemplateLiteral':
      return [node];
    default:
      return [];
  }
}

const nameOf = (node: Node | undefined): string => {
  if (node?.type === 'JSXNamespacedName')
    return `${nameOf(nodeOf(node, 'namespace'))}:${nameOf(nodeOf(node, 'name'))}`;
  return typeof node?.name === 'string' ? node.name : '';
};

/** What shows a text that is handed to it or put into it. */
const sayers = new Set(['say', 'alert', 'confirm', 'prompt']);
const slots = new Set(['title', 'textContent', 'innerText', 'ariaLabel', 'placeholder']);

/** What asks the browser about the page, in its own language of selectors and queries. */
const askers = new Set(['matches', 'closest', 'querySelector', 'querySelectorAll', 'matchMedia']);
const comparing = new Set(['===', '!==', 'in', 'instanceof']);

/** The name of what is called. */
const called = (node: Node): string => {
  const callee = nodeOf(node, 'callee');
  return callee?.type === 'MemberExpression' ? nameOf(nodeOf(callee, 'property')) : nameOf(callee);
};

/** What makers read, not guests: a broken promise within the code, an import, a key that is compared or looked for. */
const unseen = (node: Node): boolean =>
  (node.type === 'NewExpression' && /^(Error|TypeError|RangeError)$/.test(nameOf(nodeOf(node, 'callee')))) ||
  node.type.startsWith('Import') ||
  (node.type === 'BinaryExpression' && comparing.has(String(node.operator))) ||
  (node.type === 'CallExpression' && askers.has(called(node))) ||
  node.type.startsWith('TSLiteral') ||
  node.type === 'TSTypeAliasDeclaration' ||
  node.type === 'TSInterfaceDeclaration';

/** Every text that stands in this code and that people may see; as `line: text`. */
export function visibleStrings(file: string, code: string): string[] {
  const found = new Map<number, string>();
  const line = (at: number) => code.slice(0, at).split('\n').length;
  const keep = (nodes: readonly Node[], counts: (text: string) => boolean): void => {
    for (const node of nodes) {
      const text = textOf(node)?.trim() ?? '';
      if (counts(text)) found.set(node.start, `${line(node.start)}: ${text}`);
    }
  };
  const visit = (node: Node): void => {
    if (unseen(node)) return;
    switch (node.type) {
      case 'SwitchCase':
        // The key that is compared is not said.
        for (const child of nodesOf(node, 'consequent')) visit(child);
        return;
      case 'JSXText':
        keep([node], hasLetters);
        break;
      case 'JSXElement':
      case 'JSXFragment':
        keep(nodesOf(node, 'children').flatMap(outcomes), hasLetters);
        break;
      case 'JSXAttribute':
        if (shown.has(nameOf(nodeOf(node, 'name')))) keep(outcomes(nodeOf(node, 'value')), hasLetters);
        // A class, a relation, a path of a drawing: words that nobody reads.
        else {
          for (const child of childrenOf(node)) if (child.type === 'JSXExpressionContainer') inside(child);
          return;
        }
        break;
      case 'Property':
        if (shownKeys.has(nameOf(nodeOf(node, 'key')))) keep(outcomes(nodeOf(node, 'value')), hasLetters);
        break;
      case 'CallExpression':
        if (sayers.has(called(node)))
          keep(nodesOf(node, 'arguments').slice(0, 1).flatMap(outcomes), hasLetters);
        break;
      case 'AssignmentExpression': {
        const left = nodeOf(node, 'left');
        if (left?.type === 'MemberExpression' && slots.has(nameOf(nodeOf(left, 'property')))) {
          keep(outcomes(nodeOf(node, 'right')), hasLetters);
        }
        break;
      }
      case 'Literal':
      case 'TemplateLiteral':
        keep([node], isSentence);
        break;
      default:
        break;
    }
    for (const child of childrenOf(node)) visit(child);
  };
  /** Within an attribute that nobody reads, only functions, objects and elements may show something. */
  const inside = (node: Node): void => {
    if (/Function|ObjectExpression/.test(node.type) || /^JSX(Element|Fragment)$/.test(node.type)) visit(node);
    else childrenOf(node).forEach(inside);
  };
  const { program, errors } = parseSync(file, code);
  if (errors.length > 0) throw new Error(`${file} cannot be parsed: ${errors[0]?.message}`);
  visit(program as unknown as Node);
  return [...found.values()];
}
