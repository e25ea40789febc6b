/** The data base that holds what the browser keeps, and the line on which tabs tell each other of changes. */
export const dataBaseName = 'neckfall';
export const lineName = 'neckfall.garden';
