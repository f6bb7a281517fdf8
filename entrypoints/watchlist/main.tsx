import '../../src/bridge/plain-validation';
import { render } from 'preact';
import { FullPage } from '../../src/ui/watchlist/FullPage';

render(<FullPage />, document.body);
