import {
  climateAt,
  decodeClimateNodes,
  landWarmingSinceNormalsC,
  lapseCPerM,
  lookupSettings,
  nearestSites,
  positionAt,
} from '../../packages/engine/src/climate/index.ts';
import { quantileSorted } from '../../packages/engine/src/math/index.ts';
import { elevationTable, errorTable, signed, worstTable } from './error-table.ts';
import { type Fit, nodeCount, placementSeed } from './fit.ts';
import { hourlyNormalsSite, readHourlyNormals } from './hourly-normals.ts';
import { type LeaveOut, leaveOutGroups, leaveOutSeed } from './leave-out.ts';
import type { Stations } from './stations.ts';
import { uncoveredTowns } from './uncovered-towns.ts';

export type ReportInput = { stations: Stations; fit: Fit; zippedBytes: number; ways: LeaveOut[] };

/** `docs/climate.md`: what the climatology is, its errors, and where not to trust it. */
export function climateReport({ stations, fit, zippedBytes, ways }: ReportInput): string {
  const weights = fit.largestWeights.slice().sort();
  const towns = uncoveredTowns(decodeClimateNodes(fit.file));
  const share = (quantile: number) => quantileSorted(weights, quantile).toFixed(2);
  return `# The climate of any place on land

Written by \`npx tsx tools/climate/build.ts --stations TABLE --report docs/climate.md\`; don't edit it here.

## What it is

${nodeCount} points of our own ("nodes") with monthly mean temperature, daily range, rain, wet days, humidity, sunshine, wind and
frost nights, in ${Math.round(zippedBytes / 1000)} kB. No node is a station:

1. **Stations at odds with their surroundings are left out** (${fit.dropped} of ${stations.count}): a yearly mean more than 5 °C from what the
   stations around give at the elevation stated; mostly an elevation missing and written as 0.
2. **Places**: k-means over ground, elevation (1 m counts as 0.3 km) and annual rain, seed ${placementSeed}, begun so that thinly observed
   country gets its share; a node that stands for one station alone is moved away from it.
3. **Values**: a weighted mean of the 24 stations nearest in distance and elevation together (ordinary kriging with a nugget), twice:
   what the lookup then misses at the stations is smoothed in the same way and added. Temperature is brought to sea level with
   ${(lapseCPerM * 1000).toFixed(1)} °C/km before and back afterwards. The largest weight of a single station in a node is ${share(0.5)} in the median,
   ${share(0.99)} in the 99th percentile, and never above ${share(1)}.
4. **File**: each field's year as scores on its principal components, rounded, as differences along a tour through the nodes.

The lookup blends the ${lookupSettings.neighbours} nodes nearest in distance and elevation together, the same weights for all fields. A town's elevation
matters: without one the nearest node's is taken, and the program warns where nodes within 50 km differ by more than 300 m.
Covered is land from 60° S to 72° N within 150 km of a node. That leaves out ${towns.uncovered.length} of ${towns.all} towns, most because the table
has no station near: ${towns.uncovered
    .slice(0, 10)
    .map((town) => `${town.name} (${town.country})`)
    .join(', ')} and smaller ones.

## Periods, sources, licences

- Mean temperature: CHELSA V1.1, 1979–2013 (Karger et al. 2017, Scientific Data 4:170122). Its July was faulty in our copy and was
  rebuilt from CRU and the June and August differences.
- Everything else: CRU CL 2.0, 1961–1990 (New et al. 2002, Climate Research 21:1–25). These values belong to 10-minute grid cells,
  so on a mountain top the daily range and the frost nights are those of the cell's mean elevation.
- Both are open with citation. Answers add ${landWarmingSinceNormalsC} °C by default for the warming of land since (memory: IPCC AR6 WG1,
  land 1.59 °C warmer in 2011–2020 than in 1850–1900, about 0.3 °C a decade since 1980; the middle of the normals is 1996). Real
  warming differs by place and season.

## Errors at stations left out

Stations, or whole blocks of them, were dealt at random into ${leaveOutGroups} groups (seed ${leaveOutSeed}); a group at a time was left out, and everything
above, screening and rounding included, was done again without it. Nothing was screened among the stations scored: faulty
elevations of the table count in full. Each cell: **root mean square · median · 95th percentile** of the absolute error of monthly values.

${errorTable(ways).join('\n')}

The naive way is the inverse-distance mean of the eight nearest of *all* kept stations with the same lapse and down-weighting by
elevation difference; it needs the whole table, the nodes don't. The settings were chosen on other random divisions of the same
stations, so the figures may flatter slightly. Aims: temperature 1.1 °C for single stations and 1.3 °C in blocks of 1°; range 0.9 and
1.0 °C; rain 24 and 25 mm.

### Mountains rule the figure

Single stations left out:

${elevationTable(stations, ways[0]).join('\n')}

The worst, yearly mean, placed to whole degrees and hundreds of metres:

${worstTable(stations, ways[0], 12).join('\n')}

Most of these are faults of the table (an elevation of 0 on a plateau, a position in the next valley), the rest deep valleys and
high passes where the next node stands on another slope. In such country give the elevation, and trust a thermometer more.

## Against hourly normals of another source

${seattleSection(fit, stations)}
`;
}

const monthNames = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'];

function seattleSection(fit: Fit, stations: Stations): string {
  const normals = readHourlyNormals();
  const { latitudeDeg, longitudeDeg, elevationM } = hourlyNormalsSite;
  const climate = climateAt(decodeClimateNodes(fit.file), latitudeDeg, longitudeDeg, elevationM);
  const offsets = climate.tempMeanC.map((fitted, month) => fitted - normals.tempMeanC[month]);
  const [nearest] = nearestSites(stations, positionAt(latitudeDeg, longitudeDeg, elevationM), 1);
  const atStation = Array.from(
    offsets,
    (_, month) => stations.values.tempMeanC[nearest * 12 + month] - normals.tempMeanC[month],
  );
  const stationMean = atStation.reduce((sum, offset) => sum + offset, 0) / 12;
  const mean = offsets.reduce((sum, offset) => sum + offset, 0) / 12;
  return `Seattle, hourly normals 1981–2010 of the npm package vega-datasets (from memory the airport: 47.45° N, 122.31° W, 130 m; the file
names no station). No warming offset added. What remains in mean temperature is ${signed(mean)} °C in the yearly mean, ${signed(Math.min(...offsets))} to
${signed(Math.max(...offsets))} °C by month. It is the source's own: the table's station there has ${signed(stationMean)} °C in the yearly mean. The range of mean hours is smaller than the range of daily extremes, since a day's extremes fall
on changing hours; so our range should lie above it.

| °C | ${monthNames.join(' | ')} |
| --- |${' --- |'.repeat(12)}
| mean, normals | ${[...normals.tempMeanC].map((value) => value.toFixed(1)).join(' | ')} |
| mean, fitted | ${[...climate.tempMeanC].map((value) => value.toFixed(1)).join(' | ')} |
| difference | ${[...offsets].map(signed).join(' | ')} |
| range of mean hours, normals | ${[...normals.hourlyRangeC].map((value) => value.toFixed(1)).join(' | ')} |
| range of daily extremes, fitted | ${[...climate.tempRangeC].map((value) => value.toFixed(1)).join(' | ')} |`;
}
