// A marketplace that builds its pages in the browser: the address after # names the piece.
const offers = {
  "carryall-30-1993": {
    "title": "Ondrasse Carryall 30 from the nineties",
    "price": "€450.00",
    "condition": "Used, good",
    "photos": [
      "photos/l6-front.jpg",
      "photos/l6-lining.jpg",
      "photos/l6-hardware.jpg",
      "photos/l6-handle.jpg",
      "photos/l6-stamp.jpg"
    ],
    "text": [
      "Ondrasse Carryall 30, mid 1990s, made in Belgium. Olive twill lining, brass hardware, mustard stitching.",
      "Measures 30 x 21 x 17 cm. The stamp is on the inside tab."
    ],
    "seller": "north_gate_bags · 99% positive (431 ratings) · member since 2011",
    "terms": "Returns accepted within 14 days. Payment through Attic & Arcade."
  },
  "carryall-25-1998": {
    "title": "Ondrasse Carryall 25, 1998",
    "price": "€430.00",
    "condition": "Used",
    "photos": [
      "photos/l2-front.jpg",
      "photos/l2-stamp.jpg"
    ],
    "text": [
      "Ondrasse Carryall 25 made in 1998. Olive twill lining."
    ],
    "seller": "north_gate_bags · 99% positive (431 ratings) · member since 2011",
    "terms": "Returns accepted within 14 days. Payment through Attic & Arcade."
  }
};

function make(tag, text, attributes = {}) {
  const element = document.createElement(tag);
  element.textContent = text;
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  return element;
}

function show() {
  const offer = offers[location.hash.slice(1)] ?? offers['carryall-30-1993'];
  document.title = `${offer.title} | Attic & Arcade`;
  const gallery = make('section', '', { class: 'gallery' });
  for (const photo of offer.photos) gallery.append(make('img', '', { src: photo, width: 1200, height: 900, alt: '' }));
  const side = make('section', '');
  side.append(make('h1', offer.title), make('p', offer.price, { class: 'price' }), make('p', `Condition: ${offer.condition}`));
  for (const line of offer.text) side.append(make('p', line));
  side.append(make('h2', 'Seller'), make('p', offer.seller, { class: 'seller' }), make('h2', 'Terms'), make('p', offer.terms, { class: 'terms' }));
  const main = document.getElementById('app');
  main.className = 'offer';
  main.replaceChildren(gallery, side);
}

addEventListener('hashchange', show);
setTimeout(show, 50);
