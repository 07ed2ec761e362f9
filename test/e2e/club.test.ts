import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { costText } from '#golf/strategy/cost-text.ts'
import { beyondTheSide, PATIENCE, serveDesk, smallTargets, violations } from '../../tools/served-desk.ts'
import { canReadPdf, sizeOf, textOf } from '../acceptance/printed-pages.ts'
import { marramJson } from '../acceptance/run-cli.ts'
import { twoClubs, twoShort } from '../fixtures/two-short.ts'

/** The rounds of a club on its course, without names. A course of two short holes, so that a hole takes a second or two. */
const desk = await serveDesk()
const folder = mkdtempSync(join(tmpdir(), 'marram-club-page-'))
afterAll(async () => {
  await desk.close()
  rmSync(folder, { recursive: true, force: true })
})
const { page } = desk
const NAMES = ['Abel Marsh', 'Berit Noll', 'Cosmo Oak']
const hole = (ref: string, left: number): object => ({
  ref,
  strokes: [{ club: '9-iron', to: { letter: 'g', left_m: left } }],
  putts: 2,
  firstPutt_m: left,
})
const roundOf = (member: number, id: string, more: object = {}): object => ({
  schema: 'round/1',
  id,
  date: `2026-06-0${member + 1}`,
  tee: 'short',
  course: 'Two Short',
  course_id: 'two-short',
  player: NAMES[member],
  player_id: `member-${member}`,
  holes: [hole('1', 4 + member), hole('2', 5)],
  ...more,
})
const put = (place: string, document: unknown): Promise<unknown> =>
  page.evaluate(
    `fetch('/api/${place}', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(document))} }).then((answer) => answer.status)`,
  )
const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: PATIENCE })
/** As a table of means has it: none is a figure too. */
const signed = (strokes: number): string => costText(strokes).replace('–', '0.00')
const body = () => page.locator('main').textContent()

beforeAll(async () => {
  await page.goto(`${desk.address}#/rounds`)
  await page.getByRole('heading', { name: 'Kept rounds' }).waitFor()
  expect(await put('courses/two-short', twoShort())).toBe(201)
  for (const [member, name] of NAMES.entries()) {
    expect(await put(`players/member-${member}`, twoClubs(name))).toBe(201)
    expect(await put(`rounds/round-${member}`, roundOf(member, `round-${member}`))).toBe(201)
  }
  expect(await put('rounds/twin', roundOf(0, 'round-0'))).toBe(201)
  expect(await put('rounds/nobody', roundOf(0, 'nobody', { player: 'Dora Pell', player_id: 'dora' }))).toBe(
    201,
  )
  await page.goto(`${desk.address}#/course/two-short`)
  await page.getByRole('link', { name: 'The club’s rounds' }).click()
}, PATIENCE)

describe('the club', () => {
  it('says nothing of fewer members than stand behind a figure', async () => {
    await page.getByText('The rounds are of 3 members: nothing is said of fewer than 5.').waitFor()
    const least = page.getByLabel('Members behind every figure, at least')
    await least.fill('2')
    expect(await least.getAttribute('aria-invalid')).toBe('true')
    expect(await page.locator('.figure-table').count()).toBe(0)
  })

  it('says what the command line says, and nowhere who they are', async () => {
    await page.getByLabel('Members behind every figure, at least').fill('3')
    await poll(() => page.getByRole('button', { name: 'Save as PDF' }).isEnabled()).toBe(true)
    expect(await page.locator('.after-lead').textContent()).toBe('Two Short: 3 rounds of 3 members')
    expect(await body()).toContain(
      '2 rounds: not closed, kept twice, not to be read, or of nobody who is kept.',
    )

    const file = (name: string, content: object): string => {
      const path = join(folder, name)
      writeFileSync(path, JSON.stringify(content))
      return path
    }
    const { document } = marramJson(
      'club',
      file('two.geojson', twoShort()),
      ...NAMES.flatMap((name, member) => [
        ...['--player', file(`${member}.player.json`, twoClubs(name))],
        ...['--round', file(`${member}.round.json`, roundOf(member, `round-${member}`))],
      ]),
      ...['--least', '3'],
    )
    const cells = (title: string) =>
      page
        .locator(`[aria-label^="${title}"] tbody tr`)
        .evaluateAll((rows) =>
          rows.map((row) => [...row.children].map((cell) => cell.textContent)),
        ) as Promise<string[][]>
    const holes = await cells('The holes, the hardest first')
    expect(holes.map(([ref, par, members, over, plans]) => [ref, par, members, over, plans])).toEqual(
      document.holes.map(
        ({ hole: ref, members, par, over_par, over_plan }: Record<string, number | string>) => [
          ref,
          String(par),
          String(members),
          signed(over_par as number),
          signed(over_plan as number),
        ],
      ),
    )
    expect((await cells('Where strokes are lost')).length).toBe(document.parts.length)
    const all = (await body()) ?? ''
    for (const word of [...NAMES.flatMap((name) => name.split(' ')), 'Dora', 'member-', '2026-06'])
      expect(all).not.toContain(word)
  })

  it('has no violation, on a narrow screen either', async () => {
    for (const [width, height] of [
      [320, 640],
      [1280, 900],
    ] as const) {
      await page.setViewportSize({ width, height })
      await poll(() => beyondTheSide(page)).toEqual([])
      expect(await smallTargets(page)).toEqual([])
      expect(await violations(page)).toEqual([])
    }
  })

  it.runIf(canReadPdf)('prints a page for the committee', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PDF' }).click(),
    ])
    expect(download.suggestedFilename()).toBe('two-short-club.pdf')
    const pdf = readFileSync(await download.path())
    const text = Array.from({ length: sizeOf(pdf).pages }, (_, index) => textOf(pdf, index + 1)).join('\n')
    for (const word of ['3 rounds of 3 members', 'The holes, the hardest first', 'Hole 1: par 3, members 3'])
      expect(text.replace(/\s+/g, ' ')).toContain(word)
    for (const name of NAMES) expect(text).not.toContain(name)
  })

  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})
