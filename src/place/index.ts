export { findPlaces, type PlaceFound } from './find';
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
