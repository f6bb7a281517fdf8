/** What is true of a page of an auction; amounts in the smallest coins. */
export interface AuctionTruth {
  kind: 'offer' | 'auction' | 'ended';
  /** The likeliest price. */
  best: string;
  /** Other amounts that the page labels, by what they are. */
  others?: string[];
  /** Day, ISO 8601. */
  ends?: string;
  bids?: number;
}

/**
 * Pages of auctions as houses and marketplaces lay them out, with all that each says; all was written before any reader
 * ran on them, on 2026-11-29. A third, drawn by the hash of the name, was set aside and opened once, when the rest was done.
 */
export const auctionPages: Record<string, { language: string; html: string; truth: AuctionTruth }> = {
  'lot with a panel': {
    language: 'en-GB',
    html: `<div class="lot"><p>Lot 214</p><h1>Lantern 24, olive calf</h1><div class="bid-panel"><div class="label">Current bid</div>
      <div class="amount">£320</div><div class="count">(14 bids)</div></div><p>Estimate: £300 – £500</p>
      <p>Buyer’s premium 24% plus VAT</p><p>Auction ends: 15 March 2026, 20:00</p><button>Place bid</button></div>`,
    truth: { kind: 'auction', best: 'sale 32000', others: ['estimate 30000'], ends: '2026-03-15', bids: 14 },
  },
  'app with data of the day before': {
    language: 'en-US',
    html: `<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"Lantern 24","offers":{"@type":"Offer","price":150,"priceCurrency":"USD","availability":"https://schema.org/InStock"}}</script>
      <main><h1>Lantern 24</h1><div class="st_x1"><span class="pr_q8">$410</span><span class="cn_2"><span>7<!-- --> <!-- -->bids</span></span></div>
      <span>Starting price<!-- --> <!-- -->$150</span><label>Your maximum bid: <input value="420"></label><button>Place bid</button></main>`,
    truth: { kind: 'auction', best: 'sale 41000', others: ['start 15000'], bids: 7 },
  },
  'closed without a bid': {
    language: 'en',
    html: `<main><h1>Palma Tote, tan</h1><p>Bidding has ended on this item.</p><table><tr><th>Starting bid</th><td>£250.00</td></tr>
      <tr><th>Bids</th><td>0 bids</td></tr><tr><th>Ended</th><td>2 February 2026</td></tr></table></main>`,
    truth: { kind: 'ended', best: 'start 25000', ends: '2026-02-02', bids: 0 },
  },
  'Haus mit Gebotsliste': {
    language: 'de',
    html: `<main><h1>Handtasche Lantern 24</h1><dl><dt>Höchstgebot</dt><dd>215,00 EUR</dd><dt>Mindestgebot</dt><dd>220,00 EUR</dd>
      <dt>Sofortkauf</dt><dd>480,00 EUR</dd><dt>Auktionsende</dt><dd>20.03.2026, 19:00 Uhr</dd></dl><p>9 Gebote</p>
      <button>Gebot abgeben</button></main>`,
    truth: {
      kind: 'auction',
      best: 'sale 21500',
      others: ['next-bid 22000', 'buy-now 48000'],
      ends: '2026-03-20',
      bids: 9,
    },
  },
  'Haus nach dem Zuschlag': {
    language: 'de',
    html: `<main><p>Los 88</p><h1>Schultertasche Palma</h1><p>Auktion beendet am 12.02.2026</p><p>Schätzpreis: 400 €</p>
      <p>Zuschlag: 640 €</p></main>`,
    truth: { kind: 'ended', best: 'sale 64000', others: ['estimate 40000'], ends: '2026-02-12' },
  },
  'vente en salle': {
    language: 'fr',
    html: `<main><h1>Sac Lantern 24 en veau olive</h1><p>Estimation : 400 – 600 €</p><p>Mise à prix : 200 €</p>
      <p>Enchère actuelle : 300 €</p><p>Prochaine enchère : 310 €</p><p>5 enchères</p><p>Fin de la vente : 18 mars 2026 à 18 h</p></main>`,
    truth: {
      kind: 'auction',
      best: 'sale 30000',
      others: ['estimate 40000', 'start 20000', 'next-bid 31000'],
      ends: '2026-03-18',
      bids: 5,
    },
  },
  'vente terminée': {
    language: 'fr',
    html: `<main><h1>Cabas Palma fauve</h1><p>Enchère terminée</p><p>Adjugé : 1 250 €</p><p>Estimation : 800 – 1 000 €</p>
      <p>22 enchères</p></main>`,
    truth: { kind: 'ended', best: 'sale 125000', others: ['estimate 80000'], bids: 22 },
  },
  'asta con tabella': {
    language: 'it',
    html: `<main><h1>Borsa Lantern 24</h1><table><tr><td>Offerta attuale</td><td>180,00 €</td></tr><tr><td>Base d'asta</td><td>50,00 €</td></tr>
      <tr><td>Offerta minima</td><td>185,00 €</td></tr><tr><td>Scadenza</td><td>21/03/2026</td></tr></table><p>11 offerte</p></main>`,
    truth: {
      kind: 'auction',
      best: 'sale 18000',
      others: ['start 5000', 'next-bid 18500'],
      ends: '2026-03-21',
      bids: 11,
    },
  },
  'subasta con siguiente puja': {
    language: 'es',
    html: `<main><h1>Bolso Palma</h1><p>Puja actual</p><p>95 €</p><p>Próxima puja: 100 €</p><p>Precio de salida: 40 €</p>
      <p>6 pujas</p><p>Finaliza: 22 de marzo de 2026</p><button>Pujar</button></main>`,
    truth: {
      kind: 'auction',
      best: 'sale 9500',
      others: ['next-bid 10000', 'start 4000'],
      ends: '2026-03-22',
      bids: 6,
    },
  },
  'veiling in euro’s': {
    language: 'nl',
    html: `<main><h1>Tas Lantern 24</h1><div><span>Hoogste bod</span> <strong>€ 130</strong></div><div><span>Volgend bod</span> <strong>€ 135</strong></div>
      <p>8 biedingen</p><p>Sluit op 19 maart 2026 om 20:15</p><button>Plaats bod</button></main>`,
    truth: { kind: 'auction', best: 'sale 13000', others: ['next-bid 13500'], ends: '2026-03-19', bids: 8 },
  },
  オークション: {
    language: 'ja',
    html: `<main><h1>ランタン24 ハンドバッグ</h1><dl><dt>現在価格</dt><dd>25,000円（税0円）</dd><dt>即決価格</dt><dd>48,000円</dd></dl>
      <p>入札件数: 8</p><p>開始価格: 10,000円</p><p>終了日時: 2026年3月14日 22時10分</p></main>`,
    truth: {
      kind: 'auction',
      best: 'sale 25000',
      others: ['buy-now 48000', 'start 10000'],
      ends: '2026-03-14',
      bids: 8,
    },
  },
  'offers wanted, no auction': {
    language: 'en',
    html: `<main><h1>Palma Tote</h1><p class="price">£540</p><p>or best offer</p><button>Buy now</button><button>Make an offer</button>
      <p>The last one I sold ended at £600 at auction.</p></main>`,
    truth: { kind: 'offer', best: 'sale 54000' },
  },
};
