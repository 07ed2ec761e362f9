import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { marram, marramJson } from './run-cli.ts'

// `marram test-day` as people and programs outside use it: README.md, docs/errors.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-test-day-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const player = fileURLToPath(new URL('../../examples/wren.player.json', import.meta.url))
const results = join(folder, 'today.csv')
writeFileSync(
  results,
  'station,holed,leaves_ft\nputt-1m,9,\nputt-2m,6,\nputt-14m,0,2 5 3 1 6 4\nsand-12m,0,10 x20 x25 12 8 18\nputt-9m,1,\n',
)

describe('marram test-day', () => {
  it('prints the stations, writes the sheet, and says how the results are typed', () => {
    const sheet = join(folder, 'sheet.svg')
    const said = marram('test-day', player, '--sheet', sheet)
    expect(said.status).toBe(0)
    expect(said.out).toContain('putt-14m')
    expect(said.out).toContain('--results')
    expect(readFileSync(sheet, 'utf8')).toContain('Test day')
  })

  it('reads the good rows, names the bad one, and writes a player with what was learned', () => {
    const out = join(folder, 'after.player.json')
    const said = marram('test-day', player, '--results', results, '--out', out)
    expect(said.status).toBe(1)
    expect(said.out).toContain('MAR-TEST-002 row 5')
    expect(said.out).toContain('26 putts, 6 short shots')
    expect(said.out).toContain(`The player file with these numbers is ${out}.`)
    const after = JSON.parse(readFileSync(out, 'utf8'))
    const { learned } = marramJson('test-day', player, '--results', results).document
    expect(after.putting.direction_sd_deg).toBeCloseTo(learned.putting_direction_sd_deg.after, 12)
    expect(after.putting.guess).toBeUndefined()
    expect(learned.putting_direction_sd_deg.low).toBeLessThan(learned.putting_direction_sd_deg.high)
  })

  it('draws the curves, and says that they need a test that was played', () => {
    const picture = join(folder, 'curves.svg')
    marram('test-day', player, '--results', results, '--picture', picture)
    const drawn = readFileSync(picture, 'utf8')
    expect(drawn).toContain('Putting and short game of Wren')
    expect(drawn).toMatch(
      /<desc [^>]*>Wren, 26 putts, 6 short shots\. From 7 feet one putt \d+ times in 100, between/,
    )
    const bare = marram('test-day', player, '--picture', picture)
    expect(bare).toMatchObject({ status: 2, out: '' })
    expect(bare.err).toMatch(/^MAR-USAGE-002 .*--results/)
  })

  it('writes nothing when the table is none', () => {
    const out = join(folder, 'none.player.json')
    writeFileSync(results.replace('today', 'none'), 'hole,score\n1,5\n')
    const said = marram('test-day', player, '--results', results.replace('today', 'none'), '--out', out)
    expect(said.status).toBe(2)
    expect(said.err + said.out).toContain('MAR-TEST-001')
    expect(existsSync(out)).toBe(false)
  })
})
