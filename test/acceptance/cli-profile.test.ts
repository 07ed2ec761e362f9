import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { FIELDS } from '#golf/player/player-questions.ts'
import { marram, marramJson } from './run-cli.ts'

const ANSWERS = 'examples/isolde-quarrie.answers.json'
const folder = mkdtempSync(join(tmpdir(), 'marram-profile-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const answersFile = (name: string, content: unknown): string => {
  const path = join(folder, name)
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content))
  return path
}

describe('marram profile', () => {
  it('writes a player file, facts typed and the rest guesses', () => {
    const out = join(folder, 'isolde.player.json')
    const { status, document } = marramJson('profile', '--answers', ANSWERS, '--out', out)
    expect(status).toBe(0)
    expect(document.schema).toBe('profile/1')
    expect(document.nearGreen.half_holed_m.value).toBeGreaterThan(document.nearGreen.half_holed_m.low)
    expect(document.player).toEqual(JSON.parse(readFileSync(out, 'utf8')))
    const { player } = document
    expect(player).toMatchObject({ hand: 'left', handicapIndex: 23, guesses: ['handicapIndex'] })
    const iron = player.clubs.find((club: { name: string }) => club.name === '7-iron')
    expect(iron.carry_m).toBeCloseTo(92 * 0.9144, 1)
    expect(iron.guesses).not.toContain('carry_m')
    expect(iron.guesses).toContain('curve_share')
    // A left-hander's fade bends to the left.
    expect(iron.curve_share).toBeLessThan(0)
    for (const club of document.clubs)
      for (const sure of [club.carry_m, club.sideways_sd_m, club.mishit_share]) {
        expect(sure.low).toBeLessThan(sure.value)
        expect(sure.high).toBeGreaterThan(sure.value)
        expect(sure.after_ten_shots.high - sure.after_ten_shots.low).toBeLessThan(sure.high - sure.low)
      }
  })

  it('says in words and a table what was made of the answers, in the reader’s units', () => {
    const { status, out } = marram('profile', '--answers', ANSWERS, '--units', 'metres')
    expect(status).toBe(0)
    expect(out).toMatch(/^Isolde Quarrie, left-handed, is taken to be off 23\.0: a usual round of 98/)
    // Without a unit in the answers a length is in the reader's.
    expect(out).toMatch(/^7-iron +92 +\d+ to \d+ +\d+ to \d+ +said /m)
    expect(out).toMatch(/^8-iron +\d+ +\d+ to \d+ +\d+ to \d+ +guess /m)
    expect(out).toContain('Nothing was written')
  })

  it('asks nothing where nobody can answer', () => {
    expect(marram('profile')).toMatchObject({
      status: 2,
      out: '',
      err: expect.stringMatching(/^MAR-ANSWER-011 /),
    })
  })

  it.each<[code: string, where: RegExp, content: unknown]>([
    ['MAR-ANSWER-001', /Also to be put right: bag\. .*: hand/, { name: 'x', handicapIndex: 20, bag: ['5'] }],
    ['MAR-ANSWER-010', /"handicap" is not asked/, { handicap: 9 }],
  ])('%s, and nothing is written', (code, where, content) => {
    const out = join(folder, 'never.player.json')
    const run = marram('profile', '--answers', answersFile('bad.json', content), '--out', out)
    expect(run).toMatchObject({ status: 2, out: '', err: expect.stringMatching(new RegExp(`^${code} `)) })
    expect(run.err).toMatch(where)
    expect(existsSync(out)).toBe(false)
  })

  it('takes every field as text too, and null as not known', () => {
    const nothing = Object.fromEntries(FIELDS.map(({ id }) => [id, null]))
    const path = answersFile('text.json', { ...nothing, name: 'Wren', hand: '2', handicapIndex: '+1,5' })
    const { document } = marramJson('profile', '--answers', path)
    expect(document.player).toMatchObject({ name: 'Wren', hand: 'left', handicapIndex: -1.5 })
    expect(document.player.said).toBeUndefined()
  })
})
