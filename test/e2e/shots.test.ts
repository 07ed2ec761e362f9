import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PATIENCE, type ServedDesk, serveDesk, smallTargets, violations } from '../../tools/served-desk.ts'
import { marram } from '../acceptance/run-cli.ts'

/** Shots put down on the desk in a real browser: tapped, by keys, typed, from the disk; learned from and kept. */
let desk: ServedDesk
let page: Page
const folder = mkdtempSync(join(tmpdir(), 'marram-shots-'))

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await page.goto(desk.address)
  await page.getByLabel('Player', { exact: true }).selectOption('wren')
  await page.getByRole('link', { name: 'Shots' }).click()
  await range(page).waitFor()
}, PATIENCE * 2)
afterAll(async () => {
  await desk?.close()
  rmSync(folder, { recursive: true, force: true })
})

const range = (of: Page) => of.getByRole('application')
const put = (of: Page) => of.locator('h2', { hasText: /put down/i })
const count = async (of = page): Promise<number> =>
  Number.parseInt((await put(of).textContent()) ?? '', 10) || 0
const lines = (): Promise<string[]> => page.locator('.shot-table tbody tr').allTextContents()
const undo = () => page.getByRole('button', { name: 'Undo' })
const redo = () => page.getByRole('button', { name: 'Redo' })

/** Twenty places in the pattern, no two alike, as shares of the chart. */
const TAPS = Array.from(
  { length: 20 },
  (_, k) => [0.42 + 0.02 * ((k * 7) % 9), 0.3 + 0.012 * ((k * 5) % 13)] as const,
)

async function tap(shares: readonly [number, number]): Promise<void> {
  const box = (await range(page).boundingBox())!
  await range(page).click({ position: { x: shares[0] * box.width, y: shares[1] * box.height } })
}

