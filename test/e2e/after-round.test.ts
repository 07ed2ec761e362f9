import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { beyondTheSide, PATIENCE, serveDesk, smallTargets, violations } from '../../tools/served-desk.ts'
import { canReadPdf, textOf } from '../acceptance/printed-pages.ts'
import { marram } from '../acceptance/run-cli.ts'
import { twoClubs, twoShort } from '../fixtures/two-short.ts'

/** What stands after a round: the recap of one that is kept, the season, and what to practise. A course of two short holes, so that a hole takes a second or two. */
const desk = await serveDesk()
const folder = mkdtempSync(join(tmpdir(), 'marram-after-'))
afterAll(async () => {
  await desk.close()
  rmSync(folder, { recursive: true, force: true })
})
const { page } = desk
const EBB = 'Ebbe Strömnäs'
const hole = (ref: string, club: string, left: number): object => ({
  ref,
  strokes: [{ club, to: { letter: 'g', left_m: left } }],
  putts: 2,
  firstPutt_m: left,
})
const ROUND = {
  schema: 'round/1',
  id: 'round-june',
  date: '2026-06-01',
  tee: 'short',
  course: 'Two Short',
  course_id: 'two-short',
  player: EBB,
  player_id: 'ebbe',
  holes: [hole('1', '9-iron', 6), hole('2', '9-iron', 3), hole('7', '9-iron', 3)],
}

const put = (place: string, document: unknown): Promise<unknown> =>
  page.evaluate(
    `fetch('/api/${place}', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(document))} }).then((answer) => answer.status)`,
  )
const stored = (place: string) =>
  page.evaluate(`fetch('/api/${place}').then((answer) => answer.text())`) as Promise<string>
const poll = (of: () => Promise<unknown>) => expect.poll(of, { timeout: PATIENCE })
const isWhole = () => poll(() => page.getByRole('button', { name: 'Save as PDF' }).isEnabled()).toBe(true)
/** The figures of a picture's or a table's words: `−0.30` is a number here. */
const figureOf = (text: string | null): number => Number(text?.replace('−', '-').replace('–', '0'))

/** On every screen, in large print and in every light: nothing beyond the side, everything large enough to hit, no violation. */
async function looks(): Promise<void> {
  await looksAt(320, 640, 'usual')
  await looksAt(320, 640, 'large')
  await looksAt(1280, 900, 'large')
  await looksAt(1280, 900, 'usual')
}

async function looksAt(width: number, height: number, print: 'usual' | 'large'): Promise<void> {
  await page.setViewportSize({ width, height })
  await page.getByText('Reading', { exact: true }).click()
  await page.getByLabel('Print', { exact: true }).selectOption(print)
  await page.keyboard.press('Escape')
  await poll(() => beyondTheSide(page)).toEqual([])
  expect(await smallTargets(page)).toEqual([])
  expect(await violations(page)).toEqual([])
}

beforeAll(async () => {
  await page.goto(`${desk.address}#/rounds`)
  await page.getByRole('heading', { name: 'Kept rounds' }).waitFor()
  expect(await put('courses/two-short', twoShort())).toBe(201)
  expect(await put('players/ebbe', twoClubs(EBB))).toBe(201)
  expect(await put('rounds/round-june', ROUND)).toBe(201)
  for (let day = 2; day < 8; day += 1) {
    const date = `2026-06-0${day}`
    const holes = [hole('1', '9-iron', 4 + day), hole('2', '9-iron', 3)]
    await put(`rounds/round-${day}`, { ...ROUND, id: `round-${day}`, date, holes })
  }
  await put('rounds/round-twin', { ...ROUND, id: 'round-twin' })
  await page.reload()
})

