import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, serveDesk, smallTargets, violations } from '../../tools/served-desk.ts'
import { canReadPdf, textOf } from '../acceptance/printed-pages.ts'
import { type Json, marramJson } from '../acceptance/run-cli.ts'

/** Scores of rounds that were played, on the sample course; what is reckoned is held against `marram score`, whose tests name the sources. */
const desk = await serveDesk()
const folder = mkdtempSync(join(tmpdir(), 'marram-score-page-'))
afterAll(async () => {
  await desk.close()
  rmSync(folder, { recursive: true, force: true })
})
const { page } = desk
const NAMES = {
  'tobin-skell': 'Tobin Skell',
  wren: 'Wren',
  'aldous-brack': 'Aldous Brack',
  'ysolde-marrin': 'Ysolde Marrin',
}
type Id = keyof typeof NAMES
const IDS = Object.keys(NAMES) as Id[]
const fives: readonly number[] = Array(18).fill(5)
/** Scores alone, from the first hole on; `null` = picked up. */
const SCORES: Readonly<Record<Id, readonly (number | null)[]>> = {
  'tobin-skell': fives,
  wren: [null, ...fives.slice(1)],
  'aldous-brack': [...fives.slice(1), 4],
  'ysolde-marrin': [...fives.slice(1), 6],
}
const roundOf = (id: Id): object => ({
  schema: 'round/1',
  id: `of-${id}`,
  date: '2026-07-23',
  tee: 'drift',
  course: 'Sandrel Ness',
  course_id: 'sandrel-ness',
  player: NAMES[id],
  player_id: id,
  holes: SCORES[id].map((score, hole) => ({
    ref: String(hole + 1),
    strokes: Array.from({ length: Math.max(0, (score ?? 0) - 2) }, () => ({})),
    putts: score === null ? 0 : 2,
    ...(score === null ? { pickedUp: true } : {}),
  })),
})
const put = (place: string, document: unknown): Promise<unknown> =>
  page.evaluate(
    `fetch('/api/${place}', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(document))} }).then((answer) => answer.status)`,
  )
const choose = (label: string, option: string, side = 0) =>
  page
    .locator('.side-fields')
    .nth(side)
    .getByRole('combobox', { name: label, exact: true })
    .selectOption(option)
const field = (name: string) => page.getByRole('combobox', { name, exact: true })
const rows = () =>
  page
    .locator('.figure-table tbody tr')
    .evaluateAll((all) => all.map((row) => [...row.children].map((cell) => cell.textContent))) as Promise<
    string[][]
  >
const scoreOf = (...words: readonly string[]): Json => {
  const { status, document } = marramJson('score', 'examples/sandrel-ness.course.geojson', ...words)
  expect(status).toBe(0)
  return document
}
const file = (id: Id): string => {
  const path = join(folder, `${id}.round.json`)
  writeFileSync(path, JSON.stringify(roundOf(id)))
  return path
}
const of = (option: string, id: Id): string[] => [
  ...[`--${option === '' ? 'player' : 'opponent'}`, `examples/${id}.player.json`],
  ...[`--${option}round`, file(id)],
]
const standing = () => page.locator('.after-lead').textContent()

beforeAll(async () => {
  await page.goto(`${desk.address}#/rounds`)
  await page.getByRole('heading', { name: 'Kept rounds' }).waitFor()
  for (const id of IDS) expect(await put(`rounds/of-${id}`, roundOf(id))).toBe(201)
  await page.goto(`${desk.address}#/course/sandrel-ness`)
  await page.getByRole('link', { name: 'A score' }).click()
}, PATIENCE)

