/**
 * Distribution of the sum of independent whole numbers: `chances[i]` is the chance of `i`. The sum of none is surely 0.
 * Not meant for more than some hundreds of outcomes: every pair is multiplied.
 */
export function convolve(distributions: readonly (readonly number[])[]): number[] {
  return distributions.reduce<number[]>(
    (sum, one) => {
      const next = new Array<number>(Math.max(1, sum.length + one.length - 1)).fill(0)
      for (const [value, chance] of sum.entries())
        for (const [more, share] of one.entries())
          next[value + more] = (next[value + more] as number) + chance * share
      return next
    },
    [1],
  )
}
