/**
 * What the parts of a table that is walked by keyboard are, said outright: its lines are laid out as grids, and of a table that
 * is not laid out as one browsers may forget what its rows and cells are.
 */
export const gridRoles = {
  grid: { role: 'grid' },
  lines: { role: 'rowgroup' },
  line: { role: 'row' },
  head: { role: 'columnheader', scope: 'col' },
  name: { role: 'rowheader', scope: 'row' },
  cell: { role: 'gridcell' },
} as const;
