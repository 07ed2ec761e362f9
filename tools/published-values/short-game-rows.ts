import type { Lie } from '../../src/golf/player/player.ts'
import { priorPutting, priorStrokesLost } from '../../src/golf/player/prior-near-green.ts'
import { shortGameShares } from '../../src/golf/player/short-game-shares.ts'
import { shortGameValue } from '../../src/golf/player/short-game-values.ts'
import { yardsToMetres } from '../../src/numbers/units/units.ts'
import { LEVELS } from './levels.ts'
import type { PublishedRow } from './published-row.ts'
import { referenceRows } from './reference-rows.ts'

const PAPER = 'Broadie, Interfaces 42 (2012)'

type ShortPlayer = Parameters<typeof shortGameShares>[0]

/** Tour values from 10 to 60 yd by lie, up-and-downs, sand saves by level, and the line of a golfer averaging 90. */
export function shortGameRows(): PublishedRow[] {
  const tour = playerOf(LEVELS.tour)
  const values = referenceRows('tour_expected_strokes_paper.csv')
    .filter((row) => Number(row.distance_yd) <= 60)
    .flatMap((row) =>
      LIES.map(([lie, column]) => ({
        what: `tour player: strokes from ${row.distance_yd} yd, ${lie}`,
        unit: 'strokes',
        published: Number(row[column]),
        source: `${PAPER}, table 9`,
        status: row.status ?? '',
        ours: shortGameValue(tour, lie, yardsToMetres(Number(row.distance_yd))),
        decimals: 3,
        bound: 0.001,
      })),
    )
  const upAndDowns = UP_AND_DOWN.map(([lie, yards, published]) => ({
    what: `tour player: up and down from ${yards} yd, ${lie}`,
    unit: '%',
    published,
    source: PAPER,
    status: 'VERIFIED (b)',
    ours: upAndDownPercent(tour, lie, yards),
    decimals: 1,
    bound: 4,
  }))
  return [...values, ...upAndDowns, ...sandSaveRows(), lineRow()]
}

const LIES: readonly (readonly [Lie, string])[] = [
  ['fairway', 'fairway_strokes'],
  ['rough', 'rough_strokes'],
  ['bunker', 'sand_strokes'],
]

const UP_AND_DOWN: readonly (readonly [Lie, number, number])[] = [
  ['fairway', 15, 69],
  ['rough', 15, 51],
  ['bunker', 15, 51],
  ['fairway', 25, 54],
  ['rough', 25, 35],
  ['bunker', 25, 42],
]

function sandSaveRows(): PublishedRow[] {
  const saves = referenceRows('amateur_skill_broadie.csv').find((row) => row.quantity === 'sand saves')
  return Object.entries(LEVELS).map(([level, handicap]) => ({
    what: `${level}: sand saves (ours from 15 yd)`,
    unit: '%',
    published: Number(saves?.[level]),
    source: 'Broadie 2008',
    status: saves?.status ?? '',
    ours: upAndDownPercent(playerOf(handicap), 'bunker', 15),
    decimals: 1,
    bound: 4,
  }))
}

function lineRow(): PublishedRow {
  return {
    what: 'golfer averaging 90 (index 16): strokes from 60 yd, fairway, on the line 2.79 + 0.0066 d',
    unit: 'strokes',
    published: 2.79 + 0.0066 * 60,
    source: 'Broadie 2008, quoted in 2012',
    status: 'VERIFIED (b)',
    ours: shortGameValue(playerOf(16), 'fairway', yardsToMetres(60)),
    decimals: 3,
    bound: 0.05,
  }
}

function playerOf(handicap: number): ShortPlayer {
  return { putting: priorPutting(handicap), shortGame: { strokesLost: priorStrokesLost(handicap) } }
}

function upAndDownPercent(player: ShortPlayer, lie: Lie, yards: number): number {
  const shares = shortGameShares(player, lie, yardsToMetres(yards))
  return 100 * ((shares[0] ?? 0) + (shares[1] ?? 0))
}
