import { openFullPage } from '../../browser/compat';
import { answerOf, type Case, fileFromCase, makerNamed } from '../../case';
import { spanReads } from '../../code';
import type { Problem } from '../../problem';
import { readPageSource } from '../../reader/page/page-html';
import type { Span } from '../../span';
import { writeOwnMaker } from '../../store/maker-files';
import { kit, strings } from '../../words';

/** The maker files, where one is brought in by choosing or dropping it. */
export const openMakerFiles = () => openFullPage('#makers');

/** Where a page or text is brought in that tells of a maker. */
export const openPasting = () => openFullPage('#makers&take');

/** Opens files that were dropped here among the maker files; in a private window they stay unread, and the maker files open. */
export async function bringFiles(files: readonly File[], incognito: boolean): Promise<void> {
  if (incognito) return void (await openMakerFiles());
  // Loaded only now: no listing needs them.
  const [{ textsOf }, { keepBrought }] = await Promise.all([
    import('../makers/travel/use-brought'),
    import('../../store/brought'),
  ]);
  await openFullPage(`#makers&bring=${await keepBrought(await textsOf(files))}`);
}

/**
 * Where a maker file is taken from a page that tells of it. The maker that the listing names is looked for on it, and on a
 * page that is read from its own tab; of a private window nothing is kept for that.
 */
export async function openTaking(kase: Case, incognito: boolean): Promise<void> {
  const maker = makerNamed(kase);
  // Also an empty name: what an earlier listing named is not looked for any more.
  await (await import('../../store/taken')).keepWanted(incognito ? '' : maker);
  await openFullPage(`#makers&take${maker === '' ? '' : `&for=${encodeURIComponent(maker)}`}`);
}

/**
 * Reads the page that a tab shows for what it tells of makers, and opens what it proposes. Null when that is nothing, and
 * a problem when the page gave nothing to read.
 */
export async function takeFromTab(tabId: number): Promise<Problem | 'nothing' | null> {
  const source = await readPageSource(tabId);
  if (!source.ok) return source.problem;
  // Loaded only now: no listing needs the reader of makers' pages, and the panel would start later for it.
  const [{ takeFromSource }, { keepTaken, readWanted }] = await Promise.all([
    import('../makers/take/take-from-source'),
    import('../../store/taken'),
  ]);
  const taken = takeFromSource(source.value.html, {
    from: source.value.address,
    tab: tabId,
    known: await readWanted(),
  });
  if (taken.proposals.length === 0) return 'nothing';
  await openFullPage(`#makers&take=${await keepTaken(taken)}`);
  return null;
}

/**
 * Begins a maker file from a listing, keeps it and opens it, so that each entry is checked; the code with the date that
 * the listing says is the first of the known codes. In a private window nothing
 * is kept: there the maker files open without it.
 */
export async function startFile(kase: Case, incognito: boolean): Promise<void> {
  const { stamp, said } = answerOf(kase);
  const code = 'code' in stamp ? stamp.code : '';
  const note = strings.waysOn.note(kase.listing.url, code, kit.either(said.dates.map(kit.span)));
  const draft = incognito ? null : fileFromCase(kase, note);
  if (draft === null) return void (await openMakerFiles());
  const id = crypto.randomUUID();
  await writeOwnMaker(id, draft);
  const [date] = said.dates;
  const known = code === '' || !date ? '' : `&known=${encodeURIComponent(`${code}, ${dateRow(date)}`)}`;
  await openFullPage(`#makers&file=${id}${known}`);
}

/** A date as a row of known codes has it. */
const dateRow = (span: Span): string => `${span.about ? 'about ' : ''}${spanReads(span)}`;
