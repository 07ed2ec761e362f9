import { describe, expect, it } from 'vitest'
import type { Hole } from '#golf/course/hole.ts'
import type { Plan } from '#golf/strategy/plan.ts'
import { openDesk, type Reader } from '../desk/desk.ts'
import { placeBall } from '../desk/edits.ts'
import { otherDesk } from './against.ts'
import { changedParts, isSameStroke } from './changed-parts.ts'

const reader: Reader = { units: 'metres', windUnit: 'm/s', theme: 'day', print: 'usual' }

function planned(club: string, strokes: number, lengthMetres = 330) {
  const hole = {
    line: [
      [0, 0],
      [0, lengthMetres],
    ],
    pin: [0, lengthMetres],
    lengthMetres,
  } as unknown as Hole
  const option = {
    club,
    shape: 'stock',
    total_m: 180,
    aim: { heading_deg: 0, start_deg: 0 },
    leave_m: { p50: 150 },
  }
  const plan = {
    situation: { x_m: 0, y_m: 0, lie: 'tee' },
    options: [option],
    // biome-ignore lint/suspicious/noThenProperty: `then` is promised by plan/1, and no plan is ever awaited.
    then: [],
    value: { strokes },
  } as unknown as Plan
  return { plan, hole }
}

describe('changedParts', () => {
  it('leaves out what two plans say alike', () => {
    expect(changedParts(planned('5-wood', 5.1), planned('5-wood', 5.11), reader)).toEqual([])
    const parts = changedParts(planned('5-wood', 5.1), planned('5-wood', 5.3), reader)
    expect(parts).toEqual([{ what: 'strokes', here: '5.10', there: '5.30' }])
    expect(isSameStroke(parts)).toBe(true)
  })

  it('says another club and another length', () => {
    const parts = changedParts(planned('5-wood', 5.1), planned('driver', 5.2, 350), reader)
    expect(parts.map(({ what }) => what)).toEqual(['length', 'club', 'strokes'])
    expect(isSameStroke(parts)).toBe(false)
  })
})

describe('otherDesk', () => {
  const desk = placeBall({ ...openDesk('ness', '7', 'wren'), pin: [2, 330] }, [0, 100])

  it('is none while nothing is different', () => {
    expect(otherDesk(desk, {})).toBeNull()
  })

  it('keeps the ball and the pin for another player, and lets go of places for another tee', () => {
    expect(otherDesk(desk, { playerId: 'offa' })).toMatchObject({
      playerId: 'offa',
      ball: desk.ball,
      pin: [2, 330],
    })
    expect(otherDesk(desk, { teeName: 'red' })).toMatchObject({ teeName: 'red', ball: null, pin: 'day' })
  })
})
