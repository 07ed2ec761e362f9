import type { Locator, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { encodeRound } from '#golf/round/encode-round.ts'
import type { RoundFacts } from '#golf/round/kept-round.ts'
import { parseKeptRound } from '#golf/round/parse-kept-round.ts'
import { parseRound } from '#golf/round/parse-round.ts'
import { planNumbersIn } from '#golf/round/plan-numbers-file.ts'
import { scoreOf } from '#golf/round/round.ts'
import { EMPTY_LOG } from '#golf/round/round-log.ts'
import { encodeShared } from '#outside/formats/shared-file.ts'
import { firstLoad } from '../../tools/first-load.ts'
import { type OpenBrowser, openBrowser } from '../../tools/open-browser.ts'
import {
  beyondTheSide,
  PATIENCE,
  type ServedDesk,
  serveDesk,
  smallTargets,
  violations,
} from '../../tools/served-desk.ts'
import { twoClubs, twoShort } from '../fixtures/two-short.ts'

/**
 * The round on a phone, 390 px wide. Clauses are those of the Rules of Golf 2023 as in the user's table of Rules facts: Rule
 * 4.3a(1) to (3), Clarification 4.3a/1, Model Local Rules G-5 and G-11.
 */
let desk: ServedDesk
let page: Page
let second: OpenBrowser
const asked: string[] = []

const REFS = Array.from({ length: 7 }, (_, index) => `${index + 1}`)
const FACTS: RoundFacts = {
  id: 'round-2026-05-02-abc123',
  date: '2026-05-02',
  tee: 'drift',
  format: 'strokes',
  course: 'Sandrel Ness',
  courseId: 'sandrel-ness',
  player: 'Tobin Skell',
  playerId: 'tobin-skell',
  purpose: 'counting',
  hasDevices: true,
  isTextOnly: false,
  clubs: ['driver', '5-wood', '7-iron', 'pitching-wedge', 'sand-wedge', 'putter'],
  card: REFS.map((ref) => ({
    ref,
    par: 4,
    facts: ['365 yd', 'index 9'],
    club: '5-wood',
    words: 'Start it 20 right of the line.',
    numbers: 'Green: front 340, middle 352, back 365.',
  })),
  planNumbers: null,
}

beforeAll(async () => {
  desk = await serveDesk()
  page = desk.page
  page.on('request', (request) => asked.push(new URL(request.url()).pathname))
  await page.setViewportSize({ width: 390, height: 844 })
}, PATIENCE * 2)

afterAll(async () => {
  await second?.close()
  await desk?.close()
})

/** Opens a round that was prepared elsewhere. */
async function takeUp(facts: RoundFacts, on: Page = page): Promise<void> {
  await on.goto(`${desk.address}round.html`)
  const text = encodeRound({ facts, log: EMPTY_LOG })
  await on
    .getByLabel('Open a round from a file')
    .setInputFiles({ name: 'a.round.json', mimeType: 'application/json', buffer: Buffer.from(text) })
  await on.getByLabel('Hole', { exact: true }).waitFor()
}

const button = (name: string | RegExp, on: Page = page): Locator =>
  on.getByRole('button', { name, exact: typeof name === 'string' })
const strokes = (on: Page = page): Locator => on.locator('.strokes li')
const picture = (on: Page = page): Locator => button(/^Hole: tap/, on)

/** One stroke by two taps, as far on as a share of the picture. */
async function tapStroke(club: string, share: number, on: Page = page): Promise<void> {
  const count = await strokes(on).count()
  await button(club, on).click()
  const box = await picture(on).boundingBox()
  await picture(on).click({ position: { x: (box?.width ?? 0) / 2, y: (box?.height ?? 0) * (1 - share) } })
  await expect.poll(() => strokes(on).count()).toBe(count + 1)
}

async function goTo(ref: string, on: Page = page): Promise<void> {
  await on.getByLabel('Hole', { exact: true }).selectOption(ref)
  await expect.poll(() => on.evaluate('location.hash')).toMatch(new RegExp(`/${ref}$`))
}

/**
 * Presses every button three times over, but for those that leave the hole, end the round or take it off the phone, and
 * opens all that is folded; gives everything that the page said outside the card meanwhile.
 */
const PRESS_EVERYTHING = `(async () => {
  const said = []
  const listen = () => {
    const copy = document.querySelector('main').cloneNode(true)
    for (const each of copy.querySelectorAll('.card, .held')) each.remove()
    said.push(copy.textContent)
  }
  new MutationObserver(listen).observe(document.body, { subtree: true, childList: true, characterData: true })
  const painted = () => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))
  const kept = /^(Close the round|Yes, close it|Yes, take it off|Save it as a file)$/
  for (let times = 0; times < 3; times++) {
    for (const folded of document.querySelectorAll('details')) folded.open = true
    for (const button of document.querySelectorAll('main button')) {
      if (!button.isConnected || button.disabled || kept.test(button.textContent) || button.closest('nav')) continue
      const { left, top, width, height } = button.getBoundingClientRect()
      const place = { clientX: left + width * 0.4, clientY: top + height * (0.2 + 0.2 * times) }
      button.dispatchEvent(new MouseEvent('click', { bubbles: true, detail: 1, ...place }))
      await painted()
    }
  }
  listen()
  return said
})()`

/** The texts of the rounds that lie on the phone. */
const ROUNDS_ON_PHONE = `new Promise((done, fail) => {
  const opening = indexedDB.open('marram-rounds')
  opening.onerror = () => fail(opening.error)
  opening.onsuccess = () => {
    const asking = opening.result.transaction('rounds').objectStore('rounds').getAll()
    asking.onsuccess = () => done(asking.result.map(({ text }) => text))
  }
})`

describe('the round on the phone', () => {
  it('is a page of its own under 80 kB, with no script of the desk', async () => {
    await page.goto(`${desk.address}round.html`)
    await button('New round').waitFor()
    const load = await firstLoad(page)
    console.info(`The round loads ${load.page.toFixed(1)} kB`)
    expect(load.page).toBeLessThan(80)
    expect(load.workers).toBe(0)
    expect(load.files.filter((path) => /desk|index/.test(path))).toEqual([])
  })

  it('is prepared on the phone, soon and rough', async () => {
    await page.goto(`${desk.address}round.html`)
    for (const [place, document] of [
      ['courses/two-short', twoShort()],
      ['players/ebbe', twoClubs('Ebbe')],
    ] as const)
      await page.evaluate(
        `fetch('/api/${place}', { method: 'PUT', headers: { 'Content-Type': 'application/json' }, body: ${JSON.stringify(JSON.stringify(document))} })`,
      )
    await button('New round').click()
    await page.getByRole('combobox', { name: 'Course', exact: true }).selectOption('two-short')
    await page.getByRole('combobox', { name: 'Player', exact: true }).selectOption('ebbe')
    await page.getByLabel('Soon and rough: a few minutes').check()
    await button('Prepare the round').click()
    const hole = page.getByLabel('Hole', { exact: true })
    await hole.waitFor({ timeout: PATIENCE })
    expect(await hole.locator('option').count()).toBe(2)
    expect(await page.locator('.card').textContent()).toMatch(/start (it )?(on|at|\d+)/i)
    // What its card was made by stays with it, for the recap, and is not on the page.
    const texts = (await page.evaluate(ROUNDS_ON_PHONE)) as readonly string[]
    const numbers = texts.flatMap((text) => planNumbersIn(JSON.parse(text) as object) ?? [])[0]
    expect(numbers).toMatchObject({ from: 'card', player: { schema: 'player/1', name: 'Ebbe' } })
    expect(await page.locator('body').textContent()).not.toMatch(/player\/1|direction_sd/)
  })

  it('that counts shows nothing that is worked out, whatever is pressed, until it is closed', async () => {
    await takeUp(FACTS)
    const card = await page.locator('.card').textContent()
    asked.length = 0
    await tapStroke('driver', 0.5)
    const said = await page.evaluate<string[]>(PRESS_EVERYTHING)
    const all = said.join('\n')
    expect(said.length).toBeGreaterThan(40)
    // Rule 4.3a(1): no elevation, and no line or club for where the ball lies.
    expect(all).not.toMatch(/slope|uphill|downhill|elevation|height|\bfall/i)
    expect(all).not.toMatch(/\b(aim|start it|play to|lay up|what to play|too close to call|expected)\b/i)
    // Rule 4.3a(2): no wind.
    expect(all).not.toMatch(/\bwind\b|mph|knots|m\/s/i)
    // Rule 4.3a(3): this round's strokes are recorded, not worked on: no statistics, no distance that follows the ball.
    expect(all).not.toMatch(/over par|under par|level par|finished hole|average|%|to the pin|from the ball/i)
    expect(await page.getByRole('region', { name: 'Practice view' }).count()).toBe(0)
    expect(await page.locator('.card').textContent(), 'Rule 4.3a(3): as prepared').toBe(card)
    // Nothing that could work anything out has even been fetched, and no worker runs.
    expect(asked.filter((path) => /worker|prepare|practice|new-round/.test(path))).toEqual([])
    expect(page.workers()).toEqual([])
    const pictures = await page.evaluate<string>(PICTURES)
    expect(pictures, 'Rule 4.3a(1): greens without heights').not.toContain('green-contours')
    await page.goto(`${desk.address}round.html`)
    await page.getByText('A round that counts is being played').waitFor()
    expect(await button('New round').count()).toBe(0)
    expect(await page.getByRole('link', { name: 'The hole desk' }).count()).toBe(0)
  })

  it('shows a green at 1:480 at most on a screen that was measured, else none (Clarification 4.3a/1)', async () => {
    await page.evaluate(`localStorage.removeItem('marram.screen')`)
    await page.goto(`${desk.address}round.html#/${FACTS.id}/7`)
    await page.reload()
    await page.getByText('The green', { exact: true }).click()
    await page.getByText('this screen has to be measured').waitFor()
    expect(await page.locator('.green-picture').count()).toBe(0)
    for (let times = 0; times < 3; times++) await button('Narrower by ten').click()
    const outline = (await page.locator('.card-outline').boundingBox())?.width ?? 0
    await button('It fits').click()
    const width = (await page.locator('.green-picture').boundingBox())?.width ?? 0
    const across = await page.evaluate<number>(ACROSS)
    // The short side of an ID-1 card is 53.98 mm: ISO/IEC 7810.
    const scale = ((width / outline) * 53.98) / (across * 1000)
    expect(scale).toBeLessThanOrEqual(1 / 480)
    expect(scale).toBeGreaterThan(1 / 600)
  })

  it('measures nothing under Local Rule G-5 and shows no picture under G-11', async () => {
    expect(await button('Ruler').count(), 'Rule 4.3a(1): a distance may be measured').toBe(1)
    await takeUp({ ...FACTS, id: 'round-2026-05-03-g5', hasDevices: false, card: FACTS.card.slice(0, 1) })
    await picture().waitFor()
    expect(await button('Ruler').count()).toBe(0)
    await takeUp({ ...FACTS, id: 'round-2026-05-03-g11', isTextOnly: true, card: FACTS.card.slice(0, 1) })
    await button('driver').click()
    expect(await picture().count()).toBe(0)
    expect(await page.locator('.green-map').count()).toBe(0)
    await page.getByLabel('Left, yd').fill('150')
    await button(/^f fairway/).click()
    await expect.poll(() => strokes().allTextContents()).toEqual(['1 driver: fairway, 150 yd left'])
  })

  it('shows in practice how far it is from the ball and how it stands, at once', async () => {
    const card = FACTS.card.slice(0, 1)
    await takeUp({ ...FACTS, id: 'round-2026-05-03-practice', purpose: 'practice', card })
    await tapStroke('driver', 0.5)
    await page.getByText(/From the ball to the pin \d+ yd, green \d+ to \d+\./).waitFor()
    await button('1 putts').click()
    await page.getByText('2 strokes on 1 finished hole, 2 under par; 1 putt, 0 penalty strokes.').waitFor()
  })

  it('plans from where the ball lies in practice, with the prices of the clubs', async () => {
    const card = FACTS.card.slice(2, 3)
    await takeUp({ ...FACTS, id: 'round-2026-05-04-practice', purpose: 'practice', card })
    await tapStroke('pitching-wedge', 0.3)
    await button('What to play from here').click()
    const sentence = page.locator('.practice .sentence')
    await sentence.waitFor({ timeout: PATIENCE })
    expect(await sentence.textContent()).toMatch(/^[A-Z].+\.$/)
    const clubs = (await page.locator('.practice .sentence + p').textContent()) ?? ''
    expect(clubs).toMatch(/^[a-z0-9-]+ \d\.\d\d(, [a-z0-9-]+ \d\.\d\d)*$/)
    const prices = [...clubs.matchAll(/ (\d\.\d\d)/g)].map(([, price]) => Number(price))
    expect(prices).toEqual([...prices].sort((a, b) => a - b))
    // A ball that has moved on asks anew.
    await tapStroke('sand-wedge', 0.6)
    await sentence.waitFor({ state: 'detached' })
  })

  it('is easy to hit and to read at 390 and 320 px', async () => {
    await page.goto(`${desk.address}round.html#/${FACTS.id}/7`)
    await picture().waitFor()
    for (const summary of await page.locator('summary').all()) await summary.click()
    expect(await smallTargets(page)).toEqual([])
    expect(await violations(page)).toEqual([])
    await page.setViewportSize({ width: 320, height: 640 })
    // The green is laid out anew for the narrower page.
    await expect.poll(() => beyondTheSide(page)).toEqual([])
    await page.setViewportSize({ width: 390, height: 844 })
  })

  it('loses nothing without its server, reloaded in mid-round, and takes corrections', async () => {
    await page.evaluate(`navigator.serviceWorker.ready.then(() => true)`)
    await desk.stopServer()
    await page.reload()
    await goTo('2')
    await tapStroke('driver', 0.4)
    await tapStroke('7-iron', 0.8)
    await page.reload()
    await expect.poll(() => strokes().count()).toBe(2)
    await strokes().first().getByRole('button').first().click()
    await button('One before').click()
    await tapStroke('5-wood', 0.3)
    await button('Undo').click()
    await expect.poll(() => strokes().count()).toBe(2)
    await button('Change').click()
    await button('5-wood').click()
    await button('Done').click()
    await button('Penalty').click()
    await button('2 putts').click()
    await page.getByLabel('First putt, ft').fill('18')
    await page.getByLabel('First putt, ft').press('Enter')
    // A step is on the phone's disk before it is shown: what is not shown yet may be lost with the page.
    await expect.poll(() => page.getByLabel('First putt, ft').inputValue()).toBe('18')
    await page.reload()
    await expect
      .poll(() => strokes().allTextContents())
      .toEqual(['1 5-wood: on the picture, 1 penalty', '2 7-iron: on the picture'])
    expect(await button('2 putts').getAttribute('aria-pressed')).toBe('true')
    expect(await page.getByLabel('First putt, ft').inputValue()).toBe('18')
    await desk.startServer()
  })

  it('is merged from two phones without a stroke lost or doubled', async () => {
    await button('Send it to the desk').click()
    await page.getByText('The desk has the round.').waitFor()
    second = await openBrowser()
    const other = await second.context.newPage()
    await other.setViewportSize({ width: 390, height: 844 })
    await other.goto(`${desk.address}round.html`)
    await button(/Tobin Skell/, other).click()
    await goTo('2', other)
    await expect.poll(() => strokes(other).count()).toBe(2)
    await goTo('3', other)
    await tapStroke('7-iron', 0.9, other)
    await goTo('4')
    await tapStroke('driver', 0.5)
    // The same stroke, written down on both without knowing of each other.
    for (const phone of [page, other]) {
      await goTo('5', phone)
      await tapStroke(phone === page ? 'driver' : '5-wood', 0.5, phone)
    }
    for (let times = 0; times < 2; times++)
      for (const phone of [other, page]) {
        await button('Send it to the desk', phone).click()
        await phone.getByText('The desk has the round.').waitFor()
      }
    for (const phone of [page, other])
      for (const [ref, count] of [
        ['2', 2],
        ['3', 1],
        ['4', 1],
      ] as const) {
        await goTo(ref, phone)
        await expect.poll(() => strokes(phone).count()).toBe(count)
      }
    await goTo('5')
    await page.getByText('Two phones wrote strokes of this hole down.').waitFor()
    await expect.poll(() => strokes().count()).toBe(1)
    await button('They were played after these').click()
    await expect.poll(() => strokes().count()).toBe(2)
    await button('Undo').click()
    await button('They are the same strokes').click()
    await page.getByText('Two phones wrote strokes').waitFor({ state: 'detached' })
    await expect.poll(() => strokes().count()).toBe(1)
  })

  it('is written down in under 8 minutes at a human pace, closed, and on the desk for the recap', async () => {
    const facts = { ...FACTS, id: 'round-2026-05-04-taps' }
    await takeUp(facts)
    let seconds = 0
    const act = async (
      what: Locator,
      thought: boolean,
      position?: { x: number; y: number },
    ): Promise<void> => {
      const box = await what.boundingBox()
      // What lies beyond the screen is scrolled to by one more stroke of the finger.
      if (box === null || box.y < 0 || box.y + Math.min(box.height, 48) > 844) seconds += POINT + PRESS
      seconds += (thought ? THINK : 0) + POINT + PRESS
      await what.click(position === undefined ? {} : { position })
    }
    for (const ref of REFS) {
      await page.getByRole('heading', { name: `Hole ${ref} of the round` }).waitFor()
      for (const [index, club] of ['driver', '7-iron', 'sand-wedge'].entries()) {
        await act(button(club), true)
        const box = await picture().boundingBox()
        await act(picture(), false, {
          x: (box?.width ?? 0) / 2,
          y: (box?.height ?? 0) * (0.6 - index * 0.25),
        })
        await expect.poll(() => strokes().count()).toBe(index + 1)
      }
      await act(button('2 putts'), true)
      await act(page.getByLabel('First putt, ft'), true)
      await page.keyboard.type('18')
      seconds += 2 * (POINT + PRESS)
      if (ref !== REFS.at(-1)) await act(page.getByRole('link', { name: /^On to hole/ }), false)
    }
    const minutes = ((seconds / REFS.length) * 18) / 60
    console.info(`18 holes of 5 by taps: ${minutes.toFixed(1)} min at the pace of the keystroke-level model`)
    expect(minutes).toBeLessThan(8)

    await button('Close the round').click()
    await button('Yes, close it').click()
    await page.getByText('The desk has the round.').waitFor()
    await page.getByText('35 strokes on 7 finished holes, 7 over par; 14 putts').waitFor()
    const text = await page.evaluate<string>(
      `fetch('/api/rounds/${facts.id}').then((answer) => answer.text())`,
    )
    const { round, faults } = parseRound(text, 'rounds')
    expect(faults).toEqual([])
    expect(round.holes.map(scoreOf)).toEqual(REFS.map(() => 5))
    expect(round.holes[0]).toMatchObject({ putts: 2, firstPuttMetres: 5.49 })
    expect(parseKeptRound(text, 'rounds')?.round.facts).toEqual(facts)
    expect(desk.troubles.filter((trouble) => !/ERR_CONNECTION_REFUSED|404/.test(trouble))).toEqual([])
  })

  it('is typed from paper on the desk too, and taken in from another machine once', async () => {
    await page.setViewportSize({ width: 1000, height: 900 })
    await page.goto(`${desk.address}#/rounds`)
    const line = (ref: string): Locator => page.getByLabel(`Hole ${ref}`, { exact: true })
    await line('1').fill('driver f-180 / spoon r-25 / 2 putts')
    await line('1').press('Enter')
    await page.getByText('stroke 2, column 16: "spoon" is no club.').waitFor()
    await line('2').fill('7i g-12ft / 1 putt')
    await page.reload()
    expect(await line('2').inputValue()).toBe('7i g-12ft / 1 putt')
    await line('1').fill('driver f-180 / 3w r-25 / 2 putts')
    await line('2').click()
    await expect.poll(() => page.locator('.line-faults').count()).toBe(0)
    expect(await violations(page)).toEqual([])
    expect(await smallTargets(page)).toEqual([])
    const kept = page.locator('.kept-round')
    const before = await kept.count()
    await button('Keep the round').click()
    await page.getByText(/^The round of .* is kept with 2 holes/).waitFor()
    await expect.poll(() => kept.count()).toBe(before + 1)
    const shared = encodeShared([
      {
        kind: 'rounds',
        id: 'round-x',
        text: encodeRound({ facts: { ...FACTS, id: 'round-x' }, log: EMPTY_LOG }),
      },
    ])
    const file = { name: 'a.json', mimeType: 'application/json', buffer: Buffer.from(shared) }
    for (const became of ['is new here', 'was here already']) {
      await page.getByLabel('A file of another machine').setInputFiles(file)
      await page.getByText(`rounds/round-x ${became}`).waitFor()
    }
    expect(await kept.count()).toBe(before + 2)
    await page.setViewportSize({ width: 320, height: 640 })
    await expect.poll(() => beyondTheSide(page)).toEqual([])
  })
})

/**
 * Seconds of the keystroke-level model (Card, Moran and Newell, Communications of the ACM 23, 1980): to point 1.1, to press
 * a key 0.2, to think before an act 1.35. A tap is one pointing and one press; each stroke, the putts and their length are
 * thought of once.
 */
const [POINT, PRESS, THINK] = [1.1, 0.2, 1.35]

/** Every picture on this phone, as text. */
const PICTURES = `new Promise((done) => {
  const asked = indexedDB.open('marram-rounds')
  asked.onsuccess = () => {
    const all = asked.result.transaction('pictures').objectStore('pictures').getAll()
    all.onsuccess = () => { asked.result.close(); done(JSON.stringify(all.result)) }
  }
})`

/** How wide the picture of the seventh green is, metres. */
const ACROSS = `${PICTURES}.then((text) => JSON.parse(text)[0].find(({ ref }) => ref === '7').green.acrossMetres)`
