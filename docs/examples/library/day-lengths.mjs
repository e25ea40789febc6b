// Day lengths of a place through the year: what tells short-day onions from long-day ones.
import { dayLength, dayNumber, formatDay } from '@neckfall/engine';

// degrees, north and east positive
const latitudeDeg = 52.1;
const longitudeDeg = 5.2;

console.log('date        sunrise to sunset  with twilight');
for (let month = 1; month <= 12; month++) {
  const day = dayNumber(2027, month, 21);
  // what packets and almanacs print, h; and what a plant counts: sun at most 6 degrees below the horizon
  const sunUp = dayLength(latitudeDeg, longitudeDeg, day, 'sun-up');
  const civil = dayLength(latitudeDeg, longitudeDeg, day, 'civil');
  console.log(`${formatDay(day)}  ${hours(sunUp)}             ${hours(civil)}`);
}

function hours({ hours }) {
  return `${hours.toFixed(1).padStart(4)} h`;
}
