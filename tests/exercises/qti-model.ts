// Whether an XML document keeps to the content models of QTI 3.0 in src/published/reference/qti-content-models.json.
import { SaxesParser } from 'saxes';
import models from '../../src/published/reference/qti-content-models.json' with { type: 'json' };

export interface Node {
  readonly name: string;
  readonly namespace: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: (Node | string)[];
}

interface Value {
  readonly pattern?: string;
  readonly oneOf?: readonly string[];
  readonly key?: string;
}
interface Part {
  /** Elements that may stand here, or the name of a group of them. */
  readonly of: readonly string[] | string;
  readonly min?: number;
  readonly max?: number;
}
interface Model {
  readonly type: string;
  /** Kind of value by attribute; a `!` behind it: required. */
  readonly attributes?: Readonly<Record<string, string>>;
  /** What stands inside, in this order. */
  readonly children?: readonly Part[];
  /** Text between the children. */
  readonly mixed?: boolean;
  /** Text and nothing else, of this kind. */
  readonly text?: string;
}
const elements: Readonly<Record<string, Model>> = models.elements;
const values: Readonly<Record<string, Value>> = models.values;
const documents: Readonly<Record<string, string>> = models.documents;
const groups: Readonly<Record<string, readonly string[]>> = models.groups;

/** The document's tree; throws where it is not well-formed. */
export function parse(xml: string): Node {
  const top: Node = { name: '', namespace: '', attributes: new Map(), children: [] };
  const open = [top];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (fault) => {
    throw fault;
  });
  parser.on('opentag', ({ local, uri, attributes }) => {
    const node: Node = {
      name: local,
      namespace: uri,
      attributes: new Map(Object.values(attributes).map(({ name, value }) => [name, value])),
      children: [],
    };
    open.at(-1)!.children.push(node);
    open.push(node);
  });
  parser.on('closetag', () => void open.pop());
  parser.on('text', (text) => {
    if (open.length > 1) open.at(-1)!.children.push(text);
  });
  parser.write(xml).close();
  return top.children[0] as Node;
}

export const isNode = (child: Node | string): child is Node => typeof child !== 'string';
export const inside = (node: Node): Node[] => node.children.filter(isNode);
export const everyNode = (node: Node): Node[] => [node, ...inside(node).flatMap(everyNode)];
export const textOf = (node: Node): string =>
  node.children.map((child) => (isNode(child) ? textOf(child) : child)).join('');
export const named = (node: Node, name: string): Node[] =>
  everyNode(node).filter((each) => each.name === name);
export const attribute = (node: Node, name: string): string => node.attributes.get(name) ?? '';

function fits(text: string, kind: string): boolean {
  const { pattern, oneOf } = values[kind]!;
  return oneOf ? oneOf.includes(text) : new RegExp(`^(?:${pattern})$`, 'u').test(text);
}

function attributeFaults(node: Node, model: Model, isRoot: boolean): string[] {
  const known = Object.entries(model.attributes ?? {});
  const declaration = (name: string) => isRoot && /^(xmlns(:xsi)?|xsi:schemaLocation)$/.test(name);
  return [
    ...[...node.attributes.keys()]
      .filter((name) => !declaration(name) && !known.some(([each]) => each === name))
      .map((name) => `${node.name} may not have ${name}`),
    ...known.flatMap(([name, kind]) => {
      const given = node.attributes.get(name);
      if (given === undefined) return kind.endsWith('!') ? [`${node.name} lacks ${name}`] : [];
      return fits(given, kind.replace('!', '')) ? [] : [`${node.name} ${name}="${given}" is no ${kind}`];
    }),
  ];
}

/** The children in the order of the model's parts, each part as often as it may. */
function childFaults(node: Node, model: Model): string[] {
  const names = inside(node).map(({ name }) => name);
  let at = 0;
  const faults = (model.children ?? []).flatMap(({ of, min = 0, max = Infinity }) => {
    const set = typeof of === 'string' ? groups[of]! : of;
    const from = at;
    while (at < names.length && at - from < max && set.includes(names[at]!)) at++;
    return at - from < min ? [`${node.name} needs ${min} of ${set.join(', ')}, has ${at - from}`] : [];
  });
  return at < names.length ? [...faults, `${names[at]} may not stand there in ${node.name}`] : faults;
}

function faultsOf(node: Node, namespace: string, isRoot: boolean): string[] {
  const model = elements[node.name];
  if (!model) return [`${node.name} is unknown`];
  const loose = node.children.filter((child) => !isNode(child)).join('');
  return [
    ...(node.namespace === namespace ? [] : [`${node.name} is in the namespace "${node.namespace}"`]),
    ...attributeFaults(node, model, isRoot),
    ...childFaults(node, model),
    ...(model.text !== undefined && !fits(loose, model.text) ? [`${node.name} holds “${loose}”`] : []),
    ...(model.text === undefined && !model.mixed && loose.trim() !== ''
      ? [`${node.name} holds the text “${loose.trim()}”`]
      : []),
    ...inside(node).flatMap((child) => faultsOf(child, namespace, false)),
  ];
}

/** Names declared as xs:ID are unique; names that refer to one are declared. */
function keyFaults(root: Node): string[] {
  const of = (key: string) =>
    everyNode(root).flatMap((node) =>
      Object.entries(elements[node.name]?.attributes ?? {})
        .filter(([name, kind]) => values[kind.replace('!', '')]!.key === key && node.attributes.has(name))
        .map(([name]) => attribute(node, name)),
    );
  const declared = of('declares');
  return [
    ...declared.filter((name, i) => declared.indexOf(name) !== i).map((name) => `${name} is declared twice`),
    ...of('refers')
      .filter((name) => !declared.includes(name))
      .map((name) => `${name} is not declared`),
  ];
}

/** Every fault of a document, in words; none when it keeps to its model. */
export function faults(xml: string): string[] {
  let root: Node;
  try {
    root = parse(xml);
  } catch (fault) {
    return [`not well-formed: ${String(fault)}`];
  }
  const namespace = documents[root.name];
  if (namespace === undefined) return [`${root.name} is no document`];
  return [...faultsOf(root, namespace, true), ...keyFaults(root)];
}
