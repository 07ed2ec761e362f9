import type { Finishes } from '../planning/questions.ts'

/** Shares of finishes by ground, as in a plan's outcomes. */
export function finishShares(finishes: Finishes): Record<string, number> {
  const shares: Record<string, number> = {}
  for (const [index, ground] of finishes.ground.entries())
    shares[ground] = (shares[ground] ?? 0) + (finishes.weight[index] ?? 0)
  return shares
}
