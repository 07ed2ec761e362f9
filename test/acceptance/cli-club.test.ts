import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { SHORT_HOLES, THREE_CLUBS } from '../fixtures/short-holes.ts'
import { canReadPdf, textOf } from './printed-pages.ts'
import { marram, marramJson } from './run-cli.ts'

// `marram club` as people and programs outside use it: docs/recap.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-club-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: unknown): string => {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
}
const course = file('short.csv', SHORT_HOLES)
const NAMES = ['Abel Marsh', 'Berit Noll', 'Cosmo Oak']
const players = NAMES.flatMap((name) => [
  '--player',
  file(`${name}.player.json`, { ...JSON.parse(THREE_CLUBS), name }),
])
const roundOf = (player: string, left: number): string =>
  file(`${player} ${left}.round.json`, {
    schema: 'round/1',
    date: '2026-05-02',
    player,
    holes: [
      {
        ref: '1',
        strokes: [{ club: '7-iron', to: { letter: 'g', left_m: left } }],
        putts: 2,
        firstPutt_m: left,
      },
    ],
  })

describe('marram club', () => {
  it('says what many members lose where, and nowhere who they are', () => {
    const rounds = [...NAMES.map((name, index) => roundOf(name, 4 + index)), roundOf('Dora Pell', 5)]
    const words = ['club', course, ...players, ...rounds.flatMap((path) => ['--round', path])]
    const { status, document } = marramJson(...words, '--least', '3', '--workers', '0')
    // One round is of nobody among them: it is told by its number.
    expect(status).toBe(1)
    expect(document.faults.map(({ code, place }: { code: string; place: string }) => [code, place])).toEqual([
      ['MAR-ROUND-022', 'round 4'],
    ])
    expect(document).toMatchObject({ schema: 'club/1', minimum: 3, members: 3, rounds: 3 })
    expect(document.holes).toEqual([expect.objectContaining({ hole: '1', members: 3, over_par: 0 })])
    const text = JSON.stringify(document)
    for (const word of [...NAMES.flatMap((name) => name.split(' ')), 'Dora', '2026-05-02', folder])
      expect(text).not.toContain(word)

    const sheet = join(folder, 'club.pdf')
    const printed = marram(...words, '--least', '3', '--workers', '0', '--out', sheet)
    expect([printed.status, printed.out]).toEqual([1, expect.stringContaining('The page is in')])
    if (canReadPdf) expect(textOf(readFileSync(sheet), 1)).toMatch(/3 rounds of 3 members[\s\S]*The holes/)

    const alone = marram(...words, '--workers', '0')
    expect([alone.status, alone.err]).toEqual([
      2,
      expect.stringMatching(/MAR-ROUND-023.*of 3 members.*fewer than 5/),
    ])
    const few = marram(...words, '--least', '2')
    expect([few.status, few.err]).toEqual([2, expect.stringMatching(/MAR-USAGE-002/)])
  })
})
