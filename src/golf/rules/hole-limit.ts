import { netDoubleBogey } from './net-double-bogey.ts'

/** How a Committee fixes the most that counts on a hole in maximum score. Source: Rules of Golf 2023, 21.2a. */
export type HoleLimit =
  | { readonly kind: 'net-double-bogey' }
  | { readonly kind: 'double-par' }
  /** So many strokes over par, or so many in all. */
  | { readonly kind: 'over-par' | 'strokes'; readonly strokes: number }

/** The most strokes, gross, that count on a hole of this par for a player who receives so many there. */
export function holeLimit(limit: HoleLimit, par: number, received: number): number {
  switch (limit.kind) {
    case 'net-double-bogey':
      return netDoubleBogey(par, received)
    case 'double-par':
      return 2 * par
    case 'over-par':
      return par + limit.strokes
    case 'strokes':
      return limit.strokes
  }
}
