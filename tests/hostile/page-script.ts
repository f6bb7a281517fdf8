import { type Pick, type PickField, pickOnPage, readPage } from '../../src/listing';

/** The page script as the extension has it, answering an event of the test in place of a message. */
const turn = () => new Promise<void>((resume) => setTimeout(resume, 0));
const prototypeNames = () => Object.getOwnPropertyNames(Object.prototype).sort().join();

addEventListener('test-read', async (event) => {
  const picks = JSON.parse((event as CustomEvent<string | null>).detail ?? '[]') as Pick[];
  const before = prototypeNames();
  let began = false;
  let longestMs = 0;
  let sliceBegan = performance.now();
  const pause = async () => {
    longestMs = Math.max(longestMs, performance.now() - sliceBegan);
    if (!began) dispatchEvent(new CustomEvent('reading-began'));
    began = true;
    await turn();
    sliceBegan = performance.now();
  };
  const started = performance.now();
  const extract = await readPage(document, {
    url: location.href,
    now: '2026-03-01T12:00:00Z',
    picks,
    view: window,
    pause,
    closedShadowRoot: (element) => chrome.dom.openOrClosedShadowRoot(element as HTMLElement),
  });
  longestMs = Math.max(longestMs, performance.now() - sliceBegan);
  const detail = JSON.stringify({
    extract,
    prototypeClean: prototypeNames() === before && !('polluted' in {}),
    longestMs,
    totalMs: performance.now() - started,
  });
  dispatchEvent(new CustomEvent('test-listing', { detail }));
});

addEventListener('test-pick', async (event) => {
  const { field } = JSON.parse((event as CustomEvent<string>).detail) as { field: PickField };
  const pick = await pickOnPage(document, field, { invite: 'Point at it.' }, new AbortController().signal);
  dispatchEvent(new CustomEvent('test-picked', { detail: JSON.stringify(pick) }));
});
