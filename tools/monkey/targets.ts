import type { ElementHandle, Page } from 'playwright-core'

/** Something on the page to hit or to type in. */
export interface Target {
  readonly kind: 'button' | 'list' | 'slider' | 'text' | 'file' | 'chart'
  /** What it is called, for the log. */
  readonly name: string
  /** Its middle, CSS pixels of the window. */
  readonly x: number
  readonly y: number
}

/** Every control that a person could use now. */
const CONTROLS = `[...document.querySelectorAll(
    'a[href], button, summary, select, input, textarea, [role=slider], [role=application]')]
  .filter((e) => !e.disabled && (e.type === 'file' || e.checkVisibility({ visibilityProperty: true })))`

/** How many controls there are. */
export async function countTargets(page: Page): Promise<number> {
  return Number(await page.evaluate(`${CONTROLS}.length`))
}

/** Brings the control of this number into the window and says where it is; `null` when it has gone meanwhile. */
export async function bringIntoView(page: Page, index: number): Promise<Target | null> {
  return (await page.evaluate(`(() => {
    const e = ${CONTROLS}[${index}]
    if (e === undefined) return null
    e.scrollIntoView({ block: 'center', inline: 'center', behavior: 'instant' })
    const box = e.getBoundingClientRect()
    const kind = e.type === 'file' ? 'file' : e.tagName === 'SELECT' ? 'list'
      : e.role === 'application' ? 'chart'
      : e.role === 'slider' || e.type === 'range' ? 'slider'
      : e.tagName === 'INPUT' && !['checkbox', 'radio', 'button'].includes(e.type) || e.tagName === 'TEXTAREA' ? 'text'
      : 'button'
    const name = (e.getAttribute('aria-label') ?? e.labels?.[0]?.textContent ?? e.textContent).trim().slice(0, 40)
    return { kind, name, x: box.x + box.width / 2, y: box.y + box.height / 2 }
  })()`)) as Target | null
}

/** Hands a file to the field of this number, as a person does who has chosen it in the system's own window. */
export async function giveFile(
  page: Page,
  index: number,
  file: { readonly name: string; readonly mimeType: string; readonly buffer: Buffer },
): Promise<void> {
  const field = (await page.evaluateHandle(`${CONTROLS}[${index}]`)).asElement() as ElementHandle | null
  await field?.setInputFiles(file)
  await field?.dispose()
}
