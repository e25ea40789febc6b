/**
 * What RFC 7946 asks of a FeatureCollection of points, by its sections; gives the sections that are broken.
 * Written from the RFC (Butler et al. 2016).
 */
export function brokenRules(text: string): string[] {
  const map = JSON.parse(text) as Record<string, unknown>;
  const broken: string[] = [];
  const holds = (section: string, rule: boolean) => void (rule || broken.push(section));
  const isPosition = (value: unknown): value is number[] =>
    Array.isArray(value) && value.length >= 2 && value.length <= 3 && value.every(Number.isFinite);
  holds('1.4 object', typeof map === 'object' && map !== null && !Array.isArray(map));
  holds('3.3 FeatureCollection', map.type === 'FeatureCollection' && Array.isArray(map.features));
  // a collection may not carry what defines other types, nor a crs of the older draft
  holds('4 no crs', !('crs' in map));
  holds('7.1 no geometry beside', !('geometry' in map) && !('properties' in map) && !('coordinates' in map));
  const { bbox } = map;
  holds('5 bbox of four', Array.isArray(bbox) && bbox.length === 4 && bbox.every(Number.isFinite));
  const [west, south, , north] = bbox as number[];
  const east = (bbox as number[])[2];
  holds('5 south below north', south <= north);
  for (const feature of map.features as Record<string, unknown>[]) {
    holds('3.2 Feature', feature.type === 'Feature');
    holds('3.2 properties', 'properties' in feature && typeof feature.properties === 'object');
    holds('7.1 no features inside', !('features' in feature) && !('coordinates' in feature));
    const geometry = feature.geometry as { type: string; coordinates: unknown };
    holds('3.1.2 Point', geometry.type === 'Point' && isPosition(geometry.coordinates));
    const [longitude, latitude] = geometry.coordinates as number[];
    // 3.1.1 and 4: longitude first, in degrees of WGS 84
    holds('4 longitude', longitude >= -180 && longitude <= 180);
    holds('4 latitude', latitude >= -90 && latitude <= 90);
    holds('11.2 few digits', /^-?\d+(\.\d{1,6})?$/.test(String(longitude)));
    // 5.2: where west is larger the box crosses the date line
    const isWithin =
      west <= east ? longitude >= west && longitude <= east : longitude >= west || longitude <= east;
    holds('5.2 inside bbox', isWithin && latitude >= south && latitude <= north);
  }
  return [...new Set(broken)];
}
