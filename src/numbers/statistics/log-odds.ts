/** Log odds of a share, held inside 0.001 to 0.999 so that it is finite. */
export function logOdds(share: number): number {
  const held = Math.min(0.999, Math.max(0.001, share))
  return Math.log(held / (1 - held))
}

/** The share whose log odds these are. */
export function shareOfLogOdds(odds: number): number {
  return 1 / (1 + Math.exp(-odds))
}
