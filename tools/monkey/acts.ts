import type { BrowserContext, Page } from 'playwright-core'
import { FILES } from './files.ts'
import { keepHole, keepPlayer } from './keeping.ts'
import { bringIntoView, countTargets, giveFile, type Target } from './targets.ts'

/** What an act works with. */
export interface Hands {
  readonly page: Page
  readonly context: BrowserContext
  readonly address: string
  /** Uniform in [0, 1). */
  readonly random: () => number
}

/** One thing done to the page by real input events; returns what it was, in words for the log. */
type Act = (hands: Hands) => Promise<string>

/** Acts and how often each is done beside the others: our choice, so that every page sees minutes of each. */
const ACTS: readonly (readonly [weight: number, act: Act])[] = [
  [30, useControl],
  [14, click],
  [18, drag],
  [6, pressKey],
  [5, wheel],
  [4, undoSome],
  [2, goElsewhere],
  [1, resize],
  [0.5, goOffline],
  [0.4, keepSomething],
]

/** Does something by chance. */
export async function actByChance(hands: Hands): Promise<string> {
  const total = ACTS.reduce((sum, [weight]) => sum + weight, 0)
  let left = hands.random() * total
  for (const [weight, act] of ACTS) {
    left -= weight
    if (left < 0) return act(hands)
  }
  return click(hands)
}

export function oneOf<Value>(random: () => number, values: readonly [Value, ...Value[]]): Value {
  return values[Math.floor(random() * values.length)] ?? values[0]
}

function wholeUpTo(random: () => number, most: number): number {
  return 1 + Math.floor(random() * most)
}

function somewhere({ page, random }: Hands): [number, number] {
  const { width, height } = page.viewportSize() ?? { width: 1280, height: 900 }
  return [Math.floor(random() * width), Math.floor(random() * height)]
}

async function click(hands: Hands): Promise<string> {
  const [x, y] = somewhere(hands)
  await hands.page.mouse.click(x, y, { clickCount: hands.random() < 0.1 ? 2 : 1 })
  return `clicked at ${x}, ${y}`
}

async function drag(hands: Hands): Promise<string> {
  const { page, random } = hands
  // Half of them begin at something that can be taken hold of.
  const index = Math.floor(random() * 40)
  const grip =
    random() < 0.5
      ? ((await page.evaluate(
          `(() => { const all = document.querySelectorAll('[role=slider]'); const e = all[${index} % Math.max(1, all.length)]
            if (!e) return null; e.scrollIntoView({ block: 'center', behavior: 'instant' })
            const b = e.getBoundingClientRect(); return [b.x + b.width / 2, b.y + b.height / 2] })()`,
        )) as [number, number] | null)
      : null
  const [fromX, fromY] = grip ?? somewhere(hands)
  await page.mouse.move(fromX, fromY)
  await page.mouse.down()
  const moves = wholeUpTo(random, 8)
  for (let move = 0; move < moves; move += 1) {
    const [x, y] =
      random() < 0.7 ? [fromX + 120 * (random() - 0.5), fromY + 120 * (random() - 0.5)] : somewhere(hands)
    await page.mouse.move(x, y, { steps: 2 })
  }
  await page.mouse.up()
  return `dragged from ${Math.round(fromX)}, ${Math.round(fromY)} by ${moves} moves`
}

async function wheel(hands: Hands): Promise<string> {
  const [x, y] = somewhere(hands)
  await hands.page.mouse.move(x, y)
  const by = Math.round(800 * (hands.random() - 0.5))
  await hands.page.mouse.wheel(0, by)
  return `turned the wheel by ${by} at ${x}, ${y}`
}

const KEYS = [
  'Tab',
  'Shift+Tab',
  'Escape',
  'Enter',
  ' ',
  'ArrowLeft',
  'ArrowRight',
  'ArrowUp',
  'ArrowDown',
  'Backspace',
  'Delete',
  'Home',
  'End',
  'PageUp',
  'PageDown',
  'a',
  '7',
  '+',
  '-',
] as const

