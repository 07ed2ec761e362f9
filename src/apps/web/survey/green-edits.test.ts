import { describe, expect, it } from 'vitest'
import { assembleCourse } from '#golf/course/assemble-course.ts'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { greenSurvey } from '#golf/course/green-survey.ts'
import { holeFromCourse } from '#golf/course/hole-from-course.ts'
import { inventedPlayer } from '#golf/strategy/invented-hole.fixture.ts'
import { planHole } from '#golf/strategy/plan-hole.ts'
import { METRES_PER_YARD } from '#numbers/units/units.ts'
import { parseGeojson } from '#outside/formats/geojson.ts'
import { BLANK_GREEN, type TypedGreen } from '#outside/formats/green-note.ts'
import * as edits from './edits.ts'
import { greenSize } from './green-size.ts'
import { newSurvey, openHole, type Survey, type SurveyRow } from './survey.ts'
import { courseDocument, readHole } from './survey-reading.ts'

function sized(): Survey {
  const front = edits.setGreenSize(newSurvey('m', 0), 'front', 110)
  return edits.setGreenSize(edits.setGreenSize(front, 'depth', 28), 'width', 24)
}
const rowOf = (survey: Survey): SurveyRow => openHole(survey).rows[0]!

describe('the form of a green', () => {
  it('makes the row of a hole that has none, and moves and grows the one there is', () => {
    expect(rowOf(sized())).toMatchObject({ what: 'green', from: '110', to: '138', near: '', far: '24' })
    expect(rowOf(edits.setGreenSize(sized(), 'front', 120))).toMatchObject({ from: '120', to: '148' })
    const aside = edits.setCell(
      edits.setCell(sized(), rowOf(sized()).id, 'side', 'right'),
      rowOf(sized()).id,
      'near',
      '2',
    )
    expect(greenSize(rowOf(aside), 'm')).toEqual({ front: 110, depth: 28, width: 22 })
    expect(rowOf(edits.setGreenSize(aside, 'width', 30))).toMatchObject({
      side: 'right',
      near: '2',
      far: '32',
    })
  })

  it('keeps what else the note says, and turns lengths but no heights into the other unit', () => {
    const green: TypedGreen = {
      ...BLANK_GREEN,
      fall: '2',
      toward: 'left',
      tiers: [{ on: '9.144', rise: '40', over: '' }],
      heights: [{ on: 'x', beside: '-4.572', height: '12' }],
    }
    const named = edits.setCell(sized(), rowOf(sized()).id, 'note', 'the shelf')
    const typed = edits.setGreenSlope(named, green)
    expect(rowOf(typed).note).toBe('the shelf, fall 2 toward left, tier 9.144:40:?, heights x:-4.572:12')
    expect(rowOf(edits.setUnit(typed, 'yd')).note).toBe(
      'the shelf, fall 2 toward left, tier 10:40:?, heights x:-5:12',
    )
    expect(rowOf(edits.setGreenSlope(typed, BLANK_GREEN)).note).toBe('the shelf')
  })

  it('puts what is wrong at its row, and such a survey is not kept', () => {
    const wrong = edits.setGreenSlope(
      { ...sized(), name: 'Shelf' },
      { ...BLANK_GREEN, fall: 'steep', toward: 'left' },
    )
    const { rowFaults, hole } = readHole(openHole(wrong), 'm')
    expect(rowFaults.get(rowOf(wrong).id)?.map(({ code }) => code)).toContain('MAR-IMPORT-039')
    expect(hole?.green).not.toBeNull()
    expect(() => courseDocument(wrong)).toThrow(/“fall” is “steep”/)
  })

  it('draws the heights where they were measured, though the hole is played from beside its line', () => {
    // A plane that falls 3 per cent to the right of the line of the table.
    const heights = [
      [2, -8],
      [2, 8],
      [26, -8],
      [25, 7],
    ].map(([on = 0, beside = 0]) => ({
      on: String(on),
      beside: String(beside),
      height: String(100 - 3 * beside),
    }))
    const tee = edits.addRows(sized(), [
      { ...rowOf(sized()), what: 'tee', from: '0', to: '', side: 'left', near: '30', far: '' },
    ])
    const { hole } = readHole(openHole(edits.setGreenSlope(tee, { ...BLANK_GREEN, heights })), 'm')
    expect(hole?.bearingDegrees).toBe(0)
    expect(greenSurvey(hole!)).toMatchObject({ source: 'spot-heights', spots: 4 })
    expect(hole?.greenFallPercent).toBeCloseTo(3, 6)
    expect(hole?.greenFallTowardDegrees).toBeCloseTo(90, 3)
  })

  it('is what the plan plays on: a chip runs further on a green that falls away', () => {
    const player = inventedPlayer([{ name: '9-iron', carry_m: 105 }])
    const run = (toward: string): number => {
      const survey = edits.setGreenSlope({ ...sized(), name: 'Shelf' }, { ...BLANK_GREEN, fall: '3', toward })
      const { features, collection } = parseGeojson(courseDocument(survey), 'kept')
      const hole = holeFromCourse(assembleCourse(features, { collection }).course, '1')
      const plan = planHole({
        courseName: 'Shelf',
        hole,
        player,
        day: REFERENCE_DAY,
        from: [0, 100],
        lie: 'fairway',
        club: '9-iron',
        isQuick: true,
      })
      const option = plan.options.find(({ club }) => club === '9-iron')
      return option?.short?.roll_m ?? Number.NaN
    }
    expect(run('back')).toBeGreaterThan(1.15 * run('front'))
  })
})

it('counts a yard of a green as 0.9144 m', () => {
  expect(greenSize({ ...rowOf(sized()), from: '100', to: '130', far: '26' }, 'yd')).toEqual({
    front: 100 * METRES_PER_YARD,
    depth: 130 * METRES_PER_YARD - 100 * METRES_PER_YARD,
    width: 26 * METRES_PER_YARD,
  })
})
