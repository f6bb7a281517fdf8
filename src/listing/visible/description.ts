import { isRunningText, plainLabel, splitLabelled } from '../../text/label-words';
import { descriptionLabels } from '../../text/page-words';
import { listOf } from '../../text/phrases';
import { type Draft, propose } from '../draft';
import type { Area } from '../page/area';
import { holds } from '../page/area';
import { attributeText, pathOf } from '../page/dom';
import type { Slices } from '../page/slices';
import { endAt, type PageElement, parentAt, type Snapshot, tagAt } from '../page/snapshot';
import { joinPieces, visibleText } from '../page/visible-text';
import { plainText } from '../structured/entities';
import { type HeadTags, headTag } from '../structured/open-graph';

const descriptionName =
  /(^|[\s_-])(item-?|product-?|listing-?|ad-?|article-?)?(description|beschreibung|descrizione|descripcion|beschrijving|omschrijving|setsumei)($|[\s_-])/i;
const limit = 20_000;
/** So much is read for it: a piece of the page may end beyond. */
const mostRead = 24_000;
const maxLabel = 60;
/** Where the longest run of prose is looked for in one element. */
const maxSearched = 100_000;
const words = new Set(listOf(...descriptionLabels).map(plainLabel));
const saysDescription = (text: string): boolean => text.length <= maxLabel && words.has(plainLabel(text));
const isHeading = /^(h[2-6]|dt|summary|legend|strong|b)$/;

/** Description candidates: an element so named, what follows a heading "Description", the longest run of prose, the head. */
export async function readDescriptions(
  snapshot: Snapshot,
  area: Area,
  tags: HeadTags,
  draft: Draft,
  slices: Slices,
): Promise<void> {
  const named = longest(snapshot, area, await namedBlocks(snapshot, area, slices));
  if (named) proposeBlock(snapshot, area, named.index, draft);
  await slices.rest();
  const under = await underHeading(snapshot, area, slices);
  await slices.rest();
  if (under)
    propose(draft.description, under.text.slice(0, limit), { origin: 'visible', where: under.where, confidence: 0.72 });
  if (!named && !under) {
    const prose = await proseRun(snapshot, area, slices);
    if (prose)
      propose(draft.description, prose.text.slice(0, limit), {
        origin: 'visible',
        where: prose.where,
        confidence: 0.55,
      });
  }
  const graph = headTag(tags, 'og:description', 'twitter:description');
  if (graph)
    propose(draft.description, plainText(graph), { origin: 'open-graph', where: 'og:description', confidence: 0.5 });
  const meta = headTag(tags, 'description');
  if (meta) propose(draft.description, plainText(meta), { origin: 'meta', where: 'description', confidence: 0.35 });
}

function proposeBlock(snapshot: Snapshot, area: Area, index: number, draft: Draft): void {
  const { element } = snapshot.elements[index] as PageElement;
  const text = withoutOwnLabel(visibleText(snapshot, index, { outside: area.outside, most: mostRead }));
  propose(draft.description, text.slice(0, limit), { origin: 'visible', where: pathOf(element), confidence: 0.74 });
}

/** "Description\nA bag…" without its first line. */
function withoutOwnLabel(text: string): string {
  const end = text.indexOf('\n');
  return saysDescription(text.slice(0, end)) ? text.slice(end) : text;
}

async function namedBlocks(snapshot: Snapshot, area: Area, slices: Slices): Promise<number[]> {
  const blocks: number[] = [];
  for (const [index, { element, tag, shown }] of snapshot.elements.entries()) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    if (shown !== 'shown' || area.outside[index] === 1 || tag === 'body' || tag === 'html' || tag === 'main') continue;
    const name = `${attributeText(element, 'class')} ${attributeText(element, 'id')} ${attributeText(element, 'data-testid')} ${attributeText(element, 'itemprop')}`;
    if (descriptionName.test(name.slice(0, 300)) && !holds(snapshot, index, area.heading)) blocks.push(index);
  }
  return blocks;
}

function longest(snapshot: Snapshot, area: Area, blocks: number[]): { index: number } | null {
  let best: { index: number; length: number } | null = null;
  for (const index of blocks.slice(0, 20)) {
    const { length } = visibleText(snapshot, index, { outside: area.outside, most: limit });
    if (length >= 15 && (!best || length > best.length)) best = { index, length };
  }
  return best;
}

