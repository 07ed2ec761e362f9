import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { twoClubs, twoShort } from '../fixtures/two-short.ts'
import { bytesOf, canReadPdf, sizeOf, textOf } from './printed-pages.ts'
import { marram, marramJson } from './run-cli.ts'

// `marram book` as people use it: README.md.

const folder = mkdtempSync(join(tmpdir(), 'marram-book-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, document: unknown): string => {
  const path = join(folder, name)
  writeFileSync(path, JSON.stringify(document))
  return path
}

const COURSE = file('two-short.geojson', twoShort())
const GREENLESS = file('one-green.geojson', twoShort(false))
const EBB = file('ebb.player.json', twoClubs('Ebbe Strömnäs'))
const WREN = file('wren.player.json', {
  schema: 'player/1',
  name: 'Wren Hollis',
  hand: 'right',
  age: 12,
  clubs: [{ name: '9-iron', carry_m: 80 }],
  bag: 'as-listed',
})
const CARD_SIDES = ['card, side 1', 'card, side 2']
const QUICK = ['--player', EBB, '--draws', '0', '--workers', '0']
const out = (name: string): string => join(folder, name)

describe('marram book', () => {
  it('writes a card, says so, and writes the same bytes again', () => {
    const [one, two] = [out('one.pdf'), out('two.pdf')]
    const words = ['--hole', '1', '--paper', 'letter', '--fold']
    const run = marram('book', COURSE, ...QUICK, '--out', one, ...words)
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toContain(`2 pages for practice in ${one}.`)
    expect(marram('book', COURSE, ...QUICK, '--out', two, ...words).status).toBe(0)
    expect(readFileSync(one).equals(readFileSync(two))).toBe(true)
    if (!canReadPdf) return
    expect(sizeOf(bytesOf(one))).toMatchObject({ pages: 2, width: 792, height: 612 })
    const read = textOf(bytesOf(one))
    expect(read).toContain('Two Short: Ebbe Strömnäs')
    expect(read).toContain('87 yd')
    expect(read).toContain('Sand wedge')
  })

  it('says of plans by quick settings that they are rough, on screen, on the card and in its answer', () => {
    const path = out('quick.pdf')
    const asked = ['book', COURSE, '--player', EBB, '--quick', '--workers', '0', '--out', path, '--hole', '1']
    const run = marram(...asked)
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toContain('quick settings, about 0.1 of a stroke rough')
    expect(marramJson(...asked)).toMatchObject({ status: 0, document: { quick: true } })
    if (canReadPdf) expect(textOf(bytesOf(path)).replace(/\s+/g, ' ')).toContain('solved by quick settings')
    const plan = marram('plan', COURSE, '--player', EBB, '--quick', '--hole', '1')
    expect(plan.out).toContain('quick settings, about 0.1 of a stroke rough')
    expect(marram('plan', COURSE, '--player', EBB, '--quick', '--draws', '4', '--hole', '1')).toMatchObject({
      status: 2,
      err: expect.stringContaining('MAR-USAGE-002'),
    })
  })

  it('prints for a field, each player from a new sheet, and a pin sheet for nobody in particular', () => {
    const field = [...QUICK, '--player', WREN, '--hole', '1']
    const { status, document } = marramJson('book', COURSE, ...field, '--out', out('field.pdf'))
    expect(status).toBe(0)
    expect(document).toMatchObject({ players: [EBB, WREN], pages: Array(2).fill(CARD_SIDES).flat() })
    const caddie = [...field, '--kind', 'caddie', '--paper', 'letter', '--out', out('caddie.pdf')]
    expect(marram('book', COURSE, ...caddie).out).toContain('4 pages of 2 players for practice')
    const pins = ['--kind', 'pins', '--out', out('pins.pdf')]
    expect(marram('book', COURSE, ...pins)).toMatchObject({ status: 0, err: '' })
    expect(marram('book', COURSE, '--out', out('nobody.pdf'))).toMatchObject({ status: 2 })
    if (!canReadPdf) return
    const words = textOf(bytesOf(out('field.pdf')))
    expect(words).toContain('Ebbe Strömnäs')
    expect(words).toContain('Wren')
    expect(textOf(bytesOf(out('pins.pdf')))).toContain('10 on, middle')
  })

  it('prints sentences that a person wrote, points out what changed under them, and refuses what may not be carried', () => {
    const written = (name: string, words: string): string => {
      const player = JSON.parse(readFileSync(EBB, 'utf8'))
      const at = { course: 'Two Short', hole: '1', reader: 'player', part: 'next', units: 'yards' }
      return file(name, { ...player, sentences: [{ ...at, words, under: 'Then the putter.' }] })
    }
    const asked = (player: string, path: string) => [
      'book',
      COURSE,
      '--player',
      player,
      '--draws',
      '0',
      '--workers',
      '0',
      '--hole',
      '1',
      '--out',
      path,
    ]
    const own = asked(written('own.player.json', 'Two putts, and on.'), out('own.pdf'))
    const { status, document } = marramJson(...own)
    expect(status).toBe(0)
    expect(document).toMatchObject({ changed: [{ hole: '1', part: 'next', why: 'plan' }] })
    if (canReadPdf) expect(textOf(bytesOf(out('own.pdf')))).toContain('Two putts, and on.')
    const barred = asked(written('barred.player.json', 'It plays 90.'), out('barred.pdf'))
    const run = marram(...barred, '--for', 'counting')
    expect(run.status).toBe(2)
    expect(run.err).toContain('MAR-BOOK-006')
    expect(run.err).toContain('hole 1, next')
    expect(existsSync(out('barred.pdf'))).toBe(false)
  })

  it('takes a player who is given twice for a slip', () => {
    const twice = marram('book', COURSE, ...QUICK, '--player', EBB, '--out', out('twice.pdf'))
    expect([twice.status, existsSync(out('twice.pdf'))]).toEqual([2, false])
    expect(twice.err).toMatch(/MAR-USAGE-002.*given twice/s)
  })

  it('never writes over what it reads, and leaves it as it was', () => {
    const mine = file('mine.player.json', twoClubs('Ebbe Strömnäs'))
    const before = readFileSync(mine)
    const run = marram('book', COURSE, '--player', mine, '--kind', 'caddie', '--out', mine)
    expect(run).toMatchObject({ status: 2, err: expect.stringContaining('MAR-FILE-008') })
    expect(readFileSync(mine).equals(before)).toBe(true)
    expect(marram('book', COURSE, '--kind', 'pins', '--out', COURSE).err).toContain('MAR-FILE-008')
  })

  it('says where words alone need a player, and which letters no type has', () => {
    const alone = marram('book', COURSE, '--kind', 'pins', '--text-only', '--out', out('alone.pdf'))
    expect(alone).toMatchObject({ status: 2, err: expect.stringContaining('words alone are a card') })
    expect(existsSync(out('alone.pdf'))).toBe(false)
    const far = file('far.player.json', twoClubs('张伟'))
    const run = marram('book', COURSE, '--player', far, '--kind', 'caddie', '--out', out('far.pdf'))
    expect(run).toMatchObject({ status: 0, err: '' })
    expect(run.out).toContain('The printed type lacks letters of the name “张伟”: 张 伟.')
  })

  it('says which holes of a table it could not read', () => {
    const table = join(folder, 'two.csv')
    writeFileSync(
      table,
      'hole,what,side,from_m,to_m,near_m,far_m,note\n1,green,,120,140,,22,par 3\n2,fairway,,60,100,,30,\n',
    )
    const run = marram('book', table, '--kind', 'pins', '--out', out('read.pdf'))
    expect(run.status).toBe(1)
    expect(run.out).toMatch(/Hole 2 .*left out/)
  })

  it('refuses what may not be carried before it works anything out', () => {
    const pins = ['--kind', 'pins', '--for', 'counting', '--out', out('few.pdf')]
    const run = marram('book', COURSE, ...pins)
    expect(run.status).toBe(2)
    expect(run.err).toContain('MAR-BOOK-005')
    expect(existsSync(out('few.pdf'))).toBe(false)
  })

  it('says which hole has no plan, on the page and by its exit code', () => {
    const path = out('one-green.pdf')
    const { status, document } = marramJson('book', GREENLESS, ...QUICK, '--out', path, '--for', 'counting')
    expect(status).toBe(1)
    expect(document).toMatchObject({ schema: 'book/1', for: 'counting', unplanned: ['2'], quick: false })
    if (!canReadPdf) return
    expect(textOf(bytesOf(path))).toContain('No plan: Hole 2 cannot be planned')
  })

  it('refuses a green larger than may be carried with its clause, and writes nothing', () => {
    const path = out('large.pdf')
    const asked = [
      'book',
      COURSE,
      ...QUICK,
      '--hole',
      '1',
      '--out',
      path,
      '--kind',
      'book',
      '--for',
      'counting',
    ]
    const run = marram(...asked, '--green-scale', '1:240')
    expect(run.status).toBe(2)
    expect(run.err).toContain('MAR-BOOK-004')
    expect(run.err).toContain('Clarification 4.3a/1')
    expect(existsSync(path)).toBe(false)
    expect(marram(...asked)).toMatchObject({ status: 0, err: '' })
    if (!canReadPdf) return
    // A cover, the hole and its green, relief and cautions: three sheets of two pages.
    expect(sizeOf(bytesOf(path))).toMatchObject({ pages: 3 })
    expect(textOf(bytesOf(path))).toContain('Green 1:480')
  })

  it('leaves the file that was there when it cannot run, and nothing beside it', () => {
    const path = out('kept.pdf')
    writeFileSync(path, 'before')
    const before = readdirSync(folder)
    for (const wrong of [
      ['--paper', 'a3'],
      ['--for', 'fun'],
      ['--draws', 'many'],
    ]) {
      const run = marram('book', COURSE, ...QUICK, '--out', path, ...wrong)
      expect(run.status).toBe(2)
      expect(run.err).toContain('MAR-USAGE-002')
    }
    expect(readFileSync(path, 'utf8')).toBe('before')
    expect(readdirSync(folder)).toEqual(before)
  })

  it('says that the file cannot be written, a full disk too', () => {
    const missing = marram('book', COURSE, ...QUICK, '--out', join(folder, 'none', 'x.pdf'))
    expect(missing.status).toBe(2)
    expect(missing.err).toContain('MAR-FILE-006')
    const full = marram('book', COURSE, ...QUICK, '--out', '/dev/full', '--hole', '1')
    expect(full.status).toBe(2)
    expect(full.err).toContain('MAR-FILE-006')
    expect(full.err).toContain('ENOSPC')
  })
})

describe('marram foursomes', () => {
  const pair = ['--player', EBB, '--player', WREN]

  it('says who takes which tees, and writes the captain’s sheet', () => {
    const path = out('captain.pdf')
    const { status, document } = marramJson('foursomes', COURSE, ...pair, '--for', 'counting', '--out', path)
    expect(status).toBe(0)
    expect(document).toMatchObject({ schema: 'foursomes/1', players: ['Ebbe Strömnäs', 'Wren'], file: path })
    const { strokes, otherwise, holes } = document as {
      strokes: number
      otherwise: number
      holes: { saves: number }[]
    }
    expect(otherwise - strokes).toBeGreaterThanOrEqual(0)
    expect(holes.reduce((sum, { saves }) => sum + saves, 0)).toBeCloseTo(otherwise - strokes, 9)
    expect(marram('foursomes', COURSE, ...pair, '--hole', '1').out).toContain('one ball by turns')
    if (!canReadPdf) return
    const words = textOf(bytesOf(path))
    expect(words).toContain('Two Short: Ebbe Strömnäs and Wren')
    expect(words).toContain('Thunder or lightning')
    expect(words).toContain('For a counting round')
  })

  it('asks for two players', () => {
    const run = marram('foursomes', COURSE, '--player', EBB)
    expect(run.status).toBe(2)
    expect(run.err).toContain('A foursome is a pair')
  })
})
