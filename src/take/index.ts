import { firstChild, invoke, property, textContent } from '../listing/page/dom';
import { headsOf, makersNamed, type NamedMakers } from './name';
import { isOwnHeading, readBlocks } from './page/blocks';
import { textOfBlocks } from './page/text-of';
import { PageReader } from './page-reader';
import { readTelling, whatIsTold } from './tells';
import type { Proposal } from './types';

export { draftWith } from './draft';
export { pageOfText } from './page/pasted';
export { piecesOf } from './pieces';
export type { Doubt, Proposal, ProposalKind } from './types';
export { proposalSchema } from './types';

/** Where a page was read, and on which day (ISO 8601); both go with every proposal as its source. */
export interface PageRead {
  address: string;
  day: string;
  /** The maker of the listing that it is read for, where one is known. */
  known?: string | undefined;
}

/**
 * What a page that tells of makers proposes for their files: each entry with its exact words, its place, and the page as
 * its source. Nothing where the page merely mentions codes or offers a piece. The work grows with the page alone.
 */
export const takeFromPage = (document: Document, page: PageRead): Proposal[] => readPage(document, page).proposals;

/** What a page proposes, and whom it seems to be of: where that is not sure, the buyer is asked. */
export function readPage(
  document: Document,
  { address, day, known }: PageRead,
): { proposals: Proposal[]; named: NamedMakers } {
  const body = property<Element | null>(document, 'body');
  // A page may leave its outer tags out, and not every parser puts them in.
  const blocks = readBlocks(body && firstChild(body) ? body : document);
  const title = titleOf(document);
  const telling = readTelling(title, blocks);
  const prose = blocks.filter((block) => block.kind !== 'table' && !(block.kind === 'heading' && isOwnHeading(block)));
  const named = makersNamed(headsOf(document, title, blocks), textOfBlocks(prose), known);
  if (telling.offersInHeading || telling.ofOtherCodes) return { proposals: [], named };
  const found = new PageReader(title, blocks, { address, day }, named).read();
  return { proposals: whatIsTold(found, telling), named };
}

function titleOf(document: Document): string {
  const element = invoke<Element | null>(document, 'querySelector', 'title');
  return element ? textContent(element).trim().slice(0, 300) : '';
}
