import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { cardLengths } from '#golf/course/card-lengths.ts'
import { checkCourse } from '#golf/course/check-course.ts'
import type { Course } from '#golf/course/course.ts'
import type { Point } from '#numbers/geometry/point.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { parseHoleTable } from './hole-table.ts'
import { BLANK_ROW, encodeTypedTable, parseTypedTable } from './typed-hole-table.ts'

const TYPED = `hole,what,side,from_yd,to_yd,near_yd,far_yd,note
7,tee,,0,,,,"white, card 364 yd"
7,tee,,30,,,,red
7,bend,left,240,,,,20 deg
7,fairway,,180,340,,34,
7,bunker,left,225,245,14,24,the pit
7,lava,left,abc,,,,
7,green,,350,378,,26,"par 4, index 3"
8,green,,150,170,,20,par 3
`

function courseOf(text: string): Course {
  const reading = parseHoleTable(text, 'typed.csv')
  return assembleCourse(reading.features, reading).course
}

const yards = (points: readonly (readonly [number, number])[]): Point[] =>
  points.map(([beside, along]) => [beside * METRES_PER_YARD, along * METRES_PER_YARD])

describe('a typed hole table', () => {
  it('is the same text and the same features again, with every cell that cannot be read', () => {
    const typed = parseTypedTable(TYPED, 'typed.csv')
    expect(typed.unit).toBe('yd')
    expect(typed.holes.map(({ ref, par, index, rows }) => [ref, par, index, rows.length])).toEqual([
      ['7', '4', '3', 7],
      ['8', '3', '', 1],
    ])
    expect(typed.holes[0]!.rows[0]).toEqual({
      ...BLANK_ROW,
      what: 'tee',
      from: '0',
      to: '364',
      note: 'white',
    })
    expect(typed.holes[0]!.rows[2]).toMatchObject({ what: 'bend', side: 'left', from: '240', to: '20' })
    expect(typed.holes[0]!.rows[5]).toMatchObject({ what: 'lava', from: 'abc' })
    const text = encodeTypedTable(typed)
    expect(parseTypedTable(text, 'typed.csv')).toEqual(typed)
    expect(parseHoleTable(text, 'typed.csv').features).toEqual(parseHoleTable(TYPED, 'typed.csv').features)
  })

  it('leaves blank rows out and gives every other a line in its order', () => {
    const typed = parseTypedTable(TYPED, 'typed.csv')
    const [first, second] = typed.holes
    const gaps = {
      ...first!,
      rows: [BLANK_ROW, ...first!.rows.slice(0, 1), BLANK_ROW, ...first!.rows.slice(1)],
    }
    expect(encodeTypedTable({ ...typed, holes: [gaps, second!] })).toBe(encodeTypedTable(typed))
    expect(encodeTypedTable({ unit: 'm', holes: [{ ref: '1', par: '4', index: '', rows: [] }] })).toBe(
      'hole,what,side,from_m,to_m,near_m,far_m,note\n',
    )
  })

  it('takes columns of two units into the first', () => {
    const mixed = TYPED.replace('near_yd,far_yd', 'near_m,far_m')
    const typed = parseTypedTable(mixed, 'typed.csv')
    expect(typed.holes[0]!.rows[4]).toMatchObject({ from: '225', near: '15.31', far: '26.25' })
  })

  it('keeps decimal commas, quotation marks and line breaks in cells', () => {
    const row = {
      ...BLANK_ROW,
      what: 'bunker',
      from: '225,5',
      to: '240',
      near: '3',
      far: '9',
      note: 'the "pit"',
    }
    const table = { unit: 'm' as const, holes: [{ ref: '1', par: '', index: '', rows: [row] }] }
    expect(parseTypedTable(encodeTypedTable(table), 'x.csv').holes[0]!.rows).toEqual([row])
  })

  it('says whether the line closes with the card of each tee', () => {
    const course = courseOf(TYPED)
    const hole = course.holes.find(({ ref }) => ref === '7')!
    const [white] = cardLengths(course, hole)
    expect(white).toMatchObject({ tee: 'white', isClosed: true })
    expect(white!.cardMetres).toBeCloseTo(364 * METRES_PER_YARD, 9)
    expect(white!.measured[0]).toBeCloseTo(364 * METRES_PER_YARD, 5)
    const open = courseOf(TYPED.replace('card 364', 'card 384'))
    expect(cardLengths(open, open.holes.find(({ ref }) => ref === '7')!)[0]!.isClosed).toBe(false)
    const said = checkCourse(open).filter(({ code }) => code === 'MAR-COURSE-022')
    expect(said.map(({ place }) => place)).toEqual(['hole 7'])
  })
})

