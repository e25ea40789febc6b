/** The weather that came: what is kept of a place, files read in, a service asked. */
export const appWeather = {
  'app.weather.link': 'The weather that came',
  'app.weather.none': '{place}: no weather is kept yet, so every season is made up from what is usual.',
  'app.weather.kept':
    '{place}: the weather from {from} to {to} is kept{missing, plural, =0 {} one {, but for # day} other {, but for # days}}.',
  'app.weather.lead.none':
    'Your own station’s file will do, or the record of a station near by. A season that has begun is then worked out with the weather it really had.',
  'app.weather.lead.kept':
    'Seasons of your plans here are worked out with it; days without a record are filled from what is usual.',
  'app.weather.kept.fault':
    '{fault, select, constant {Every day of the weather kept here has the same temperatures, so these were not measured} other {Midwinter is the warm time in the weather kept here, so it comes from the other half of the earth}}: no season is worked out with it. Remove it, and bring in a record of this place.',
  'app.weather.assumed':
    'Days from {from} to {to} as they came, where the weather kept of this place has them{forecast, select, none {} other {; from {forecast} on, as they were forecast}}.',
  'app.weather.forecast-from':
    'From {date} on it is a forecast, until a later answer or file takes its place.',
  'app.weather.against.warmer': 'The days measured were {by} warmer than usual here.',
  'app.weather.against.colder': 'The days measured were {by} colder than usual here.',
  'app.weather.against.same': 'The days measured were as warm as usual here.',
  'app.weather.against.rain': 'Rain on them came to {rain}; {usual} would be usual.',
  'app.weather.against.far':
    'Is this a station in another climate, or a thermometer in the sun? Keep it only if it stands for your garden.',
  'app.weather.sources': 'Where it came from',
  'app.weather.source': '{name}, {from} to {to}',
  'app.weather.remove': 'Remove the weather of this place',
  'app.weather.to-season': 'Season',

  'app.weather.months': 'Month by month',
  'app.weather.month': 'Month',
  'app.weather.month.days': 'Days measured',
  'app.weather.month.mean': 'Mean, {unit}',
  'app.weather.month.usual-mean': 'Usual mean, {unit}',
  'app.weather.month.rain': 'Rain, {unit}',
  'app.weather.month.usual-rain': 'Usual rain, {unit}',
  'app.weather.unknown': 'not measured',

  'picture.weather.forecast': 'forecast',
  'picture.weather.measured': 'measured',
  'picture.weather.usual': 'usual here',
  'picture.weather.summary':
    'From {from} to {to}{least, select, none {} other {, days and nights between {least} and {most}}}{rain, select, none {} other {, {rain} of rain in all}}, drawn over what is usual here.',
  'picture.weather.summary.last': 'The last year of the record is drawn.',

  'app.weather.choose': 'Bring in a record',
  'app.weather.choose.label': 'Weather files, one or several',
  'app.weather.choose.hint':
    'Choose them, or drop them here: a table of your own station, daily or every few minutes, or a record as weather services give it, zipped or not. They are read on this device and sent nowhere.',
  'app.weather.reading': 'Reading {files, plural, one {{file}} other {{file} and others, # in all}}…',
  'app.weather.reading.stop': 'Stop reading',
  'app.weather.fault': 'The files could not be read ({reason}). Nothing here was changed.',

  'app.weather.found': 'What was found',
  'app.weather.found.file': '{file}: {format}, {from} to {to}, {step}.',
  'app.weather.found.typical':
    '{file}: {format}, {step}. It is a typical year, put together from months of several years: no weather that came, so it is not kept.',
  'app.weather.step.day': 'a row a day',
  'app.weather.step.part': 'several rows a day',
  'app.weather.found.holds': 'It holds {columns}.',
  'app.weather.found.station': 'The station is {name}.',
  'app.weather.found.away': 'It lies {distance} from your place.',
  'app.weather.found.far-away':
    'It lies {distance} from your place. See whether its weather is yours before you keep it.',
  'app.weather.found.others': 'Other stations in the file are left out: {names}.',
  'app.weather.found.gaps':
    '{days, plural, one {# day is missing and is} other {# days are missing and are}} filled from what is usual here: {when}.',
  'app.weather.found.gaps.none': 'No day is missing.',
  'app.weather.found.no-temperature': 'It holds no temperatures; those are made up from what is usual here.',
  'app.weather.found.and-more': '{list} and {count, plural, one {one more} other {# more}}',

  'app.weather.span': '{from} to {to}',

  'app.weather.format.own-table': 'a personal station’s table',
  'app.weather.format.ghcn-daily-fixed': 'days of GHCN-Daily',
  'app.weather.format.ghcn-daily-table': 'a table of GHCN-Daily',
  'app.weather.format.ncei-daily-summaries': 'daily summaries of NCEI',
  'app.weather.format.gsod-fixed': 'days of GSOD',
  'app.weather.format.gsod-table': 'a table of GSOD',
  'app.weather.format.nasa-power-table': 'a table of NASA POWER',
  'app.weather.format.nasa-power-json': 'NASA POWER as JSON',
  'app.weather.format.open-meteo-table': 'a table of Open-Meteo',
  'app.weather.format.open-meteo-json': 'Open-Meteo as JSON',
  'app.weather.format.epw': 'an EPW file',
  'app.weather.format.tmy3': 'a TMY3 file',
  'app.weather.format.dwd-daily': 'days of the German weather service (DWD)',
  'app.weather.format.environment-canada-daily': 'days of Environment Canada',
  'app.weather.format.bom-daily': 'days of the Australian Bureau of Meteorology',
  'app.weather.format.inmet-hourly': 'hours of the Brazilian weather service (INMET)',

  'app.weather.as.date': 'date',
  'app.weather.as.time': 'time of day',
  'app.weather.as.year': 'year',
  'app.weather.as.month': 'month',
  'app.weather.as.day': 'day of the month',
  'app.weather.as.hour': 'hour',
  'app.weather.as.tempMinC': 'lowest temperature',
  'app.weather.as.tempMaxC': 'highest temperature',
  'app.weather.as.tempC': 'temperature outdoors',
  'app.weather.as.rainMm': 'rain since the row before',
  'app.weather.as.rainDayMm': 'rain of the day so far',
  'app.weather.as.rainSumMm': 'rain on a counter that runs on',
  'app.weather.as.solarMJ': 'sun, its energy',
  'app.weather.as.solarW': 'sun, its power',
  'app.weather.as.none': 'not used',
  'app.weather.in-unit': '{what} ({unit})',

  'app.weather.columns': 'How its columns were taken',
  'app.weather.columns.of': 'How the columns of {file} were taken',
  'app.weather.columns.hint': 'Is one taken wrongly? Choose what it is, and the file is read again.',
  'app.weather.column': 'Column',
  'app.weather.column.is': 'Taken as',
  'app.weather.column.is-of': '{column}: taken as',
  'app.weather.column.unit': 'Unit',
  'app.weather.column.unit-of': '{column}: unit',
  'app.weather.unit.guessed': 'as guessed',
  'app.weather.dates': 'Order in its dates',
  'app.weather.dates.ymd': 'year, month, day',
  'app.weather.dates.dmy': 'day, month, year',
  'app.weather.dates.mdy': 'month, day, year',
  'app.weather.offset': 'Hours from UTC',
  'app.weather.offset.hint': 'Standard time of the place, {min} to {max}; empty: that of its zone.',

  'app.weather.first': 'Its first days',
  'app.weather.first.date': 'Day',
  'app.weather.first.low': 'Lowest, {unit}',
  'app.weather.first.high': 'Highest, {unit}',
  'app.weather.first.rain': 'Rain, {unit}',
  'app.weather.first.sun': 'Sun, MJ/m²',

  'app.weather.doubts': '{count, plural, one {# value} other {# values}} left out or doubtful',
  'app.weather.doubt':
    '{date}: {field} {value}, {why}; {leftOut, select, true {left out} other {used as it stands}}.',
  'app.weather.doubts.more': 'and {count, plural, one {one more} other {# more}}',
  'app.weather.field.tempMinC': 'lowest',
  'app.weather.field.tempMaxC': 'highest',
  'app.weather.field.rainMm': 'rain',
  'app.weather.field.solarMJ': 'sun',
  'app.weather.why.quality-flag': 'flagged by its source',
  'app.weather.why.out-of-range': 'more or less than the weather gives',
  'app.weather.why.min-above-max': 'the lowest above the highest',
  'app.weather.why.outlier': 'far from the days about it',
  'app.weather.why.accumulated': 'rain of several days in one',
  'app.weather.why.stuck': 'the same day after day',
  'app.weather.doubt.sun-beyond-sky':
    '{days, plural, one {# day has} other {# days have}} more sun than reaches the earth. Is it the energy of one day?',
  'app.weather.doubt.sun-weak':
    'All its sun is only {percent} % of that above the air. Is it in another unit?',
  'app.weather.doubt.rain-heavy':
    '{days, plural, one {# day has} other {# days have}} more than {limit} of rain, up to {most}. Is it the rain of one day?',
  'app.weather.doubt.stuck':
    'Nights and days are exactly alike for {days, number} days from {date} on. Did the thermometer stand still?',

  'app.weather.refused.too-big':
    '{file} is larger than {limit} MB, unpacked or not; no record is. Give a part of it. Nothing here was changed.',
  'app.weather.refused.damaged':
    '{file} is damaged and can’t be unpacked. Fetch it anew. Nothing here was changed.',
  'app.weather.refused.too-many-files':
    '{file} holds too many files. Unpack it and choose those of the record. Nothing here was changed.',
  'app.weather.refused.no-text':
    '{file} holds no text, so it is no record of weather. Nothing here was changed.',
  'app.weather.refused.unreadable': '{file} could not be read from this device. Nothing here was changed.',
  'app.weather.refused.not-weather':
    '{file} begins with “{received}”, which is no record that is known here: a table needs a line a day or a reading, with a date in it. Nothing here was changed.',
  'app.weather.refused.typical-beside-real':
    '{file}: a typical year and weather that came can’t be read as one record. Choose one or the other. Nothing here was changed.',
  'app.weather.refused.no-dates':
    '{file} has no column of dates that could be told. Its dates should read like 2027-03-31 or 31.03.2027. Nothing here was changed.',
  'app.weather.refused.no-values':
    '{file} has no column of temperature, rain or sun that could be told. Name one in its head. Nothing here was changed.',
  'app.weather.refused.no-days': '{file} holds no day that can be used. Nothing here was changed.',
  'app.weather.refused.bad-date':
    '{file}, line {line, number}: “{received}” is no date. Put it right there, or leave the line out. Nothing here was changed.',
  'app.weather.refused.too-many-columns':
    '{file} has more columns than a record can have. Leave out those that are no weather. Nothing here was changed.',
  'app.weather.refused.too-many-lines':
    '{file} has more lines than can be read. Give it in parts. Nothing here was changed.',
  'app.weather.refused.long-cell':
    '{file}, line {line, number}: a value is too long for a table of weather. Nothing here was changed.',
  'app.weather.refused.bad-json':
    '{file} is no whole JSON document. Fetch it anew. Nothing here was changed.',
  'app.weather.refused.unknown-column': '{file} has no column “{received}”. Nothing here was changed.',
  'app.weather.refused.unit-unknown':
    '{file}: “{received}” is no unit of {field} that is known here. Choose another. Nothing here was changed.',
  'app.weather.impossible.constant':
    'Every day has the same temperatures, so these were not measured. They can’t be kept.',
  'app.weather.impossible.other-hemisphere':
    'Midwinter is the warm time in it, so it comes from the other half of the earth. It can’t be kept here.',

  'app.weather.overlap.differs':
    '{days, plural, one {# day that is kept already differs} other {# days that are kept already differ}}{temperature, select, none {{rain, select, none {} other {, by up to {rain} of rain}}} other {, by up to {temperature}{rain, select, none {} other { and {rain} of rain}}}}. Which shall stand?',
  'app.weather.overlap.keep': 'What was there',
  'app.weather.overlap.take': 'The new record',
  'app.weather.keep': 'Keep it',
  'app.weather.leave': 'Leave it',

  'app.weather.ask': 'Ask a weather service',
  'app.weather.ask.off': 'This copy of Neckfall asks nobody for weather; files are the way.',
  'app.weather.ask.what':
    'Sent to {host}, when you press the button and at no other time: the place rounded to 0.1° ({latitude}, {longitude}), nothing else.',
  'app.weather.ask.do': 'Ask for the last three months and the forecast',
  'app.weather.ask.waiting': 'Waiting for {host}…',
  'app.weather.ask.stop': 'Stop waiting',
  'app.weather.ask.model':
    'The answer comes from weather models, which take a whole district for one, not from a thermometer in your garden.',
  'app.weather.asked.unreachable':
    '{host} could not be reached. See whether you are connected, then ask again. Nothing here was changed.',
  'app.weather.asked.slow':
    '{host} gave no whole answer in {seconds} seconds. Ask again later. Nothing here was changed.',
  'app.weather.asked.status':
    '{kind, select, busy {{host} has been asked too often (status {status}). Ask again later.} fault {{host} has a fault of its own (status {status}). Ask again later.} other {{host} does not take what was asked (status {status}). Tell those who run this copy.}} Nothing here was changed.',
  'app.weather.asked.redirected':
    '{host} sent us on to another address, which we do not follow. Nothing here was changed.',
  'app.weather.asked.too-big':
    '{host} sent more than {limit} MB, far more than the weather of a place. Nothing here was changed.',
  'app.weather.asked.not-weather':
    'What {host} sent is no weather that can be read. Nothing here was changed.',
  'app.weather.asked.other-place':
    '{host} sent the weather of another place ({latitude}, {longitude}). Nothing here was changed.',
  'app.weather.asked.other-units':
    '{host} sent {column} in {unit}, where {expected} was asked for. Nothing here was changed.',
  'app.weather.asked.other-days':
    '{host} sent other days than those asked for: {from} to {to}. Nothing here was changed.',
} as const;
