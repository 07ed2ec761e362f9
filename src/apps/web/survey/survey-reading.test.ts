import { describe, expect, it } from 'vitest'
import { polygonBounds } from '#numbers/geometry/polygon.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { parseTypedTable } from '#outside/formats/typed-hole-table.ts'
import { newSurvey, openHole, type Survey, surveyOf } from './survey.ts'
import { courseDocument, readHole, tableText, unplacedHoles } from './survey-reading.ts'

const EIGHT_ROWS = `hole,what,side,from_yd,to_yd,near_yd,far_yd,note
7,tee,left,0,,3,,"white, card 364 yd"
7,fairway,,180,340,,34,
7,bunker,left,225,245,14,24,
7,water-red,right,240,330,22,60,the mere
7,trees,left,100,300,30,80,
7,out,right,,,75,,
7,ditch-yellow,across,300,302,,,
7,green,right,350,378,2,28,"par 4, index 3"
`

function surveyed(text: string): Survey {
  const { unit, holes } = parseTypedTable(text, 'typed.csv')
  return surveyOf('Sounding Links', unit, holes, null, 0)
}

const errors = (faults: readonly { severity: string; code: string }[]): string[] =>
  faults.filter(({ severity }) => severity === 'error').map(({ code }) => code)

describe('unplacedHoles', () => {
  it('names holes without a start only where another has one', () => {
    const more = EIGHT_ROWS.split('\n').slice(1).join('\n').replaceAll('7,', '8,')
    expect(unplacedHoles(surveyed(EIGHT_ROWS + more))).toEqual([])
    expect(unplacedHoles(surveyed(`${EIGHT_ROWS}7,start,,,,,,55.9412 -1.8031 toward 43\n${more}`))).toEqual([
      '8',
    ])
  })
})

describe('readHole', () => {
  it('draws every row where it is typed, though the hole is played from beside the line', () => {
    const survey = surveyed(EIGHT_ROWS)
    const { hole, cards, rowFaults, rowOfArea } = readHole(openHole(survey), 'yd')
    const bunker = hole!.areas.find(({ ground }) => ground === 'bunker')!
    const box = polygonBounds(bunker.polygon)
    expect(box.minX).toBeCloseTo(-24 * METRES_PER_YARD, 5)
    expect(box.maxY).toBeCloseTo(245 * METRES_PER_YARD, 5)
    expect(openHole(survey).rows.find(({ id }) => id === rowOfArea.get(bunker.id))!.what).toBe('bunker')
    expect(cards).toMatchObject([{ tee: 'white', isClosed: true }])
    expect([...rowFaults.values()].flat().filter(({ severity }) => severity === 'error')).toEqual([])
  })

  it('grows with its rows, and says where it takes the end while there is no green', () => {
    const lines = EIGHT_ROWS.trim().split('\n')
    const bunkers = new Set<string>()
    const grounds = lines.map((_, count) => {
      const rows = lines.slice(0, count + 1).join('\n')
      const survey = count === 0 ? newSurvey('yd', 0) : surveyed(rows)
      const { hole, provisionalMetres, rowFaults, holeFaults } = readHole(openHole(survey), 'yd')
      expect(errors([...rowFaults.values(), holeFaults].flat())).toEqual([])
      const bunker = hole!.areas.find(({ ground }) => ground === 'bunker')
      if (bunker !== undefined) bunkers.add(polygonBounds(bunker.polygon).minY.toFixed(6))
      return [hole!.areas.length, provisionalMetres === null ? null : Math.round(provisionalMetres)]
    })
    expect([...bunkers]).toEqual([(225 * METRES_PER_YARD).toFixed(6)])
    // The provisional green is drawn as well; a tee row puts markers and ground.
    expect(grounds.map(([count]) => count)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 8])
    expect(grounds.map(([, metres]) => metres)).toEqual([350, ...Array(7).fill(333), null])
  })

  it('puts each fault at its row and loses none of the others', () => {
    const survey = surveyed(EIGHT_ROWS.replace('225,245,14,24', '245,225,14,24').replace('fairway', 'fairwy'))
    const { rowFaults, hole } = readHole(openHole(survey), 'yd')
    const rows = openHole(survey).rows
    expect(errors(rowFaults.get(rows[1]!.id)!)).toEqual(['MAR-IMPORT-018'])
    expect(errors(rowFaults.get(rows[2]!.id)!)).toEqual(['MAR-IMPORT-019'])
    expect(rowFaults.get(rows[2]!.id)![0]!.advice).not.toBe('')
    expect(hole!.areas.map(({ ground }) => ground).sort()).toEqual(
      ['green', 'out', 'penalty-red', 'penalty-yellow', 'tee', 'trees'].sort(),
    )
  })

  it('says by how much a length does not close', () => {
    const { cards, holeFaults } = readHole(
      openHole(surveyed(EIGHT_ROWS.replace('card 364', 'card 400'))),
      'yd',
    )
    expect(cards[0]).toMatchObject({ isClosed: false })
    expect(holeFaults.map(({ code }) => code)).toContain('MAR-COURSE-022')
  })
})

describe('courseDocument', () => {
  it('is a course file with the table in it', () => {
    const survey = surveyed(EIGHT_ROWS)
    const document = JSON.parse(courseDocument(survey))
    expect(document.marram.name).toBe('Sounding Links')
    expect(document['marram:hole_table']).toBe(tableText(survey))
    expect(document.features.length).toBeGreaterThan(8)
  })

  it('is refused while a row is wrong', () => {
    expect(() => courseDocument(surveyed(EIGHT_ROWS.replace('fairway', 'fairwy')))).toThrow(/fairwy/)
    expect(() => courseDocument(newSurvey('m', 0))).toThrow(/no rows/)
  })
})
