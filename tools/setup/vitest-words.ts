// The command line has all words at hand before it runs anything; so have its tests, whichever comes first.
import { loadLater } from '@neckfall/words';

await loadLater();
