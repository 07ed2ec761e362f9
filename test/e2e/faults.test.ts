import { readFileSync } from 'node:fs'
import type { CDPSession, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { runMonkey } from '../../tools/monkey/run-monkey.ts'
import { PATIENCE, planned, type ServedDesk, serveDesk } from '../../tools/served-desk.ts'
import { opensShort } from './desk-at.ts'

/** The desk in browsers that refuse, forget or mislead: it plans, nothing is lost, and the reader is told. */
let desk: ServedDesk

beforeAll(async () => {
  desk = await serveDesk()
}, PATIENCE * 2)

afterAll(() => desk?.close())

/** A page of a browser of its own, where `before` runs ahead of the desk; its errors are collected. */
async function strange(
  before: string,
  test: (page: Page, session: CDPSession) => Promise<void>,
): Promise<void> {
  const context = await desk.browser.context.browser()!.newContext()
  const page = await context.newPage()
  page.setDefaultTimeout(PATIENCE)
  const errors: string[] = []
  page.on('pageerror', (error) => errors.push(error.message))
  try {
    await page.addInitScript(before)
    await test(page, await context.newCDPSession(page))
    expect(errors).toEqual([])
  } finally {
    await context.close()
  }
}

/** The tests of a block ask of a plan only that it comes. */
function atShortHole(): void {
  let back: () => Promise<void>
  beforeAll(async () => {
    back = await opensShort(desk)
  })
  afterAll(() => back())
}

const NOTE = '.offline-note'

const FULL = `Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError') }`
const FORBIDDEN = `for (const name of ['localStorage', 'sessionStorage'])
  Object.defineProperty(window, name, { get() { throw new DOMException('forbidden', 'SecurityError') } })`
const WITHOUT_DATABASE = `indexedDB.open = () => { throw new DOMException('internal', 'UnknownError') }`
/** A clock that says 2 January 1970, as after a flat battery. */
const LONG_AGO = `{
  const Real = Date
  const behind = Real.now() - 86_400_000
  window.Date = class extends Real {
    constructor(...parts) { if (parts.length === 0) super(Real.now() - behind); else super(...parts) }
    static now() { return Real.now() - behind }
  }
}`

describe('a browser whose storage', () => {
  atShortHole()
  it.each([
    ['is full', FULL],
    ['is forbidden', FORBIDDEN],
  ])('%s plans, and says that shots are not kept', async (_how, before) => {
    await strange(before, async (page) => {
      await page.goto(desk.address)
      await planned(page)
      await page.goto(`${desk.address}#/shots/tobin-skell`)
      await page.getByRole('application').click({ position: { x: 150, y: 150 } })
      await page.getByText('has no room for these shots').waitFor()
    })
  })

  it('has no database plans, and says that the server is needed', async () => {
    await strange(WITHOUT_DATABASE, async (page) => {
      await page.goto(desk.address)
      await planned(page)
      await expect.poll(() => page.locator(NOTE).textContent()).toContain('the desk needs its server')
    })
  })

  it('has a damaged database mends it, and copies what the store holds', async () => {
    await strange('', async (page) => {
      await page.goto(`${desk.address}mark.svg`)
      await page.evaluate(`new Promise((done, fail) => {
        const asked = indexedDB.open('marram', 3)
        asked.onupgradeneeded = () => asked.result.createObjectStore('waiting')
        asked.onsuccess = () => { asked.result.close(); done() }
        asked.onerror = () => fail(asked.error)
      })`)
      await page.goto(desk.address)
      await planned(page)
      await expect
        .poll(() =>
          page.evaluate(`new Promise((done, fail) => {
            const asked = indexedDB.open('marram')
            asked.onerror = () => fail(asked.error)
            asked.onsuccess = () => {
              const keys = asked.result.transaction('copies').objectStore('copies').getAllKeys()
              keys.onsuccess = () => { asked.result.close(); done(keys.result) }
            }
          })`),
        )
        .toContain('courses/sandrel-ness')
      expect(await page.locator(NOTE).count()).toBe(0)
    })
  })
})

describe('a browser whose clock is wrong', () => {
  atShortHole()
  it('plans', async () => {
    await strange(LONG_AGO, async (page) => {
      await page.goto(desk.address)
      await planned(page)
    })
  })
})

describe('a network', () => {
  /** Notes whatever the page says it waits for. */
  const WATCH = `globalThis.waitedFor = new Set()
    new MutationObserver(() => {
      for (const e of document.querySelectorAll('.waiting-for')) waitedFor.add(e.textContent)
    }).observe(document, { subtree: true, childList: true })`
  const waitedFor = (page: Page): Promise<string[]> => page.evaluate('[...waitedFor]')
  /** Milliseconds to the first byte, and kilobytes a second. */
  const slow = (session: CDPSession, latency: number, speed: number) =>
    session.send('Network.emulateNetworkConditions', {
      offline: false,
      latency,
      downloadThroughput: speed * 1000,
      uploadThroughput: speed * 1000,
    })
  const STILL = 1e7
  /** What the page has patience for, and how often it asks again: by its own clock, which is put on. */
  const PATIENT = '00:12'
  /** The desk plans meanwhile, and on a busy machine a step of the clock then takes seconds. */
  const WHILE_PLANNING = { timeout: 3 * PATIENCE }
  /** The clock's next leap would give up a question that was asked in the one before: the answer has this long, ms. */
  const TO_ANSWER = 3000

  it('that is slow is waited for in words, and brings each document once', async () => {
    await strange(WATCH, async (page, session) => {
      const asked: string[] = []
      page.on('request', (request) => asked.push(new URL(request.url()).pathname))
      await session.send('Network.enable')
      await slow(session, 150, 400)
      await page.goto(desk.address)
      await planned(page)
      expect(await waitedFor(page)).toEqual([
        'Fetching the hole desk.',
        'Fetching the lists of courses, players and days.',
        expect.stringMatching(/^Fetching the course .* and the player .*\.$/),
        ...(await waitedFor(page)).slice(3),
      ])
      const documents = asked.filter((path) => /^\/api\/\w+\/./.test(path))
      expect(documents).toContain('/api/courses/sandrel-ness')
      expect(documents.length).toBe(new Set(documents).size)
    })
  })

  describe('about a short hole', () => {
    atShortHole()
    it('that stands still is told of; what is kept meanwhile waits, and is sent once it moves again', async () => {
      await strange('', async (page, session) => {
        await page.clock.install()
        await page.goto(desk.address)
        await planned(page)
        await page.evaluate('navigator.serviceWorker.ready.then(() => true)')
        await session.send('Network.enable')
        await slow(session, STILL, 400)
        await page.goto(`${desk.address}#/new-player`)
        await page.getByLabel('What is the player called?').fill('Edda Stallwyn')
        await page.getByRole('radio', { name: /right/i }).first().check()
        await page.getByLabel(/handicap index/).fill('18')
        await page.getByRole('button', { name: 'Make the profile' }).click()
        await page.getByRole('button', { name: 'Keep, and open the desk' }).click()
        const note = page.locator(NOTE)
        for (const words of ['The server does not answer.', 'Edda Stallwyn: kept in this browser'])
          await expect
            .poll(async () => {
              await page.clock.fastForward(PATIENT)
              return (await note.count()) === 0 ? '' : note.textContent()
            }, WHILE_PLANNING)
            .toContain(words)
        await planned(page)
        await slow(session, 0, -1)
        await expect
          .poll(
            async () => {
              await page.clock.fastForward(PATIENT)
              return note.count()
            },
            { ...WHILE_PLANNING, interval: TO_ANSWER },
          )
          .toBe(0)
        const kept = await fetch(`${desk.address}api/players/edda-stallwyn`)
        expect(await kept.json()).toMatchObject({ name: 'Edda Stallwyn' })
      })
    })

    it('that is gone before a part of the page came leaves the rest, and the part can be asked for again', async () => {
      await strange(`delete Navigator.prototype.serviceWorker`, async (page) => {
        await page.goto(desk.address)
        await planned(page)
        await page.context().setOffline(true)
        await page.getByRole('link', { name: 'Survey a hole' }).click()
        await page.getByText('so the survey cannot be shown yet').waitFor()
        await page.context().setOffline(false)
        await page.getByRole('button', { name: 'Try again' }).click()
        await page.getByLabel('Row 1, what').waitFor()
      })
    })
  })
})

describe('a course of 27 holes and 3 MB', () => {
  /** The example course with nine of its holes again, and every outline so fine that the file is large. */
  const large = (): string => {
    const course = JSON.parse(readFileSync('examples/sandrel-ness.course.geojson', 'utf8'))
    const again = course.features
      .filter((one: { properties: { ref?: string } }) => Number(one.properties.ref) <= 9)
      .map((one: { id: string; properties: { ref: string } }) => ({
        ...one,
        id: `${one.id}-again`,
        properties: { ...one.properties, ref: String(Number(one.properties.ref) + 18) },
      }))
    course.marram.name = 'Twenty-seven'
    course.features = [...course.features, ...again].map(
      (one: { geometry: { type: string; coordinates: number[][][] } }) =>
        one.geometry.type === 'Polygon'
          ? { ...one, geometry: { ...one.geometry, coordinates: one.geometry.coordinates.map(finer) } }
          : one,
    )
    return JSON.stringify(course)
  }
  const PIECES = 10
  function finer(ring: readonly number[][]): number[][] {
    return ring
      .slice(1)
      .flatMap(([x = 0, y = 0], index) => {
        const [a = 0, b = 0] = ring[index] as number[]
        return Array.from({ length: PIECES }, (_, piece) => [
          a + ((x - a) * piece) / PIECES,
          b + ((y - b) * piece) / PIECES,
        ])
      })
      .concat([ring[0] as number[]])
  }

  it('is kept, opened and planned', async () => {
    const text = large()
    expect(text.length).toBeGreaterThan(3e6)
    const put = await fetch(`${desk.address}api/courses/twenty-seven`, {
      method: 'PUT',
      headers: { 'Content-Type': 'application/json', 'If-None-Match': '*' },
      body: text,
    })
    expect(put.status, await put.text()).toBeLessThan(300)
    await strange('', async (page) => {
      await page.goto(desk.address)
      await page.getByLabel('Course', { exact: true }).selectOption('twenty-seven')
      await page.getByLabel('Hole', { exact: true }).selectOption('27')
      await planned(page)
    })
  })
})

it('a seeded monkey that clicks, drags and types about finds no exception and loses no edit', async () => {
  // `npm run monkey` is the same for half an hour.
  const said: string[] = []
  const { acts, exceptions, lost } = await runMonkey(desk, {
    seed: 11,
    isOver: (done) => done >= 20,
    actsPerReload: Number.POSITIVE_INFINITY,
    secondsPerLook: null,
    tell: (words) => said.push(words),
  })
  expect(acts).toBe(20)
  expect(exceptions, said.join('\n')).toEqual([])
  expect(lost, said.join('\n')).toEqual([])
})
