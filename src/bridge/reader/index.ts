export { connectReader, type Reader } from './connect';
