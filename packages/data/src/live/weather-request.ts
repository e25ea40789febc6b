/** A point asked about, in degrees; south and west are negative. */
export type AskedPoint = { latitudeDeg: number; longitudeDeg: number };

/** A tenth of a degree is 11 km at most: weather is alike so far, and no garden is given away. */
const perDeg = 10;

/** Days before today, and from today on, that are asked for. */
export const daysBack = 92;
export const daysAhead = 16;

/** What is asked for of each day, and the unit in which it must come. */
export const askedUnits = {
  temperature_2m_max: '°C',
  temperature_2m_min: '°C',
  precipitation_sum: 'mm',
  shortwave_radiation_sum: 'MJ/m²',
} as const;

/** The point as it leaves the device: to 0.1°. */
export function roundedPoint({ latitudeDeg, longitudeDeg }: AskedPoint): AskedPoint {
  const round = (deg: number) => Math.round(deg * perDeg) / perDeg + 0;
  return { latitudeDeg: round(latitudeDeg), longitudeDeg: round(longitudeDeg) };
}

/**
 * The address that is asked for the last three months and the forecast of a place. Nothing of it but the rounded point
 * differs from reader to reader. The form is that of Open-Meteo's forecast (from memory).
 *
 * @param host origin of the service, such as `https://weather.example`
 */
export function weatherRequest(host: string, point: AskedPoint): URL {
  const { latitudeDeg, longitudeDeg } = roundedPoint(point);
  const url = new URL('/v1/forecast', host);
  url.search = new URLSearchParams({
    latitude: latitudeDeg.toFixed(1),
    longitude: longitudeDeg.toFixed(1),
    daily: Object.keys(askedUnits).join(),
    past_days: String(daysBack),
    forecast_days: String(daysAhead),
    timezone: 'auto',
  }).toString();
  return url;
}

/**
 * The origin of a weather service as it may be asked: over HTTPS, or on this machine; null for anything else.
 *
 * @param text `https://weather.example`, with no path, name or password
 */
export function weatherHost(text: string): string | null {
  let url: URL;
  try {
    url = new URL(text);
  } catch {
    return null;
  }
  const isHere = url.protocol === 'http:' && (url.hostname === '127.0.0.1' || url.hostname === 'localhost');
  const isBare = url.pathname === '/' && url.search === '' && url.hash === '' && url.username === '';
  return (url.protocol === 'https:' || isHere) && isBare && url.password === '' ? url.origin : null;
}
