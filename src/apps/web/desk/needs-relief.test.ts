import { describe, expect, it } from 'vitest'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { area, course, holeLine, rectangle } from '#golf/course/invented-course.fixture.ts'
import { openDesk } from './desk.ts'
import { placeBall, sayOfBall, setLie, strikeFromHere, takeRelief } from './edits.ts'
import { keepDesk, keptDesk } from './kept-desk.ts'
import { needsRelief } from './needs-relief.ts'

const hole = holeFromCourse(
  course({
    holes: [
      holeLine('1', [
        [0, 0],
        [0, 300],
      ]),
    ],
    areas: [
      area('green', 'green', rectangle(-8, 292, 8, 308)),
      area('pond', 'penalty-red', rectangle(-20, 140, 20, 170)),
      area('road', 'out', rectangle(40, 0, 90, 300)),
    ],
  }),
  '1',
)
const desk = openDesk('ness', '1', 'wren')
const inWater = placeBall(desk, [0, 150])

describe('a ball that the Rules are asked about', () => {
  it('lies over an edge and no lie is told for it, or is said to be unplayable or lost', () => {
    expect(needsRelief(desk.ball, hole)).toBe(false)
    expect(needsRelief(inWater.ball, hole)).toBe(true)
    expect(needsRelief(placeBall(desk, [60, 150]).ball, hole)).toBe(true)
    expect(needsRelief(setLie(inWater, 'rough').ball, hole)).toBe(false)
    const dry = placeBall(desk, [0, 100])
    expect(needsRelief(dry.ball, hole)).toBe(false)
    expect(needsRelief(sayOfBall(dry, 'in question').ball, hole)).toBe(true)
    expect(needsRelief(sayOfBall(dry, 'lost').ball, hole)).toBe(true)
  })

  it('is dropped on the spot of an option with its lie, and the penalty is counted', () => {
    const spot = { x_m: -21, y_m: 139, ground: 'rough', lie: 'rough', to_pin_m: 162 } as const
    const dropped = takeRelief(inWater, { spot, penalty: 1 })
    expect(dropped.ball).toEqual({ at: [-21, 139], lie: 'rough', said: null, from: [0, 0] })
    expect(dropped.format.played).toBe(1)
    expect(needsRelief(dropped.ball, hole)).toBe(false)
    const again = takeRelief(inWater, { spot: { ...spot, x_m: 0, y_m: 0, lie: 'tee' }, penalty: 1 })
    expect(again.ball).toBeNull()
    expect(again.format.played).toBe(1)
  })

  it('was struck from the markers, or from where it lay when that was said; both survive a reload', () => {
    expect(inWater.ball?.from).toEqual([0, 0])
    const second = placeBall(strikeFromHere(placeBall(desk, [3, 90])), [0, 150])
    expect(second.ball).toEqual({ at: [0, 150], lie: null, said: null, from: [3, 90] })
    let text = ''
    const place = {
      getItem: () => text,
      setItem: (_: string, kept: string) => {
        text = kept
      },
    }
    keepDesk(second, place)
    const stored = { courses: [{ id: 'ness' }], players: [{ id: 'wren' }] }
    expect(keptDesk(stored, place)).toEqual(second)
    text = text.replace('"said":null', '"said":"gone"')
    expect(keptDesk(stored, place)).toBeNull()
  })
})
