import { browser } from '../../browser/api';
import { injectionProblem, notReadable } from '../../browser/compat';
import { keepStorageToOwnPages } from '../../browser/storage-access';
import { readFacts } from '../../listing';
import type { OutputOf } from '../../message/protocol';
import { sendToPage } from '../../message/send';
import { fail, type Problem, problem, type Result, succeed } from '../../problem';
import { writePageRecord } from '../../store/page-record';
import { readPicks, siteOf } from '../../store/site-picks';
import { inTime } from '../in-time';
import { readFrameTexts } from './read-frames';

/** Scripts that run inside a page. */
type PageScript = 'listing' | 'pointing' | 'shown-photo';

/** Puts a script into a tab's top frame; it replaces an earlier copy of itself. */
export async function injectPageScript(tabId: number, script: PageScript = 'listing'): Promise<Result<null>> {
  await keepStorageToOwnPages();
  try {
    // Without `injectImmediately` the browser waits for the page to be idle: one that never ends is never idle.
    const files = [`content-scripts/${script}.js`];
    const injected = browser.scripting.executeScript({ target: { tabId }, files, injectImmediately: true });
    await inTime(mostWaitMs, injected, late);
    return succeed(null);
  } catch (error) {
    return fail(isLate(error) ? pageBusy : injectionProblem(error));
  }
}

/** A page whose own scripts never pause answers nobody. Reading itself ends by its counted budget, long before this. */
const mostWaitMs = 15_000;
const mostReadMs = 90_000;
const late = 'late';
const isLate = (error: unknown) => error instanceof Error && error.message === late;
const pageBusy = problem('page-busy', 'tab');

/**
 * Firefox says of its own viewers, as of PDF documents, what it says of a page without the right to it. A right that is
 * there shows itself by the tab's address, which is told with it alone: then no further click helps.
 */
async function withAddress(tabId: number, refused: Problem): Promise<Problem> {
  const { url } = await browser.tabs.get(tabId).catch(() => ({ url: undefined }));
  return refused.code === 'right-lapsed' && url !== undefined ? notReadable(url) : refused;
}

async function askAbout(tabId: number) {
  const tab = await browser.tabs.get(tabId);
  return { tab, picks: await readPicks(siteOf(tab.url ?? ''), tab.incognito) };
}

/** Reads the listing that a tab shows and remembers its photos. Runs in the background. */
export async function readPage(tabId: number): Promise<Result<OutputOf<'page.read'>>> {
  // All that is asked for at once; where the script is refused, nobody looks at the others.
  const asking = askAbout(tabId);
  const texts = readFrameTexts(tabId);
  asking.catch(() => {});
  const injected = await injectPageScript(tabId);
  if (!injected.ok) return fail(await withAddress(tabId, injected.problem));
  const { tab, picks } = await asking;
  const frameTexts = await texts;
  const reading = sendToPage(tabId, 'listing.read', { picks, frameTexts });
  const extract = await inTime(mostReadMs, reading, late).catch(() => fail(pageBusy));
  if (!extract.ok) return extract;
  const listing = readFacts(extract.value);
  const photos = listing.photos.map(({ id, url, alternatives }) => ({ id, urls: [url, ...alternatives] }));
  await writePageRecord(tabId, { url: listing.url, photos });
  return succeed({ listing, incognito: tab.incognito, picks });
}
