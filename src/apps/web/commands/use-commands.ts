import { useEffect, useRef } from 'react'
import type { CommandName } from './key-table.ts'
import { type Action, onPageKey, takeCommand } from './live-commands.ts'

/** Takes commands, by their keys and by name, while the component is shown; the same commands at every call. */
export function useCommands(
  actions: Partial<Readonly<Record<CommandName, Action>>>,
  areFieldsOwn = false,
): void {
  const latest = useRef(actions)
  latest.current = actions
  const names = Object.keys(actions).join()
  useEffect(() => {
    const ends = (names.split(',') as CommandName[]).map((name) =>
      takeCommand(name, () => latest.current[name] ?? null, areFieldsOwn),
    )
    addEventListener('keydown', onPageKey)
    return () => {
      for (const end of ends) end()
    }
  }, [names, areFieldsOwn])
}
