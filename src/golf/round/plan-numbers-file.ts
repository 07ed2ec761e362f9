/** Numbers that plans stood on, as they stand in a file: `player/1` and `day/1` inside it. */
export type PlanNumbersFile = Readonly<Record<string, unknown>>

/** The numbers in the object of a round or of a card; `null` = there are none. */
export function planNumbersIn(file: object): PlanNumbersFile | null {
  const { plan_numbers: found } = file as { readonly plan_numbers?: unknown }
  return typeof found === 'object' && found !== null && !Array.isArray(found)
    ? (found as PlanNumbersFile)
    : null
}
