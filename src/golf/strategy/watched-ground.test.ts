import { describe, expect, it } from 'vitest'
import { REFERENCE_DAY } from '#golf/course/day.ts'
import { type HoleGround, holeGround, holeModel } from './hole-model.ts'
import { holeProblem } from './hole-problem.ts'
import { inventedHole, inventedPlayer } from './invented-hole.fixture.ts'
import { keptGround } from './kept-ground.ts'
import { type PlanQuestion, planHole } from './plan-hole.ts'
import type { RestTable } from './rest-table.ts'
import { watchedGround } from './watched-ground.ts'

describe('watchedGround', () => {
  const question: PlanQuestion = {
    courseName: 'One Hole',
    hole: inventedHole(95),
    player: inventedPlayer([{ name: '9-iron', carry_m: 95 }]),
    day: REFERENCE_DAY,
    cellMetres: 16,
    quadrature: { good: 4, mishit: 2 },
    draws: 1,
    flips: false,
  }

  it('lets a plan be ended at any time it looks up, and plans the same on the same ground afterwards', () => {
    const layGround = keptGround()
    let looks = 0
    const before = planHole(question, (...asked) => watchedGround(layGround(...asked), () => looks++))
    expect(looks).toBeGreaterThan(100)
    const fresh = keptGround()
    for (const most of [0, Math.floor(looks / 3), looks - 1]) {
      let left = most
      const lookUp = (): void => {
        if (left === 0) throw new Error('stopped')
        left -= 1
      }
      expect(() => planHole(question, (...asked) => watchedGround(fresh(...asked), lookUp))).toThrow(
        'stopped',
      )
    }
    expect(planHole(question, fresh)).toEqual(before)
  })

  it('looks up before every table that it fills', () => {
    let [followed, most] = [0, 0]
    const laid = holeGround(question.hole, question.cellMetres)
    const tables = new WeakMap<RestTable, RestTable>()
    const counted = (table: RestTable): RestTable => {
      const followAll = (index: number): number => {
        followed += 1
        most = Math.max(most, followed)
        return table.followAll(index)
      }
      const known = tables.get(table) ?? { ...table, followAll }
      tables.set(table, known)
      return known
    }
    const restFor: HoleGround['restFor'] = (rough) => {
      const rest = laid.restFor(rough)
      return {
        ...rest,
        tablesFor: (metres) => (heading) => counted(rest.tablesFor(metres)(heading)),
        greenTablesFor: (runs) => (heading) => counted(rest.greenTablesFor(runs)(heading)),
      }
    }
    const ground = watchedGround({ ...laid, restFor }, () => {
      followed = 0
    })
    const problem = holeProblem(holeModel(ground, question.player, question.day), question)
    problem.improve(problem.startValues())
    expect(most).toBeGreaterThan(0)
    expect(most).toBeLessThanOrEqual(laid.places.count)
  })

  it('looks up for every place when all is laid out and only weighed again', () => {
    let looks = 0
    const ground = watchedGround(holeGround(question.hole, question.cellMetres), () => looks++)
    const problem = holeProblem(holeModel(ground, question.player, question.day), question)
    const values = problem.startValues()
    problem.improve(values)
    looks = 0
    problem.improve(values)
    expect(looks).toBeGreaterThan(ground.states.order.length)
  })
})
