/** The garden kept in the browser: its plans and onions, steps taken back, the whole of it as a file. */
export const appGardenSteps = {
  'app.garden.title':
    '{holder, select, page {Held by this page alone} other {Kept on this device}}: {plans, plural, =0 {no crops yet} one {one crop} other {# crops}}{onions, plural, =0 {} one {, one onion of your own} other {, # onions of your own}}',
  'app.garden.none': '{holder, select, page {No garden on this page} other {Nothing is kept on this device}}',
  'app.garden.none.how': 'Keep a crop from its Season page, or open a garden file below.',
  'app.garden.lead':
    '{holder, select, page {It goes when you close this page, and is sent nowhere: save the garden as a file first.} other {Kept in this browser and sent nowhere. A browser may clear what it holds: save the garden as a file now and then.}}',
  'app.garden.no-place': 'Without a place',
  'app.garden.no-place.how': 'The garden names no place for these, so they are shown for the one above.',
  'app.garden.plan': '{first}, {rest}',
  'app.garden.seen': 'Seen {count, plural, one {once} =2 {twice} other {# times}}, last on {date}.',
  'app.garden.weather':
    'Weather kept from {from} to {to}: {days, plural, one {# day} other {# days}} measured.',
  'app.garden.plan.remove': 'Remove',
  'app.garden.plan.remove-of': 'Remove “{name}”',
  'app.garden.onions': 'Onions of your own',
  'app.garden.onion.bare':
    '{name}: neither its kind nor the day length on its packet is in the garden file, so it can’t be worked out.',
  'app.garden.onion.unused':
    '“{name}” is known by its name alone, so the kind that suits best here is shown.',
  'app.garden.onion.from-link':
    '“{name}” is no onion that is known here. It is worked out from its packet, as the link gives it.',
  'app.garden.onion.name': 'Keep it as an onion of your own',
  'app.garden.onion.hint':
    'Then it stands in the list beside the others, on this {holder, select, page {page} other {device}}.',
  'app.garden.onion.taken': 'One of your onions is called {name} already. Give this one another name.',
  'app.garden.onion.keep': 'Keep this onion',
  'app.garden.onion.remove-of': 'Remove onion “{name}”',
  'app.garden.onion.choice': '{name} (your own)',
  'app.garden.file': 'Changes and files',
  'app.garden.save': 'Save the whole garden as a file',
  'app.garden.saved': 'Saved as {file}.',
  'app.garden.save-failed': '{file} could not be made ({reason}).',
  'app.garden.undo': 'Take back: {what}',
  'app.garden.redo': 'Do again: {what}',
  'app.garden.step.opened': '{name} opened',
  'app.garden.step.added': '“{name}” added',
  'app.garden.step.changed': '“{name}” changed',
  'app.garden.step.removed': '“{name}” removed',
  'app.garden.step.onion-added': 'onion “{name}” added',
  'app.garden.step.onion-removed': 'onion “{name}” removed',
  'app.garden.step.seen': 'what was seen of “{name}”',
  'app.garden.step.seen-changed': 'what was seen of “{name}” changed',
  'app.garden.step.seen-removed': 'what was seen of “{name}” removed',
  'app.garden.step.work': 'work noted of “{name}”',
  'app.garden.step.weather-kept': 'weather of “{name}” kept',
  'app.garden.step.weather-removed': 'weather of “{name}” removed',
  'app.garden.step.learnt': 'what “{name}” starts from',
  'app.garden.step.forgotten': 'the whole garden removed',
  'app.garden.step.elsewhere': '{what} (in another tab or window)',
  'app.garden.forget': 'Remove the whole garden',
  'app.garden.wipe': 'Wipe it from this {holder, select, page {page} other {device}} for good',
  'app.garden.wipe.how': 'After that it can’t be brought back, unless you have a file of it.',
  'app.garden.elsewhere': 'The garden was changed in another tab or window; this is how it stands now.',
  'app.garden.shortened':
    'There is little room left on this device, so the oldest changes can no longer be taken back.',
  'app.garden.fault': 'The garden could not be changed ({reason}). Load the page again and try once more.',
  'app.garden.mended': 'What this browser holds was damaged. Read with these changes:',
  'app.garden.keep': 'Keep this crop',
  'app.garden.keep.not-yet':
    'This crop is not among those {holder, select, page {held by this page} other {kept on this device}}.',
  'app.garden.keep.is':
    '{holder, select, page {Held by this page alone,} other {Kept on this device}} as “{name}”.',
  'app.garden.keep.differs':
    '{holder, select, page {Held by this page alone,} other {Kept on this device}} as “{name}”, but not as it is shown now.',
  'app.garden.keep.name': 'What you call it',
  'app.garden.keep.do': '{holder, select, page {Hold it on this page} other {Keep it on this device}}',
  'app.garden.keep.again': 'Keep it so, in place of “{name}” as it was',
  'app.garden.keep.beside': 'Keep it as another crop',
} as const;
