export { connectReader, isOfTheReader, type Reader } from './connect';
