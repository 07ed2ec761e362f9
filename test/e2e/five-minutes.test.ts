import type { CDPSession, Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { PATIENCE, planned, type ServedDesk, serveDesk } from '../../tools/served-desk.ts'

/**
 * The first five minutes of a person who opens the desk: one hole, one sentence; the aim dragged; the water dragged 20
 * yards on, so that the club flips; own carries typed for three clubs; the page printed. By mouse, by keys alone, by a
 * finger on a tablet and on a phone, and by mouse with the server stopped. What is counted are presses, at the pace of a
 * person: the machine's own time is not measured.
 */
let desk: ServedDesk
let page: Page

/** Seconds of one key of a keyboard: 60 words a minute at five keys a word (common practice). */
const KEY_SECONDS = 0.2
/** Seconds of a click, a tap, a key of a keyboard on the glass: our assumption, slower than a practised hand. */
const TAP_SECONDS = 1
/** Seconds of a drag with looking at what it does: our assumption. */
const DRAG_SECONDS = 5

/** How a person works the desk. */
interface Hand {
  /** Seconds so far. */
  seconds: number
  /** The pool goes on in one drag, one step of undo: the desk says what the plan was before it. */
  readonly isOneDrag: boolean
  choose(label: string, words: RegExp): Promise<void>
  press(button: Locator): Promise<void>
  /** The aim some way to the right. */
  aimRight(): Promise<void>
  /** The pool 20 yards on. */
  poolOn(): Promise<void>
  /** A figure into a field. */
  type(field: Locator, text: string): Promise<void>
}

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  await page.addInitScript('window.print = () => { window.printed = (window.printed ?? 0) + 1 }')
}, PATIENCE * 2)
afterAll(() => desk?.close())

const MOVED = /\b20 yd on/
const movedWords = async (): Promise<string> => (await page.locator('.moved-words').allTextContents()).join()
const firstClub = async (): Promise<string> =>
  (await page.locator('.clubs tbody th').first().textContent()) ?? ''
const aimWords = (): Promise<string | null> =>
  page.getByRole('slider', { name: 'Aim' }).getAttribute('aria-valuetext')
const hazards = (): Locator => page.getByLabel('Hazard', { exact: true })

async function middleOf(locator: Locator): Promise<[number, number]> {
  await locator.scrollIntoViewIfNeeded()
  const box = (await locator.boundingBox())!
  return [box.x + box.width / 2, box.y + box.height / 2]
}

async function choose(label: string, words: RegExp): Promise<void> {
  const list = page.getByLabel(label, { exact: true })
  const names = await list.locator('option').allTextContents()
  await list.selectOption({ index: names.findIndex((name) => words.test(name)) })
}

/** Where the pool lies on the screen: found by taking it up and letting it go. */
async function poolPlace(): Promise<[number, number]> {
  await choose('Hazard', /^Heron pool/)
  const at = await middleOf(page.locator('.grip-whole'))
  await hazards().selectOption({ index: 0 })
  return at
}

function mouse(): Hand {
  return {
    seconds: 0,
    isOneDrag: true,
    async choose(label, words) {
      await choose(label, words)
      this.seconds += 2 * TAP_SECONDS
    },
    async press(button) {
      await button.click()
      this.seconds += TAP_SECONDS
    },
    async aimRight() {
      const [x, y] = await middleOf(page.getByRole('slider', { name: 'Aim' }))
      await page.mouse.move(x, y)
      await page.mouse.down()
      await page.mouse.move(x + 30, y, { steps: 5 })
      await page.mouse.up()
      this.seconds += DRAG_SECONDS
    },
    async poolOn() {
      const [x, y] = await poolPlace()
      await page.mouse.move(x, y)
      await page.mouse.down()
      for (let up = 6; !MOVED.test(await movedWords()); up += 0.5) {
        if (up > 100) throw new Error(`the pool is not 20 yd on: ${await movedWords()}`)
        await page.mouse.move(x, y - up)
      }
      await page.mouse.up()
      this.seconds += DRAG_SECONDS
    },
    async type(field, text) {
      await field.click()
      await page.keyboard.type(text)
      this.seconds += TAP_SECONDS + text.length * KEY_SECONDS
    },
  }
}

