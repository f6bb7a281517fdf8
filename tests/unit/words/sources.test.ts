import { expect, test } from 'vitest';
import type { Source } from '../../../src/source';
import { saySource } from '../../../src/words';

const file = (rest: Partial<Extract<Source, { kind: 'maker-file' }>>): Source => ({
  kind: 'maker-file',
  maker: 'Ondrasse',
  invented: false,
  part: null,
  sources: [],
  ...rest,
});

const said: [Source, string, string][] = [
  [{ kind: 'published', text: 'Tariff Act' }, 'Tariff Act', 'Tariff Act'],
  [
    { kind: 'memory', text: 'Tariff Act' },
    'Tariff Act (from memory, not verified)',
    'Tariff Act (aus dem Gedächtnis, nicht geprüft)',
  ],
  [file({}), 'maker file of Ondrasse', 'Herstellerdatei von Ondrasse'],
  [file({ invented: true }), 'invented maker file of Ondrasse', 'erfundene Herstellerdatei von Ondrasse'],
  [
    file({ invented: true, sources: ['invented price list'] }),
    'maker file of Ondrasse: invented price list',
    'Herstellerdatei von Ondrasse: invented price list',
  ],
  [
    file({ sources: ['ledger', 'catalogue'] }),
    'maker file of Ondrasse: ledger and catalogue',
    'Herstellerdatei von Ondrasse: ledger und catalogue',
  ],
  [
    file({ part: { of: 'years', name: 'Carryall 30' }, sources: ['catalogue'] }),
    'maker file of Ondrasse: years of Carryall 30 (source: catalogue)',
    'Herstellerdatei von Ondrasse: Jahre von Carryall 30 (Quelle: catalogue)',
  ],
  [
    file({ part: { of: 'sizes', names: ['Carryall 20', 'Carryall 30'] } }),
    'maker file of Ondrasse: size of Carryall 20, Carryall 30',
    'Herstellerdatei von Ondrasse: Größe von Carryall 20, Carryall 30',
  ],
  [
    file({ part: { of: 'new-price', year: 2015 } }),
    'maker file of Ondrasse: smallest new price of 2015',
    'Herstellerdatei von Ondrasse: kleinster Neupreis von 2015',
  ],
  [file({ part: { of: 'plants' } }), 'maker file of Ondrasse: workshops', 'Herstellerdatei von Ondrasse: Werkstätten'],
  [{ kind: 'listing', field: 'reply' }, "the seller's reply", 'die Antwort auf deine Fragen'],
  [{ kind: 'photo' }, 'read from a photo', 'in einem Foto gelesen'],
  [{ kind: 'user', as: 'code' }, 'typed by you', 'von dir eingegeben'],
];

test.each(said)('%j', (source, english, german) => {
  expect([saySource(source, 'en'), saySource(source, 'de')]).toEqual([english, german]);
});
