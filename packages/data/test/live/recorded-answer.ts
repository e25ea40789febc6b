import { formatDay } from '@neckfall/engine';

/**
 * An answer in the form of Open-Meteo's forecast (from memory), its numbers made up by hand: a cool, showery spring that
 * turns warm, and no sun yet for the last day.
 */
export function recordedAnswer(today: number) {
  const days = Array.from({ length: 108 }, (_, at) => at);
  return {
    latitude: 52.08,
    longitude: -3.1199951,
    generationtime_ms: 0.21,
    utc_offset_seconds: 3600,
    timezone: 'Europe/London',
    timezone_abbreviation: 'GMT+1',
    elevation: 152,
    daily_units: {
      time: 'iso8601',
      temperature_2m_max: '°C',
      temperature_2m_min: '°C',
      precipitation_sum: 'mm',
      shortwave_radiation_sum: 'MJ/m²',
    },
    daily: {
      time: days.map((at) => formatDay(today - 92 + at)),
      temperature_2m_max: days.map((at) => Math.round(90 + at + (at % 7) * 8) / 10),
      temperature_2m_min: days.map((at) => Math.round(10 + at + (at % 5) * 6) / 10),
      precipitation_sum: days.map((at) => (at % 4 === 0 ? 5.2 : 0)),
      shortwave_radiation_sum: days.map((at) => (at === 107 ? null : 8 + (at % 6))),
    },
  };
}