async function pressKey({ page, random }: Hands): Promise<string> {
  const key = oneOf(random, KEYS)
  const times = wholeUpTo(random, 6)
  for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
  return `pressed ${key} ${times} times`
}

async function undoSome({ page, random }: Hands): Promise<string> {
  const key = oneOf(random, ['Control+z', 'Control+Shift+z', 'Control+y', 'Control+z'])
  const times = wholeUpTo(random, 4)
  for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
  return `pressed ${key} ${times} times`
}

async function useControl(hands: Hands): Promise<string> {
  const { page, random } = hands
  const count = await countTargets(page)
  if (count === 0) return 'found nothing to use'
  const index = Math.floor(random() * count)
  const target = await bringIntoView(page, index)
  if (target === null) return 'found it gone'
  await use(hands, target, index)
  return `used the ${target.kind} “${target.name}”`
}

const TEXTS = [
  '7',
  '150',
  '212',
  '0',
  '-3',
  '12,5',
  '1e9',
  '',
  'Wyn Example',
  'heron pool',
  '<b>&"',
  'ﬂag é',
  '999999999999',
  'par 4',
  '  ',
] as const

async function use(hands: Hands, { kind, x, y }: Target, index: number): Promise<void> {
  const { page, random } = hands
  const arrows = async (): Promise<void> => {
    const key = oneOf(random, [
      'ArrowUp',
      'ArrowDown',
      'ArrowLeft',
      'ArrowRight',
      'Shift+ArrowRight',
      'PageUp',
    ])
    const times = wholeUpTo(random, 8)
    for (let time = 0; time < times; time += 1) await page.keyboard.press(key)
  }
  if (kind === 'file') {
    const { text, ...file } = oneOf(random, FILES as readonly [(typeof FILES)[number]])
    return giveFile(page, index, { ...file, buffer: Buffer.from(text) })
  }
  await page.mouse.click(x, y)
  if (kind === 'slider') await arrows()
  if (kind === 'list') {
    // The press has opened the list; a letter or an arrow chooses in it, enter takes it.
    await arrows()
    await page.keyboard.press('Enter')
  }
  if (kind === 'text') {
    if (random() < 0.7) await page.keyboard.press('Control+a')
    await page.keyboard.type(oneOf(random, TEXTS))
    if (random() < 0.6) await page.keyboard.press('Tab')
  }
  if (kind === 'chart')
    for (let tap = wholeUpTo(random, 6); tap > 0; tap -= 1) {
      await page.mouse.click(x + 260 * (random() - 0.5), y + 260 * (random() - 0.5))
      if (random() < 0.2) await arrows()
    }
}

const PLACES = [
  '#/desk',
  '#/desk',
  '#/survey',
  '#/new-player',
  '#/players',
  '#/rounds',
  '#/course/sandrel-ness',
  '#/shots',
  '#/shots/tobin-skell',
  '#/shots/nobody',
  '#/?',
] as const

async function goElsewhere({ page, address, random }: Hands): Promise<string> {
  const place = oneOf(random, PLACES)
  await page.goto(address + place)
  return `went to ${place}`
}

const WINDOWS: readonly [Size, ...Size[]] = [
  { width: 1280, height: 900 },
  { width: 390, height: 844 },
  { width: 820, height: 1180 },
  { width: 320, height: 640 },
]

interface Size {
  readonly width: number
  readonly height: number
}

async function resize({ page, random }: Hands): Promise<string> {
  const size = oneOf(random, WINDOWS)
  await page.setViewportSize(size)
  return `made the window ${size.width} × ${size.height}`
}

async function goOffline({ context, random }: Hands): Promise<string> {
  const isOffline = random() < 0.5
  await context.setOffline(isOffline)
  return isOffline ? 'took the network away' : 'gave the network back'
}

const NAMES = ['Wyn Example', 'Oda Sample', 'Bram Trial'] as const

async function keepSomething({ page, address, random }: Hands): Promise<string> {
  const name = oneOf(random, NAMES)
  return random() < 0.5 ? keepPlayer(page, address, name) : keepHole(page, address, `${name} Links`)
}
