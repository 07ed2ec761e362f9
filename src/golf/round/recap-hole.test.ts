import { beforeAll, describe, expect, it } from 'vitest'
import { holeGround, holeModel } from '#golf/strategy/hole-model.ts'
import { area, box, CALM_DAY, inventedHole } from '#golf/strategy/invented-hole.fixture.ts'
import { planHole } from '#golf/strategy/plan-hole.ts'
import { QUICK } from '#golf/strategy/settings.ts'
import { smallHole, threeClubs } from '#golf/strategy/small-hole.fixture.ts'
import { solveHole } from '#golf/strategy/solve-hole.ts'
import { feetToMetres } from '#numbers/units/units.ts'
import type { RecapHole } from './judge-choice.ts'
import type { HoleRecap } from './recap.ts'
import { recapHole, splitHole } from './recap-hole.ts'
import type { RoundHole, RoundStroke } from './round.ts'
import { unknownStroke } from './unknown-stroke.ts'

const hole = smallHole(230, 40)
const player = threeClubs()

let solved: RecapHole
beforeAll(() => {
  const model = holeModel(holeGround(hole, QUICK.cellMetres), player, CALM_DAY)
  const { problem, values } = solveHole(model, QUICK.quadrature, QUICK.aboutPinDegrees)
  solved = {
    model,
    values,
    shots: problem.shots,
    quadrature: { good: 24, mishit: 8 },
    lineStepDegrees: 5,
  }
})

const logged = (strokes: readonly Partial<RoundStroke>[], rest: Partial<RoundHole> = {}): RoundHole => ({
  ref: hole.ref,
  strokes: strokes.map((stroke, index) => ({ ...unknownStroke(`stroke ${index + 1}`), ...stroke })),
  putts: 0,
  firstPuttMetres: null,
  isPickedUp: false,
  place: 'line 1',
  ...rest,
})
const xy = (x: number, y: number): RoundStroke['finish'] => ({ x, y })

function expectSums(recap: HoleRecap): void {
  expect(Math.abs(recap.addsUp)).toBeLessThan(1e-9)
  expect(Math.abs(recap.score - recap.value - recap.decision - recap.execution - recap.luck)).toBeLessThan(
    1e-9,
  )
  for (const stroke of recap.strokes) {
    expect(stroke.decision).toBeGreaterThanOrEqual(0)
    const total = stroke.decision + stroke.execution + stroke.luck
    expect(Math.abs(stroke.used + stroke.after - stroke.before - total)).toBeLessThan(1e-9)
  }
}

