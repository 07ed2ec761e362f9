import { describe, expect, it } from 'vitest'
import { completePlayer } from '#golf/player/complete-player.ts'
import { parsePlayer } from '#golf/player/parse-player.ts'
import type { Player } from '#golf/player/player.ts'
import { bagPatterns } from '#golf/strategy/bag-patterns.ts'
import { drawBag } from './draw-bag.ts'
import type { Drawing, TextShape } from './drawing.ts'

/** A golfer of whom a few carries are known, in metres. */
function golfer(carries: Readonly<Record<string, number>>): Player {
  return completePlayer(
    parsePlayer(
      JSON.stringify({
        schema: 'player/1',
        name: 'Ansa',
        hand: 'right',
        handicapIndex: 15,
        bag: 'as-listed',
        clubs: Object.entries(carries).map(([name, carry_m]) => ({ name, carry_m })),
      }),
      'test',
    ),
  )
}

function draw(player: Player, words?: ReadonlyMap<string, string>): Drawing {
  const asked = { units: 'metres', playerName: player.name } as const
  return drawBag(bagPatterns(player), words ? { ...asked, gapWords: words } : asked)
}

function texts({ shapes }: Drawing): TextShape[] {
  return shapes.filter((shape) => shape.kind === 'text')
}

describe('a bag at true scale', () => {
  const carries = { driver: 205, '5-wood': 180, '7-iron': 132, '8-iron': 128, 'sand-wedge': 70 }
  const drawing = draw(golfer(carries))

  it('says each carry, the gap to the next, and what it rests on', () => {
    const said = texts(drawing).map(({ text }) => text)
    for (const [club, carry] of Object.entries(carries)) {
      expect(said).toContain(club.replace('-wedge', ' wedge'))
      expect(said).toContain(String(carry))
    }
    for (const gap of ['25', '48', '4', '58']) expect(said).toContain(gap)
    expect(drawing.description).toContain('driver: 205 metres, guess')
  })

  it('has one scale along and across: the line of half a symmetric pattern is as wide as its spread says', () => {
    // Reason: the half of a bivariate normal lies within 1.177 of its spreads (Rayleigh distribution, closed form);
    // the drawing smooths, which widens it by about a tenth.
    const player = golfer(carries)
    const level = texts(drawing).filter(({ text }) => text === '100' || text === '150')
    const [far, near] = level.map(({ at }) => at[1]).sort((a, b) => a - b) as [number, number]
    const unitsPerMetre = (near - far) / 50
    const lines = drawing.shapes.filter(
      (shape) => shape.kind === 'path' && shape.stroke?.paint === 'spot' && shape.steps.length > 10,
    )
    expect(lines.length).toBe(5)
    for (const [index, line] of lines.entries()) {
      if (line.kind !== 'path') continue
      const xs = line.steps.flatMap((step) => (step[0] === 'Z' ? [] : [step.at(-2) as number]))
      const ys = line.steps.flatMap((step) => (step[0] === 'Z' ? [] : [step.at(-1) as number]))
      const club = player.clubs.toSorted((a, b) => b.carryMetres - a.carryMetres)[index] as Player['clubs'][0]
      const across = (Math.max(...xs) - Math.min(...xs)) / unitsPerMetre
      const along = (Math.max(...ys) - Math.min(...ys)) / unitsPerMetre
      const usual = 2 * 1.177 * club.carryMetres
      expect(across / (usual * club.directionSdDegrees * (Math.PI / 180))).toBeGreaterThan(0.95)
      expect(across / (usual * club.directionSdDegrees * (Math.PI / 180))).toBeLessThan(1.25)
      expect(along / (usual * club.carrySdShare)).toBeGreaterThan(0.95)
      expect(along / (usual * club.carrySdShare)).toBeLessThan(1.25)
    }
  })

  it('keeps names apart where clubs overlap, and everything on the sheet', () => {
    const close = draw(golfer({ driver: 205, '6-iron': 140, '7-iron': 139, '8-iron': 138, '9-iron': 137 }))
    const names = texts(close).filter(({ face }) => face === 'serif-bold')
    const levels = names.map(({ at }) => at[1]).sort((a, b) => a - b)
    for (const [index, level] of levels.entries())
      if (index > 0) expect(level - (levels[index - 1] as number)).toBeGreaterThan(15)
    for (const { at } of texts(close)) expect(at[1]).toBeLessThan(close.height)
  })

  it('puts words beside the gap they are about, in the colour of what the player should see', () => {
    const worded = draw(golfer(carries), new Map([['7-iron', 'overlap']]))
    const [word] = texts(worded).filter(({ text }) => text.startsWith('overlap'))
    expect(word).toMatchObject({ text: 'overlap  4', paint: 'spot' })
  })
})
