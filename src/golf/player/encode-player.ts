import type { Club, Player, ShortGame } from './player.ts'
import { CLUB_NUMBERS, type ClubNumber, SHORT_GAME_NUMBERS, type ShortGameNumber } from './player-file.ts'

/**
 * The player as `player/1` text, every number written, the prior's marked: `"guess": true` when all numbers beside it
 * are guesses, `"guesses": [names]` when some are. Read back, a guess is filled again from what is known.
 */
export function encodePlayer(player: Player): string {
  const { putting, shortGame } = player
  const document = {
    schema: 'player/1',
    name: player.name,
    hand: player.hand,
    handicapIndex: player.handicapIndex,
    ...(player.guesses.has('handicapIndex') ? { guesses: ['handicapIndex'] } : {}),
    sex: player.sex,
    ...(player.age === undefined ? {} : { age: player.age }),
    ...(player.said === undefined ? {} : { said: player.said }),
    bag: 'as-listed',
    clubs: player.clubs.map((club) => clubDocument(club, player.guesses)),
    shortGame: shortGameDocument(shortGame, player.guesses),
    putting: {
      direction_sd_deg: putting.directionSdDegrees,
      distance_sd_share: putting.distanceSdShare,
      ...(putting.shots === undefined ? {} : { shots: putting.shots }),
      ...marks('putting', ['direction_sd_deg', 'distance_sd_share'], player.guesses),
    },
    ...(player.sentences === undefined ? {} : { sentences: player.sentences }),
    ...(player.learnedRounds === undefined ? {} : { learnedRounds: player.learnedRounds }),
  }
  return `${JSON.stringify(document, null, 2)}\n`
}

function shortGameDocument(shortGame: ShortGame, guesses: ReadonlySet<string>): object {
  const numbers: Partial<Record<ShortGameNumber, number | undefined>> = {
    strokes_lost: shortGame.strokesLost,
    carry_sd_share: shortGame.carrySdShare,
    direction_sd_deg: shortGame.directionSdDegrees,
    poor_share: shortGame.poorShare,
  }
  const ladder = shortGame.rollPerCarry ?? {}
  return {
    ...numbers,
    ...(shortGame.shots === undefined ? {} : { shots: shortGame.shots }),
    ...(shortGame.rollPerCarry === undefined ? {} : { roll_per_carry: ladder }),
    ...marks(
      'shortGame',
      [...SHORT_GAME_NUMBERS, ...Object.keys(ladder).map((club) => `roll_per_carry.${club}`)],
      guesses,
    ),
  }
}

function clubDocument(club: Club, guesses: ReadonlySet<string>): object {
  const numbers: Record<ClubNumber, number> = {
    carry_m: club.carryMetres,
    total_m: club.totalMetres,
    direction_sd_deg: club.directionSdDegrees,
    left_share: club.leftShare,
    right_share: club.rightShare,
    curve_share: club.curveShare,
    carry_sd_share: club.carrySdShare,
    mishit_share: club.mishitShare,
    mishit_carry_share: club.mishitCarryShare,
    mishit_carry_sd_share: club.mishitCarrySdShare,
  }
  return {
    name: club.name,
    ...numbers,
    shots: club.shots,
    lies: club.lies,
    ...marks(`clubs.${club.name}`, CLUB_NUMBERS, guesses),
  }
}

function marks(path: string, names: readonly string[], guesses: ReadonlySet<string>): object {
  const guessed = names.filter((name) => guesses.has(`${path}.${name}`))
  if (guessed.length === 0) return {}
  return guessed.length === names.length ? { guess: true } : { guesses: guessed }
}
