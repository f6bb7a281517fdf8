import { silentTags } from '../structured/block-text';
import { webAddress } from './address';
import { attribute, attributeText, firstChild, isElement, nextSibling, nodeType, property, tagOf } from './dom';
import { frameDocument, isTextFrame } from './frames';
import type { Looker } from './look';
import type { Budget, Slices } from './slices';

/** One element of the page as it was found, shadow trees and same-origin frames laid into the place of their hosts. */
export interface PageElement {
  element: Element;
  tag: string;
  /** Index of the element that holds it, -1 at the top. */
  parent: number;
  /** Index after its last descendant. */
  end: number;
  depth: number;
  shown: 'shown' | 'hidden' | 'assistive';
  struck: boolean;
  /** Its pieces of text: half-open range of `Snapshot.pieces`. */
  pieces: [number, number];
}

/** A piece of text, or a new line between blocks. */
export interface TextPiece {
  text: string;
  /** Index of the element that it stands in. */
  at: number;
  shown: 'shown' | 'hidden' | 'assistive';
  struck: boolean;
}

export interface Snapshot {
  elements: PageElement[];
  pieces: TextPiece[];
  /** The document and every shadow tree and frame document met. */
  roots: ParentNode[];
  /** Frames of other origins whose text is not known. */
  unreadFrames: { at: number; address: string }[];
}

/** What is asked of an index; where no element has it, nothing holds it, is inside it or names it. */
export const parentAt = ({ elements }: Snapshot, index: number): number => elements[index]?.parent ?? -1;
export const endAt = ({ elements }: Snapshot, index: number): number => elements[index]?.end ?? index;
export const tagAt = ({ elements }: Snapshot, index: number): string => elements[index]?.tag ?? '';

export interface SnapshotOptions {
  look: Looker;
  budget: Budget;
  slices: Slices;
  /** Gives a closed shadow root, where the browser lets the caller see it. */
  closedShadowRoot?: ((element: Element) => ShadowRoot | null) | undefined;
  /** Base for the frames' addresses. */
  base: string;
  /** Text of frames of other origins that was read with the user's permission, by the frame's address. */
  frameTexts?: Record<string, string> | undefined;
}

interface Level {
  next: Node | null;
  /** Slotted children, which need not be neighbours; taken before `next`. */
  queue: Node[];
  taken: number;
  /** Element index whose children these are, and what it hands down. */
  parent: number;
  shown: PageElement['shown'];
  struck: boolean;
  /** How the element shows its own text, asked when the first text is met. */
  text: { invisible: boolean; keepsLines: boolean } | null;
  block: boolean;
  slots: SlotContent | null;
}
type Handed = Omit<Level, 'next' | 'queue' | 'taken'>;
/** Light children waiting for the slots of their host's shadow tree. */
interface SlotContent {
  host: Element;
  /** What the slots among the host's own children show: a slot may be handed on. */
  outer: SlotContent | null;
}

/** Most characters of one text: no description is longer. */
const maxTextLength = 20_000;
const plainText = { invisible: false, keepsLines: false };

/** Walks the page once, in slices, with a stack. What the budget leaves out is reported in `problems`. */
export async function takeSnapshot(document: Document, options: SnapshotOptions): Promise<Snapshot> {
  const { look, budget, slices } = options;
  const snapshot: Snapshot = { elements: [], pieces: [], roots: [document], unreadFrames: [] };
  const { elements, pieces } = snapshot;
  const stack: Level[] = [];
  const down = (next: Node | null, from: Handed, queue: Node[] = []) => stack.push({ ...from, next, queue, taken: 0 });
  down(rootElement(document), {
    parent: -1,
    shown: 'shown',
    struck: false,
    text: plainText,
    block: true,
    slots: null,
  });
  let visited = 0;

  const leave = (level: Level) => {
    const left = elements[level.parent];
    if (!left || left.end !== -1) return;
    left.end = elements.length;
    if (level.block) pieces.push({ text: '\n', at: level.parent, shown: left.shown, struck: false });
    left.pieces[1] = pieces.length;
  };

  for (let level = stack.at(-1); level; level = stack.at(-1)) {
    const node = level.queue[level.taken] ?? level.next;
    level.taken += 1;
    if (node === null) {
      stack.pop();
      leave(level);
      continue;
    }
    if (node === level.next) level.next = nextSibling(node);
    visited += 1;
    if ((visited & 31) === 0 && slices.due) await slices.rest();
    if (slices.take('nodes', 1) === 0) {
      while (stack.length > 0) leave(stack.pop() as Level);
      break;
    }
    const type = nodeType(node);
    if (type === 3) {
      const text = property<string>(node, 'data');
      if (text.trim() === '' && !/[^\n\t]/.test(text) && !text.includes(' ')) {
        if (pieces.at(-1)?.text !== '\n')
          pieces.push({ text: ' ', at: level.parent, shown: level.shown, struck: level.struck });
        continue;
      }
      const kept = text.slice(0, slices.take('characters', text.length, maxTextLength));
      const holder = elements[level.parent];
      level.text ??= holder ? look.text(holder.element, holder.tag) : plainText;
      pieces.push({
        text: level.text.keepsLines ? kept : kept.replace(/[^\S\u00A0\u2009\u202F]+/g, ' '),
        at: level.parent,
        shown: level.text.invisible ? 'hidden' : level.shown,
        struck: level.struck,
      });
      continue;
    }
    if (!isElement(node) || stack.length > budget.depth) continue;
    const tag = tagOf(node);
    if (silentTags.has(tag) && tag !== 'noscript' && tag !== 'picture') continue;
    const index = elements.length;
    const own = look.element(node, tag);
    const shown = worse(level.shown, own.shown);
    const struck = level.struck || own.struck;
    if (own.block) pieces.push({ text: '\n', at: Math.max(level.parent, 0), shown, struck: false });
    else if (tag === 'td' || tag === 'th')
      pieces.push({ text: '\t', at: Math.max(level.parent, 0), shown, struck: false });
    const first = pieces.length;
    elements.push({
      element: node,
      tag,
      parent: level.parent,
      end: -1,
      depth: stack.length,
      shown,
      struck,
      pieces: [first, first],
    });
    const handed = {
      parent: index,
      shown,
      struck,
      text: null,
      block: own.block,
      slots: level.slots,
    };
    const inner = innerRoot(node, tag, options, snapshot);
    const slotted = tag === 'slot' && level.slots ? slottedNodes(node, level.slots, slices) : [];
    if (inner.kind === 'shadow') down(firstChild(inner.root), { ...handed, slots: { host: node, outer: level.slots } });
    else if (inner.kind === 'frame') down(rootElement(inner.root), { ...handed, slots: null });
    else if (inner.kind === 'text') {
      pieces.push({ text: `\n${inner.text.slice(0, maxTextLength)}\n`, at: index, shown, struck });
      down(null, handed);
    } else if (slotted.length > 0) down(null, { ...handed, slots: level.slots?.outer ?? null }, slotted);
    else down(tag === 'noscript' || inner.kind === 'unread' ? null : firstChild(node), handed);
  }
  return snapshot;
}

