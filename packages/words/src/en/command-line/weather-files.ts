/** What `neckfall weather` tells of files. */
export const weatherFiles = {
  'help.weather-command':
    'What a record of the weather is found to be, by its content: your own station’s, or one of a weather service.',
  'help.weather-files':
    'one file or several of one record, also as .gz or .zip; a later one goes before an earlier',
  'help.weather-days': 'add every day to the JSON',
  'help.column':
    'what a column holds, where it was taken wrongly, such as "Out=tempMaxC:°F"; one of {choices}',
  'help.dates': 'the order of day, month and year in the dates (default: told from them)',
  'help.utc-offset': 'how many hours the standard time of the place is ahead of UTC, such as -3 or 5.5',

  'record.headline':
    '{files, plural, one {{file} holds} other {The # files together hold}} {days, plural, one {# day} other {# days}} of weather, from {from} to {to}{absent, plural, =0 {} one {; # of them has no row} other {; # of them have no row}}.',
  'record.headline-typical':
    '{files, plural, one {{file} is a typical year} other {The # files are typical years}}: months of different years put together. It is no weather that came, and no season is tried with it.',
  'record.file':
    '{files, plural, one {It is} other {{file}:}} {format}{named, select, yes {, station {station}} other {}}{placed, select, yes {, at {latitude}, {longitude}} other {}}{elevation, select, none {} other {, {elevation} up}}.',
  'record.columns': '{files, plural, one {Its columns} other {Their columns}} were taken as:',
  'record.column.value': 'Value',
  'record.column.days': 'Days',
  'record.column.missing': 'Missing',
  'record.column.mean': 'Mean',
  'record.column.most': 'At most or least',
  'record.column.file': 'File',
  'record.column.name': 'Column',
  'record.column.as': 'Taken as',
  'record.column.unit': 'Unit',
  'record.rain-in-all': '{rain} in all',
  'record.sun': '{sun} MJ/m²',
  'record.unused': 'Not used in {file}: {names}{more, plural, =0 {} other { and # more}}.',
  'record.no-doubts': 'Nothing in it is doubtful.',
  'record.doubts':
    '{count, plural, one {# value was} other {# values were}} left out or {count, plural, one {is} other {are}} doubtful:',
  'record.doubt':
    '{date}: {field} {value}, {why}; {leftOut, select, yes {left out} other {kept as it stands}}.',
  'record.doubts-more': 'and {count, plural, one {one more} other {# more}}',

  'record.field.tempMaxC': 'highest of the day',
  'record.field.tempMinC': 'lowest of the day',
  'record.field.rainMm': 'rain',
  'record.field.solarMJ': 'sun',
  'record.as.date': 'date',
  'record.as.time': 'time of day',
  'record.as.year': 'year',
  'record.as.month': 'month',
  'record.as.day': 'day of the month',
  'record.as.hour': 'hour',
  'record.as.tempMinC': 'lowest temperature',
  'record.as.tempMaxC': 'highest temperature',
  'record.as.tempC': 'temperature outdoors',
  'record.as.rainMm': 'rain since the row before',
  'record.as.rainDayMm': 'rain, a counter set back at midnight',
  'record.as.rainSumMm': 'rain, a counter that runs on',
  'record.as.solarMJ': 'sun, its energy',
  'record.as.solarW': 'sun, its power',
  'record.why.quality-flag': 'flagged by its source',
  'record.why.out-of-range': 'more or less than the weather gives',
  'record.why.min-above-max': 'above the highest of the same day, so that neither is used',
  'record.why.outlier': 'far from the days beside it',
  'record.why.accumulated': 'rain of several days in one',
  'record.why.stuck': 'the same day after day',

  'record.format.own-table': 'a personal station’s table',
  'record.format.ghcn-daily-fixed': 'GHCN-Daily (NOAA), a line a month',
  'record.format.ghcn-daily-table': 'GHCN-Daily (NOAA), a table',
  'record.format.ncei-daily-summaries': 'daily summaries of NCEI (NOAA)',
  'record.format.gsod-fixed': 'Global Surface Summary of the Day (NOAA)',
  'record.format.gsod-table': 'Global Surface Summary of the Day (NOAA), a table',
  'record.format.nasa-power-table': 'NASA POWER, a table',
  'record.format.nasa-power-json': 'NASA POWER, JSON',
  'record.format.open-meteo-table': 'Open-Meteo, a table',
  'record.format.open-meteo-json': 'Open-Meteo, JSON',
  'record.format.epw': 'EPW, hours of a year',
  'record.format.tmy3': 'TMY3, hours of a typical year',
  'record.format.dwd-daily': 'daily values of the German weather service (DWD)',
  'record.format.environment-canada-daily': 'daily data of Environment and Climate Change Canada',
  'record.format.bom-daily': 'daily data of the Bureau of Meteorology, Australia',
  'record.format.inmet-hourly': 'hourly data of INMET, Brazil',

  'record.how.content': 'Files are told by their content, not by their names.',
  'record.how.encoding': '{file} was read as {encoding}.',
  'record.how.dates':
    'Dates of {file} were read as {order, select, dmy {day, month, year} mdy {month, day, year} other {year, month, day}}; --dates says otherwise.',
  'record.how.time':
    '{time, select, utc {Times of {file} are in UTC} standard {Times of {file} are in standard time} other {Days of {file} are the dates that stand in it}}.',
  'record.how.offset':
    'Days of {file} are made of the standard time {hours} h from UTC{from, select, longitude {, as its longitude has it} file {, as it says itself} place {, that of the place} other {}}.',
  'record.how.gsod':
    'Rain with the flag I stands as 0, as the service prints it; it may not have been measured.',
  'record.how.readings':
    'A day made of readings needs five in six of them; rain stamped with an hour fell before it.',
  'record.how.gaps':
    'What is missing stays missing here. Where a season is tried with the record, it is filled from the climate of the place.',
  'record.how.typical':
    'Typical years serve to plan buildings; seasons here are tried in real or made-up years.',
  'record.how.correct': 'What was taken wrongly is put right with --column, --dates and --utc-offset.',

  'record.left-out':
    '{file}: {count, plural, one {# value was} other {# values were}} left out or {count, plural, one {is} other {are}} doubtful; `neckfall weather` names them.',
  'record.other-stations':
    '{file} holds {count, plural, one {another station} other {# other stations}} besides, left out: {names}.',
  'record.overlap':
    '{file} gives other values than the files before it on {differing, number} of {days, plural, one {# day} other {# days}} that both have; its own were taken.',
  'record.far-apart': '{file} is of another station than {first}. Are they one record?',

  'error.weather-typical':
    '{value} is a typical year, months of different years put together: no weather that came. Give the record of a station.',
  'error.missing-argument': '{command} needs {expected}. For example: {example}',
  'error.weather-damaged': '{value} is packed, and damaged: it can’t be unpacked. Fetch it anew.',
  'error.weather-too-many-files': '{value} holds too many files. Unpack it and name those of the record.',
  'error.weather-no-text':
    '{value} is no text. Expected a file of weather, such as a CSV file, also as .gz or .zip.',
  'error.column-form':
    '--column {value}: expected NAME=WHAT or NAME=WHAT:UNIT, for example "Out=tempMaxC:°F"; NAME=none leaves a column out.',
  'error.out-is-file':
    '--out {value} is one of the files that are read, and would be lost. Name another file.',
} as const;
