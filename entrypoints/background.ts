import '../src/reader/page/plain-validation';
import { defineBackground } from 'wxt/utils/define-background';
import { startBackground } from '../src/reader/background';

// A module shares its scripts with the other parts; by itself it would carry most of them a second time.
export default defineBackground({ type: 'module', main: startBackground });
