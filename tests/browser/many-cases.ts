import type { Page } from 'playwright-core';
import type { Case } from '../../src/case';
import { packing } from '../../src/store/packing';
import { latestLookOf } from '../../src/watch/saved-case';
import { sampleCase, sampleRecord } from '../unit/watch/sample-case';

/** The record and the look of one of many cases, as saving it makes them. */
async function numbered(number: number, template: Case) {
  const url = `https://attic-arcade.example/item/${number}`;
  const kase = { ...template, listing: { ...template.listing, url } };
  const made = await latestLookOf(kase, [], { rules: 'test', makers: [] }, packing);
  if (!made.ok) throw new Error(made.problem.code);
  const at = new Date(Date.UTC(2026, 0, 1) - number * 60_000).toISOString();
  const title = `Ondrasse Carryall ${number}`;
  return {
    record: sampleRecord({ ...made.value.latest, id: `case-${number}`, title, savedAt: at, changedAt: at }),
    looks: made.value.parts.looks.map(({ hash, packed }) => ({ hash, packed: packing.toBase64(packed) })),
  };
}

/** Puts cases straight into the database of an extension page, as a list of a year has them. Rows are made at opening. */
export async function putCases(page: Page, count: number, kase: Case = sampleCase()): Promise<void> {
  const step = 250;
  for (let first = 0; first < count; first += step) {
    const numbers = Array.from({ length: Math.min(step, count - first) }, (_, index) => first + index + 1);
    const made = await Promise.all(numbers.map((number) => numbered(number, kase)));
    await page.evaluate(
      async (cases) => {
        const database = await new Promise<IDBDatabase>((opened, refused) => {
          const request = indexedDB.open('tellstamp-watch-list');
          request.onsuccess = () => opened(request.result);
          request.onerror = () => refused(request.error);
        });
        const transaction = database.transaction(['cases', 'looks'], 'readwrite');
        for (const { record, looks } of cases) {
          transaction.objectStore('cases').put(record);
          for (const { hash, packed } of looks) {
            const bytes = Uint8Array.from(atob(packed), (character) => character.charCodeAt(0));
            transaction.objectStore('looks').put({ hash, packed: bytes });
          }
        }
        await new Promise<void>((done, refused) => {
          transaction.oncomplete = () => done();
          transaction.onerror = () => refused(transaction.error);
        });
        database.close();
      },
      // As plain data: the type of a record is too deep for the types of what travels.
      made as unknown as { record: object; looks: { hash: string; packed: string }[] }[],
    );
  }
}
