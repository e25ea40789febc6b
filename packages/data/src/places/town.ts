/** A populated place. */
export type Town = {
  /** As GeoNames writes it. */
  readonly name: string;
  /** ISO 3166-1 alpha-2. */
  readonly country: string;
  /** State or nation code within the country (ISO 3166-2 without the country), where we ship it: US, GB, CH. */
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
