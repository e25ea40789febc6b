/** What any page may say of the garden kept in the browser: that it is there, is not kept, and files that are opened. */
export const appGarden = {
  'app.page.kept': 'Kept here',
  'app.garden.link':
    '{holder, select, page {Held by this page alone} other {Kept on this device}}: {plans, plural, =0 {no crops} one {one crop} other {# crops}}',
  'app.garden.not-kept':
    'This browser does not keep your garden: it is gone when you close this page. Save it as a file first.',
  'app.garden.unkept':
    '{why, select, newer {The garden kept in this browser is that of a later version of Neckfall; it is left as it is. Load this page again to have that version.} slow {This browser did not open the garden it keeps; it is left as it is. Close other tabs of Neckfall and load this page again.} full {There is no room left on this device.} other {The garden kept in this browser was cleared while this page was open.}}',
  'app.garden.open.fold': 'Have you a garden file?',
  'app.garden.open': 'Open a garden file',
  'app.garden.open.hint': 'A file ending in .neckfall.json. It is read on this device and sent nowhere.',
  'app.garden.open.replaces': 'It takes the place of the garden that is here, which can be taken back.',
  'app.garden.opened':
    '{file} is open: {plans, plural, =0 {it holds no crop} one {one crop} other {# crops}}.',
  'app.garden.opened.plan': '“{name}” of {file} is open.',
  'app.garden.opened.no-place': '“{name}” names no place of the file, so it is shown for the place above.',
  'app.garden.opened.replaced': 'It took the place of the garden that was here before.',
  'app.garden.opened.changed': 'Read with these changes:',
  'app.garden.opened.more': 'and {count} more',
  'app.garden.refused.too-big':
    '{file} is {size} MB; a garden file is at most {limit} MB. Nothing here was changed.',
  'app.garden.refused.too-many':
    '{file}: {list} has {count, number} entries; a garden has at most {most, number}. Nothing here was changed.',
  'app.garden.refused.unreadable': '{file} could not be read ({reason}). Nothing here was changed.',
  'app.garden.refused.not-text':
    '{file} is not text (UTF-8). Choose a .neckfall.json file. Nothing here was changed.',
  'app.garden.refused.not-json':
    '{file} is no garden file: it is not JSON ({reason}). Nothing here was changed.',
  'app.garden.refused.too-deep':
    '{file} is no garden file: lists lie in lists more than {levels} deep. Nothing here was changed.',
  'app.garden.refused.not-garden':
    '{file} is no garden file: its schema is “{found}”, and neckfall/garden@1 was expected. Nothing here was changed.',
} as const;
