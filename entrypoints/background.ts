import '../src/bridge/plain-validation';
import { defineBackground } from 'wxt/utils/define-background';
import { startBackground } from '../src/bridge/background';

export default defineBackground(startBackground);
