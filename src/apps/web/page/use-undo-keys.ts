import { useEffect } from 'react'

/**
 * Control and Z takes a step back; with shift, or control and Y, forth again. `areFieldsOwn`: in a field that is typed in
 * they are the field's own keys; else what is typed is a step like any other.
 */
export function useUndoKeys(undo: () => void, redo: () => void, areFieldsOwn = false): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!event.ctrlKey && !event.metaKey) return
      if (areFieldsOwn && event.target instanceof HTMLInputElement) return
      const key = event.key.toLowerCase()
      if (key !== 'z' && key !== 'y') return
      event.preventDefault()
      if (key === 'y' || event.shiftKey) redo()
      else undo()
    }
    addEventListener('keydown', onKey)
    return () => removeEventListener('keydown', onKey)
  }, [undo, redo, areFieldsOwn])
}