/** What stands after a heading that says "Description", up to the next heading of its level. */
async function underHeading(
  snapshot: Snapshot,
  area: Area,
  slices: Slices,
): Promise<{ text: string; where: string } | null> {
  const { elements } = snapshot;
  for (const [index, { tag, element, shown, pieces: own, parent }] of elements.entries()) {
    if (shown !== 'shown' || area.outside[index] === 1 || own[1] - own[0] > 8 || !isHeading.test(tag)) continue;
    if (slices.due) await slices.rest();
    if (!saysDescription(visibleText(snapshot, index, { most: maxLabel }))) continue;
    let holder = parent;
    for (let level = 0; level < 3 && holder > 0; level += 1) {
      const end = elements[holder]?.pieces[1] ?? own[1];
      const stop = nextHeading(snapshot, endAt(snapshot, index), endAt(snapshot, holder), tag);
      const to = elements[stop ?? -1]?.pieces[0] ?? end;
      const text = joinPieces(snapshot, own[1], to, {
        outside: area.outside,
        most: mostRead,
      });
      if (text.length >= 15) return { text, where: `after ${pathOf(element)}` };
      holder = parentAt(snapshot, holder);
    }
  }
  return null;
}

function nextHeading(snapshot: Snapshot, from: number, to: number, tag: string): number | null {
  for (let index = from; index < to; index += 1) {
    const other = tagAt(snapshot, index);
    // A section that opens by itself: "Delivery", "Returns".
    if (other === tag || other === 'summary' || (/^h[1-6]$/.test(other) && /^h[1-6]$/.test(tag) && other < tag))
      return index;
  }
  return null;
}

/** The run of neighbouring paragraphs under one element that holds the most prose, cut at headings and rows of labels. */
async function proseRun(
  snapshot: Snapshot,
  area: Area,
  slices: Slices,
): Promise<{ text: string; where: string } | null> {
  const { elements } = snapshot;
  const holders = new Map<number, number>();
  for (const [index, piece] of snapshot.pieces.entries()) {
    if ((index & 127) === 0 && slices.due) await slices.rest();
    if (piece.shown !== 'shown' || piece.text.length < 25 || area.outside[piece.at] === 1) continue;
    const { tag, parent } = elements[piece.at] as PageElement;
    if (/^(a|button|option|label|h[1-6])$/.test(tag)) continue;
    const block = /^(p|span|b|strong|em|i|font|li)$/.test(tag) ? parent : piece.at;
    // Text beside the page's body has no element around it.
    if (block >= 0) holders.set(block, (holders.get(block) ?? 0) + piece.text.length);
  }
  let best: { text: string; where: string } | null = null;
  for (const [holder] of [...holders].sort((a, b) => b[1] - a[1]).slice(0, 12)) {
    const { element } = elements[holder] as PageElement;
    if (slices.due) await slices.rest();
    for (const text of runsOf(visibleText(snapshot, holder, { outside: area.outside, most: maxSearched })))
      if (text.length >= 40 && !(best && text.length <= best.text.length)) best = { text, where: pathOf(element) };
  }
  return best;
}

/** A labelled line with a sum is the page's own, and none of the seller's prose. */
const sum = /\p{Sc}|円|\d\s?(?:eur|usd|gbp|chf)(?!\p{L})/iu;
/** So many labelled lines may stand within a seller's prose: "Number on the tab: …"; more are a table beside it. */
const mostLabelled = 2;

/** Splits a text at short lines (headings, prices) and at rows of labels into runs of prose. */
function runsOf(text: string): string[] {
  const runs: string[][] = [[]];
  let labelled: string[] = [];
  for (const line of text.split(/\n+/)) {
    const pair = splitLabelled(line);
    const hasLabel = pair !== null && !isRunningText(pair.value);
    if (hasLabel && !sum.test(line)) {
      labelled.push(line);
      continue;
    }
    const [run, rows] = [runs.at(-1)!, labelled];
    labelled = [];
    const isProse = !hasLabel && (line.length >= 40 || /[.!?。！？…]["')”»]?$/.test(line));
    if (!isProse) runs.push([]);
    else if (run.length > 0 && rows.length <= mostLabelled) run.push(...rows, line);
    else runs.push([line]);
  }
  return runs.map((run) => run.join('\n'));
}
