import { bagGaps } from '#golf/player/bag-gaps.ts'
import type { Player } from '#golf/player/player.ts'
import { bagPatterns } from '#golf/strategy/bag-patterns.ts'
import { drawBag } from '#paper/draw/draw-bag.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { plainText } from './plain-text.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

const GAP_WORDS = { overlap: 'one job', hole: 'no club', even: null } as const

/** The player's bag at true scale with its gaps, as the text of an SVG file. */
export function bagPicture(player: Player, units: ReaderUnits): string {
  const gapWords = new Map(
    bagGaps(player.clubs).flatMap(({ club, next, verdict }) => {
      const words = next === null ? null : GAP_WORDS[verdict]
      return words === null ? [] : [[club.name, words] as const]
    }),
  )
  const drawing = drawBag(bagPatterns(player), { units, playerName: player.name, gapWords })
  return plainText(renderSvg(drawing), false)
}
