/** Put in by the build; see with-weather-host.ts. */
declare const weatherHostOfBuild: string | null;

/** Origin of the weather service this copy may ask; null: it asks nobody. */
export const weatherHost: string | null =
  typeof weatherHostOfBuild === 'undefined' ? null : weatherHostOfBuild;
