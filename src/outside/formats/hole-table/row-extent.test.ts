import { describe, expect, it } from 'vitest'
import { TABLE_DEFAULTS } from '../settings.ts'
import { rowExtent } from './row-extent.ts'
import type { TableRow } from './table-row.ts'

function extent(row: Partial<TableRow>): unknown {
  const blank: TableRow = {
    line: 2,
    hole: '1',
    what: 'bunker',
    side: 'across',
    from: null,
    to: null,
    near: null,
    far: null,
    note: '',
    cardMetres: null,
    outline: null,
    green: null,
    metresPerUnit: 1,
  }
  return rowExtent({ ...blank, ...row }, 350)
}

describe('rowExtent', () => {
  it('measures off the line on the side that is named', () => {
    const row = { from: 200, to: 220, near: 10, far: 25 }
    expect(extent({ ...row, side: 'left' })).toMatchObject({ from: 200, to: 220, left: -25, right: -10 })
    expect(extent({ ...row, side: 'right' })).toMatchObject({ left: 10, right: 25 })
    expect(extent({ ...row, side: 'right', near: -5 })).toMatchObject({ left: -5, right: 25 })
  })

  it('halves a width across the line, and takes two edges as they are', () => {
    const row = { what: 'fairway', from: 150, to: 320 } as const
    expect(extent({ ...row, far: 34 })).toMatchObject({ left: -17, right: 17 })
    expect(extent({ ...row, near: 0, far: 34 })).toMatchObject({ left: -17, right: 17 })
    expect(extent({ ...row, near: -12, far: 20 })).toMatchObject({ left: -12, right: 20 })
    expect(extent({ ...row, near: 14, far: 16 })).toMatchObject({ left: -14, right: 16 })
    expect(extent({ ...row, what: 'green', near: 10, far: 36 })).toMatchObject({ left: -13, right: 13 })
  })

  it('fills in blank cells, and says so', () => {
    expect(extent({ what: 'fairway', from: 150, to: 320 })).toMatchObject({
      left: -15,
      right: 15,
      assumed: ['30 m wide'],
    })
    expect(extent({ what: 'green', from: 340 })).toMatchObject({
      from: 340,
      to: 365,
      left: -12.5,
      right: 12.5,
    })
    expect(extent({ side: 'left', from: 200, near: 12 })).toMatchObject({ to: 210, left: -22, right: -12 })
    expect(extent({ what: 'trees', side: 'left', from: 100, to: 300, near: 30 })).toMatchObject({
      left: -TABLE_DEFAULTS.reachOffLine,
      assumed: [`it reaches ${TABLE_DEFAULTS.reachOffLine} m off the line`],
    })
  })

  it('takes out of bounds without an end for the whole hole, and assumes nothing by it', () => {
    expect(extent({ what: 'out', side: 'right', near: 60 })).toEqual({
      from: -TABLE_DEFAULTS.reachBeyondEnds,
      to: 350 + TABLE_DEFAULTS.reachBeyondEnds,
      left: 60,
      right: TABLE_DEFAULTS.reachOffLine,
      assumed: [],
    })
  })

  it('runs a ditch across the whole hole, or along one side', () => {
    const width = TABLE_DEFAULTS.ditchWidth
    expect(extent({ what: 'ditch-red', from: 210 })).toMatchObject({
      from: 210,
      to: 210 + width,
      left: -100,
      right: 100,
    })
    expect(extent({ what: 'ditch-red', side: 'left', from: 50, to: 250, near: 18 })).toMatchObject({
      left: -18 - width,
      right: -18,
    })
  })

  it('does not guess where a thing is', () => {
    const rows: Partial<TableRow>[] = [
      { from: null, to: 220, near: 0, far: 10 },
      { what: 'water-red', from: 200 },
      { from: 220, to: 200, far: 10 },
      { side: 'left', from: 200, to: 220 },
      { side: 'left', from: 200, to: 220, near: 20, far: 10 },
      { from: 200, to: 220, near: 5 },
      { from: 200, to: 220, far: 0 },
      { what: 'trees', side: 'left', from: 500, near: 10 },
    ]
    for (const row of rows) expect(extent(row), JSON.stringify(row)).toMatchObject({ code: 'MAR-IMPORT-019' })
  })
})