const rootElement = (document: Node): Node | null => property<Element | null>(document, 'documentElement') ?? null;

/** The light children that a slot shows; none when it shows its own content. */
function slottedNodes(slot: Element, slots: SlotContent, slices: Slices): Node[] {
  const name = attributeText(slot, 'name');
  const wanted: Node[] = [];
  // Each slot goes through all children of the host: they count as visited, or many of both would be their product.
  for (let node = firstChild(slots.host); node && slices.take('nodes', 1) > 0; node = nextSibling(node))
    if ((isElement(node) ? attributeText(node, 'slot') : '') === name) wanted.push(node);
  return wanted.some((node) => isElement(node) || (property<string>(node, 'data') ?? '').trim() !== '') ? wanted : [];
}

const worse = (a: PageElement['shown'], b: PageElement['shown']): PageElement['shown'] =>
  a === 'hidden' || b === 'hidden' ? 'hidden' : a === 'assistive' || b === 'assistive' ? 'assistive' : 'shown';

type Inner = { kind: 'none' | 'unread' } | { kind: 'shadow' | 'frame'; root: Node } | { kind: 'text'; text: string };

/** What an element shows instead of its children: a shadow tree, a frame's document, or a frame's text read elsewhere. */
function innerRoot(element: Element, tag: string, options: SnapshotOptions, snapshot: Snapshot): Inner {
  const root = shadowOf(element, tag, options);
  if (root) {
    snapshot.roots.push(root);
    return { kind: 'shadow', root };
  }
  if (tag !== 'iframe' && tag !== 'frame') return { kind: 'none' };
  const framed = frameDocument(element);
  if (framed) {
    snapshot.roots.push(framed);
    return { kind: 'frame', root: framed };
  }
  const address = webAddress(attribute(element, 'src'), options.base);
  const text = address === null ? undefined : options.frameTexts?.[address];
  // What an advertisement, a map or a chat says in its frame is none of the listing's words.
  if (text !== undefined)
    return isTextFrame(snapshot, snapshot.elements.length - 1, false) ? { kind: 'text', text } : { kind: 'unread' };
  if (address !== null) snapshot.unreadFrames.push({ at: snapshot.elements.length - 1, address });
  return { kind: 'unread' };
}

const mayHostShadow = /-|^(article|aside|blockquote|body|div|footer|h[1-6]|header|main|nav|p|section|span)$/;

/** Open, closed and (where the parser left it as a template) declared shadow roots. */
function shadowOf(element: Element, tag: string, options: SnapshotOptions): ParentNode | null {
  if (!mayHostShadow.test(tag)) return null;
  const open = property<ShadowRoot | null>(element, 'shadowRoot') ?? null;
  if (open) return open;
  for (let node = firstChild(element); node; node = nextSibling(node)) {
    if (isElement(node) && tagOf(node) === 'template' && attribute(node, 'shadowrootmode') !== null)
      return property<DocumentFragment | undefined>(node, 'content') ?? node;
    if (isElement(node)) break;
  }
  // A closed tree is looked for where one is likely: the question costs more than all others.
  if (!tag.includes('-') && firstChild(element) !== null) return null;
  try {
    return options.closedShadowRoot?.(element) ?? null;
  } catch {
    return null;
  }
}