describe('the recap', () => {
  it('opens from the kept rounds, splits every hole that can be, and adds up to the score as it is printed', async () => {
    await page
      .getByRole('link', { name: /^Recap of 2026-06-01.*Ebbe/ })
      .first()
      .click()
    await isWhole()
    await poll(() => page.locator('.wide-picture svg').count()).toBe(1)
    expect(await page.locator('.after-lead').textContent()).toMatch(/Ebbe Strömnäs.*: 6 strokes on 2 holes/)
    const texts = await page.locator('.wide-picture svg text').allTextContents()
    const at = (name: string): number => figureOf(texts[texts.indexOf(name) + 1] ?? null)
    const score = at('score')
    const steps = texts.filter((text) => /^(choices|luck|struck: .*)$/.test(text))
    expect(steps.length).toBeGreaterThanOrEqual(4)
    const sum = steps.reduce((total, name) => total + at(name), at('expected, with the plan'))
    expect(score).toBe(6)
    expect(sum).toBeCloseTo(score, 6)

    const rows = await page.locator('[aria-label^="By hole"] tbody tr').allInnerTexts()
    expect(rows.map((row) => row.split('\t')[0])).toEqual(['1', '2'])
    for (const row of rows) {
      const [, , played, expected, , , , all] = row.split('\t').map(figureOf) as number[]
      expect((expected ?? 0) + (all ?? 0)).toBeCloseTo(played ?? 0, 1)
    }
    // Too much club costs; the hole that the course lacks is told and stops nothing.
    expect(await page.getByRole('region', { name: 'Choices that cost most' }).textContent()).toMatch(
      /Hole 1, stroke 1, 9-iron from the tee: \+0\.\d\d; the plan is the sand wedge/,
    )
    expect(await page.getByRole('region', { name: /left out/ }).textContent()).toMatch(/hole 7/)
  })

  it('has no violation, on a narrow screen either', looks)

  it('gives the sheet as a PDF with the same sums', async () => {
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PDF' }).click(),
    ])
    expect(file.suggestedFilename()).toBe('round-june-recap.pdf')
    if (canReadPdf) expect(textOf(readFileSync(await file.path()))).toMatch(/From plan to score.*\n?.*6/)
  })

  it('stands on the wall of a room, one idea a picture, by keys alone', async () => {
    await page.keyboard.press('w')
    const wall = page.getByRole('dialog', { name: 'On the wall' })
    await wall.locator('svg').waitFor()
    expect(await wall.locator('svg text').allTextContents()).toContain('how it was struck')
    expect(await violations(page)).toEqual([])
    await page.keyboard.press('ArrowRight')
    await poll(() => wall.locator('svg text').allTextContents()).toContain('struck: putting')
    await page.keyboard.press('Escape')
    await wall.waitFor({ state: 'detached' })
  })

  it('is there at once when it is opened again, and can be stopped and gone on with', async () => {
    await page.getByRole('link', { name: 'Rounds' }).click()
    await page
      .getByRole('link', { name: /^Recap of 2026-06-01.*Ebbe/ })
      .first()
      .click()
    await page.locator('.wide-picture').waitFor()
    expect(await page.getByRole('progressbar').count()).toBe(0)
    await page.getByRole('button', { name: 'Soon and rough' }).click()
    await page.getByText('about 0.1 of a stroke rough').waitFor()
    await isWhole()
    await page.getByLabel('Day', { exact: true }).selectOption('westerly')
    await page.getByRole('button', { name: 'Stop planning' }).click()
    await page.getByRole('button', { name: 'Plan the rest' }).click()
    await isWhole()
  })

  it('waits for the end of a round that counts, and asks whose one is that does not say', async () => {
    const log = [{ hole: '1', putts: 2, count: 1, by: 'phone' }]
    await put('rounds/round-open', { ...ROUND, id: 'round-open', purpose: 'counting', closed: false, log })
    await page.goto(`${desk.address}#/rounds/round-open`)
    await page.getByText('not closed yet').waitFor()
    expect(await page.locator('.wide-picture').count()).toBe(0)
    const { player, player_id, ...nobody } = ROUND
    await put('rounds/round-nobody', { ...nobody, id: 'round-nobody' })
    await page.goto(`${desk.address}#/rounds/round-nobody`)
    await page.getByText('does not say whose it is').waitFor()
    await page.getByLabel('Player', { exact: true }).selectOption('ebbe')
    await isWhole()
    expect([player, player_id]).toEqual([EBB, 'ebbe'])
  })
})

