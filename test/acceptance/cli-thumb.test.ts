import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { marram, marramJson } from './run-cli.ts'

// `marram thumb` as people and programs outside use it: README.md, docs/errors.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-thumb-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

// Short, with one pond across and a bag of three, so that it is solved in a moment.
const course = file(
  'short.csv',
  `hole,what,side,from_m,to_m,near_m,far_m,note
1,fairway,across,40,190,-15,15,
1,water-yellow,across,128,146,-30,30,
1,green,,189,211,0,24,par 4`,
)
const player = file(
  'three.player.json',
  JSON.stringify({
    schema: 'player/1',
    name: 'Three Clubs',
    hand: 'right',
    handicapIndex: 14,
    bag: 'as-listed',
    clubs: [{ name: '6-iron', carry_m: 130 }, { name: '9-iron' }, { name: 'sand-wedge' }],
  }),
)
const thumb = (...words: readonly string[]): readonly string[] => [
  'thumb',
  course,
  '--player',
  player,
  '--hole',
  '1',
  ...words,
]

describe('marram thumb', () => {
  it('answers with thumb/1: bands from far to near for the tee and each lie asked for', () => {
    const { status, document } = marramJson(...thumb('--lie', 'fairway,first-cut'))
    expect(status).toBe(0)
    expect(document).toMatchObject({
      schema: 'thumb/1',
      hole: { ref: '1', par: 4 },
      player: 'Three Clubs',
      method: { step_m: 10, too_close_strokes: 0.03, converged: true },
    })
    expect(document.lies.map(({ lie }: { lie: string }) => lie)).toEqual(['tee', 'fairway', 'first-cut'])
    for (const { places } of document.lies) {
      const distances = places.map(({ from_m }: { from_m: number }) => from_m)
      expect(distances).toEqual([...distances].sort((a, b) => b - a))
    }
    expect(document.lies[0].rules[0]).toMatchObject({ rule: 'short-of-water', hazard: 'water' })
  })

  it('says it in plain words, with rounded strokes and cautions', () => {
    const run = marram(...thumb('--units', 'metres', '--lie', 'rough'))
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toMatch(/^Hole 1, par 4, 200 m/)
    expect(run.out).toMatch(/Stay short of the water +/)
    expect(run.out).toMatch(/Go or lay up\n/)
    expect(run.out).toMatch(/Mind\n/)
    expect(run.out).not.toMatch(/NaN|undefined|\[object|\d\.\d{3}/)
  })

  it.each<[string, string, readonly string[]]>([
    ['a lie that is none', 'MAR-USAGE-002', ['--lie', 'fairway,hedge']],
    ['a green, from which no full stroke is played', 'MAR-USAGE-002', ['--lie', 'green']],
    ['a wind that is none', 'MAR-DAY-006', ['--wind', 'gale']],
  ])('refuses %s with %s', (_title, code, words) => {
    const { status, document } = marramJson(...thumb(...words))
    expect(status).toBe(2)
    expect(document.error.code).toBe(code)
  })
})