describe('the split of a hole', () => {
  it('expects from the tee what the plan of that day says, to the last digit', () => {
    const open = inventedHole(170, [area('fairway', box(-14, 14, 30, 150))])
    const quick = { hole: open, player, day: CALM_DAY, isQuick: true }
    const strokes = [
      { club: '8-iron', finish: xy(0, 120) },
      { club: 'sand-wedge', finish: xy(0, 165) },
    ]
    const recap = recapHole({ ...quick, logged: logged(strokes, { putts: 2 }) })
    expect(recap.value).toBeCloseTo(planHole({ ...quick, courseName: 'test' }).value.strokes, 9)
    expectSums(recap)
  })

  it('does not call a holed 12-ft putt skill: most of what it gains is luck', () => {
    const { strokes } = splitHole(
      solved,
      logged(
        [
          { club: '8-iron', finish: xy(0, 120) },
          { club: '8-iron', finish: { letter: 'g', leftMetres: feetToMetres(12) } },
        ],
        {
          putts: 1,
        },
      ),
    )
    const putt = strokes.at(-1)
    expect(putt).toMatchObject({ part: 'putting', decision: 0, used: 1, unsplit: [] })
    const gained = (putt?.before as number) - 1
    expect(gained).toBeGreaterThan(0.5)
    expect(-(putt?.luck as number)).toBeGreaterThan(gained / 2)
  })

  it('keeps the cost of a bad choice when the score is good', () => {
    const { score, strokes } = splitHole(
      solved,
      logged([
        { club: 'sand-wedge', finish: xy(0, 60) },
        { club: '8-iron', finish: xy(0, 185) },
        { club: 'sand-wedge' },
      ]),
    )
    expect(score).toBe(3)
    expect(strokes[0]?.decision).toBeGreaterThan(0.2)
    expect(strokes[2]?.execution).toBeLessThan(-1)
  })

  it('counts the club that was written where the plan has another than the one said to be its', () => {
    const end: Partial<RoundStroke>[] = [{ club: '8-iron', finish: xy(0, 185) }, { club: 'sand-wedge' }]
    const first = { club: 'sand-wedge', finish: xy(0, 60) }
    const said = splitHole(solved, logged([{ ...first, isAsPlanned: true }, ...end]))
    const plain = splitHole(solved, logged([first, ...end]))
    expect(said.strokes).toEqual(plain.strokes)
    expect(plain.faults).toEqual([])
    expect(said.faults).toMatchObject([
      { severity: 'warning', code: 'MAR-ROUND-012', place: `hole ${hole.ref}, stroke 1` },
    ])
    const plan = plain.strokes[0]?.plan ?? ''
    expect(splitHole(solved, logged([{ ...first, club: plan, isAsPlanned: true }, ...end])).faults).toEqual(
      [],
    )
  })

  it('names luck in a strike on the edge: a ball in the water among balls that stay dry', () => {
    const wet = splitHole(
      solved,
      logged(
        [
          { club: '8-iron', aimOffsetMetres: 0, finish: { letter: 'p', leftMetres: 100 } },
          { club: '8-iron', finish: xy(0, 225) },
        ],
        {
          putts: 2,
        },
      ),
    )
    expectSums(wet)
    expect(wet.score).toBe(5)
    expect(wet.strokes[0]).toMatchObject({ penalty: 1, used: 2 })
  })

  it('joins strokes whose places are not known, and says so', () => {
    const recap = splitHole(
      solved,
      logged([{ club: '8-iron' }, { club: 'pitching-wedge', finish: xy(0, 200) }, { finish: xy(0, 228) }], {
        putts: 1,
      }),
    )
    expectSums(recap)
    expect(recap.strokes.map(({ number, count }) => [number, count])).toEqual([
      [1, 2],
      [3, 1],
      [4, 1],
    ])
    expect(recap.strokes[0]?.unsplit).toEqual(expect.arrayContaining(['places', 'luck', 'line']))
    expect(recap.strokes[1]).toMatchObject({ club: null, chosen: null, decision: 0 })
    expect(recap.strokes[1]?.unsplit).toEqual(expect.arrayContaining(['club', 'luck']))
  })

  it('plays a ball out of bounds again from where it was, with one penalty', () => {
    const recap = splitHole(
      solved,
      logged(
        [
          { club: '8-iron', finish: { letter: 'o', leftMetres: null } },
          { club: '8-iron', finish: xy(0, 225) },
        ],
        {
          putts: 2,
        },
      ),
    )
    expectSums(recap)
    expect(recap.score).toBe(5)
    expect(recap.strokes[1]?.from).toEqual(recap.strokes[0]?.from)
    expect(recap.strokes[0]?.after).toBeCloseTo(recap.strokes[0]?.before as number, 9)
  })

  it('drops a ball that was logged in the water at the cheapest place, and says so', () => {
    const recap = splitHole(
      solved,
      logged([{ club: '8-iron', finish: xy(18, 180), penalty: 1 }, { finish: xy(0, 225) }], { putts: 2 }),
    )
    expectSums(recap)
    expect(recap.faults).toMatchObject([{ code: 'MAR-ROUND-012', severity: 'warning' }])
    expect(recap.strokes[1]?.from.ground).not.toBe('penalty-red')
  })

  it('leaves out a hole that was not played out', () => {
    const ask = (hole: RoundHole): unknown =>
      recapHole({ hole: smallHole(230, 40), player, day: CALM_DAY, logged: hole })
    expect(() => ask(logged([{ club: '8-iron' }], { isPickedUp: true }))).toThrow(/picked up/)
    expect(() => ask(logged([], { putts: 2 }))).toThrow(/only its putts/)
  })
})
