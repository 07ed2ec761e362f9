import { expect, it } from 'vitest'
import { tableLines } from './table.ts'

it('a table has columns of equal width, figures to the right, no trailing space', () => {
  const columns = [{ heading: 'club' }, { heading: 'carry', isFigure: true }, { heading: 'note' }]
  const rows = [
    ['driver', '210', ''],
    ['9-iron', '98', 'guess'],
  ]
  expect(tableLines(columns, rows)).toEqual(['club    carry  note', 'driver    210', '9-iron     98  guess'])
  expect(tableLines(columns, [])).toEqual(['club  carry  note'])
})
