import type { Topic } from '../../../src/text/lexicon';

/**
 * Topics of small words. None of them says anything by itself: each is read at one place only, right before or behind a
 * word of another topic, and the same word may stand at several places of a sentence.
 */
export const smallWords: readonly Topic[] = [
  'allowed',
  'from-lying',
  'those-who-sell',
  'can',
  'degree',
  'feels',
  'card-bare',
  'got-then',
  'return-noun',
  'corner',
  'inside-the-piece',
  'opens-house-name',
  'reads-there',
  'made-verb',
  'meant-for',
  'mine',
  'model-noun',
  'nothing-else',
  'noticeable',
  'other-work',
  'own-house',
  'range-opens',
  'repair-noun',
  'shop',
  'other-voices',
  'questions-heading',
  'about',
  'an',
  'and',
  'announces-code',
  'article',
  'before-sold',
  'behind-new',
  'behind-sold',
  'beside-maker-name',
  'beside-material',
  'but',
  'by-the-maker',
  'cannot-say',
  'condition-before',
  'cost-when',
  'date-of-else',
  'dates-from',
  'done',
  'is',
  'joint-in-material',
  'lacking',
  'looks-like',
  'lost',
  'link-to-material',
  'made',
  'made-of',
  'negation',
  'no-negation',
  'not-yet',
  'nothing',
  'out-of',
  'plain-word',
  'possessive',
  'since',
  'taken-from',
  'this-one',
  'through',
  'wanted-by',
  'wanted-home',
  'wanted-much',
  'first-person',
  'has-or-stays',
  'kind-of-piece',
  'object-pronoun',
  'of-year',
  'other-one',
  'others-kin',
  'wholly',
  'whether',
  'with',
];

interface Sharing {
  /** Any two of them may share a phrase. */
  topics: readonly Topic[];
  because: string;
}

/** Topics that say something and share a phrase all the same. */
export const sharing: readonly Sharing[] = [
  { topics: ['bought', 'gifted'], because: 'what is given is got, and a claim says how' },
  {
    topics: ['bought', 'invoice', 'paper-or-key'],
    because: 'a receipt dates a purchase beside it, and is a fact of that purchase or repair',
  },
  {
    topics: ['accepting', 'accepted-in-field', 'dealing'],
    because: 'that a thing is taken means returns in a field of that name, and a deal elsewhere',
  },
  {
    topics: ['refused-in-field', 'names-nobody'],
    because: 'each is the whole of a field, of returns or of the maker, which says what is refused or not there',
  },
  {
    topics: ['years', 'age-behind'],
    because: 'a number before it is an age only where nothing else is counted in years',
  },
  { topics: ['days', 'comes-along'], because: 'a German day is an English label' },
  {
    topics: ['another-piece', 'other-listings', 'matching', 'in-the-look-of'],
    because: 'what stands in other listings, goes with the piece or is like it is another piece',
  },
  {
    topics: ['wanted', 'wanted-behind', 'another-piece', 'accepting', 'menu'],
    because:
      'what is looked for is another piece or a deal beside an offer, none where a title opens with it, and a menu’s search',
  },
  { topics: ['other-listings', 'names-nobody'], because: 'other, alone in the field of the maker, is nobody' },
  { topics: ['bag', 'small-thing'], because: 'a wallet is the piece in one listing, and comes with it in another' },
  {
    topics: ['comes-along', 'small-thing', 'measured-thing', 'goes-inside', 'wear'],
    because: 'a pouch comes along, has a size of its own, and so has what fits into the bag, or a scratch on it',
  },
  {
    topics: ['bought', 'market-place', 'outlet', 'sample-sale', 'paper-or-key'],
    because: 'where it was bought, or the paper of it, makes a date beside it one of purchase; each is a fact besides',
  },
  {
    topics: ['beside-the-piece', 'market-place', 'menu', 'other-listings', 'seller-label'],
    because: 'a seller, a shop or a listing is none of the piece, wherever it is named',
  },
  {
    topics: ['scale-thing', 'beside-the-piece', 'measured-thing'],
    because: 'a phone lies beside the piece in its picture, and has a length of its own',
  },
  {
    topics: ['code-cue', 'code-label', 'code-noun'],
    because: 'the same names of a code: before one in prose, as a label of the page, and where there is none',
  },
  {
    topics: ['code-cue', 'code-noun', 'stamped-behind'],
    because: 'how a code was put on the piece is said before it or behind it',
  },
  {
    topics: ['code-label', 'other-code'],
    because: 'a row of the page may hold the maker’s code; in prose it is the shop’s',
  },
  {
    topics: [
      'hedge-before-name',
      'hedge-behind-name',
      'in-the-look-of',
      'inspired-by',
      'likened',
      'look',
      'other-hand',
      'supposed',
      'copy-grade',
    ],
    because: 'the same doubt before a name, behind it, or of a thing that has no name',
  },
  { topics: ['other-hand', 'replaced'], because: 'not original: a part is replaced, the piece is by another hand' },
  { topics: ['new-bare', 'new-before-part'], because: 'new of the piece is a condition, of its part a replacement' },
  {
    topics: ['menu', 'search-words', 'offering', 'sales', 'warned-of', 'watched-by', 'dealing', 'another-piece'],
    because: 'a button of the page bears the verb that a seller writes, and is told by standing alone',
  },
  {
    topics: ['offer-control', 'bids', 'bought', 'gifted'],
    because: 'a button, or an Italian bid that is a French present',
  },
  {
    topics: ['rating-label', 'ratings-counted', 'positive', 'average'],
    because: 'around one figure of the seller’s ratings: its label, what is counted, how it is meant',
  },
  {
    topics: ['seller-label', 'sold-so-far', 'hedge-behind-name'],
    because: 'a label of the seller’s box, read nowhere else',
  },
  {
    topics: ['likened', 'hedge-before-name', 'hedge-behind-name', 'watched-by'],
    because: 'likes are counted beside a number, and liken beside a name',
  },
  { topics: ['stored', 'watched-by'], because: 'Spanish says kept for both; people are counted beside the one' },
  { topics: ['comes-along', 'search-words'], because: 'tags hang on the bag or stand under the text, with a colon' },
  { topics: ['days', 'search-words'], because: 'a German day is an English label' },
  { topics: ['accepting', 'another-piece'], because: 'what a seller wants is an offer, or a piece that is looked for' },
  {
    topics: ['somebody', 'seller-label', 'market-place', 'beside-the-piece'],
    because: 'whoever sells or owns: a label beside a name, or somebody in a sentence',
  },
  { topics: ['is-missing', 'unreadable'], because: 'a box that is missing, or characters of a stamp' },
  {
    topics: ['returns-label', 'sent-back'],
    because: 'a refund: the label of a field, or within so many days in a sentence',
  },
  { topics: ['unreadable', 'wear'], because: 'faded: of a stamp it cannot be read, of leather it is wear' },
];
