export { connectReader, isOfTheReader, type Reader, readOnceMore } from './connect';
