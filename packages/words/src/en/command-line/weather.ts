/** What is told of a daily record. */
export const weather = {
  'record.missing-code':
    '{file}: {code} stands for “not measured” in {days, plural, one {# row} other {# rows}} of {column}; {days, plural, one {it was} other {they were}} taken as unknown.',
  'record.stuck':
    '{file}: nights and days are exactly alike for {days, number} days from {date}. Did the thermometer stand still? Used as it stands.',
  'record.sun-beyond-sky':
    '{file} has more sun than reaches the earth on {days, plural, one {# day} other {# days}}. Is it the MJ of one day? Used as it stands.',
  'record.sun-weak':
    '{file}: its sun adds up to {percent} % of the sun above the air, less than the dullest sky lets through. If it is in kWh, multiply it by 3.6 to make it MJ. Used as it stands.',
  'record.rain-heavy':
    '{file} has more than {limit, number} mm of rain on {days, plural, one {# day} other {# days}}, up to {most, number} mm. Is it the mm of one day? Used as it stands.',
  'record.forecast': 'Days from {from} to {to} as they were forecast, where {file} has them.',
  'record.measured':
    '{known, number} of the {days, number} days from {from} to {to} are measured{forecast, plural, =0 {} other { and # forecast}}{others, plural, =0 {} other {; the others are made-up weather}}.',
  'record.few':
    '{file} has only {known, number} of the {days, number} days from {from} to {to}; the rest is made-up weather.',
  'error.weather-constant':
    '{value}: every day has the same temperatures, so these were not measured. Give the record of a thermometer.',
  'error.weather-other-hemisphere':
    '{value}: midwinter is warmer than midsummer in it, so it is from the other half of the earth than {place}. Give a record of this place, or check the sign of the latitude.',
} as const;
