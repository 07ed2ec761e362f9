import { REFERENCE_DAY } from '#golf/course/day.ts'
import type { Hole } from '#golf/course/hole.ts'
import { inventedHole, inventedPlayer } from '#golf/strategy/invented-hole.fixture.ts'
import type { NextShot, Plan, PlanOption } from '#golf/strategy/plan.ts'
import type { Letters } from '../draw/letters.ts'
import { rulerOf } from '../draw/ruler.ts'
import type { BookFacts } from './book-facts.ts'
import type { BookHole } from './planned-hole.ts'

/** An option of a plan of which only what pages read is of interest. */
export function inventedOption(club: string, more: Partial<PlanOption> = {}): PlanOption {
  return {
    club,
    shape: 'stock',
    aim: { heading_deg: 0, offset_m: 0, at_m: 180, start_deg: 1.2 },
    total_m: 180,
    strokes: 4.6,
    cost: 0,
    cost_low: 0,
    cost_high: 0,
    best_in_draws: 0.6,
    outcomes: {
      fairway: 0.5,
      'first-cut': 0,
      rough: 0.4,
      heavy: 0,
      bunker: 0.05,
      trees: 0,
      scrub: 0,
      penalty: 0.05,
      out: 0,
      green: 0,
      path: 0,
      fringe: 0,
      tee: 0,
    },
    leave_m: { p10: 120, p50: 140, p90: 180 },
    misses: { left: 0.4, right: 0.02 },
    trees: { way: 'open', growth: null, caught: 0, gap: null },
    scores: { '4': 0.4, '5': 0.6 },
    aimCosts: [],
    ...more,
  }
}

const NEXT: NextShot = {
  from: { x_m: 0, y_m: 180 },
  lie: 'fairway',
  club: '7-iron',
  shape: 'stock',
  number: 'back',
  distance_m: 139,
  plays_m: 146,
}

/** A plan from the tee of a hole. */
export function inventedPlan(hole: Hole, more: Partial<Plan> = {}): Plan {
  return {
    schema: 'plan/1',
    course: 'Invented links',
    hole: { ref: hole.ref, par: hole.par, length_m: hole.lengthMetres, tee: hole.teeName },
    player: 'Invented player',
    situation: { x_m: 0, y_m: 0, lie: 'tee', objective: 'strokes' },
    value: { strokes: 4.6, low: 4.5, high: 4.7 },
    plays: null,
    verdict: 'clear',
    options: [inventedOption('5-wood')],
    flips: [],
    avoid: { what: 'water', side: 'left' },
    // biome-ignore lint/suspicious/noThenProperty: `then` is promised by plan/1, and no plan is ever awaited.
    then: [NEXT, { ...NEXT, lie: 'rough', club: '6-iron' }],
    overruled: null,
    format: null,
    sentence: 'Five-wood: start it on the hole line; the safe side is right, away from the water.',
    cautions: ['Thunder or lightning: stop at once.'],
    guesses: [],
    method: {
      cell_m: 3,
      states: 0,
      quadrature: 0,
      refined_quadrature: null,
      sweeps: 0,
      residual: 0,
      tolerance: 0,
      converged: true,
      draws: 0,
      milliseconds: 0,
    },
    ...more,
  }
}

/** Eighteen holes of one kind, numbered. */
export function inventedHoles(count: number, more: Partial<Hole> = {}, plan: Partial<Plan> = {}): BookHole[] {
  return Array.from({ length: count }, (_, index) => {
    const hole: Hole = { ...inventedHole(330), ref: String(index + 1), strokeIndex: index + 1, ...more }
    return { hole, plan: inventedPlan(hole, plan), missing: '', received: 1 }
  })
}

const INVENTED = inventedPlayer([
  { name: 'driver', carry_m: 205 },
  { name: '5-wood', carry_m: 178 },
  { name: '7-iron', carry_m: 139 },
  { name: 'pitching-wedge', carry_m: 105 },
])

/** A book of these holes. */
export function inventedFacts(
  letters: Letters,
  holes: readonly BookHole[],
  more: Partial<BookFacts> = {},
): BookFacts {
  return {
    course: 'Invented links',
    playerName: 'Invented player',
    player: INVENTED,
    day: REFERENCE_DAY,
    holes,
    localRules: [],
    purpose: 'practice',
    ruler: rulerOf('yards'),
    paper: 'a4',
    hasFolds: true,
    credit: null,
    letters,
    ...more,
  }
}