describe('an outline in a hole table', () => {
  const HEADER = 'hole,what,side,from_yd,to_yd,near_yd,far_yd,note\n'
  const GREEN = '7,green,,350,378,,26,par 4\n'

  it('is the ground that the four distances describe', () => {
    const typed = courseOf(`${HEADER}7,bunker,left,225,245,14,24,the pit\n${GREEN}`)
    const traced = courseOf(
      `${HEADER}7,bunker,,,,,,"outline 225:-14 245:-14 245:-24 225:-24, the pit"\n${GREEN}`,
    )
    const corners = (course: Course): Point[] =>
      [...course.areas.find(({ ground }) => ground === 'bunker')!.polygon[0]!].sort(
        (a, b) => a[0] - b[0] || a[1] - b[1],
      )
    for (const [index, [x, y]] of corners(traced).entries()) {
      expect(x).toBeCloseTo(corners(typed)[index]![0], 6)
      expect(y).toBeCloseTo(corners(typed)[index]![1], 6)
    }
    expect(traced.areas.map(({ id, ground, name, holes }) => ({ id, ground, name, holes }))).toEqual(
      typed.areas.map(({ id, ground, name, holes }) => ({ id, ground, name, holes })),
    )
  })

  it('of a green ends the hole in its middle, bends counted', () => {
    const straight = courseOf(`${HEADER}7,green,,,,,,"par 4, outline 350:-9 378:-9 378:17 350:17"\n`)
    const [end] = straight.holes[0]!.line.slice(-1)
    const [expected] = yards([[4, 364]])
    expect(end![0]).toBeCloseTo(expected![0], 6)
    expect(end![1]).toBeCloseTo(expected![1], 6)
    const bent = courseOf(
      `${HEADER}7,bend,right,200,,,,60 deg\n7,bend,left,500,,,,10 deg\n7,green,,,,,,"par 4, outline 240:90 260:90 260:70 240:70"\n`,
    )
    // The second bend lies behind the green, so the line has one.
    expect(bent.holes[0]!.line).toHaveLength(3)
    expect(bent.holes[0]!.line[1]![1]).toBeCloseTo(200 * METRES_PER_YARD, 6)
    expect(bent.holes[0]!.line[2]![0]).toBeCloseTo(80 * METRES_PER_YARD, 6)
    expect(bent.holes[0]!.line[2]![1]).toBeCloseTo(250 * METRES_PER_YARD, 6)
  })

  it('goes through the typed table and back to the centimetre', () => {
    const outline = yards([
      [-14.125, 225.5],
      [-14, 245],
      [-24.3, 245],
    ])
    const hole = {
      ref: '7',
      par: '4',
      index: '',
      rows: [{ ...BLANK_ROW, what: 'bunker', outline, note: 'pit' }],
    }
    const back = parseTypedTable(encodeTypedTable({ unit: 'm', holes: [hole] }), 'x.csv').holes[0]!.rows[0]!
    expect(back.note).toBe('pit')
    for (const [index, [x, y]] of back.outline!.entries()) {
      expect(Math.abs(x - outline[index]![0])).toBeLessThanOrEqual(0.005 + 1e-9)
      expect(Math.abs(y - outline[index]![1])).toBeLessThanOrEqual(0.005 + 1e-9)
    }
  })

  it('of two corners is told so, and the word alone is a name', () => {
    const reading = parseHoleTable(`${HEADER}7,bunker,,,,,,outline 225:-14 245:-14\n${GREEN}`, 'x.csv')
    const { faults } = assembleCourse(reading.features, reading)
    expect(faults.filter(({ severity }) => severity === 'error')).toMatchObject([
      { code: 'MAR-IMPORT-019', place: 'line 2' },
    ])
    const named = courseOf(`${HEADER}7,heavy,left,100,200,20,30,outline of the old wall\n${GREEN}`)
    expect(named.areas.find(({ ground }) => ground === 'heavy')!.name).toBe('outline of the old wall')
  })
})
