import type { LearnedNearGreen } from '#golf/player/near-green-posterior.ts'
import type { Player } from '#golf/player/player.ts'
import { testDayCurves } from '#golf/player/test-day-curves.ts'
import type { TestDayResults } from '#golf/player/test-day-results.ts'
import { drawTestCurves } from '#paper/draw/draw-test-curves.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { plainText } from './plain-text.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/** The curves of a test day as the text of an SVG file. */
export function testCurvesPicture(
  player: Player,
  learned: LearnedNearGreen,
  results: TestDayResults,
  units: ReaderUnits,
): string {
  const drawing = drawTestCurves(testDayCurves(player, learned, results), {
    playerName: player.name,
    units,
    basis: `${learned.putts} putts, ${learned.shortShots} short shots`,
  })
  return plainText(renderSvg(drawing), false)
}