function keyboard(): Hand {
  const NAME = `(() => {
    const at = document.activeElement
    return at.getAttribute('aria-label') ?? at.labels?.[0]?.textContent ?? at.textContent
  })()`
  const hand: Hand & {
    key(name: string, times?: number): Promise<void>
    tabTo(name: string): Promise<void>
  } = {
    seconds: 0,
    isOneDrag: false,
    async key(name, times = 1) {
      for (let time = 0; time < times; time += 1) await page.keyboard.press(name)
      this.seconds += times * KEY_SECONDS
    },
    /** On by tab, round over the end of the page, until what is called so has the focus. */
    async tabTo(name) {
      for (let tabs = 0; tabs < 150; tabs += 1) {
        await this.key('Tab')
        if (String(await page.evaluate(NAME)).startsWith(name)) return
      }
      throw new Error(`no tab leads to ${name}`)
    },
    async choose(label, words) {
      await this.tabTo(label)
      for (const letter of words.source.slice(1).trim().toLowerCase()) await this.key(letter)
    },
    async press(button) {
      await this.tabTo((await button.textContent()) ?? '')
      await this.key('Enter')
    },
    async aimRight() {
      await this.tabTo('Aim')
      await this.key('ArrowRight', 5)
    },
    async poolOn() {
      await this.choose('Hazard', /^Her/)
      await this.tabTo('On')
      while (
        !(await page.getByLabel('On', { exact: true }).evaluate('document.activeElement.type === "range"'))
      )
        await this.key('Tab')
      await this.key('ArrowUp', 20)
    },
    async type(field, text) {
      await this.tabTo((await field.getAttribute('aria-label')) ?? '')
      await page.keyboard.type(text)
      this.seconds += text.length * KEY_SECONDS
    },
  }
  return hand
}

/** A finger on the glass: the browser's own touch events, which a touch screen sends. */
function finger(session: CDPSession): Hand {
  const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', ...at: { x: number; y: number }[]) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints: at })
  const tap = async (x: number, y: number): Promise<void> => {
    await touch('touchStart', { x, y })
    await touch('touchEnd')
  }
  return {
    seconds: 0,
    isOneDrag: true,
    async choose(label, words) {
      await choose(label, words)
      this.seconds += 2 * TAP_SECONDS
    },
    async press(button) {
      await tap(...(await middleOf(button)))
      this.seconds += TAP_SECONDS
    },
    async aimRight() {
      const [x, y] = await middleOf(page.getByRole('slider', { name: 'Aim' }))
      await touch('touchStart', { x, y })
      for (const by of [10, 20, 30]) await touch('touchMove', { x: x + by, y })
      await touch('touchEnd')
      this.seconds += DRAG_SECONDS
    },
    async poolOn() {
      await tap(...(await poolPlace()))
      const [x, y] = await middleOf(page.locator('.grip-whole'))
      await touch('touchStart', { x, y })
      for (let up = 6; !MOVED.test(await movedWords()); up += 0.5) {
        if (up > 100) throw new Error(`the pool is not 20 yd on: ${await movedWords()}`)
        await touch('touchMove', { x, y: y - up })
      }
      await touch('touchEnd')
      this.seconds += TAP_SECONDS + DRAG_SECONDS
    },
    async type(field, text) {
      await tap(...(await middleOf(field)))
      await page.keyboard.type(text)
      this.seconds += (1 + text.length) * TAP_SECONDS
    },
  }
}

/** The page as a device shows it: its width and height, and a finger in place of the mouse. */
async function onDevice(width: number, height: number): Promise<CDPSession> {
  const session = await desk.browser.context.newCDPSession(page)
  await session.send('Emulation.setDeviceMetricsOverride', {
    width,
    height,
    deviceScaleFactor: 1,
    mobile: true,
  })
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: true, maxTouchPoints: 5 })
  return session
}

async function offDevice(session: CDPSession): Promise<void> {
  await session.send('Emulation.setTouchEmulationEnabled', { enabled: false })
  await session.send('Emulation.clearDeviceMetricsOverride')
  await session.detach()
}

