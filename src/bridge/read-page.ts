import { readFacts } from '../listing';
import { fail, type Problem, type Result, succeed } from '../problem';
import { browser } from './browser';
import { injectionProblem, notReadable } from './compat';
import { writePageRecord } from './page-record';
import type { OutputOf } from './protocol';
import { readFrameTexts } from './read-frames';
import { sendToPage } from './send';
import { readPicks, siteOf } from './site-picks';
import { keepStorageToOwnPages } from './storage-access';

/** Scripts that run inside a page. */
type PageScript = 'listing' | 'shown-photo';

/** Puts a script into a tab's top frame; it replaces an earlier copy of itself. */
export async function injectPageScript(tabId: number, script: PageScript = 'listing'): Promise<Result<null>> {
  await keepStorageToOwnPages();
  try {
    await browser.scripting.executeScript({ target: { tabId }, files: [`content-scripts/${script}.js`] });
    return succeed(null);
  } catch (error) {
    return fail(injectionProblem(error));
  }
}

/**
 * Firefox says of its own viewers, as of PDF documents, what it says of a page without the right to it. A right that is
 * there shows itself by the tab's address, which is told with it alone: then no further click helps.
 */
async function withAddress(tabId: number, problem: Problem): Promise<Problem> {
  const { url } = await browser.tabs.get(tabId).catch(() => ({ url: undefined }));
  return problem.code === 'right-lapsed' && url !== undefined ? notReadable(url) : problem;
}

/** Reads the listing that a tab shows and remembers its photos. Runs in the background. */
export async function readPage(tabId: number): Promise<Result<OutputOf<'page.read'>>> {
  const injected = await injectPageScript(tabId);
  if (!injected.ok) return fail(await withAddress(tabId, injected.problem));
  const tab = await browser.tabs.get(tabId);
  const picks = await readPicks(siteOf(tab.url ?? ''), tab.incognito);
  const frameTexts = await readFrameTexts(tabId);
  const extract = await sendToPage(tabId, 'listing.read', { picks, frameTexts });
  if (!extract.ok) return extract;
  const listing = readFacts(extract.value);
  const photos = listing.photos.map(({ id, url, alternatives }) => ({ id, urls: [url, ...alternatives] }));
  await writePageRecord(tabId, { url: listing.url, photos });
  return succeed({ listing, incognito: tab.incognito, picks });
}