describe('the season', () => {
  it('takes the rounds of the player together, each once, and writes the letter', async () => {
    await page.goto(`${desk.address}#/course/two-short/season/ebbe`)
    await isWhole()
    expect(await page.locator('.after-lead').textContent()).toBe('Two Short, Ebbe Strömnäs: 7 rounds')
    const letter = await page.getByRole('region', { name: 'The letter' }).textContent()
    // The long club from the first tee, every time: a matter of choosing.
    expect(letter).toMatch(
      /A longer club off the tee|More club on the way to the green than the plan cost \d/,
    )
    const left = await page.getByRole('region', { name: /left out/ }).textContent()
    expect(left).toMatch(/2026-06-01 is kept twice.*|round-open|not closed yet/)
    expect(await page.locator('[aria-label^="Round by round"] tbody tr').count()).toBe(7)
    const figures = await page.locator('[aria-label^="From plan to score"] tbody td').allTextContents()
    const [choices, struck, luck, over] = figures.map(figureOf) as number[]
    expect((choices ?? 0) + (struck ?? 0) + (luck ?? 0)).toBeCloseTo(over ?? 0, 1)
    expect(await page.locator('.wide-picture svg text').allTextContents()).toContain('strokes to the green')
  })

  it('has no violation, on a narrow screen either', looks)

  it('counts only the rounds that are meant to count', async () => {
    await page.getByRole('button', { name: '2026-06-02 counts' }).click()
    await page.getByText('Ebbe Strömnäs: 6 rounds').first().waitFor()
    await isWhole()
    expect(await page.locator('[aria-label^="Round by round"] tbody tr').count()).toBe(6)
  })

  it('tells what changed against the season before, as the command line does', async () => {
    await page.getByLabel('The season begins on').fill('2026-06-05')
    await page.getByText('Ebbe Strömnäs: 3 rounds').first().waitFor()
    await isWhole()
    const letter = page.getByRole('region', { name: 'The letter' }).locator('li')
    const files = await Promise.all(
      ['june', '3', '4', '5', '6', '7'].map(async (name) => {
        const file = join(folder, `${name}.round.json`)
        writeFileSync(file, await stored(`rounds/round-${name}`))
        return ['june', '3', '4'].includes(name) ? ['--before', file] : ['--round', file]
      }),
    )
    const [course, player] = await Promise.all(
      ['courses/two-short', 'players/ebbe'].map(async (at, index) => {
        const file = join(folder, index === 0 ? 'on.geojson' : 'of.player.json')
        writeFileSync(file, await stored(at))
        return file
      }),
    )
    const run = marram('season', course as string, '--player', player as string, ...files.flat(), '--json')
    const { sentences, change } = JSON.parse(run.out)
    expect(change.rounds_before).toBe(3)
    expect(await letter.allTextContents()).toEqual(sentences)
    const changed = page.locator('[aria-label^="Against the season before"] tbody tr')
    expect(await changed.count()).toBe(change.changes.length)
    expect(await page.getByText('2026-06-03, 2 holes, of the season before').count()).toBe(1)
    await looksAt(320, 640, 'large')
    await looksAt(1280, 900, 'usual')
  })

  it('says that no round is of this season', async () => {
    await page.getByLabel('The season begins on').fill('2027-01-01')
    await page.getByText('No round that counts is of this season.').waitFor()
    expect(await violations(page)).toEqual([])
  })

  it('says that there is no round yet', async () => {
    await page.getByLabel('Player', { exact: true }).selectOption('wren')
    await page.getByText('No closed round of Wren on this course is kept yet.').waitFor()
    expect(await violations(page)).toEqual([])
    await page.getByRole('link', { name: 'Write one down, or see the rounds that are kept' }).click()
    await page.waitForURL((url) => url.hash === '#/rounds')
  })
})

describe('what rounds say of the shots', () => {
  const choice = (date: string) => page.getByRole('button', { name: `Learn from it: ${date}` })

  it('learns from the rounds that are chosen as the command line does, and from each once', async () => {
    await page.goto(`${desk.address}#/shots/ebbe`)
    const rounds = page.getByRole('region', { name: 'Rounds to learn from' })
    await choice('2026-06-02').click()
    await choice('2026-06-03').click()
    expect(await rounds.textContent()).toContain('is kept twice')
    await page.getByRole('button', { name: 'Learn from these 2 rounds' }).click()
    await page.getByRole('heading', { name: `${EBB}, learned from 4 shots` }).waitFor()
    const words = (await page.locator('.learned').textContent()) ?? ''
    expect(words).toContain('2 rounds: 4 full shots, 4 of them without a line')
    expect(words).toMatch(/putts start off line by, degrees/)
    await looksAt(320, 640, 'large')
    await looksAt(1280, 900, 'usual')

    const [player, course, ...files] = await Promise.all(
      [
        ['players/ebbe', 'ebbe.player.json'],
        ['courses/two-short', 'two-short.geojson'],
        ['rounds/round-2', 'two.round.json'],
        ['rounds/round-3', 'three.round.json'],
      ].map(async ([at, name]) => {
        const file = join(folder, name as string)
        writeFileSync(file, await stored(at as string))
        return file
      }),
    )
    const out = join(folder, 'learned.player.json')
    const asked = [player, '--course', course, '--hole', '1', '--out', out] as string[]
    const run = marram('pattern', ...asked, ...files.flatMap((file) => ['--round', file]))
    expect(run.status, run.err).toBe(0)
    await page.getByRole('button', { name: `Keep this as ${EBB}` }).click()
    await page.getByRole('link', { name: 'Shots' }).waitFor()
    expect(await stored('players/ebbe')).toBe(readFileSync(out, 'utf8'))

    await page.goto(`${desk.address}#/shots/ebbe`)
    await choice('2026-06-04').waitFor()
    expect(await choice('2026-06-02').count()).toBe(0)
    expect(await rounds.getByText('learned from before').count()).toBe(2)
  })
})

