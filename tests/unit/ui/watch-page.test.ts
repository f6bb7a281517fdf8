import { describe, expect, it } from 'vitest';
import { watchPage } from '../../../src/ui/panel/watch-page';

/** A watch whose page answers as the test says; what it tells the session is kept in order. */
function watched() {
  const told: string[] = [];
  const waiting: (() => void)[] = [];
  const page = { answer: 'yes' as 'yes' | 'no' | 'gone', asked: 0 };
  const watch = watchPage({
    async stands() {
      page.asked += 1;
      return page.answer;
    },
    left: () => told.push('left'),
    arrived: () => told.push('arrived'),
    later(call) {
      waiting.push(call);
      return () => waiting.splice(waiting.indexOf(call), 1);
    },
  });
  const settle = () => new Promise((resume) => setImmediate(resume));
  const hear = async (...changes: Parameters<typeof watch.heard>[0][]) => {
    for (const change of changes) watch.heard(change);
    await settle();
  };
  const aMomentLater = async () => {
    for (const call of waiting.splice(0)) call();
    await settle();
  };
  return { told, page, watch, hear, aMomentLater };
}

const entryReplaced = [{ status: 'loading' }, { status: 'complete' }];

describe('watching whether the page was left', () => {
  it('a page that replaces its history entry again and again stands', async () => {
    const { told, page, hear, aMomentLater } = watched();
    // The first replacements come before the script is there to answer.
    page.answer = 'gone';
    for (let times = 0; times < 5; times += 1) await hear(...entryReplaced);
    page.answer = 'yes';
    for (let times = 0; times < 20; times += 1)
      await hear({ status: 'loading', url: `/item?t=${times}` }, { status: 'complete' });
    await aMomentLater();
    expect(told).toEqual([]);
  });

  it('a reload is a page left, which arrives when it is complete', async () => {
    const { told, page, hear } = watched();
    await hear(...entryReplaced);
    page.answer = 'gone';
    await hear(...entryReplaced);
    expect(told).toEqual(['left', 'arrived']);
  });

  it('a page that shows another piece under the same document is left', async () => {
    const { told, page, hear } = watched();
    page.answer = 'no';
    await hear({ status: 'loading', url: '/item/2' }, { status: 'complete' });
    expect(told).toEqual(['left', 'arrived']);
  });

  it('is asked again when the content follows the address, and when only the title tells of it', async () => {
    const late = watched();
    await late.hear({ status: 'loading', url: '/item?id=2' }, { status: 'complete' });
    expect(late.told).toEqual([]);
    late.page.answer = 'no';
    await late.aMomentLater();
    expect(late.told).toEqual(['left', 'arrived']);
    const titled = watched();
    titled.page.answer = 'no';
    await titled.hear({ title: 'Another piece' });
    expect(titled.told).toEqual(['left']);
  });

  it('a page that never answered is left after a moment, and not before', async () => {
    const { told, page, hear, aMomentLater } = watched();
    page.answer = 'gone';
    await hear(...entryReplaced, { title: 'A title' }, { status: 'loading' });
    expect(told).toEqual([]);
    await hear({ status: 'complete' });
    await aMomentLater();
    expect(told).toEqual(['left', 'arrived']);
  });

  it('a page that was read and does not answer is left at once', async () => {
    const { told, page, watch, hear } = watched();
    watch.read();
    page.answer = 'gone';
    await hear({ status: 'loading', url: 'https://other.example/' }, { status: 'complete' });
    expect(told).toEqual(['left', 'arrived']);
  });

  it('asks one question at a time, and none after its end', async () => {
    const { told, page, watch, hear, aMomentLater } = watched();
    await hear(...Array.from({ length: 50 }, () => ({ status: 'loading' })));
    expect(page.asked).toBe(2);
    watch.end();
    page.answer = 'no';
    await aMomentLater();
    expect(told).toEqual([]);
  });
});
