import type { Page } from 'playwright-core'

/** What the browser keeps of a person's work, by its name. */
export type Kept = Readonly<Record<string, string>>

/** Where the steps of undo of the desk are kept; they are written a moment after the edit. */
const STEPS = 'marram.desk.steps'

/** Everything that is kept in the tab and in the browser, steps of undo left out. */
export async function readKept(page: Page): Promise<Kept> {
  await page.evaluate(
    `new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done))))`,
  )
  const texts = (await page.evaluate(`({ ...sessionStorage, ...localStorage })`)) as Record<string, string>
  return Object.fromEntries(
    Object.entries(texts).filter(([name]) => name.startsWith('marram.') && name !== STEPS),
  )
}

/** What is kept once it has stopped changing: a course that is opened chooses its first hole only when it is there. */
export async function settledKept(page: Page): Promise<Kept> {
  let before = await readKept(page)
  for (let look = 0; look < LOOKS; look += 1) {
    await page.waitForTimeout(LOOK_MILLISECONDS)
    const now = await readKept(page)
    if (JSON.stringify(now) === JSON.stringify(before)) return now
    before = now
  }
  return before
}

const LOOKS = 40
const LOOK_MILLISECONDS = 150

/** Where two states differ, in words; empty when they are the same. */
export function differences(before: Kept, after: Kept): string[] {
  const names = new Set([...Object.keys(before), ...Object.keys(after)])
  return [...names].flatMap((name) => {
    const [was, is] = [before[name], after[name]]
    return was === is ? [] : [`${name} was ${brief(was, is)} and is ${brief(is, was)}`]
  })
}

/** A text from a little before where it leaves the other. */
function brief(text: string | undefined, other: string | undefined): string {
  if (text === undefined || other === undefined) return text === undefined ? 'nothing' : text.slice(0, 200)
  const at = [...text].findIndex((letter, index) => letter !== other[index])
  return `…${text.slice(Math.max(0, at - 60), at + 120)}…`
}
