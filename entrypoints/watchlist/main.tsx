import '../../src/reader/page/plain-validation';
import { renderSpoken } from '../../src/ui/render-spoken';
import { FullPage } from '../../src/ui/watchlist/FullPage';

await renderSpoken(() => <FullPage />, document.body);
