// A chapter's MDX read once, as its page is set: sections, headings with their addresses, components, links, words in bold.
import Slugger from 'github-slugger';
import { mdxToMdast, type MdastNode } from 'satteri';
import { keepTogether } from '../core/keep-together.ts';
import { remember } from '../core/numerics/remember.ts';

export interface Heading {
  readonly depth: number;
  readonly text: string;
  /** Its address on the page. */
  readonly slug: string;
}
/** What stands under a heading of the second or third depth; the first has none, and comes before them all. */
export interface Section {
  readonly heading?: Heading;
  readonly nodes: readonly MdastNode[];
}
export interface Component {
  readonly name: string;
  /** As the author gave them; one without a value is true. */
  readonly attributes: Readonly<Record<string, string | true>>;
}
export interface ChapterText {
  readonly sections: readonly Section[];
  readonly headings: readonly Heading[];
  readonly components: readonly Component[];
  /** Addresses of links. */
  readonly links: readonly string[];
  readonly bold: readonly string[];
}

export const childrenOf = (node: MdastNode): readonly MdastNode[] =>
  'children' in node ? node.children : [];

/** A node and all below it, in the order of the page. */
const withAll = (node: MdastNode): readonly MdastNode[] => [node, ...childrenOf(node).flatMap(withAll)];

/** The words in a node, as they stand. */
const textIn = (node: MdastNode): string =>
  'value' in node ? String(node.value) : childrenOf(node).map(textIn).join('');

/** A node as the component that it is; nothing where it is none. */
export function componentOf(node: MdastNode): Component | undefined {
  if (node.type !== 'mdxJsxFlowElement' && node.type !== 'mdxJsxTextElement') return undefined;
  const attributes = node.attributes.flatMap((each) => {
    if (each.type !== 'mdxJsxAttribute') return [];
    const { name, value } = each;
    return [[name, typeof value === 'string' ? value : (value?.value ?? true)] as const];
  });
  return { name: node.name ?? '', attributes: Object.fromEntries(attributes) };
}

/** The components in some nodes, in order. */
export const componentsIn = (nodes: readonly MdastNode[]): readonly Component[] =>
  nodes.flatMap(withAll).flatMap((node) => componentOf(node) ?? []);

const isSectionHead = (node: MdastNode) => node.type === 'heading' && (node.depth === 2 || node.depth === 3);

const MOST = 200; // texts that are kept: the book has about eighty pages

/** A chapter's text, with its front matter or without. */
export const chapterText = remember((mdx: string): ChapterText => {
  const { children } = mdxToMdast(mdx, { features: { math: true } }) as { children: readonly MdastNode[] };
  const nodes = children.flatMap(withAll);
  const slugger = new Slugger();
  const headings = new Map<MdastNode, Heading>(
    nodes.flatMap((node) => {
      if (node.type !== 'heading') return [];
      const text = textIn(node).trim();
      const slug = slugger.slug(keepTogether(text)); // of the text as `spaces.ts` sets it
      return [[node, { depth: node.depth, text, slug }] as const];
    }),
  );
  const sections: { heading?: Heading; nodes: MdastNode[] }[] = [{ nodes: [] }];
  for (const node of children.filter(({ type }) => type !== 'yaml'))
    if (isSectionHead(node)) sections.push({ heading: headings.get(node)!, nodes: [] });
    else sections.at(-1)!.nodes.push(node);
  return {
    sections,
    headings: [...headings.values()],
    components: componentsIn(children),
    links: nodes.flatMap((node) => (node.type === 'link' ? node.url : [])),
    bold: nodes.flatMap((node) => (node.type === 'strong' ? textIn(node) : [])),
  };
}, MOST);

/** What the components of a name in a text are `of`, in order. */
export const namedIn = (mdx: string, name: string): readonly string[] =>
  chapterText(mdx).components.flatMap(({ name: found, attributes: { of } }) =>
    found === name && typeof of === 'string' ? [of] : [],
  );

/** The cautions of a text: those that stand whole in it, or in brief. */
export const cautionsIn = (mdx: string, form: 'whole' | 'brief'): readonly string[] =>
  chapterText(mdx).components.flatMap(({ name, attributes: { of, brief } }) =>
    name === 'Caution' && typeof of === 'string' && (brief !== undefined) === (form === 'brief') ? [of] : [],
  );