describe('shots put down on the desk', () => {
  it('takes twenty taps on the range, takes each back, and puts each down again', async () => {
    await page.getByLabel('Club').selectOption('7-iron')
    for (const [k, share] of TAPS.entries()) {
      if (k === 11) await page.getByRole('button', { name: 'Mishit', exact: true }).click()
      await tap(share)
      expect(await count()).toBe(k + 1)
    }
    const before = await lines()
    expect(before[20 - 12]).toMatch(/mishit/)
    expect(before.filter((line) => /mishit/.test(line))).toHaveLength(1)
    for (let left = 20; left > 0; left -= 1) {
      expect(await count()).toBe(left)
      await undo().click()
    }
    expect(await count()).toBe(0)
    expect(await undo().isDisabled()).toBe(true)
    for (let back = 0; back < 20; back += 1) await redo().click()
    expect(await lines()).toEqual(before)
    expect(await redo().isDisabled()).toBe(true)
  })

  it.each([
    [1280, 900],
    [390, 844],
  ])('has no accessibility violation at %i × %i, and nothing to hit under 48 px', async (width, height) => {
    await page.setViewportSize({ width, height })
    await page.waitForTimeout(300)
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
    await page.setViewportSize({ width: 1280, height: 900 })
  })

  it('has its shots again when the page is loaded again, and takes back the last of them', async () => {
    const before = await lines()
    await page.reload()
    await range(page).waitFor()
    expect(await lines()).toEqual(before)
    await undo().click()
    expect(await count()).toBe(19)
    await redo().click()
    expect(await lines()).toEqual(before)
  })

  it('keeps the shots of two tabs together', async () => {
    const other = await desk.browser.context.newPage()
    await other.goto(page.url())
    await range(other).waitFor()
    await expect.poll(() => count(other)).toBe(20)
    await other.getByRole('button', { name: 'Put it down' }).click()
    // A tab hears of another one's shots when the machine has time for it.
    await expect.poll(() => count(other)).toBe(21)
    await expect.poll(() => count()).toBe(21)
    await page.getByRole('button', { name: 'Put it down' }).click()
    await expect.poll(() => count()).toBe(22)
    await expect.poll(() => count(other)).toBe(22)
    // Each tab takes its own step back.
    await undo().click()
    await other.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => count()).toBe(20)
    await other.close()
  })

  it('takes a row away, and gives it back', async () => {
    const before = await lines()
    await page.getByRole('button', { name: /^Remove shot 15:/ }).click()
    expect(await count()).toBe(19)
    await undo().click()
    expect(await lines()).toEqual(before)
  })

  it('puts twenty shots down and takes each back by keys alone', async () => {
    await page.reload()
    await range(page).waitFor()
    const club = page.getByLabel('Club')
    for (let tabs = 0; tabs < 8; tabs += 1) {
      if ((await page.evaluate('document.activeElement?.getAttribute("role")')) === 'application') break
      await page.keyboard.press('Tab')
    }
    const words = page.locator('.cross-words')
    const start = (await words.textContent()) ?? ''
    await page.keyboard.press('ArrowUp')
    await page.keyboard.press('Shift+ArrowLeft')
    expect(await words.textContent()).toBe(`${Number.parseFloat(start) + 5} yd, 1 left`)
    const moves = [
      'ArrowUp',
      'Shift+ArrowRight',
      'ArrowDown',
      'Shift+ArrowUp',
      'ArrowLeft',
      'Shift+ArrowDown',
      'ArrowRight',
    ]
    for (let shot = 1; shot <= 20; shot += 1) {
      await page.keyboard.press(moves[shot % moves.length]!)
      await page.keyboard.press('Enter')
      expect(await count()).toBe(20 + shot)
    }
    for (let shot = 19; shot >= 0; shot -= 1) {
      await page.keyboard.press(shot % 2 === 0 ? 'Backspace' : 'Control+z')
      expect(await count()).toBe(20 + shot)
    }
    expect(await club.inputValue()).toBe('7-iron')
  })

  it('takes a shot in figures, and says what is wrong with one', async () => {
    const [along, side] = [page.getByLabel('Carry, yd'), page.getByLabel('Off the line, yd')]
    await along.fill('1180')
    await along.press('Enter')
    expect(await page.locator('.typed-shot .question-fault').textContent()).toContain(
      'No ball comes to rest there',
    )
    await along.fill('111,5')
    await side.fill('4 left')
    await side.press('Enter')
    expect((await lines())[0]).toMatch(/111\.54 left/)
    expect(await page.evaluate('document.activeElement?.labels?.[0]?.textContent')).toBe('Carry, yd')
    await undo().click()
    expect(await count()).toBe(20)
  })

  it('saves a table from which the command line learns the same player as the desk keeps', async () => {
    const kept = (await page.evaluate(`fetch('/api/players/wren').then((it) => it.text())`)) as string
    const saved = page.waitForEvent('download')
    await page.getByRole('button', { name: 'Save as a table' }).click()
    const table = join(folder, 'wren.shots.csv')
    await (await saved).saveAs(table)
    const file = join(folder, 'wren.player.json')
    writeFileSync(file, kept)
    const out = join(folder, 'learned.player.json')
    expect(marram('pattern', file, '--shots', table, '--out', out).status).toBe(0)

    await page.locator('input[type=file]').setInputFiles(table)
    await page
      .getByText('All 20 shots of wren.shots.csv stand on the sheet already; none was added.')
      .waitFor()

    await page.getByRole('button', { name: 'Learn from these 20 shots' }).click()
    await page.getByRole('heading', { name: 'Wren, learned from 20 shots' }).waitFor()
    await page.setViewportSize({ width: 390, height: 844 })
    expect(await page.evaluate('document.documentElement.scrollWidth <= innerWidth')).toBe(true)
    await page.setViewportSize({ width: 1280, height: 900 })
    expect(await page.locator('.learned tbody tr').allTextContents()).toEqual([
      expect.stringMatching(/^7‑iron20 shots/),
    ])
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])

    // Somebody changes the player meanwhile: what was learned stands on an older one, and is not kept over it.
    await page.evaluate(
      `fetch('/api/players/wren', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(kept)} })`,
    )
    await page.getByRole('button', { name: 'Keep this as Wren' }).click()
    expect(await page.getByRole('alert').textContent()).toContain('MAR-STORE-004')
    await page.getByRole('button', { name: 'Look at Wren again' }).click()
    await page.getByText('learn again to see what they say now').waitFor()
    await page.getByRole('button', { name: 'Learn from these 20 shots' }).click()
    await page.getByRole('button', { name: 'Keep this as Wren' }).click()
    const player = page.getByLabel('Player', { exact: true })
    await page.getByRole('link', { name: 'Shots' }).waitFor()
    expect(await player.inputValue()).toBe('wren')
    const learned = await page.evaluate(`fetch('/api/players/wren').then((it) => it.text())`)
    expect(learned).toBe(readFileSync(out, 'utf8'))
    expect(learned).not.toBe(kept)
    expect(
      await page.evaluate(`Object.keys(localStorage).filter((key) => key.startsWith('marram.shots'))`),
    ).toEqual([])
  })

  it('opens a season from the disk in one step, names the rows it could not read, and asks for unknown columns', async () => {
    await page.getByRole('link', { name: 'Shots' }).click()
    await range(page).waitFor()
    const season = readFileSync('examples/wren.shots.csv', 'utf8')
    const files = page.locator('input[type=file]')
    const csv = (name: string, text: string) => ({ name, mimeType: 'text/csv', buffer: Buffer.from(text) })
    await files.setInputFiles(csv('season.csv', `${season}2026-10-04,7-iron,fairway,far,,,,\n`))
    await page.getByText('season.csv: 352 of 353 rows put down, 1 not read.').waitFor()
    expect(await page.locator('.read-faults').textContent()).toContain('season.csv, line 354')
    expect(await count()).toBe(352)
    await undo().click()
    expect(await count()).toBe(0)
    await files.setInputFiles(csv('other.csv', 'Stick,Flight\n7i,104\n8i,95\n'))
    await page.getByRole('alert').waitFor()
    await page.getByLabel(/^What its columns are/).fill('Stick=club,Flight=carry_yd')
    await page.getByRole('button', { name: 'Read other.csv so' }).click()
    await page.getByText('other.csv: 2 of 2 rows put down.').waitFor()
    expect(await count()).toBe(2)
  })

  it('takes shots from the tee on the picture of a hole: how long, how far off the asked line, and where they finished', async () => {
    await page.getByRole('button', { name: 'Undo' }).click()
    expect(await count()).toBe(0)
    await page.getByRole('button', { name: 'on a hole' }).click()
    await page.getByLabel('Hole', { exact: true }).selectOption('7')
    await page.getByLabel('Club').selectOption('driver')
    expect(await page.locator('.chart svg title').first().textContent()).toMatch(/^Hole 7/)
    await range(page).focus()
    await page.keyboard.press('Enter')
    const straight = (await lines())[0] ?? ''
    expect(straight).toMatch(/^1driver.*tee.*in all.*on the line.*hole 7, [a-z ]+/)
    // The same place, asked for on a line 10 yd to the right of it there, is 10 yd to the left.
    const more = page.getByRole('button', { name: 'Line 5 yd right' })
    await more.click()
    await more.click()
    expect(await page.locator('.asked-line p').textContent()).toBe('asked for10 yd right')
    const first = page.locator('.tapped path').first()
    const place = (await first.boundingBox())!
    await page.mouse.click(place.x + place.width / 2, place.y + place.height / 2)
    expect(await count()).toBe(2)
    const side = /(9\.\d|10(?:\.\d)?) left/.exec((await lines())[0] ?? '')
    expect(side).not.toBeNull()
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    // Another hole has none of them; this one has them again after a reload.
    await page.getByLabel('Hole', { exact: true }).selectOption('3')
    await page.waitForFunction(`document.querySelector('.chart svg title')?.textContent.startsWith('Hole 3')`)
    expect(await page.locator('.tapped path').count()).toBe(0)
    await page.reload()
    await page.getByRole('button', { name: 'on a hole' }).click()
    await page.getByLabel('Hole', { exact: true }).selectOption('7')
    await page.locator('.tapped path').first().waitFor()
    await undo().click()
    await undo().click()
    expect(await count()).toBe(0)
  })

  it('takes them from where the ball lies on the desk, with its lie', async () => {
    await page.evaluate(`{
      const desk = JSON.parse(sessionStorage.getItem('marram.desk'))
      const ball = { at: [4, 180], lie: 'rough', said: null, from: [0, 0] }
      sessionStorage.setItem('marram.desk', JSON.stringify({ ...desk, holeRef: '7', ball, aimDegrees: null }))
    }`)
    await page.reload()
    await page.getByRole('button', { name: 'on a hole' }).click()
    await page.getByText('from where the ball lies on the desk: rough').waitFor()
    await page.getByLabel('Club').selectOption('7-iron')
    await range(page).focus()
    await page.keyboard.press('Enter')
    expect((await lines())[0]).toMatch(/^17.iron.*rough.*in all.*on the line.*hole 7/)
    await page.getByRole('button', { name: 'From the tee' }).click()
    await page.getByRole('button', { name: 'Put it down' }).click()
    expect((await lines())[0]).toMatch(/^27.iron.*tee.*on the line.*hole 7/)
    await undo().click()
    await undo().click()
  })

  it('had no error of its own on the way', () =>
    // The browser itself notes the refusal that was asked for.
    expect(desk.troubles.filter((trouble) => !/status of 409/.test(trouble))).toEqual([]))
})
