import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { measureHole } from '#golf/course/measure-hole.ts'
import { parseHoleTable } from '#outside/formats/hole-table.ts'
import { readLineStart } from '#outside/formats/line-start.ts'
import { cellHint, noteHint } from './row-kinds.ts'

const row = (what: string, side = '') => ({
  what,
  side,
  from: '',
  to: '',
  near: '',
  far: '',
  note: '',
  outline: null,
})
const HOLE = 'hole,what,side,from_m,to_m,near_m,far_m,note'

function measured(...rows: readonly string[]) {
  const reading = parseHoleTable([HOLE, ...rows].join('\n'), 'typed.csv')
  return measureHole(holeFromCourse(assembleCourse(reading.features, reading).course, '1'))
}

/** What stands in a blank cell must be what the reader of tables makes of it. */
describe('cellHint', () => {
  it('says front and back where a green is typed, and the reader takes them so', () => {
    expect(['from', 'to'].map((cell) => cellHint(row('green'), cell as 'from'))).toEqual(['front', 'back'])
    const { green } = measured('1,green,across,300,325,,20,par 4')
    expect(green?.frontMetres).toBeCloseTo(300, 0)
    expect(green?.backMetres).toBeCloseTo(325, 0)
  })

  it('says width for the far of what lies right across, which is its whole width', () => {
    expect(cellHint(row('bunker', 'across'), 'far')).toBe('width')
    expect(cellHint(row('bunker', 'left'), 'far')).toBe('')
    const green = '1,green,across,300,325,,20,par 4'
    const [bunker] = measured('1,bunker,across,200,210,,30,', green).hazards
    // The same ground as 15 to the left and 15 to the right.
    expect(bunker).toEqual(measured('1,bunker,across,200,210,-15,15,', green).hazards[0])
  })

  it('says 0 for the markers of a tee, and a tee left blank stands there', () => {
    expect(cellHint(row('tee'), 'from')).toBe('0')
    const green = '1,green,across,300,325,,20,par 4'
    expect(measured('1,tee,,,,,,white', green).lengthMetres).toBeCloseTo(
      measured('1,tee,,0,,,,white', green).lengthMetres,
      9,
    )
  })
})

describe('noteHint', () => {
  it('shows a start as the reader takes one', () => {
    expect(readLineStart(noteHint({ what: 'start' }))).toEqual({
      latitude: 55.9412,
      longitude: -1.8031,
      headingDegrees: 43,
    })
  })
})
