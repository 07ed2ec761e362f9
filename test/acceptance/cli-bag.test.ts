import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { type Json, marram, marramJson } from './run-cli.ts'

// `marram bag` as people and programs outside use it: README.md, docs/shots.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-bag-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}
/** A short hole, and a bag of four in which two clubs do one job, one of them badly. */
const course = file(
  'short.csv',
  'hole,what,side,from_m,to_m,near_m,far_m,note\n1,fairway,across,30,150,-14,14,\n1,green,across,166,186,-9,9,\n',
)
const clubs = [
  { name: '7-iron', carry_m: 130 },
  { name: '7-wood', carry_m: 131, direction_sd_deg: 14, carry_sd_share: 0.2, mishit_share: 0.5 },
  { name: 'sand-wedge', carry_m: 65 },
]
const player = file(
  'four.player.json',
  JSON.stringify({
    schema: 'player/1',
    name: 'Four',
    hand: 'left',
    handicapIndex: 18,
    bag: 'as-listed',
    clubs,
  }),
)

describe('marram bag', () => {
  it('answers with bag/1: what each club is for, the club that is never the answer, and its gaps', () => {
    const { status, document } = marramJson('bag', course, '--player', player, '--workers', '0')
    expect(status).toBe(0)
    expect(document).toMatchObject({ schema: 'bag/1', player: 'Four', hand: 'left', unplanned: [] })
    const rows = new Map<string, Json>(document.clubs.map((row: Json) => [row.club, row]))
    expect([...rows.keys()]).toEqual(['7-wood', '7-iron', 'sand-wedge'])
    expect(rows.get('7-wood')).toMatchObject({
      verdict: 'overlap',
      next: '7-iron',
      never_the_answer: true,
      strokes: 0,
    })
    expect(rows.get('7-iron')).toMatchObject({ never_the_answer: false, verdict: 'hole' })
    expect(rows.get('7-iron').tee_strokes).toBeGreaterThanOrEqual(1)
    expect(rows.get('7-iron').costs_at_most).toBeGreaterThan(0.1)
    expect(rows.get('7-iron').lies).toContain('rough')
    expect(document.partial_swings.map((swing: Json) => swing.club)).toEqual(['sand-wedge', 'sand-wedge'])
    expect(document.holes.map((hole: Json) => hole.hole)).toEqual(['1'])
  })

  it('says it in plain words, and that what is trusted may stay', () => {
    const { status, out, err } = marram(
      'bag',
      course,
      '--player',
      player,
      '--workers',
      '0',
      '--units',
      'metres',
    )
    expect({ status, err }).toEqual({ status: 0, err: '' })
    expect(out).toMatch(
      /Not asked for on these holes\n {2}the 7-wood: without it these holes cost nothing more\n {2}Keep what you trust/,
    )
    // One hole is no reason to say never, nor are shots that are not counted.
    expect(out).not.toContain('Never the answer')
    expect(out).toContain('Shots from within 45 m of the pin are not counted')
    expect(out).toMatch(/^7-wood +131 +1 +– +– .*does the job of the 7-iron$/m)
    expect(out).toMatch(/From where\n {2}fairway: every club/)
    expect(out).not.toMatch(/NaN|undefined|\[object|Infinity/)
  })

  it('refuses a hole that is not there', () => {
    const { status, document } = marramJson('bag', course, '--player', player, '--hole', '9')
    expect(status).toBe(2)
    expect(document.error.code).toBe('MAR-COURSE-001')
  })
})
