// @vitest-environment jsdom
import { render } from 'preact';
import { describe, expect, it } from 'vitest';
import { type Case, typedCode } from '../../../src/case';
import { reason } from '../../../src/evidence';
import { findMarks } from '../../../src/mark';
import { yearSpan } from '../../../src/span';
import { DossierDocument } from '../../../src/ui/dossier/DossierDocument';
import { dossierFile, dossierFileName, markupOf } from '../../../src/ui/dossier/dossier-file';
import { dossierOf } from '../../../src/watch';
import { decoding, piece, reading } from '../evidence/samples';
import { caseAt, sampleRecord } from '../watch/sample-case';

const hostile = '</title></style><script>globalThis.ran = true</script><img src=x onerror="globalThis.ran = true">';
const evidence = [piece('a', { spans: [yearSpan(1984)] }), piece('b', { spans: [yearSpan(1994)] })];
const kase: Case = {
  ...caseAt('javascript:globalThis.ran=true', hostile),
  corrections: [{ ...typedCode(`KV0915 ${hostile}`), id: 'hand-1' }],
  skipped: [{ code: 'correction-photo-gone', where: 'hand-1' }],
  evidence,
  reasoning: reason(evidence),
  decodings: [
    decoding('d1', {
      accepted: true,
      from: { kind: 'typed' },
      readings: [
        reading({ parts: [{ slot: 'plant', text: 'KV', start: 0, end: 2, tells: { kind: 'plant', place: null } }] }),
      ],
    }),
  ],
  marks: findMarks('Made in Yugoslavia', { foundIn: 'listing', photoId: null }),
  outcomes: [
    {
      outcome: 'speaks',
      check: 'dates-agree',
      findings: [
        {
          id: 'f',
          check: 'dates-agree',
          kind: 'contradiction',
          data: {
            written: {
              statement: `The dates exclude each other ${hostile}`,
              basis: ['a rule'],
              innocent: 'a slip of the pen',
              settles: 'a photo of the stamp',
            },
          },
          source: { kind: 'memory', text: 'the trade' },
          evidence: ['a', 'b'],
          photos: [],
          claims: [],
          asks: [],
        },
      ],
    },
  ],
  questions: [
    {
      id: 'q',
      wants: 'photo',
      asks: [{ ask: 'as-written', topic: 'q', wants: 'photo', data: { words: hostile } }],
      settles: ['f'],
    },
  ],
  summary: { contradictions: 1, doubts: 0, gaps: 0, agreements: 0 },
};
const record = sampleRecord({ title: hostile, note: `first line\n${hostile}` });
const pictures = [
  { photoId: 'p', lineId: null, picture: 'data:image/png;base64,"><script>globalThis.ran=true</script>' },
];

function show(): HTMLElement {
  const room = document.createElement('div');
  render(<DossierDocument dossier={dossierOf({ record, case: kase, pictures })} />, room);
  return room;
}

const fileOf = (room: HTMLElement) =>
  dossierFile({
    title: record.title,
    language: 'en',
    body: markupOf(room.firstElementChild as Element),
    style: 'p { color: red }',
  });

describe('the document', () => {
  it('says all of a finding in the open, its weight and its unverified source too', () => {
    const card = show().querySelector('[data-check=dates-agree]')?.textContent;
    for (const words of ['1. The dates exclude', 'a rule', 'a slip of the pen', 'a photo of the stamp', 'not verified'])
      expect(card).toContain(words);
    expect(card).toContain('It rests on hard facts only');
  });

  it('folds nothing: the table of the time axis and every slot of the reading stand in it', () => {
    const room = show();
    expect(room.querySelectorAll('details')).toHaveLength(0);
    expect(room.querySelectorAll('.time-axis-table tbody tr')).toHaveLength(2);
    expect(room.querySelector('.decoding .code-rows dt')?.textContent).toBe('KV');
    expect(room.textContent).toContain('settles finding 1');
    expect(room.textContent).toContain('Not verified.');
  });

  it('tells what the buyer set and what became of it, once and with nothing to press', () => {
    const room = show();
    expect(room.querySelector('.corrections li')?.textContent).toContain('You typed the code KV0915');
    expect(room.textContent?.split('belongs to a photo that the listing does not show any more.')).toHaveLength(2);
    expect(room.querySelectorAll('button')).toHaveLength(0);
  });

  it('has headings that never skip a level', () => {
    const levels = [...show().querySelectorAll('h1, h2, h3, h4')].map(({ tagName }) => Number(tagName[1]));
    expect(levels[0]).toBe(1);
    expect(levels.filter((level, at) => at > 0 && level > (levels[at - 1] ?? 0) + 1)).toEqual([]);
  });
});

describe('the saved file', () => {
  it('shows hostile text of a listing as text: no script, no handler, no link that acts', () => {
    const read = new DOMParser().parseFromString(fileOf(show()), 'text/html');
    expect(read.querySelectorAll('script, iframe, object, embed, link, form')).toHaveLength(0);
    const attributes = [...read.querySelectorAll('*')].flatMap((element) => element.getAttributeNames());
    expect(attributes.filter((name) => /^on|^style$/i.test(name))).toEqual([]);
    expect([...read.querySelectorAll('a')].map((link) => link.getAttribute('href'))).toEqual([]);
    expect(read.querySelector('h1')?.textContent).toBe(hostile);
    expect(read.title).toBe(hostile);
    expect(read.querySelectorAll('style')).toHaveLength(1);
  });

  it('says the same as the document on the screen', () => {
    const room = show();
    const read = new DOMParser().parseFromString(fileOf(room), 'text/html');
    expect(read.querySelector('.dossier')?.textContent).toBe(room.textContent);
  });

  it('carries pictures as data only', () => {
    const room = show();
    const stray = document.createElement('img');
    stray.src = 'https://attic-arcade.example/1.jpg';
    room.firstElementChild?.append(stray);
    const read = new DOMParser().parseFromString(fileOf(room), 'text/html');
    const pictures = [...read.querySelectorAll('img')].map((picture) => picture.getAttribute('src')?.slice(0, 11));
    expect(pictures).toEqual(['data:image/']);
  });

  it.each([
    ['Ondrasse Carryall 30', 'dossier-ondrasse-carryall-30-2026-03-01.html'],
    ['../../<b>', 'dossier-b-2026-03-01.html'],
    ['///', 'dossier-case-2026-03-01.html'],
    ['革のかばん', 'dossier-革のかばん-2026-03-01.html'],
  ])('is named after the title %s', (title, name) => {
    expect(dossierFileName(title, '2026-03-01')).toBe(name);
  });
});
