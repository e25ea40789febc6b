const minutesPerHour = 60;

/**
 * Hours that the standard time of a zone is ahead of UTC in a year: the smaller of what it is in January and in July.
 * By the longitude where the machine does not know the zone.
 *
 * @param timeZone IANA name
 */
export function standardOffsetH(timeZone: string, longitudeDeg: number, year: number): number {
  try {
    return (
      Math.min(...[0, 6].map((month) => offsetMinutes(timeZone, Date.UTC(year, month, 1)))) / minutesPerHour
    );
  } catch {
    return Math.round(longitudeDeg / 15) + 0;
  }
}

function offsetMinutes(timeZone: string, ms: number): number {
  const format = new Intl.DateTimeFormat('en-US', { timeZone, timeZoneName: 'longOffset' });
  const named = format.formatToParts(ms).find(({ type }) => type === 'timeZoneName')?.value ?? '';
  const [, sign, hours, minutes = '0'] = /^GMT(?:([+-])(\d{2}):(\d{2}))?/.exec(named) ?? [];
  if (sign === undefined) return 0;
  return (sign === '-' ? -1 : 1) * (Number(hours) * minutesPerHour + Number(minutes));
}
