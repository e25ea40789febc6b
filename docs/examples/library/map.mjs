// A map of ten points as GeoJSON (RFC 7946): at each the onion that does best there, and how to start it.
import { locatePoint, siteAt } from '@neckfall/data';
import { readSiteAssets } from '@neckfall/data/node';
import { atlasEntries, formatDay, gridPoints, leadingEntry, parseDay } from '@neckfall/engine';

const assets = readSiteAssets();
const region = { southDeg: 20, westDeg: 0, northDeg: 50, eastDeg: 5 };
const from = parseDay('2027-01-01');

const features = [];
for (const { latitudeDeg, longitudeDeg } of gridPoints(region, 5)) {
  // points at sea, or too far from any climate station, are left out
  if ('problem' in locatePoint({ latitudeDeg, longitudeDeg, elevationM: null }, assets)) continue;
  // ten weather years are enough for a sketch
  const site = siteAt(assets, { latitudeDeg, longitudeDeg }, { years: 10 });
  const best = leadingEntry(atlasEntries(site, from), { class: null, start: null });
  features.push({
    type: 'Feature',
    geometry: { type: 'Point', coordinates: [longitudeDeg, latitudeDeg] },
    properties: {
      class: best.class,
      start: best.start,
      from: formatDay(best.startDay),
      goodShare: best.goodShare,
    },
  });
  if (features.length === 10) break;
}

// one point a line
const lines = features.map((feature) => JSON.stringify(feature)).join(',\n');
console.log(`{"type":"FeatureCollection","features":[\n${lines}\n]}`);
