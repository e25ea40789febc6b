/** Prints the calendar of the test, for it to be compared with one made in another time zone. */
import { dayNumber } from '@neckfall/engine';
import { loadLater, speaker } from '@neckfall/words';
import { calendarText, sequenceOf } from '../../src/index.ts';
import { crops } from './some-crops.ts';

await loadLater();
const today = dayNumber(2027, 2, 1);
process.stdout.write(calendarText(crops(today), { today, sequence: sequenceOf(today) }, speaker('metric')));
