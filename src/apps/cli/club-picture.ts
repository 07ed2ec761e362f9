import { clubChangeSentences } from '#golf/player/change-words.ts'
import type { LearnedFromShots } from '#golf/player/learn-from-shots.ts'
import type { LearnedPlayer } from '#golf/player/learn-player.ts'
import type { Player } from '#golf/player/player.ts'
import { shotMarks } from '#golf/player/shot-marks.ts'
import { type BagPattern, bagPatterns } from '#golf/strategy/bag-patterns.ts'
import { drawClubPattern } from '#paper/draw/draw-club-pattern.ts'
import { renderSvg } from '#paper/draw/render-svg.ts'
import { plainText } from './plain-text.ts'
import type { ReaderUnits } from './units-of-the-reader.ts'

/**
 * The pattern of one club of the bag before and after shots, over the balls themselves, as the text of an SVG file.
 * Throws RangeError for a club the player does not have.
 */
export function clubPicture(
  { before, learned, bag }: LearnedFromShots,
  club: string,
  units: ReaderUnits,
): string {
  const one = learned.clubs.find(({ name }) => name === club)
  if (one === undefined) throw new RangeError(`no ${club} among the clubs that were learned`)
  const drawing = drawClubPattern({
    playerName: before.name,
    units,
    now: patternOf(learned.player, club),
    before: {
      pattern: patternOf(before, club),
      isGuess: before.guesses.has(`clubs.${club}.carry_m`),
    },
    marks: shotMarks(before, club, bag.shots),
    basis: basisText(one),
    sentences: clubChangeSentences(one, units),
  })
  return plainText(renderSvg(drawing), false)
}

function patternOf(player: Player, name: string): BagPattern {
  const pattern = bagPatterns(player).find(({ club }) => club.name === name)
  if (pattern === undefined) throw new RangeError(`no ${name} in the bag`)
  return pattern
}

/** `77 shots, which count for 70 by now, 2 of them for next to nothing`. */
function basisText({ shots, weight, strays }: LearnedPlayer['clubs'][number]): string {
  if (shots === 0) return 'no shot of its own'
  const worth = Math.round(weight)
  const lost = Math.round(strays)
  return [
    `${shots} ${shots === 1 ? 'shot' : 'shots'}`,
    ...(worth === shots ? [] : [`which count for ${worth} by now`]),
    ...(lost === 0 ? [] : [`${lost} of them so far off that they count for nothing`]),
  ].join(', ')
}
