import { directionSdOfAllShots, meanTotalOfAllShots } from '../../src/golf/player/all-shots.ts'
import { drawPlayer } from '../../src/golf/player/draw-player.ts'
import { partialSwings } from '../../src/golf/player/partial-wedges.ts'
import type { Club, Lie, Player } from '../../src/golf/player/player.ts'
import { puttingValues } from '../../src/golf/player/putting-values.ts'
import { shortGameShares } from '../../src/golf/player/short-game-shares.ts'
import { shortGameValue } from '../../src/golf/player/short-game-values.ts'
import { degreesToRadians } from '../../src/numbers/units/units.ts'

/** A figure of a player and how unsure it is: one standard deviation over the players it may be, in the same unit. */
export interface UnsureFigure {
  readonly value: number
  readonly plusMinus: number
}

/** One column of the page. */
export interface LevelColumn {
  readonly title: string
  readonly decimals: number
  readonly of: (player: Player) => number
}

/** Draws behind each ±. Putting has three levels only, so few are enough. */
const DRAWS = 48

/** A figure of the player with the doubt that plans reckon with. */
export function unsureFigure(player: Player, of: (player: Player) => number): UnsureFigure {
  const drawn = Array.from({ length: DRAWS }, (_, seed) => of(drawPlayer(player, seed + 1)))
  const mean = drawn.reduce((sum, one) => sum + one, 0) / DRAWS
  const variance = drawn.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (DRAWS - 1)
  return { value: of(player), plusMinus: Math.sqrt(variance) }
}

/** Lengths, metres. */
export const LENGTH_COLUMNS: readonly LevelColumn[] = [
  { title: 'driver, stock carry, m', decimals: 0, of: (player) => clubOf(player, 'driver').carryMetres },
  { title: 'driver, stock total, m', decimals: 0, of: (player) => clubOf(player, 'driver').totalMetres },
  {
    title: 'all drives, mean total, m',
    decimals: 0,
    of: (player) => meanTotalOfAllShots(clubOf(player, 'driver')),
  },
  { title: '7-iron, stock carry, m', decimals: 0, of: (player) => clubOf(player, '7-iron').carryMetres },
]

/** Spreads and mishits of the full game. */
export const SPREAD_COLUMNS: readonly LevelColumn[] = [
  {
    title: 'all drives, direction, °',
    decimals: 1,
    of: (player) => directionSdOfAllShots(clubOf(player, 'driver')),
  },
  {
    title: 'shot of 100 m, sideways, m',
    decimals: 1,
    of: (player) => {
      const shot = shotOf100Metres(player)
      return shot.totalMetres * Math.tan(degreesToRadians(shot.directionSdDegrees))
    },
  },
  {
    title: 'shot of 100 m, in length, m',
    decimals: 1,
    of: (player) => shotOf100Metres(player).carryMetres * shotOf100Metres(player).carrySdShare,
  },
  { title: 'drives mishit, %', decimals: 0, of: (player) => 100 * clubOf(player, 'driver').mishitShare },
  { title: '7-irons mishit, %', decimals: 0, of: (player) => 100 * clubOf(player, '7-iron').mishitShare },
]

const upAndDown = (player: Player, lie: Lie): number => {
  const shares = shortGameShares(player, lie, 20)
  return 100 * ((shares[0] ?? 0) + (shares[1] ?? 0))
}

/** The short game from 20 m. */
export const SHORT_GAME_COLUMNS: readonly LevelColumn[] = [
  { title: 'strokes, fairway', decimals: 2, of: (player) => shortGameValue(player, 'fairway', 20) },
  { title: 'strokes, rough', decimals: 2, of: (player) => shortGameValue(player, 'rough', 20) },
  { title: 'strokes, sand', decimals: 2, of: (player) => shortGameValue(player, 'bunker', 20) },
  { title: 'up and down, fairway, %', decimals: 0, of: (player) => upAndDown(player, 'fairway') },
  { title: 'up and down, sand, %', decimals: 0, of: (player) => upAndDown(player, 'bunker') },
]

/** Putting on a flat green. */
export const PUTTING_COLUMNS: readonly LevelColumn[] = [
  ...[2, 5, 10].map((metres) => ({
    title: `putts from ${metres} m`,
    decimals: 2,
    of: (player: Player) => puttingValues(player).expected(metres),
  })),
  {
    title: 'half holed from, m',
    decimals: 1,
    of: (player) => metresWhere((metres) => 1 - puttingValues(player).shares(metres)[0], 0.5),
  },
  {
    title: 'two putts on average from, m',
    decimals: 1,
    of: (player) => metresWhere((metres) => puttingValues(player).expected(metres), 2),
  },
]

/** Metres at which a figure that rises with distance reaches the target. */
function metresWhere(rising: (metres: number) => number, target: number): number {
  let [low, high] = [0.3, 25]
  for (let step = 0; step < 30; step += 1) {
    const middle = (low + high) / 2
    if (rising(middle) < target) low = middle
    else high = middle
  }
  return low
}

/** The whole or partial swing that goes nearest to 100 m in all; for the shortest hitters their longest club. */
function shotOf100Metres(player: Player): Club {
  const shots = [...player.clubs, ...partialSwings(player).map((swing) => swing.stock)]
  return shots.reduce((best, shot) =>
    Math.abs(shot.totalMetres - 100) < Math.abs(best.totalMetres - 100) ? shot : best,
  )
}

function clubOf(player: Player, name: string): Club {
  const club = player.clubs.find((one) => one.name === name)
  if (club === undefined) throw new Error(`a bag without ${name}`)
  return club
}
