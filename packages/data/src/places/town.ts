/** A populated place. */
export type Town = {
  /** As GeoNames writes it. */
  readonly name: string;
  /** ISO 3166-1 alpha-2. */
  readonly country: string;
  /** Part of the country that people name towns by (ISO 3166-2 without the country): AU, CA, CH, GB, US only. */
  readonly region: string | null;
  /** −90…90, north positive, to 0.001°. */
  readonly latitudeDeg: number;
  /** −180…180, east positive, to 0.001°. */
  readonly longitudeDeg: number;
  /** Ground above sea level, whole metres, from the elevation model that GeoNames used. */
  readonly elevationM: number;
  readonly population: number;
  /** IANA name. */
  readonly timeZone: string;
};
