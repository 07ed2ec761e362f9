/** What is known of one club: its place on the ladder and how far the known number lies from the prior's there. */
export interface KnownRung {
  /** Logarithm of the ladder's carry. */
  readonly rung: number
  readonly correction: number
}

/** Correction at `rung`: linear between the known neighbours, flat beyond the last, 0 when nothing is known. */
export function neighbourCorrection(known: readonly KnownRung[], rung: number): number {
  let shorter: KnownRung | undefined
  let longer: KnownRung | undefined
  for (const one of known) {
    if (one.rung <= rung && (shorter === undefined || one.rung > shorter.rung)) shorter = one
    if (one.rung >= rung && (longer === undefined || one.rung < longer.rung)) longer = one
  }
  if (shorter === undefined || longer === undefined) return (shorter ?? longer)?.correction ?? 0
  const span = longer.rung - shorter.rung
  const share = span === 0 ? 0.5 : (rung - shorter.rung) / span
  return shorter.correction + share * (longer.correction - shorter.correction)
}
