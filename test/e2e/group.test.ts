import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, serveDesk, violations } from '../../tools/served-desk.ts'
import { canReadPdf, sizeOf, textOf } from '../acceptance/printed-pages.ts'
import { type Json, marram, marramJson } from '../acceptance/run-cli.ts'
import { twoShort } from '../fixtures/two-short.ts'

/** Cards of a group as one file. A course of two short holes and players of two clubs, so that a plan takes a second or two. */
const desk = await serveDesk()
afterAll(() => desk.close())
const { page } = desk

const put = (place: string, document: unknown): Promise<unknown> =>
  page.evaluate(
    `fetch('/api/${place}', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(document))} }).then((answer) => answer.status)`,
  )
const playerOf = (name: string, nine: number) => ({
  schema: 'player/1',
  name,
  hand: 'right',
  handicapIndex: 18,
  clubs: [
    { name: '9-iron', carry_m: nine },
    { name: 'sand-wedge', carry_m: nine - 30 },
  ],
  bag: 'as-listed',
})
const COURSE = { ...twoShort(), marram: { schema: 'course/1', name: 'Two Short', localRules: ['G-11'] } }
const stateOf = (name: string) => page.locator('.group-players li').filter({ hasText: name }).locator('span')
const save = () => page.getByRole('button', { name: 'Save all as one PDF' })
const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: PATIENCE })

beforeAll(async () => {
  await page.goto(`${desk.address}#/players`)
  expect(await put('courses/two-short', COURSE)).toBe(201)
  expect(await put('players/ebba', playerOf('Ebba Strand', 100))).toBe(201)
  expect(await put('players/odd', playerOf('Odd Larkspur', 110))).toBe(201)
  await page.evaluate(`location.hash = '#/course/two-short/group'`)
  await page.getByText('Choose the players for whom to print.').waitFor()
}, PATIENCE)

describe('the cards of a group', () => {
  it('are planned one player after the other, and say how far each is', async () => {
    expect(await save().isDisabled()).toBe(true)
    await page.getByLabel('Ebba Strand', { exact: true }).check()
    await page.getByLabel('Odd Larkspur', { exact: true }).check()
    await poll(() => stateOf('Odd Larkspur').textContent()).toBe('planned')
    expect(await stateOf('Ebba Strand').textContent()).toBe('planned')
    expect(await page.getByRole('link', { name: 'The card of Ebba Strand' }).getAttribute('href')).toBe(
      '#/course/two-short/card/ebba',
    )
    expect(await violations(page)).toEqual([])
  })

  it.runIf(canReadPdf)('come as one file in which each begins a sheet of paper', async () => {
    const [download] = await Promise.all([page.waitForEvent('download'), save().click()])
    expect(download.suggestedFilename()).toBe('two-short-group-card.pdf')
    const pdf = readFileSync(await download.path())
    const pages = Array.from({ length: sizeOf(pdf).pages }, (_, index) => textOf(pdf, index + 1))
    expect(pages.length % 2).toBe(0)
    const first = pages.findIndex((text) => text.includes('Odd Larkspur'))
    expect(first).toBeGreaterThan(0)
    expect(first % 2).toBe(0)
    expect(pages[0]).toContain('Ebba Strand')
    // What each was made by is kept, for the recap of a round by it.
    const cards = `fetch('/api/cards').then((answer) => answer.json()).then(({ cards }) => cards.map(({ name }) => name))`
    await poll(() => page.evaluate(cards)).toEqual([
      expect.stringContaining('Ebba Strand, Two Short'),
      expect.stringContaining('Odd Larkspur, Two Short'),
    ])
  })

  it('are not printed where a page breaks the Rules, and it is said of whom', async () => {
    // Model Local Rule G-11 allows the player no other book than the Committee's: the pocket book has pictures.
    await page.getByLabel('What', { exact: true }).selectOption('book')
    await page.getByLabel('For', { exact: true }).selectOption('counting')
    await poll(() => save().isEnabled()).toBe(true)
    await save().click()
    await poll(() => page.locator('.group-refusals li').allTextContents()).toEqual([
      expect.stringMatching(/^Ebba Strand: .*G-11/),
      expect.stringMatching(/^Odd Larkspur: .*G-11/),
    ])
  })

  it('are remembered in this browser', async () => {
    await page.getByLabel('What', { exact: true }).selectOption('caddie')
    await page.reload()
    await page.getByText('2 players; these pages need no plan.').waitFor()
    await page.getByLabel('Odd Larkspur', { exact: true }).uncheck()
    await page.getByText('1 player; these pages need no plan.').waitFor()
    await poll(() => save().isEnabled()).toBe(true)
  })

  it('stand on a narrow screen', async () => {
    await page.setViewportSize({ width: 320, height: 640 })
    await poll(() => beyondTheSide(page)).toEqual([])
    expect(desk.troubles).toEqual([])
  })
})

describe('a pair of foursomes', () => {
  const cells = () =>
    page
      .locator('.figure-table tbody tr')
      .evaluateAll((rows) => rows.map((row) => [...row.children].map((cell) => cell.textContent)))

  it('is told who takes which tees, as the command line tells it', async () => {
    await page.setViewportSize({ width: 1280, height: 900 })
    await page.getByRole('link', { name: 'Foursomes' }).click()
    await page.getByText('Choose the two partners').waitFor()
    await page.getByLabel('First partner').selectOption('ebba')
    expect(await page.getByLabel('Second partner').locator('option[value=ebba]').count()).toBe(0)
    await page.getByLabel('Second partner').selectOption('odd')
    await page.getByLabel('For', { exact: true }).selectOption('practice')
    await poll(() => page.getByRole('button', { name: 'Save as PDF' }).isEnabled()).toBe(true)
    const folder = mkdtempSync(join(tmpdir(), 'marram-pair-'))
    const file = (name: string, content: object): string => {
      const path = join(folder, name)
      writeFileSync(path, JSON.stringify(content))
      return path
    }
    const words = [
      ...['foursomes', file('two.geojson', COURSE)],
      ...['--player', file('a.player.json', playerOf('Ebba Strand', 100))],
      ...['--player', file('b.player.json', playerOf('Odd Larkspur', 110))],
    ]
    const { document } = marramJson(...words)
    const said = marram(...words).out
    rmSync(folder, { recursive: true })
    const lines = await page
      .getByRole('region', { name: 'Who takes which tees' })
      .locator('li')
      .allTextContents()
    expect(lines.length).toBe(3)
    for (const line of lines) expect(said).toContain(line)
    expect((await cells()).map((row) => [row[0], row[4], row[6]])).toEqual(
      document.holes.map(({ ref, turns }: Json) => [
        ref,
        ...turns.map(({ strokes }: Json) => strokes.toFixed(2)),
      ]),
    )
    for (const width of [320, 1280]) {
      await page.setViewportSize({ width, height: 900 })
      await poll(() => beyondTheSide(page)).toEqual([])
      expect(await violations(page)).toEqual([])
    }
  })

  it.runIf(canReadPdf)('has a sheet for the captain', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PDF' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('two-short-captain.pdf')
    const text = textOf(readFileSync(await download.path()), 1)
    expect(text).toContain('Two Short: Ebba Strand and Odd Larkspur')
    expect(desk.troubles).toEqual([])
  })
})
