/** A weather service asked from the command line. */
export const ask = {
  'help.weather-ask':
    'ask a weather service for the last three months and the forecast of a town, or of a point such as 52.1,-3.1; files are read without',
  'ask.asking': 'Asking {host} for the weather of {latitude}, {longitude}: the place to 0.1°, nothing else.',
  'ask.forecast': 'Days from {date} on are a forecast.',
  'ask.model': 'The days before come from weather models, which take a whole district for one.',
  'error.ask-and-files':
    '{value}: a service is asked, or files are read, not both. Leave out --ask or the files.',
  'error.ask-host':
    'NECKFALL_WEATHER_HOST={value}: expected the bare origin of a weather service, such as https://weather.example.',
  'error.ask-unreachable': '{host} could not be reached. See whether you are connected, then ask again.',
  'error.ask-slow': '{host} gave no whole answer in {seconds} seconds. Ask again later.',
  'error.ask-status':
    '{host} answered with status {status}{kind, select, busy {: it has been asked too often} fault {: a fault of its own} other {: it does not take what was asked}}. {kind, select, refused {See whether NECKFALL_WEATHER_HOST is meant.} other {Ask again later.}}',
  'error.ask-redirected': '{host} sends on to another address, which is not followed.',
  'error.ask-too-big': '{host} sent more than {limit} MB, far more than the weather of a place.',
  'error.ask-not-weather': 'What {host} sent is no weather that can be read.',
  'error.ask-other-place': '{host} sent the weather of another place: {latitude}, {longitude}.',
  'error.ask-other-units': '{host} sent {column} in {unit}; {asked} was asked for.',
  'error.ask-other-days': '{host} sent other days than those asked for: {from} to {to}.',
} as const;
