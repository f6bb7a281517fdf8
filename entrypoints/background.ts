import '../src/reader/page/plain-validation';
import { defineBackground } from 'wxt/utils/define-background';
import { startBackground } from '../src/reader/background';

export default defineBackground(startBackground);
