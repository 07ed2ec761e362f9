import { ownStorage } from '../documents/own-storage.ts'
import type { CommandName } from './key-table.ts'
import { isTyped, type Press, pressedKey } from './pressed-key.ts'

/** What a command does now; `null` = it can do nothing now. */
export type Action = (() => void) | null

/** What the page that is shown takes. */
const live = new Map<CommandName, { readonly action: () => Action; readonly areFieldsOwn: boolean }>()

/** Has a command taken until the returned function is called. `areFieldsOwn`: while a field is typed in, its keys are the field's own. */
export function takeCommand(name: CommandName, action: () => Action, areFieldsOwn: boolean): () => void {
  const entry = { action, areFieldsOwn }
  live.set(name, entry)
  return () => {
    if (live.get(name) === entry) live.delete(name)
  }
}

/** The commands that can do something now. */
export function liveCommands(): readonly CommandName[] {
  return [...live].flatMap(([name, { action }]) => (action() === null ? [] : [name]))
}

/** Does a command, if it can do something now. */
export function runCommand(name: CommandName): void {
  live.get(name)?.action()?.()
}

const KEPT = 'marram.keys'
let hasSingleKeys = ownStorage.getItem(KEPT) !== 'off'

/** Whether keys that are typed alone do anything: who speaks to the machine, or hits keys unawares, turns them off. */
export function areSingleKeysOn(): boolean {
  return hasSingleKeys
}

export function setSingleKeys(areOn: boolean): void {
  hasSingleKeys = areOn
  try {
    if (areOn) ownStorage.removeItem(KEPT)
    else ownStorage.setItem(KEPT, 'off')
  } catch {
    // It holds until the page goes.
  }
}

/** Listens for the keys of the whole page; what took a key already, a dialog, and a field that is typed in keep theirs. */
export function onPageKey(
  event: Press & Pick<KeyboardEvent, 'defaultPrevented' | 'target' | 'preventDefault'>,
): void {
  const name = pressedKey('page', event) ?? pressedKey('desk', event)
  const taken = name === null ? undefined : live.get(name)
  if (taken === undefined || event.defaultPrevented || document.querySelector(':modal') !== null) return
  if (isTyped(event) ? !hasSingleKeys || isField(event.target) : taken.areFieldsOwn && isField(event.target))
    return
  event.preventDefault()
  taken.action()?.()
}

/** Whether something is typed into it, or chosen in it by typing. */
function isField(target: EventTarget | null): boolean {
  if (target instanceof HTMLInputElement)
    return !['range', 'checkbox', 'radio', 'button', 'file'].includes(target.type)
  return (
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement ||
    (target instanceof HTMLElement && target.isContentEditable)
  )
}