describe('a score', () => {
  it('is there as soon as a round is chosen, net and gross', async () => {
    await page.getByText('Choose a round for every ball').waitFor()
    await choose('Round', 'of-aldous-brack')
    await page.getByText('Aldous Brack:', { exact: false }).first().waitFor()
    const { sides } = scoreOf(...of('', 'aldous-brack'))
    expect(await standing()).toBe(`Aldous Brack: 89 gross, ${sides[0].total} net on 18 holes.`)
    await field('What counts').selectOption('points')
    await expect
      .poll(standing)
      .toContain(`${scoreOf(...of('', 'aldous-brack'), '--by', 'points').sides[0].total} points`)
    await field('Handicaps').selectOption('gross')
    await expect
      .poll(standing)
      .toContain(`${scoreOf(...of('', 'aldous-brack'), '--by', 'points', '--gross').sides[0].total} points`)
    await field('Handicaps').selectOption('published')
  })

  it('is a four-ball match hole by hole, as the command line has it', async () => {
    await field('Play').selectOption('four-ball')
    await field('What counts').selectOption('match')
    await choose('Round of partner 1', 'of-tobin-skell')
    await choose('Round of partner 2', 'of-wren')
    await choose('Round of partner 1', 'of-aldous-brack', 1)
    await choose('Round of partner 2', 'of-wren', 1)
    await page.getByText('One round stands for two balls').waitFor()
    await choose('Round of partner 2', 'of-ysolde-marrin', 1)
    const { match, sides } = scoreOf(
      ...['--play', 'four-ball', '--by', 'match', ...of('', 'tobin-skell'), ...of('', 'wren')],
      ...[...of('opponent-', 'aldous-brack'), ...of('opponent-', 'ysolde-marrin')],
    )
    await expect.poll(standing).toBe(`Tobin Skell and Wren: ${match.words}.`)
    const shown = await rows()
    expect(shown.map((row) => row[5])).toEqual(
      sides[0].holes.map(({ counts }: Json) => (counts === null ? '–' : String(counts))),
    )
    expect(shown[0]?.[4]?.trim()).toMatch(/^– +\(up −1\)$/)
    for (const [width, height, print] of [
      [320, 640, 'large'],
      [320, 640, 'usual'],
      [1280, 900, 'usual'],
    ] as const) {
      await page.setViewportSize({ width, height })
      await page.getByText('Reading', { exact: true }).click()
      await page.getByLabel('Print', { exact: true }).selectOption(print)
      await page.keyboard.press('Escape')
      await expect.poll(() => beyondTheSide(page)).toEqual([])
      expect(await smallTargets(page)).toEqual([])
      expect(await violations(page)).toEqual([])
    }
  })

  it('says why there is none, and takes a Committee’s own numbers', async () => {
    await field('What counts').selectOption('maximum')
    await page.getByText('No allowance is published for four-ball by maximum').waitFor()
    await field('Handicaps').selectOption('own')
    await page.getByLabel('Of the course handicap, %').fill('85')
    await field('Most that counts on a hole').selectOption('over-par')
    await page.getByRole('spinbutton', { name: 'Over par' }).fill('1')
    const { sides } = scoreOf(
      ...['--play', 'four-ball', '--by', 'maximum', '--maximum', 'par+1', '--allowance', '85'],
      ...[...of('', 'tobin-skell'), ...of('', 'wren')],
    )
    await expect.poll(standing).toContain(`${sides[0].total} net`)
    await page.getByRole('spinbutton', { name: 'Over par' }).fill('0')
    expect(await page.getByRole('spinbutton', { name: 'Over par' }).getAttribute('aria-invalid')).toBe('true')
  })

  it('is of one ball of partners too', async () => {
    await field('Play').selectOption('foursomes')
    await field('What counts').selectOption('strokes')
    await field('Handicaps').selectOption('published')
    await choose('Partner 1', 'aldous-brack')
    await choose('Partner 2', 'tobin-skell')
    await choose('Round of the one ball', 'of-aldous-brack')
    const words = [
      '--play',
      'foursomes',
      ...of('', 'aldous-brack'),
      '--player',
      'examples/tobin-skell.player.json',
    ]
    const { sides } = scoreOf(...words)
    await expect.poll(standing).toContain(`${sides[0].total} net on 18 holes`)
  })

  it.runIf(canReadPdf)('prints', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PDF' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('sandrel-ness-score.pdf')
    const text = textOf(readFileSync(await download.path()), 1).replace(/\s+/g, ' ')
    expect(text).toContain('The scorecard that was certified and returned is what counts')
    expect(text).toContain('Sandrel Ness: foursomes, stroke play')
    expect(text).toMatch(/Hole 1: par \d, index \d+, Aldous Brack and Tobin Skell \d \(5( −\d)?\)\./)
    expect(text).not.toContain('?')
  })

  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})
