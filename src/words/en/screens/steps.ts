import { type StepNames, stepSayer } from '../../step-words';

const lists: StepNames['lists'] = {
  aliases: ['other name', 'other names'],
  sources: ['source', 'sources'],
  codeSystems: ['code system', 'code systems'],
  plants: ['workshop', 'workshops'],
  construction: ['fact', 'facts of how it is made'],
  models: ['model', 'models'],
  examples: ['example', 'examples'],
  layout: ['slot', 'slots'],
  layouts: ['layout', 'layouts'],
  newPriceFloor: ['price', 'prices'],
  table: ['range', 'ranges of numbers'],
  weights: ['weight', 'weights'],
  also: ['also called', 'also called'],
  not: ['word against', 'words against'],
  parts: ['part', 'parts to be seen'],
};

const fields: StepNames['fields'] = {
  id: 'short name',
  place: 'country',
  stamped: 'stamping',
  plantsComplete: 'whether these are all workshops',
  trade: 'how it is sold',
  used: 'period',
  made: 'years made',
  is: 'what it is',
  reads: 'what it reads',
  sampleSales: 'sample sales',
  dayOfYear: 'day of the year',
  any: 'unexplained characters',
  serial: 'running number',
  check: 'check character',
  min: 'at least',
  max: 'at most',
  over: 'covers',
  of: 'kind',
};

/** Places and steps of a maker file as a person says them. */
export const { place: placeWords, step: stepWords } = stepSayer({
  lists,
  fields,
  slot: (number) => `slot ${number}`,
  firstDate: 'first date',
  lastDate: 'last date',
  steps: {
    change: (what) => `change ${what}`,
    'add to': (what) => `add to ${what}`,
    remove: (what) => `remove ${what}`,
    move: (what) => `move ${what}`,
  },
  added: (entry, place) => (place === '' ? `add ${entry}` : `add ${entry} to ${place}`),
});
