export {
  type CountryPeriod,
  countryExisted,
  countryPeriod,
  currentPlaces,
  formerPlaces,
  isPlaceCode,
  placeName,
  placesAgree,
  presentPlaces,
  unknownPlace,
} from './iso';
export { capitalPlaces, countryOfTown, foldWord, type LexiconEntry, lexicon, splitWords } from './lexicon';
