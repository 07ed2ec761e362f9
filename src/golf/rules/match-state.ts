/** How a match stands, from the side of the first player. Source: Rules of Golf 2023, 3.2a. */
export interface MatchState {
  /** Holes up, fewer than 0 when down. */
  readonly up: number
  /** Holes that are still to be played when the match is decided, or now. */
  readonly left: number
  readonly isOver: boolean
  /** As many up as there are holes left: the match can only be won or tied. */
  readonly isDormie: boolean
}

/**
 * State of a match over a number of holes after some results (+1 won, 0 tied, −1 lost, in the order of play). It is over as
 * soon as one side leads by more holes than are left; results after that are not counted.
 */
export function matchState(results: readonly (-1 | 0 | 1)[], holes: number): MatchState {
  let up = 0
  let left = holes
  for (const result of results.slice(0, holes)) {
    if (Math.abs(up) > left) break
    up += result
    left -= 1
  }
  const isOver = left === 0 || Math.abs(up) > left
  return { up, left, isOver, isDormie: !isOver && up !== 0 && Math.abs(up) === left }
}

/** `won 3 and 2`, `lost 1 down`, `2 up with 4 to play`, `tied after 18`: in the words of the first player's side. */
export function matchWords({ up, left, isOver, isDormie }: MatchState): string {
  const by = Math.abs(up)
  if (isOver) {
    if (up === 0) return 'the match is tied'
    const margin = left === 0 ? `${by} ${up > 0 ? 'up' : 'down'}` : `${by} and ${left}`
    return `${up > 0 ? 'won' : 'lost'} ${margin}`
  }
  const stands = up === 0 ? 'level' : `${by} ${up > 0 ? 'up' : 'down'}`
  return `${stands} with ${left} to play${isDormie ? ', dormie' : ''}`
}

/** The result of a hole by net scores; `null` = not holed out, which loses to any score. Source: 3.2a. */
export function holeResult(own: number | null, theirs: number | null): -1 | 0 | 1 {
  if (own === theirs) return 0
  if (own === null) return -1
  if (theirs === null) return 1
  return own < theirs ? 1 : -1
}