/** Opens the desk as it is opened for the first time. */
async function open(): Promise<void> {
  await page.goto(desk.address)
  await page.evaluate('sessionStorage.clear()')
  await page.goto('about:blank')
  await page.goto(desk.address)
  await page.getByLabel('Hole', { exact: true }).locator('option').nth(6).waitFor({ state: 'attached' })
}

/** The script. Returns the seconds that a person would have taken. */
async function firstFiveMinutes(hand: Hand): Promise<number> {
  expect(await page.getByLabel('Player', { exact: true }).locator('option').count()).toBeGreaterThanOrEqual(2)
  await hand.choose('Hole', /^7 /)
  await page.locator('.chart svg title', { hasText: 'Hole 7' }).waitFor({ state: 'attached' })
  await planned(page)
  expect(await page.locator('.plan-sentence').textContent()).toMatch(/\.$/)

  const aim = await aimWords()
  const price = await page.locator('.aim-words strong').textContent()
  await hand.aimRight()
  expect(await aimWords()).not.toBe(aim)
  expect(await page.locator('.aim-words strong').textContent()).not.toBe(price)

  const before = await firstClub()
  await hand.poolOn()
  expect(await movedWords()).toMatch(MOVED)
  await expect.poll(firstClub, { timeout: 3 * PATIENCE }).not.toBe(before)
  const after = await firstClub()
  expect(after).toBe('driver')
  if (hand.isOneDrag)
    expect(await page.locator('.turn').textContent()).toContain(
      `Before it was the ${before.replace('-', '\u2011')}`,
    )
  expect(await page.locator('.plan-sentence').textContent()).toMatch(/driver/i)

  await hand.press(page.getByRole('button', { name: 'Type own carries' }))
  const carry = (club: string): Locator => page.getByLabel(`Carry of the ${club}, yards`)
  await carry('driver').waitFor()
  for (const [club, yards] of [
    ['driver', '225'],
    ['7-iron', '155'],
    ['pitching wedge', '120'],
  ] as const)
    await hand.type(carry(club), yards)
  await hand.press(page.getByRole('button', { name: 'Print' }))
  const states = await page.locator('.carry-state').allTextContents()
  expect(states.filter((state) => state === 'own').length).toBe(3)
  expect(states.filter((state) => /^\d+, a guess$/.test(state)).length).toBe(7)

  expect(await page.evaluate('window.printed')).toBe(1)
  expect(await page.locator('.printed').textContent()).toContain(
    'Own carries: driver 225 yd, 7‑iron 155 yd, pitching wedge 120 yd; the other clubs are guessed from these.',
  )
  return hand.seconds
}

const FIVE_MINUTES = 300

describe('the first five minutes', () => {
  it('by mouse, and what is printed is one page', async ({ annotate }) => {
    await open()
    const seconds = await firstFiveMinutes(mouse())
    await annotate(`${seconds.toFixed(0)} s at the pace of a person`)
    expect(seconds).toBeLessThan(FIVE_MINUTES)
    const pdf = (await page.pdf({ preferCSSPageSize: true })).toString('latin1')
    expect(pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length).toBe(1)
  })

  it('by keys alone', async ({ annotate }) => {
    await open()
    const seconds = await firstFiveMinutes(keyboard())
    await annotate(`${seconds.toFixed(0)} s at the pace of a person`)
    expect(seconds).toBeLessThan(FIVE_MINUTES)
  })

  for (const [device, width, height] of [
    ['tablet', 820, 1180],
    ['phone', 390, 844],
  ] as const)
    it(`by a finger on a ${device}`, async ({ annotate }) => {
      const session = await onDevice(width, height)
      await open()
      const seconds = await firstFiveMinutes(finger(session))
      await annotate(`${seconds.toFixed(0)} s at the pace of a person`)
      expect(seconds).toBeLessThan(FIVE_MINUTES)
      await offDevice(session)
    })

  it('with the server stopped once the page is there', async ({ annotate }) => {
    await open()
    await page.evaluate('navigator.serviceWorker.ready.then(() => true)')
    await desk.stopServer()
    const seconds = await firstFiveMinutes(mouse())
    await annotate(`${seconds.toFixed(0)} s at the pace of a person`)
    expect(seconds).toBeLessThan(FIVE_MINUTES)
  })
})
