/**
 * The weather service that a build may ask, by `NECKFALL_WEATHER_HOST`; null: none, as usual. Throws on what is no
 * origin, so that no build carries a wider policy than was meant.
 */
export function weatherHostOf({ NECKFALL_WEATHER_HOST: given = '' } = process.env) {
  if (given === '') return null;
  const isOrigin = /^(https:\/\/[a-z\d.-]+|http:\/\/(127\.0\.0\.1|localhost))(:\d{1,5})?$/.test(given);
  if (!isOrigin) {
    throw new Error(
      `NECKFALL_WEATHER_HOST=${given}: expected the bare origin of a weather service in small letters, such as https://weather.example`,
    );
  }
  return given;
}

/** What pages may connect to, as a content security policy has it. */
export function connectSources(host = weatherHostOf()) {
  return host === null ? "connect-src 'self'" : `connect-src 'self' ${host}`;
}
