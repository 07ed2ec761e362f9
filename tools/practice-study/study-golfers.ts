import { completePlayer } from '../../src/golf/player/complete-player.ts'
import type { Player } from '../../src/golf/player/player.ts'
import type { PlayerFile } from '../../src/golf/player/player-file.ts'
import { improvedPlayer, PRACTICE_PARTS, type PracticePart } from '../../src/golf/round/improved-player.ts'
import { CHIPS_OF_STROKES_LOST } from '../../src/golf/round/settings.ts'

/** An invented player, and the part of the game that is worse than usual for the handicap. */
export interface StudyGolfer {
  readonly player: Player
  /** `null` = none. */
  readonly fault: PracticePart | null
}

/** A bag in which no two clubs go nearly as far, so that holes are solved quickly. */
const CLUBS = [
  'driver',
  '5-wood',
  '5-hybrid',
  '6-iron',
  '7-iron',
  '8-iron',
  '9-iron',
  'pitching-wedge',
  'sand-wedge',
]
/** A faulty part is so much worse, as a share of what it is: twice the spread, the mishits, the strokes lost. */
const FAULT = -1

/** From 2 to 36, men and women, right- and left-handed by turns; every part of the game is somebody's fault twice. */
export function studyGolfers(): readonly StudyGolfer[] {
  const sound = [2, 10, 18, 28].map((index, at) => golfer(index, at, null))
  const faulty = PRACTICE_PARTS.flatMap((fault, at) => [
    golfer(4 + 2 * at, at, fault),
    golfer(36 - 2 * at, at + 1, fault),
  ])
  return [...sound, ...faulty]
}

function golfer(handicapIndex: number, at: number, fault: PracticePart | null): StudyGolfer {
  const withLoss = (shortGame: PlayerFile['shortGame']): Player =>
    completePlayer({
      name: `index ${handicapIndex}`,
      hand: at % 2 === 0 ? 'right' : 'left',
      sex: at % 3 === 2 ? 'female' : 'male',
      handicapIndex,
      bag: 'as-listed',
      clubs: CLUBS.map((name) => ({ name, shots: 0, lies: {} })),
      shortGame,
      putting: {},
    })
  const usual = withLoss({})
  if (fault === null) return { player: usual, fault }
  if (fault === 'short-game')
    return { player: withLoss({ strokes_lost: (1 - FAULT) * usual.shortGame.strokesLost }), fault }
  return { player: struckBy(usual, improvedPlayer(usual, fault, FAULT)), fault }
}

/**
 * How a better (or worse) player strikes the ball. A profile writes what better putts save after a chip into the strokes lost near the
 * green, though the chip is struck as before; and of a better chip only what the chip itself saves.
 */
export function struckBy(player: Player, other: Player): Player {
  if (other.putting !== player.putting) return { ...other, shortGame: player.shortGame }
  const { strokesLost } = player.shortGame
  const won = (strokesLost - other.shortGame.strokesLost) / CHIPS_OF_STROKES_LOST
  return { ...other, shortGame: { ...other.shortGame, strokesLost: strokesLost - won } }
}
