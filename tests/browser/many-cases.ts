import type { Page } from 'playwright-core';
import type { Case } from '../../src/case';
import { sampleCase } from '../unit/watch/sample-case';

/** Puts cases straight into the database of an extension page, as a list of a year has them. Rows are made at opening. */
export async function putCases(page: Page, count: number, kase: Case = sampleCase()): Promise<void> {
  const step = 250;
  for (let first = 0; first < count; first += step) {
    const numbers = Array.from({ length: Math.min(step, count - first) }, (_, index) => first + index + 1);
    await page.evaluate(
      async ([made, template]) => {
        const database = await new Promise<IDBDatabase>((opened, refused) => {
          const request = indexedDB.open('tellstamp-watch-list');
          request.onsuccess = () => opened(request.result);
          request.onerror = () => refused(request.error);
        });
        const transaction = database.transaction('cases', 'readwrite');
        for (const number of made) {
          const at = new Date(Date.UTC(2026, 0, 1) - number * 60_000).toISOString();
          const url = `https://attic-arcade.example/item/${number}`;
          transaction.objectStore('cases').put({
            version: 2,
            id: `case-${number}`,
            title: `Ondrasse Carryall ${number}`,
            savedAt: at,
            changedAt: at,
            status: 'watching',
            note: '',
            otherNotes: [],
            case: { ...template, listing: { ...template.listing, url } },
            pictures: [],
            earlier: [],
            removedAt: null,
          });
        }
        await new Promise<void>((done, refused) => {
          transaction.oncomplete = () => done();
          transaction.onerror = () => refused(transaction.error);
        });
        database.close();
      },
      // As plain data: the type of a case is too deep for the types of what travels.
      [numbers, kase as unknown] as [number[], { listing: object }],
    );
  }
}