describe('what to practise', () => {
  const inStore = async (): Promise<unknown> =>
    JSON.parse(String(await page.evaluate(`fetch('/api/notes/practice').then((answer) => answer.text())`)))
  const part = (name: string) => page.getByRole('group', { name })

  it('says at most three things with a dated re-test', async () => {
    await page.goto(`${desk.address}#/course/two-short/practice/ebbe`)
    await isWhole()
    await page.getByLabel('From', { exact: true }).fill('2026-11-25')
    const items = page.locator('.practice-items li')
    expect(await items.count()).toBeGreaterThan(0)
    expect(await items.count()).toBeLessThanOrEqual(3)
    await poll(() => items.first().textContent()).toMatch(
      /10 hours of it are worth about \d\.\d[05] of a stroke a round here\..*own\.Re-test on 2027-01-06:/,
    )
  })

  it('has no violation, on a narrow screen either', looks)

  it('goes by the professional’s own rate and words, at once, and keeps them', async () => {
    const worth = async (): Promise<number> =>
      figureOf(
        await page
          .locator('[aria-label^="Every part"] tr', { hasText: 'solid contact' })
          .locator('td')
          .last()
          .textContent(),
      )
    const before = await worth()
    await part('Solid contact').getByLabel('Better an hour, %').fill('8')
    await poll(worth).toBeGreaterThan(5 * before)
    await part('Solid contact').getByLabel('Drill').fill('Ten with the feet together.')
    await poll(() => page.locator('.practice-items li').first().textContent()).toContain(
      'Solid contact: 10 hours of it',
    )
    await poll(() => page.locator('.sheet svg').first().textContent()).toContain('feet together')
    const listed = `fetch('/api/notes').then((answer) => answer.text())`
    await poll(() => page.evaluate(listed)).toContain('"practice"')
    await poll(inStore).toEqual({
      schema: 'practice/1',
      rates: { mishits: 0.08 },
      drills: { mishits: 'Ten with the feet together.' },
    })
    await part('Solid contact').getByLabel('Better an hour, %').fill('80')
    expect(await part('Solid contact').getByLabel('Better an hour, %').getAttribute('aria-invalid')).toBe(
      'true',
    )
    // A sign alone is no number, and no empty field either: ours is not taken for it.
    const rate = part('Solid contact').getByLabel('Better an hour, %')
    await rate.fill('8')
    await rate.press('Control+a')
    await rate.press('-')
    await poll(() => rate.getAttribute('aria-invalid')).toBe('true')
    expect(await worth()).toBeGreaterThan(5 * before)
    await page.reload()
    await isWhole()
    expect(await part('Solid contact').getByLabel('Better an hour, %').inputValue()).toBe('8')
    expect(await page.locator('.practice-items li').first().textContent()).toContain('feet together')
  })
})

describe('a round by a card that was made', () => {
  const expected = async (): Promise<number> => {
    await isWhole()
    const texts = await page.locator('.wide-picture svg text').allTextContents()
    return figureOf(texts[texts.indexOf('expected, with the plan') + 1] ?? null)
  }

  it('is held against that card, however the player is changed since', async () => {
    await page.goto(`${desk.address}#/course/two-short/card/ebbe`)
    await isWhole()
    await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save as PDF' }).click(),
    ])
    const cards = async (): Promise<unknown[]> => JSON.parse(await stored('cards')).cards
    await poll(async () => (await cards()).length).toBe(1)
    // A wilder player since then.
    const now = JSON.parse(await stored('players/ebbe')) as object
    await put('players/ebbe', { ...now, handicapIndex: 36 })
    await page.goto(`${desk.address}#/rounds`)
    await page.reload()
    await page.getByRole('combobox', { name: 'Course', exact: true }).selectOption('two-short')
    await page.getByRole('combobox', { name: 'Player', exact: true }).selectOption('ebbe')
    await page.getByLabel('Hole 1', { exact: true }).fill('9i g-20ft / 2 putts')
    const before = JSON.parse(await stored('rounds')).rounds.map(({ id }: { id: string }) => id) as string[]
    await page.getByRole('button', { name: 'Keep the round' }).click()
    await page.getByText(/is kept with 1 hole/).waitFor()
    const after = JSON.parse(await stored('rounds')).rounds.map(({ id }: { id: string }) => id) as string[]
    const id = after.find((one) => !before.includes(one)) ?? ''
    await page.goto(`${desk.address}#/rounds/${id}`)
    const then = await expected()
    expect(await page.locator('.after-page').textContent()).toMatch(
      /Against the plan of the card of \d{4}-\d\d-\d\d, for a calm, normal day/,
    )
    expect(await violations(page)).toEqual([])
    await page.getByLabel('Against', { exact: true }).selectOption('today')
    await page.getByText('by the numbers kept today').waitFor()
    expect(await expected()).toBeGreaterThan(then + 0.1)
    await put('players/ebbe', now)
  })
})

describe('all of it', () => {
  it('had no error of its own on the way', () => expect(desk.troubles).toEqual([]))
})
