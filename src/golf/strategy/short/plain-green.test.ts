import { describe, expect, it } from 'vitest'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { shortGameValue } from '#golf/player/short-game-values.ts'
import { shortShots } from '#golf/player/short-shots.ts'
import { yardsToMetres } from '#numbers/units/units.ts'
import { bestShortAim } from './find-short-aims.ts'
import { plainScene } from './plain-scene.ts'
import { playShortShot } from './play-short-shot.ts'
import { shortFacts } from './short-option.ts'
import { shortStrikes } from './short-strikes.ts'

const LIES = ['fairway', 'rough', 'bunker'] as const
const DAY = { greenSpeedFeet: 10, firmness: 1 }
const STRIKES = shortStrikes({ good: 48, poor: 8 })
const CLUBS = ['7-iron', '9-iron', 'pitching-wedge', 'sand-wedge', 'lob-wedge']

/** A player of a level with the clubs of the short game. */
function level(handicapIndex: number): Player {
  const file = { schema: 'player/1', name: 'Level', hand: 'right', sex: 'male', handicapIndex }
  const whole = completePlayer(parsePlayer(JSON.stringify(file), 'test'))
  return { ...whole, clubs: whole.clubs.filter(({ name }) => CLUBS.includes(name)) }
}

/** The best shot on a level plain green: what it costs, and the share that is up and down in two. */
function best(
  player: Player,
  lie: (typeof LIES)[number],
  metres: number,
): { readonly strokes: number; readonly inTwo: number } {
  const scene = plainScene(player, lie, metres, DAY)
  const from = [0, -metres] as const
  const [first] = shortShots(player, lie)
    .flatMap((shot) => bestShortAim(scene, shot, from, STRIKES) ?? [])
    .sort((a, b) => a.strokes - b.strokes)
  if (first === undefined) throw new Error('no shot')
  const played = playShortShot(scene, first.shot, from, first.aim, STRIKES)
  const facts = shortFacts(scene, player, from, lie, first, STRIKES, played)
  return { strokes: first.strokes, inTwo: facts.short?.up_and_down ?? Number.NaN }
}

describe('the short game on a level plain green', () => {
  // Broadie, Interfaces 42 (2012), table 9 for the tour player; by level the losses fitted to Broadie 2008 (`docs/method.md`, 6).
  it.each([
    ['fairway', 0.08],
    ['rough', 0.13],
    ['bunker', 0.13],
  ] as const)(
    'is worth what the published tables and losses say from %s, 10 to 30 m, within %f',
    (lie, within) => {
      for (const handicap of [-5, 16]) {
        const player = level(handicap)
        for (const metres of [10, 18, 30]) {
          const { strokes } = best(player, lie, metres)
          const published = shortGameValue(player, lie, metres)
          expect(Math.abs(strokes - published), `${handicap}, ${metres} m: ${strokes}`).toBeLessThan(within)
        }
      }
    },
  )

  it('gets up and down as published, within a tenth', () => {
    // Broadie 2012: tour from 15 yd 69 % fairway, 51 % rough or sand; from 25 yd 54, 35 and 42 %.
    const tour = level(-5)
    const shares = [15, 25].flatMap((yards) => LIES.map((lie) => best(tour, lie, yardsToMetres(yards)).inTwo))
    const published = [0.69, 0.51, 0.51, 0.54, 0.35, 0.42]
    shares.forEach((share, index) => {
      expect(Math.abs(share - (published[index] ?? 0)), JSON.stringify(shares)).toBeLessThan(0.1)
    })
    // Broadie 2008: sand saves 50, 26, 17 and 7 % (tour, average scores 70-83, 84-97, 98-120).
    const saves = [-5, 6, 16, 31].map((handicap) => best(level(handicap), 'bunker', 13).inTwo)
    const publishedSaves = [0.5, 0.26, 0.17, 0.07]
    saves.forEach((share, index) => {
      expect(Math.abs(share - (publishedSaves[index] ?? 0)), JSON.stringify(saves)).toBeLessThan(0.1)
    })
  })
})
