import type { HoleRecap, StrokeSplit } from './recap.ts'

/** A stroke that was struck so much worse than expected, for tests. */
export function struckStroke(part: StrokeSplit['part'], over: Partial<StrokeSplit> = {}): StrokeSplit {
  const from = { point: [0, 0], lie: 'tee', ground: 'tee' } as const
  return {
    ...{ number: 1, count: 1, used: 1, penalty: 0, club: null, from, pinMetres: 100, to: null },
    ...{ before: 1, chosen: 1, after: 0, choice: null, plan: null, unsplit: [] },
    ...{ decision: 0, execution: 0, luck: 0, executionVariance: null },
    part,
    ...over,
  }
}

/** A hole of such strokes, with what they add up to. */
export function struckHole(strokes: readonly StrokeSplit[]): HoleRecap {
  const sum = (of: (one: StrokeSplit) => number): number => strokes.reduce((all, one) => all + of(one), 0)
  return {
    ...{ ref: '1', par: 4, score: 4, value: 4, addsUp: 0, faults: [], strokes },
    decision: sum(({ decision }) => decision),
    execution: sum(({ execution }) => execution),
    luck: sum(({ luck }) => luck),
  }
}
