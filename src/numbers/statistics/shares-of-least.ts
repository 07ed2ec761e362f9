/**
 * For each of several independent whole numbers, its share of being the least: the chance of being so alone, and of a
 * tie its even part. `chances[i]` of a distribution is the chance of `i`; each adds up to 1, and so do the answers.
 */
export function sharesOfLeast(distributions: readonly (readonly number[])[]): number[] {
  const longest = Math.max(0, ...distributions.map((one) => one.length))
  const above = distributions.map((one) => chancesAbove(one, longest))
  return distributions.map((own, player) => {
    let share = 0
    for (const [value, chance] of own.entries()) {
      if (chance === 0) continue
      // Chances that so many of the others have the same value while all the rest have more.
      let ties = [1]
      for (const [other, theirs] of distributions.entries())
        if (other !== player) ties = withOneMore(ties, theirs[value] ?? 0, above[other]?.[value] ?? 0)
      for (const [tied, together] of ties.entries()) share += (chance * together) / (tied + 1)
    }
    return share
  })
}

function withOneMore(ties: readonly number[], same: number, more: number): number[] {
  return Array.from(
    { length: ties.length + 1 },
    (_, tied) => (ties[tied] ?? 0) * more + (ties[tied - 1] ?? 0) * same,
  )
}

/** Chance of more than each value. */
function chancesAbove(distribution: readonly number[], length: number): number[] {
  const above = new Array<number>(length).fill(0)
  let sum = 0
  for (let value = length - 1; value >= 0; value--) {
    above[value] = sum
    sum += distribution[value] ?? 0
  }
  return above
}
